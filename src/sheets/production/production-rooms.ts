/** By room: a row for each profile of each room, live from the list of pieces; a row for each room. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { total } from '../grammar/figures.ts';
import { lengthStyles, type LengthStyles } from '../grammar/length-styles.ts';
import {
  cell,
  sum,
  type DraftCell,
  type SheetDraft,
  type SheetRow,
} from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';
import { onSheet, type PlanAnchors, type ProductionTotal } from '../plan-anchors.ts';
import { allowanceFormula } from '../price-formulas.ts';
import { VOLUME } from '../words/lumber-volume.ts';
import { LONG_UNIT } from '../words/print-length.ts';
import type { ProductionAnchors } from './production-anchors.ts';
import { QUANTITIES, ROOMS } from './production-columns.ts';
import { NOTHING, ROOMS_NOTE, SECTIONS, SOLD_BY_LENGTH, UNKNOWN } from './production-words.ts';
import { linesOf, type Figure, type Line } from './room-lines.ts';

const TOTALS: Partial<Readonly<Record<Figure, ProductionTotal>>> = {
  pieces: 'piecesByRoom',
  passes: 'passesByRoom',
  length: 'lengthByRoom',
  boardFeet: 'boardFeetByRoom',
  hours: 'hoursByRoom',
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
  acrossSheets: PlanAnchors,
  onThisSheet: ProductionAnchors,
): RoomTable {
  draft.spread(SECTIONS.rooms, 'section');
  draft.spread(ROOMS_NOTE, 'note');
  const heads = draft.put(ROOMS.headings(plan.job.shop));
  const lines = linesOf(plan);
  const styles = lengthStyles(
    plan.pieces.map(({ cutLength }) => cutLength),
    plan.job.shop.unit,
  );
  const first = draft.next;
  const facts: RoomFacts = { plan, first, styles, acrossSheets, onThisSheet };
  const rooms = addLines(draft, lines, facts);
  const rows = [first, draft.next - 1] as const;
  onThisSheet.place('roomRows', rows);
  if (lines.length === 0) draft.put(ROOMS.loose({ room: cell(NOTHING.make, 'row') }));
  addTotals(draft, lines, rows, facts);
  return { heads, rooms };
}

/** What rows of lines go by. */
interface RoomFacts {
  readonly plan: JobPlan;
  /** The table's first row. */
  readonly first: number;
  readonly styles: LengthStyles;
  readonly acrossSheets: PlanAnchors;
  readonly onThisSheet: ProductionAnchors;
}

/** Each room's row, then its lines; gives the rooms' rows. */
function addLines(draft: SheetDraft, lines: readonly Line[], facts: RoomFacts): number[] {
  const rooms: number[] = [];
  for (let from = 0; from < lines.length;) {
    const room = lines[from]?.line.room ?? '';
    let to = from;
    while (lines[to]?.line.room === room) to += 1;
    const some = lines.slice(from, to);
    rooms.push(draft.put(roomRow(room, some, draft.next, facts)));
    for (const line of some) draft.put(lineRow(line, draft.next, facts));
    from = to;
  }
  return rooms;
}

/** @param row Its own; its lines follow. */
function roomRow(
  room: string,
  lines: readonly Line[],
  row: number,
  { styles, plan }: RoomFacts,
): SheetRow {
  const volume = VOLUME[plan.job.shop.unit].styles.stick;
  const added = (figure: Figure, style: StyleName): DraftCell => {
    const value = total(lines.map(({ values }) => values[figure]));
    return ROOMS.sumCell(figure, [row + 1, row + lines.length], value, style);
  };
  const { holds } = LONG_UNIT[plan.job.shop.unit];
  const lengths = lines.map(({ values }) => values.length);
  const isBought = lines.every(({ planned }) => planned.profile.make === 'buy');
  const cells = {
    room: cell(room, 'stick'),
    pieces: added('pieces', 'stickWhole'),
    ...(isBought ? {} : { passes: added('passes', 'stickDecimal') }),
    long: sum(`${ROOMS.at('length', row)}/${holds}`, total(lengths) / holds, 'stickDecimal'),
    length: added('length', styles.stick),
    boardFeet: added('boardFeet', volume),
    boardFeetWithAllowance: added('boardFeetWithAllowance', volume),
    boardFeetBought: added('boardFeetBought', volume),
    hours: added('hours', 'stickDecimal'),
  };
  return {
    ...ROOMS.loose(cells, cell(null, 'stick')),
    joins: [[ROOMS.start('room'), ROOMS.end('profile')], ROOMS.join('hours')],
  };
}

