/** Room by room: the lines of a client's sheet, live by their quantities, and each room's own sum. */
import type { JobPlan } from '../../planning/job-plan.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { money, total } from '../grammar/figures.ts';
import { LONG_UNIT, numberIn, printExact } from '../words/print-length.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import type { ClientAnchors } from './client-anchors.ts';
import { LINES } from './client-columns.ts';
import type { ClientLine, ClientRoom } from './client-rooms.ts';
import { LIVE_NOTE, sayAround, sayDone, sayOpenings, THIS_ROOM } from './client-words.ts';

/** After so many lines the headings are repeated, so that every page has some. */
const LINES_UNDER_HEADINGS = 36;

export interface LinesAdded {
  /** First row of each part that should stay on one page. */
  readonly blocks: readonly number[];
  /** From the first room's headings to the last room's end; nothing is listed where that comes before. */
  readonly span: readonly [first: number, last: number];
}

/** What the lines of a room come to. */
export interface RoomSums {
  readonly pieces: number;
  /** In feet or metres. */
  readonly length: number;
  readonly priceCents: number;
}

export function sumsOf({ lines }: ClientRoom, unit: LengthUnit): RoomSums {
  return {
    pieces: total(lines.map(({ quantity }) => quantity)),
    length: total(lines.map((line) => longLength(line, unit))),
    priceCents: total(lines.map(({ priceCents }) => priceCents)),
  };
}

export function addLines(
  draft: SheetDraft,
  plan: JobPlan,
  all: readonly ClientRoom[],
  anchors: ClientAnchors,
): LinesAdded {
  const blocks = [draft.next];
  draft.spread('Room by room', 'section');
  draft.spread(LIVE_NOTE, 'note');
  const first = draft.next;
  all.forEach((room, at) => {
    if (at > 0) blocks.push(draft.next);
    if (room.lines.length === 0) draft.spread(room.room, 'section');
    else addRoom(draft, plan, room, blocks, anchors);
    if (room.done.size > 0) draft.spread(sayDone(room.done), 'note');
    draft.blank();
  });
  const span = [first, draft.next - 1] as const;
  if (all.some(({ lines }) => lines.length > 0)) markChanged(draft, span);
  return { blocks, span };
}

/** Lines whose quantity is not the one quoted. */
function markChanged(draft: SheetDraft, [first, last]: LinesAdded['span']): void {
  const quoted = LINES.inColumn('asQuoted', first);
  const isChanged = `ISNUMBER(${quoted}),${quoted}<>${LINES.inColumn('quantity', first)}`;
  draft.highlight(LINES.area(first, last), `AND(${isChanged})`, 'caution');
}

/**
 * How many lines have another quantity than quoted. Headings and sums stand between the lines: a quoted
 * quantity is told by being a number above 0, since Gnumeric takes no ISNUMBER of a range.
 */
export function changedFormula(anchors: ClientAnchors): string {
  const { first, last } = anchors.at('lines');
  if (last < first) return '0';
  const quoted = LINES.range('asQuoted', first, last);
  const isChanged = `(${quoted}<>${LINES.range('quantity', first, last)})`;
  return `SUMPRODUCT((${quoted}>0)*(${quoted}<1E9)*${isChanged})`;
}

/** Headings that bear the room's name, its lines, their sum. */
function addRoom(
  draft: SheetDraft,
  plan: JobPlan,
  room: ClientRoom,
  blocks: number[],
  anchors: ClientAnchors,
): void {
  const { shop } = plan.job;
  const openings = new Set(room.lines.flatMap((line) => [...line.openings]));
  const first = draft.next + (openings.size === 0 ? 1 : 2);
  room.lines.forEach((line, at) => {
    const goesOn = at > 0 && at % LINES_UNDER_HEADINGS === 0;
    if (goesOn) blocks.push(draft.next);
    if (goesOn || at === 0) {
      const molding = `${room.room}${goesOn ? ', continued' : ''}`;
      draft.put(LINES.headings(shop, { molding }));
      if (at === 0 && openings.size > 0) draft.spread(sayOpenings(openings), 'note');
    }
    addLine(draft, line, room.room, shop);
  });
  const rows = [first, draft.next - 1] as const;
  const { pieces, length, priceCents } = sumsOf(room, shop.unit);
  const price = `ROUND(${LINES.sum('price', ...rows)},2)`;
  const cells = {
    molding: cell(THIS_ROOM, 'totalLabel'),
    quantity: LINES.sumCell('quantity', rows, pieces, 'totalWhole'),
    together: LINES.sumCell('together', rows, length, 'total'),
    price: sum(price, money(priceCents), 'total'),
  };
  const row = draft.put(LINES.loose(cells, cell(null, 'totalLabel')));
  anchors.place('pieces', LINES.at('quantity', row), room);
  anchors.place('price', LINES.at('price', row), room);
}

/** The price each is kept unrounded: times the quantity it comes to the line's price. */
function addLine(draft: SheetDraft, line: ClientLine, room: string, reading: LengthReading): void {
  const { unit } = reading;
  const { molding, length, openings, quantity, priceCents } = line;
  const around = openings.size === 0 ? '' : `: ${sayAround(openings, room)}`;
  const row = draft.next;
  const many = LINES.at('quantity', row);
  const together = `${many}*${numberIn(length, unit)}/${LONG_UNIT[unit].holds}`;
  const price = `ROUND(${many}*${LINES.at('priceEach', row)},2)`;
  draft.put(
    LINES.row({
      molding: cell(`${molding}${around}`, 'row'),
      length: cell(printExact(length, reading), 'rowRight'),
      quantity: cell(quantity, 'inputWhole'),
      asQuoted: cell(quantity, 'rowWhole'),
      together: sum(together, longLength(line, unit), 'rowDecimal'),
      priceEach: cell(money(priceCents) / quantity, 'rowDecimal'),
      price: sum(price, money(priceCents), 'rowDecimal'),
    }),
  );
}

function longLength({ length, quantity }: ClientLine, unit: LengthUnit): number {
  return (quantity * numberIn(length, unit)) / LONG_UNIT[unit].holds;
}
