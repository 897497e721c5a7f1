/** The end of the cutting sheet: a row a profile, each taken over from its own sums, and what they come to. */
import { quoteSheet } from '../../core/cells/cell-range.ts';
import { money, SHEET_NAMES, sumOf, total } from '../plan-cells.ts';
import { numberIn } from '../words/print-length.ts';
import { cell, sum, type DraftCell } from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';
import { COLUMN, LETTER } from './cutting-columns.ts';
import { keptOf, type CuttingDraft } from './cutting-group.ts';
import { spreadRow, type SheetRow } from '../grammar/paged-rows.ts';

const SHEET = quoteSheet(SHEET_NAMES.cutting);
const JOINS: NonNullable<SheetRow['joins']> = [[COLUMN.number, COLUMN.what]];
const named = (cells: readonly DraftCell[]): SheetRow => ({ cells, joins: JOINS });

export function addSummary({ pages, plan, cells, facts, rows }: CuttingDraft): void {
  const { unit } = plan.job.shop;
  const { styles } = facts;
  const heads = named([
    cell(null, 'heading'),
    cell('Profile', 'heading'),
    null,
    cell('Sticks', 'headingRight'),
    cell(`Lumber (${plan.totals.currency})`, 'headingRight'),
    cell(`Sticks (${unit})`, 'headingRight'),
    cell(`Offcuts kept (${unit})`, 'headingRight'),
  ]);
  const figures = plan.profiles.map(({ profile, sticks, money: lines }) => ({
    name: profile.name,
    sticks: sticks.length,
    lumber: money(lines.lumberCents),
    length: total(sticks.map((stick) => numberIn(stick.length, unit))),
    kept: total(keptOf(sticks).map((stick) => numberIn(stick.offcut, unit))),
  }));
  pages.hold(spreadRow('All profiles', 'section', [0, COLUMN.last]), heads);
  const rowsOf = figures.map((figure, index): SheetRow => {
    const { together, lumber } = rows[index] ?? { together: 1, lumber: 1 };
    return named([
      null,
      cell(figure.name, 'row'),
      null,
      sum(`H${together}`, figure.sticks, 'rowWhole'),
      sum(`D${lumber}`, figure.lumber, 'rowDecimal'),
      sum(`${LETTER.stick}${together}`, figure.length, styles.row),
      sum(`${LETTER.kept}${together}`, figure.kept, styles.row),
    ]);
  });
  const none = named([null, cell('Nothing is left to cut.', 'row')]);
  let places: readonly number[] = [];
  const sumUp = (column: string, values: readonly number[], style: StyleName): DraftCell =>
    sum(() => sumOf(column, places[0] ?? 1, places.at(-2) ?? 0), total(values), style);
  const together = named([
    cell(null, 'totalLabel'),
    cell('Together', 'totalLabel'),
    null,
    sumUp(
      'D',
      figures.map((one) => one.sticks),
      'totalWhole',
    ),
    sumUp(
      'E',
      figures.map((one) => one.lumber),
      'total',
    ),
    sumUp(
      'F',
      figures.map((one) => one.length),
      styles.total,
    ),
    sumUp(
      'G',
      figures.map((one) => one.kept),
      styles.total,
    ),
  ]);
  places = pages.add([...(rowsOf.length === 0 ? [none] : rowsOf), together], [heads]);
  const row = places.at(-1) ?? 1;
  cells.lumberOnCutting = `${SHEET}!E${row}`;
  cells.boughtOnCutting = `${SHEET}!F${row}`;
}
