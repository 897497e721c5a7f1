/** The cutting sheet: every stick with its pieces in the order they are cut, profile by profile. */
import type { CutStick, JobPlan, ProfilePlan, StockUse } from '../planning/job-plan.ts';
import { quoteSheet } from './cell-range.ts';
import { addStick } from './cutting-stick.ts';
import type { SheetDescription } from './description.ts';
import { money, SHEET_NAMES, sumOf, total, type PlanCells } from './plan-cells.ts';
import { formatMark } from '../core/units/format-mark.ts';
import { count, numberIn, printExact, printTotal } from './print-length.ts';
import { cell, sum, SheetDraft } from './sheet-draft.ts';

const COLUMNS = [6, 36, 13, 10, 16, 17, 15, 17, 15, 7, 11, 11].map((width) => ({ width }));

const SHEET = quoteSheet(SHEET_NAMES.cutting);
/** Kept offcuts named on one row of the list. */
const OFFCUTS_A_ROW = 12;

export function draftCutting(
  plan: JobPlan,
  cells: PlanCells,
): { readonly finish: () => SheetDescription } {
  const { shop } = plan.job;
  const draft = new SheetDraft(SHEET_NAMES.cutting, COLUMNS);
  draft.spread('Cutting', 'title');
  draft.spread(
    `Each stick loses ${printExact(shop.endTrim, shop.unit)} at either end first; ${printExact(shop.crosscutKerf, shop.unit)} goes with each cut. Pieces stand in the order they are cut, short ones first while the stick is long: never hold a short piece by hand. Left and right are as you face the molding on its wall.`,
    'subtitle',
  );
  draft.blank();
  const heads = draft.add(
    cell('Cut', 'heading'),
    cell('Piece', 'heading'),
    cell('Length', 'headingRight'),
    cell(`(${shop.unit})`, 'headingRight'),
    cell('Part', 'heading'),
    cell('Left end', 'heading'),
    cell('measured to', 'heading'),
    cell('Right end', 'heading'),
    cell('measured to', 'heading'),
    cell('Cut?', 'heading'),
    cell(`Stick (${shop.unit})`, 'headingRight'),
    cell(`Offcut kept (${shop.unit})`, 'headingRight'),
  );
  const groups = plan.profiles.map((one, index) => addGroup(draft, plan, one, index, cells));
  addSummary(draft, plan, cells, groups);
  return {
    finish: () =>
      draft.finish(
        {
          paper: shop.paper,
          orientation: 'landscape',
          titleRows: [heads, heads],
          footer: 'Cutting',
        },
        { rows: heads, columns: 0 },
      ),
  };
}

/** Rows of a group's own sums. */
interface GroupRows {
  readonly together: number;
  readonly lumber: number;
}

function addGroup(
  draft: SheetDraft,
  plan: JobPlan,
  planned: ProfilePlan,
  index: number,
  cells: PlanCells,
): GroupRows {
  const { profile, sticks, money: lines } = planned;
  const { unit } = plan.job.shop;
  draft.spread(profile.name, 'section');
  draft.spread(sayGroup(planned, plan.totals.currency), 'wrapped');
  const first = draft.next;
  const parts = countParts(sticks);
  for (const stick of sticks) addStick(draft, plan, profile, stick, parts);
  const last = draft.next - 1;
  const cut = sticks.flatMap((stick) => stick.pieces.map(({ length }) => numberIn(length, unit)));
  const kept = keptOf(sticks);
  const together = draft.add(
    cell(null, 'totalLabel'),
    cell('Cuts, with overlaps and spare', 'totalLabel'),
    sum(`COUNT(D${first}:D${last})`, cut.length, 'totalWhole'),
    sum(sumOf('D', first, last), total(cut), 'totalNumber'),
    ...['E', 'F', 'G', 'H'].map(() => cell(null, 'totalLabel')),
    cell('Sticks', 'totalLabel'),
    sum(`COUNT(K${first}:K${last})`, sticks.length, 'totalWhole'),
    sum(
      sumOf('K', first, last),
      total(sticks.map((stick) => numberIn(stick.length, unit))),
      'totalNumber',
    ),
    sum(
      sumOf('L', first, last),
      total(kept.map((stick) => numberIn(stick.offcut, unit))),
      'totalNumber',
    ),
  );
  cells.sticks[index] = `${SHEET}!J${together}`;
  const lumber = draft.add(
    null,
    cell(`Lumber of ${profile.name} (${plan.totals.currency})`, 'wrapped'),
    null,
    sum(() => cells.lumber[index] ?? '0', money(lines.lumberCents), 'money'),
  );
  addKept(draft, kept, planned.stockUse, plan);
  draft.blank();
  return { together, lumber };
}

function sayGroup({ profile, answer, sticks }: ProfilePlan, currency: string): string {
  const whole =
    profile.make === 'buy'
      ? ''
      : ' Crosscut the set-up spare off first, for trial cuts; then cut the cove on the whole blanks, and crosscut the rest afterwards.';
  return `${count(sticks.length, 'stick')}: ${sayStatus(answer.status, answer.plan.costCents, answer.bound.costCents, currency)}.${whole}`;
}

