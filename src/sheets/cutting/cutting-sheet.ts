/** The cutting sheet: what is ripped, then every stick with its pieces in the order they are cut. */
import {
  plansOf,
  type CuttingGroup,
  type CutStick,
  type JobPlan,
  type ProfilePlan,
} from '../../planning/job-plan.ts';
import type { Shop } from '../../planning/shop.ts';
import { quoteSheet } from '../cell-range.ts';
import { addBoards, sayUnused } from './cutting-boards.ts';
import { addStick } from './cutting-stick.ts';
import type { SheetDescription } from '../description.ts';
import { money, SHEET_NAMES, sumOf, total, type PlanCells } from '../plan-cells.ts';
import { formatMark } from '../../core/units/format-mark.ts';
import { count, numberIn, printExact } from '../print-length.ts';
import { sayMoney } from '../say-money.ts';
import { proofOf, sayCost, sayProof } from '../say-proof.ts';
import { cell, sum, SheetDraft } from '../sheet-draft.ts';

const COLUMNS = [6, 36, 13, 10, 16, 17, 15, 17, 15, 7, 11, 11].map((width) => ({ width }));

const SHEET = quoteSheet(SHEET_NAMES.cutting);
/** Kept offcuts named on one row of the list. */
const OFFCUTS_A_ROW = 12;

const COVE_FIRST = 'Cut the cove on the whole blanks, and crosscut them afterwards.';
const SPARE_FIRST =
  'Crosscut the set-up spare off first, for trial cuts; then cut the cove on the whole blanks, and crosscut the rest afterwards.';

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
  const rows: ProfileRows[] = [];
  for (const group of plan.groups) addGroup(draft, plan, group, cells, rows);
  addSummary(draft, plan, cells, rows);
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

/** Rows of a profile's own sums. */
interface ProfileRows {
  readonly together: number;
  readonly lumber: number;
}

/** A group's cost and boards, then its profiles; the rows of a profile's sums are put at its place in the plan. */
function addGroup(
  draft: SheetDraft,
  plan: JobPlan,
  group: CuttingGroup,
  cells: PlanCells,
  rows: ProfileRows[],
): void {
  const { shop } = plan.job;
  const plans = plansOf(plan, group);
  draft.spread(group.name, 'section');
  draft.spread(sayGroup(group, plans, shop), 'wrapped');
  addBoards(draft, group, shop.unit, COLUMNS.length - 1);
  for (const planned of plans) {
    const index = plan.profiles.indexOf(planned);
    if (plans.length > 1) draft.spread(planned.profile.name, 'label');
    rows[index] = addProfile(draft, plan, planned, index, cells);
  }
  addKept(draft, group, plans, shop);
  draft.blank();
}

function addProfile(
  draft: SheetDraft,
  plan: JobPlan,
  { profile, sticks, money: lines }: ProfilePlan,
  index: number,
  cells: PlanCells,
): ProfileRows {
  const { unit } = plan.job.shop;
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
  return { together, lumber };
}

/** What it costs, how near the least possible that is, how it is cut, and what is done first. */
function sayGroup(
  { answer, layouts, boardFeetBought, boardFeetUsed }: CuttingGroup,
  plans: readonly ProfilePlan[],
  { currency, decimalSign, setUpSpare }: Shop,
): string {
  const say = (cents: number): string => sayMoney(cents, currency, decimalSign);
  const feet = (value: number): string => value.toFixed(1).replace('.', decimalSign);
  const proof = proofOf(answer);
  const sticks = plans.reduce((sum, one) => sum + one.sticks.length, 0);
  const area =
    boardFeetBought === undefined || boardFeetUsed === undefined
      ? []
      : [
          `${feet(boardFeetBought)} board feet bought or from the rack, ${feet(boardFeetUsed)} used.`,
        ];
  const isMade = plans.some(({ profile }) => profile.make !== 'buy');
  return [
    `Lumber ${sayCost(proof, say)}, least possible ${say(proof.boundCents)}: ${sayProof(proof, say)}.`,
    `${count(sticks, 'stick')} in ${count(layouts, 'lay-out')}.`,
    ...area,
    ...(isMade ? [setUpSpare.gt(0) ? SPARE_FIRST : COVE_FIRST] : []),
  ].join(' ');
}

/** Offcuts of sticks, and blanks that nothing was cut from. */
function addKept(
  draft: SheetDraft,
  group: CuttingGroup,
  plans: readonly ProfilePlan[],
  { unit, offcutCredit }: Shop,
): void {
  const kept = plans.flatMap(({ sticks }) => keptOf(sticks));
  const credited = offcutCredit > 0 ? ' (kept, but not credited)' : '';
  const list = [
    ...sayUnused(group, unit).map((text) => `${text}${credited}`),
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

/** A row a profile, each taken over from its own sums, and what they come to. */
function addSummary(
  draft: SheetDraft,
  plan: JobPlan,
  cells: PlanCells,
  rows: readonly ProfileRows[],
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
    const { together, lumber } = rows[index] ?? { together: 1, lumber: 1 };
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
  if (rows.length === 0) draft.add(null, cell('Nothing is left to cut.', 'row'));
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
