/** By room: a row for each profile of each room, live from the list of pieces; a row for each room. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { lengthStyles, type LengthStyles } from '../grammar/length-styles.ts';
import { sumOf, total, type PlanCells } from '../plan-cells.ts';
import { printTotal } from '../words/print-length.ts';
import { cell, sum, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';
import { CUBIC_PER_BOARD_FOOT, UNKNOWN } from './board-feet-cells.ts';
import { rowCell, type ProductionCells, type TotalName } from './production-cells.ts';
import { linesOf, type Added, type Line } from './room-lines.ts';

const TOTALS: Partial<Readonly<Record<Added, TotalName>>> = {
  D: 'piecesByRoom',
  E: 'passesByRoom',
  G: 'lengthByRoom',
  H: 'boardFeetByRoom',
  J: 'hoursByRoom',
  K: 'priceByRoom',
};

export interface RoomTable {
  /** The row of its headings. */
  readonly heads: number;
  /** Where each room begins. */
  readonly rooms: readonly number[];
}

export function addRooms(
  draft: SheetDraft,
  plan: JobPlan,
  cells: PlanCells,
  own: ProductionCells,
): RoomTable {
  const { unit } = plan.job.shop;
  draft.spread('By room', 'section');
  draft.spread(
    'Lines add up their rows of Pieces; passes, hours and price are shared by length. “Up to here” adds up a profile from room to room, so that prices round to the whole.',
    'note',
  );
  const heads = draft.add(
    cell('Line', 'headingRight'),
    cell('Room', 'heading'),
    cell('Profile', 'heading'),
    ...[
      'Pieces',
      'Passes',
      'Net length',
      `Net length (${unit})`,
      'Board feet, net',
      'with allowance',
      'Hours',
      `Price (${plan.totals.currency})`,
      `Up to here (${unit})`,
    ].map((text) => cell(text, 'headingRight')),
  );
  const lines = linesOf(plan);
  own.rooms = [
    draft.next,
    draft.next + lines.length + new Set(lines.map((l) => l.line.room)).size - 1,
  ];
  const styles = lengthStyles(
    plan.pieces.map(({ cutLength }) => cutLength),
    unit,
  );
  const rooms = addLines(draft, plan, lines, styles, cells, own);
  if (lines.length === 0) draft.add(null, cell('Nothing is left to make.', 'row'));
  addTotals(draft, lines, styles, own);
  return { heads, rooms };
}

/** Each room's row, then its lines; gives the rooms' rows. */
function addLines(
  draft: SheetDraft,
  plan: JobPlan,
  lines: readonly Line[],
  styles: LengthStyles,
  cells: PlanCells,
  own: ProductionCells,
): number[] {
  const last = new Map<number, number>();
  const rooms: number[] = [];
  for (let from = 0; from < lines.length;) {
    const room = lines[from]?.line.room ?? '';
    let to = from;
    while (lines[to]?.line.room === room) to += 1;
    const some = lines.slice(from, to);
    rooms.push(addRoom(draft, room, some, styles));
    for (const line of some) {
      addLine(draft, plan, line, last.get(line.index), styles, cells, own);
      last.set(line.index, draft.next - 1);
    }
    from = to;
  }
  return rooms;
}

function addRoom(
  draft: SheetDraft,
  room: string,
  lines: readonly Line[],
  styles: LengthStyles,
): number {
  const first = draft.next + 1;
  const last = draft.next + lines.length;
  const added = (column: Added, style: StyleName): DraftCell =>
    sum(sumOf(column, first, last), total(lines.map(({ values }) => values[column])), style);
  const row = draft.add(
    cell(null, 'stick'),
    cell(room, 'stick'),
    cell(null, 'stick'),
    added('D', 'stickWhole'),
    lines.every(({ planned }) => planned.profile.make === 'buy')
      ? cell(null, 'stick')
      : added('E', 'stickDecimal'),
    cell(null, 'stick'),
    added('G', styles.stick),
    added('H', 'stickDecimal'),
    added('I', 'stickDecimal'),
    added('J', 'stickDecimal'),
    added('K', 'stickDecimal'),
    cell(null, 'stick'),
  );
  draft.merge(row, 1, 2);
  return row;
}

/** @param before The row of the same profile's line before. */
function addLine(
  draft: SheetDraft,
  plan: JobPlan,
  { line, number, index, planned, values, upToHere }: Line,
  before: number | undefined,
  styles: LengthStyles,
  cells: PlanCells,
  own: ProductionCells,
): void {
  const { unit } = plan.job.shop;
  const row = draft.next;
  const quantity = (column: string): string => rowCell(own.quantityRows, index, column);
  const paid = (column: string): string => rowCell(own.moneyRows, index, column);
  const lengths = quantity('G');
  const isKnown = planned.tally.boardFeetNet !== undefined;
  const worth = (at: number): string => `ROUND(${paid('K')}*L${at}/${lengths},2)`;
  draft.add(
    cell(number, 'rowWhole'),
    cell(line.room, 'row'),
    cell(line.profile, 'row'),
    sum(() => `COUNTIF(${cells.linesOnPieces},A${row})`, values.D, 'rowWhole'),
    planned.profile.make === 'buy'
      ? cell(null, 'rowDecimal')
      : sum(() => `${paid('D')}*G${row}/${lengths}`, values.E, 'rowDecimal'),
    cell(printTotal(line.lengthNet, plan.job.shop), 'rowRight'),
    sum(
      () => `SUMIF(${cells.linesOnPieces},A${row},${cells.lengthsOnPieces})`,
      values.G,
      styles.row,
    ),
    isKnown
      ? sum(
          () => `${quantity('I')}*${quantity('J')}*G${row}/${CUBIC_PER_BOARD_FOOT[unit]}`,
          values.H,
          'rowDecimal',
        )
      : cell(UNKNOWN, 'rowDecimal'),
    isKnown
      ? sum(() => `H${row}*(1+${quantity('L')}/100)`, values.I, 'rowDecimal')
      : cell(UNKNOWN, 'rowDecimal'),
    sum(() => `${paid('E')}*G${row}/${lengths}`, values.J, 'rowDecimal'),
    sum(
      () => (before === undefined ? worth(row) : `${worth(row)}-${worth(before)}`),
      values.K,
      'rowDecimal',
    ),
    sum(before === undefined ? `G${row}` : `L${before}+G${row}`, upToHere, styles.row),
  );
}

function addTotals(
  draft: SheetDraft,
  lines: readonly Line[],
  styles: LengthStyles,
  own: ProductionCells,
): void {
  const [first, last] = own.rooms;
  const row = draft.next;
  const added = (column: Added, style: StyleName): DraftCell => {
    const name = TOTALS[column];
    if (name !== undefined) own.totals.set(name, `${column}${row}`);
    const value = total(lines.map(({ values }) => values[column]));
    // Rooms' own sums stand between the lines and have no number.
    const formula = `SUMIF(A${first}:A${last},">0",${column}${first}:${column}${last})`;
    return sum(lines.length === 0 ? '0' : formula, value, style);
  };
  const none = cell(null, 'totalLabel');
  draft.add(
    none,
    cell('Together', 'totalLabel'),
    none,
    added('D', 'totalWhole'),
    added('E', 'total'),
    none,
    added('G', styles.total),
    added('H', 'total'),
    added('I', 'total'),
    added('J', 'total'),
    added('K', 'total'),
    none,
  );
}