/** How good the plan is, in words; the share is rounded up, so that it never says too little. */
export function sayStatus(
  status: 'proven' | 'gap' | 'unfinished',
  costCents: number,
  boundCents: number,
  currency: string,
): string {
  const sayMoney = (cents: number): string => `${currency} ${money(cents).toFixed(2)}`;
  const figures = `lumber ${sayMoney(costCents)}, least possible cost proven ${sayMoney(boundCents)}`;
  if (status === 'proven') return `${figures}, proven least cost`;
  if (status === 'unfinished') return `${figures}, bound not finished`;
  if (boundCents <= 0) return `${figures}, how far from the least possible is not known`;
  const share = Math.ceil((costCents / boundCents - 1) * 1000 - 1e-9) / 10;
  return `${figures}, within ${share} % of the least possible`;
}

function addKept(
  draft: SheetDraft,
  kept: readonly CutStick[],
  stockUse: readonly StockUse[],
  plan: JobPlan,
): void {
  const { unit } = plan.job.shop;
  const whole = stockUse
    .filter((use) => use.unusedBlanks > 0)
    .map(({ item, unusedBlanks }) => {
      const blanks = count(unusedBlanks, 'whole blank');
      return `${blanks} of ${item.for}, ${printTotal(item.length, unit)}`;
    });
  const list = [
    ...whole,
    ...kept.map((stick) => `${formatMark(Number(stick.offcut), unit)} of ${stick.id}`),
  ];
  for (let from = 0; from === 0 || from < list.length; from += OFFCUTS_A_ROW) {
    const some = list.slice(from, from + OFFCUTS_A_ROW);
    const label = from === 0 ? 'Offcuts to keep' : null;
    const text = some.length === 0 ? 'none' : some.join('; ');
    const row = draft.add(null, cell(label, 'wrapped'), cell(text, 'wrapped'));
    draft.merge(row, 2, COLUMNS.length - 1);
  }
}

/** A row a profile, each taken over from its group, and their sums. */
function addSummary(
  draft: SheetDraft,
  plan: JobPlan,
  cells: PlanCells,
  groups: readonly GroupRows[],
): void {
  const { unit } = plan.job.shop;
  draft.spread('All profiles', 'section');
  draft.add(
    cell(null, 'heading'),
    cell('Profile', 'heading'),
    cell('Sticks', 'headingRight'),
    cell(`Lumber (${plan.totals.currency})`, 'headingRight'),
    cell(`Length of sticks (${unit})`, 'headingRight'),
    cell(`Offcuts kept (${unit})`, 'headingRight'),
  );
  const first = draft.next;
  const figures = plan.profiles.map(({ sticks, money: lines }) => ({
    sticks: sticks.length,
    lumber: money(lines.lumberCents),
    length: total(sticks.map((stick) => numberIn(stick.length, unit))),
    kept: total(keptOf(sticks).map((stick) => numberIn(stick.offcut, unit))),
  }));
  plan.profiles.forEach(({ profile }, index) => {
    const { together, lumber } = groups[index] ?? { together: 1, lumber: 1 };
    const figure = figures[index];
    if (figure === undefined) return;
    draft.add(
      null,
      cell(profile.name, 'row'),
      sum(`J${together}`, figure.sticks, 'rowWhole'),
      sum(`D${lumber}`, figure.lumber, 'rowDecimal'),
      sum(`K${together}`, figure.length, 'rowNumber'),
      sum(`L${together}`, figure.kept, 'rowNumber'),
    );
  });
  if (groups.length === 0) draft.add(null, cell('Nothing is left to cut.', 'row'));
  const last = draft.next - 1;
  const row = draft.add(
    cell(null, 'totalLabel'),
    cell('Together', 'totalLabel'),
    sum(sumOf('C', first, last), total(figures.map((one) => one.sticks)), 'totalWhole'),
    sum(sumOf('D', first, last), total(figures.map((one) => one.lumber)), 'total'),
    sum(sumOf('E', first, last), total(figures.map((one) => one.length)), 'totalNumber'),
    sum(sumOf('F', first, last), total(figures.map((one) => one.kept)), 'totalNumber'),
  );
  cells.lumberOnCutting = `${SHEET}!D${row}`;
  cells.boughtOnCutting = `${SHEET}!E${row}`;
}

function keptOf(sticks: readonly CutStick[]): readonly CutStick[] {
  return sticks.filter((stick) => stick.offcutKept);
}

/** Into how many parts each spliced piece is cut. */
function countParts(sticks: readonly CutStick[]): ReadonlyMap<string, number> {
  const parts = new Map<string, number>();
  for (const { pieces } of sticks) {
    for (const { id, part } of pieces) {
      if (part !== undefined) parts.set(id, (parts.get(id) ?? 0) + 1);
    }
  }
  return parts;
}