function lineRow(
  { line, number, planned, profileNumber, values }: Line,
  row: number,
  { plan, first, styles, acrossSheets, onThisSheet }: RoomFacts,
): SheetRow {
  const { shop } = plan.job;
  const quantity = (
    column:
      'length' | 'thickness' | 'blankWidth' | 'allowance' | 'boardFeetBought' | 'passes' | 'hours',
  ): string => QUANTITIES.inRow(column, onThisSheet.at('quantityRow', planned));
  const at = (column: 'line' | 'length' | 'boardFeet' | 'profileNumber'): string =>
    ROOMS.at(column, row);
  const byLength = (column: 'passes' | 'hours') => (): string =>
    `${quantity(column)}*${at('length')}/${quantity('length')}`;
  const down = (column: 'profileNumber' | 'length'): string =>
    onSheet('production', `${ROOMS.fixed(column, first)}:${ROOMS.fixed(column, row)}`);
  acrossSheets.place(
    'downToLineOnProduction',
    {
      numbers: down('profileNumber'),
      lengths: down('length'),
      number: onSheet('production', ROOMS.fixed('profileNumber', row)),
    },
    line,
  );
  const cubic = (): string => `${quantity('thickness')}*${quantity('blankWidth')}*${at('length')}`;
  const figure = (formula: () => string, value: number, style: StyleName = 'rowDecimal') =>
    sum(formula, value, style);
  const volume = VOLUME[shop.unit];
  const { tally, profile } = planned;
  const long = (length: number): number => length / LONG_UNIT[shop.unit].holds;
  const linesOnPieces = (): string => `${acrossSheets.at('linesOnPieces')},${at('line')}`;
  return ROOMS.row({
    line: cell(number, 'rowWhole'),
    room: cell(line.room, 'row'),
    profile: cell(line.profile, 'row'),
    pieces: sum(() => `COUNTIF(${linesOnPieces()})`, values.pieces, 'rowWhole'),
    passes:
      planned.profile.make === 'buy'
        ? cell(null, 'rowDecimal')
        : figure(byLength('passes'), values.passes),
    long: sum(`${at('length')}/${LONG_UNIT[shop.unit].holds}`, long(values.length), 'rowDecimal'),
    length: sum(
      () => `SUMIF(${linesOnPieces()},${acrossSheets.at('lengthsOnPieces')})`,
      values.length,
      styles.row,
    ),
    ...(profile.make === 'buy'
      ? {
          boardFeet: cell(SOLD_BY_LENGTH, 'rowDecimal'),
          boardFeetWithAllowance: cell(null, 'row'),
          boardFeetBought: cell(null, 'row'),
        }
      : {
          boardFeet: figure(
            () => `${cubic()}/${volume.cubic}`,
            values.boardFeet,
            volume.styles.row,
          ),
          boardFeetWithAllowance: figure(
            () => allowanceFormula(at('boardFeet'), quantity('allowance'), shop.allowanceOf),
            values.boardFeetWithAllowance,
            volume.styles.row,
          ),
          boardFeetBought:
            tally.boardFeetBought === undefined
              ? cell(UNKNOWN, 'rowDecimal')
              : figure(
                  () => `${quantity('boardFeetBought')}*${at('length')}/${quantity('length')}`,
                  values.boardFeetBought,
                  volume.styles.row,
                ),
        }),
    hours: figure(byLength('hours'), values.hours),
    profileNumber: cell(profileNumber, 'rowWhole'),
  });
}

function addTotals(
  draft: SheetDraft,
  lines: readonly Line[],
  rows: readonly [first: number, last: number],
  { plan, styles, onThisSheet }: RoomFacts,
): void {
  const row = draft.next;
  const volume = VOLUME[plan.job.shop.unit].styles.total;
  const added = (figure: Figure, style: StyleName): DraftCell => {
    const name = TOTALS[figure];
    if (name !== undefined) onThisSheet.place(`total ${name}`, ROOMS.at(figure, row));
    const value = total(lines.map(({ values }) => values[figure]));
    // Rooms' own sums stand between the lines and have no number.
    const formula = `SUMIF(${ROOMS.range('line', ...rows)},">0",${ROOMS.range(figure, ...rows)})`;
    return sum(lines.length === 0 ? '0' : formula, value, style);
  };
  const { holds } = LONG_UNIT[plan.job.shop.unit];
  const lengths = lines.map(({ values }) => values.length);
  const together = {
    room: cell('Together', 'totalLabel'),
    pieces: added('pieces', 'totalWhole'),
    passes: added('passes', 'total'),
    long: sum(`${ROOMS.at('length', row)}/${holds}`, total(lengths) / holds, 'total'),
    length: added('length', styles.total),
    boardFeet: added('boardFeet', volume),
    boardFeetWithAllowance: added('boardFeetWithAllowance', volume),
    boardFeetBought: added('boardFeetBought', volume),
    hours: added('hours', 'total'),
  };
  draft.put({ ...ROOMS.loose(together, cell(null, 'totalLabel')), joins: [ROOMS.join('hours')] });
}
