/** Room by room: the lines of a client's sheet, live by their quantities, and each room's own sum. */
import type { JobPlan } from '../../planning/job-plan.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { money, sumOf, total } from '../plan-cells.ts';
import { numberIn, printExact } from '../words/print-length.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import type { ClientLine, ClientRoom } from './client-rooms.ts';
import { LIVE_NOTE, sayDone } from './client-words.ts';

/** Long lengths are told in feet or metres. */
const LONG_UNIT: Readonly<Record<LengthUnit, { name: string; holds: number }>> = {
  in: { name: 'ft', holds: 12 },
  mm: { name: 'm', holds: 1000 },
};
/** More lines than these go on under headings of their own, so that no page is without. */
const LINES_UNDER_HEADINGS = 36;

export interface LinesAdded {
  /** Rows with the sums of the rooms that are in the price, in their order: pieces in C, price in F. */
  readonly sumRows: readonly number[];
  /** First row of each part that should stay on one page. */
  readonly blocks: readonly number[];
  /** First and last row of the lines; nothing is listed where the last comes before the first. */
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

export function addLines(draft: SheetDraft, plan: JobPlan, all: readonly ClientRoom[]): LinesAdded {
  const blocks = [draft.next];
  draft.spread('Room by room', 'section');
  draft.spread(LIVE_NOTE, 'note');
  const first = draft.next;
  const sumRows: number[] = [];
  all.forEach((room, at) => {
    if (at > 0) blocks.push(draft.next);
    if (room.lines.length === 0) draft.spread(room.room, 'section');
    else sumRows.push(addRoom(draft, plan, room, blocks));
    if (room.done.size > 0) draft.spread(sayDone(room.done), 'note');
    draft.blank();
  });
  return { sumRows, blocks, span: [first, draft.next - 1] };
}

/** Headings that bear the room's name, its lines, their sum: gives the sum's row. */
function addRoom(draft: SheetDraft, plan: JobPlan, room: ClientRoom, blocks: number[]): number {
  const { unit } = plan.job.shop;
  const first = draft.next + 1;
  room.lines.forEach((line, at) => {
    const goesOn = at > 0 && at % LINES_UNDER_HEADINGS === 0;
    if (goesOn) blocks.push(draft.next);
    if (goesOn || at === 0) addHeadings(draft, plan, `${room.room}${goesOn ? ', continued' : ''}`);
    addLine(draft, line, plan.job.shop);
  });
  const last = draft.next - 1;
  const { pieces, length, priceCents } = sumsOf(room, unit);
  const none = cell(null, 'totalLabel');
  return draft.add(
    cell('This room', 'totalLabel'),
    none,
    sum(sumOf('C', first, last), pieces, 'totalWhole'),
    sum(sumOf('D', first, last), length, 'total'),
    none,
    sum(`ROUND(${sumOf('F', first, last)},2)`, money(priceCents), 'total'),
  );
}

function addHeadings(draft: SheetDraft, { job, totals }: JobPlan, room: string): void {
  draft.add(
    cell(room, 'heading'),
    cell('Length each', 'headingRight'),
    cell('Quantity', 'headingRight'),
    cell(`Together (${LONG_UNIT[job.shop.unit].name})`, 'headingRight'),
    cell(`Price each, about (${totals.currency})`, 'headingRight'),
    cell(`Price (${totals.currency})`, 'headingRight'),
  );
}

/** The price each is kept unrounded: times the quantity it comes to the line's price. */
function addLine(draft: SheetDraft, line: ClientLine, reading: LengthReading): void {
  const { unit } = reading;
  const { molding, length, quantity, priceCents } = line;
  const row = draft.next;
  const { holds } = LONG_UNIT[unit];
  draft.add(
    cell(molding, 'row'),
    cell(printExact(length, reading), 'rowRight'),
    cell(quantity, 'inputWhole'),
    sum(`C${row}*${numberIn(length, unit)}/${holds}`, longLength(line, unit), 'rowDecimal'),
    cell(money(priceCents) / quantity, 'rowDecimal'),
    sum(`ROUND(C${row}*E${row},2)`, money(priceCents), 'rowDecimal'),
  );
}

function longLength({ length, quantity }: ClientLine, unit: LengthUnit): number {
  return (quantity * numberIn(length, unit)) / LONG_UNIT[unit].holds;
}
