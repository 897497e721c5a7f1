/** A group of profiles on the cutting sheet: its boards, then profile by profile its sticks and their sums. */
import { formatFixed } from '../../core/units/format-number.ts';
import {
  plansOf,
  type CuttingGroup,
  type CutStick,
  type JobPlan,
  type ProfilePlan,
} from '../../planning/job-plan.ts';
import type { Profile } from '../../planning/job.ts';
import { shortRest } from '../../planning/short-rests.ts';
import type { Shop } from '../../planning/shop.ts';
import { quoteSheet } from '../../core/cells/cell-range.ts';
import { money, SHEET_NAMES, sumOf, total, type PlanCells } from '../plan-cells.ts';
import { count, numberIn, printExact } from '../words/print-length.ts';
import { sayMoney } from '../words/say-money.ts';
import { proofOf, sayCost, sayProof } from '../words/say-proof.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import { boardRows } from './cutting-boards.ts';
import { COLUMN, LETTER } from './cutting-columns.ts';
import { addStick, type StickFacts } from './cutting-stick.ts';
import { edgeMark, railOf, type EdgeMark } from './how-it-lies.ts';
import { spreadRow, type PagedRows, type SheetRow } from '../grammar/paged-rows.ts';

const SHEET = quoteSheet(SHEET_NAMES.cutting);
const ALL = [0, COLUMN.last] as const;

const COVE_FIRST = 'Cut the cove on the whole blanks, and crosscut them afterwards.';
const SPARE_FIRST =
  'Crosscut the set-up spare off first, for trial cuts; then cut the cove on the whole blanks, and crosscut the rest afterwards.';

/** Beside a profile whose spare stays on. */
const OTHERS_FIRST =
  'Where it is not said otherwise below, crosscut the set-up spare off first, for trial cuts. Then cut the coves on the whole blanks, and crosscut them afterwards.';

/** What is drafted, and what later rows of it, and other sheets, point to. */
export interface CuttingDraft {
  readonly draft: SheetDraft;
  readonly pages: PagedRows;
  readonly plan: JobPlan;
  readonly cells: PlanCells;
  readonly facts: StickFacts;
  /** Per profile, in the order of the plan. */
  readonly rows: ProfileRows[];
  readonly stickRows: Map<CutStick, number>;
}

/** Rows of a profile's own sums. */
export interface ProfileRows {
  readonly together: number;
  readonly lumber: number;
}

export function addGroup(cutting: CuttingDraft, group: CuttingGroup): void {
  const { pages, plan, facts } = cutting;
  const plans = plansOf(plan, group);
  pages.hold(nameRow(group.name), spreadRow(sayGroup(group, plans, plan.job.shop), 'wrapped', ALL));
  const boards = boardRows(group, facts.letters, plan.job.shop);
  if (boards.length > 0) pages.hold(spreadRow('Rip the boards first', 'label', ALL));
  for (const board of boards) pages.add([board], [continued(group.name)]);
  const longest = plans.flatMap(({ sticks }) => sticks.map(({ length }) => Number(length)));
  const scale = longest.reduce((most, length) => Math.max(most, length), 0);
  const stays = sayStays(plans, plan.job.shop);
  if (stays !== undefined) pages.hold(spreadRow(stays, 'caution', ALL));
  for (const planned of plans) {
    if (plans.length > 1 || boards.length > 0) pages.hold(nameRow(planned.profile.name, 'label'));
    const mark = edgeMark(planned.profile);
    if (mark !== undefined) pages.hold(edgeRow(planned.profile, mark));
    addProfile(cutting, planned, scale);
  }
  pages.add([{ cells: [] }]);
}

function continued(name: string): SheetRow {
  return nameRow(`${name}, continued`);
}

/** Boxes for what the shop decides once. */
function edgeRow(profile: Profile, mark: EdgeMark): SheetRow {
  const what = mark === 'deep side' ? 'Deep side' : 'Wide flat';
  const text = `${what} on the wall: upper edge or lower edge? Tick one, decide once, and lay every stick of ${profile.name} the same way. It is the edge that ran along the ${railOf(profile)} rail.`;
  return {
    cells: [
      cell(null, 'tick'),
      cell('upper edge', 'fact'),
      null,
      cell(null, 'tick'),
      cell('lower edge', 'fact'),
      cell(text, 'caution'),
    ],
    joins: [
      [COLUMN.number, COLUMN.what],
      [COLUMN.part, COLUMN.last],
    ],
  };
}

function addProfile(cutting: CuttingDraft, planned: ProfilePlan, scale: number): void {
  const { draft, pages, plan, cells, facts, rows, stickRows } = cutting;
  const { profile, sticks, money: lines } = planned;
  const index = plan.profiles.indexOf(planned);
  const again = [continued(profile.name)];
  const places = sticks.map((stick) => {
    const row = addStick(draft, pages, facts, profile, stick, scale, again);
    stickRows.set(stick, row);
    return row;
  });
  const last = draft.next - 1;
  const [together = 1, lumber = 1] = pages.add(
    [
      sumsRow(planned, facts, places[0] ?? draft.next, last),
      {
        cells: [
          null,
          cell(`Lumber of ${profile.name} (${plan.totals.currency})`, 'wrapped'),
          null,
          sum(() => cells.lumber[index] ?? '0', money(lines.lumberCents), 'money'),
        ],
        joins: [[COLUMN.number, COLUMN.what]],
      },
    ],
    again,
  );
  rows[index] = { together, lumber };
  cells.sticks[index] = `${SHEET}!H${together}`;
  cells.cuts[index] = `${SHEET}!D${together}`;
  cells.bought[index] = `${SHEET}!${LETTER.stick}${together}`;
}

/** Counts and sums of a profile's rows. */
function sumsRow(
  { sticks }: ProfilePlan,
  { shop: { unit }, styles }: StickFacts,
  first: number,
  last: number,
): SheetRow {
  const { piece, stick, kept } = LETTER;
  const lengths = sticks.flatMap(({ pieces }) => pieces.map(({ length }) => length));
  const sumUp = (column: string, values: readonly number[]) =>
    sum(sumOf(column, first, last), total(values), styles.total);
  return {
    cells: [
      cell(null, 'totalLabel'),
      cell('Cuts, with overlaps and spare', 'totalLabel'),
      null,
      sum(`COUNT(${piece}${first}:${piece}${last})`, lengths.length, 'totalWhole'),
      sumUp(
        piece,
        lengths.map((length) => numberIn(length, unit)),
      ),
      sumUp(
        stick,
        sticks.map(({ length }) => numberIn(length, unit)),
      ),
      cell('Sticks', 'totalLabel'),
      sum(`COUNT(${stick}${first}:${stick}${last})`, sticks.length, 'totalWhole'),
      cell('Offcuts kept', 'totalLabel'),
      sum(`COUNT(${kept}${first}:${kept}${last})`, keptOf(sticks).length, 'totalWhole'),
      sumUp(
        kept,
        keptOf(sticks).map(({ offcut }) => numberIn(offcut, unit)),
      ),
    ],
    joins: [[COLUMN.number, COLUMN.what]],
  };
}

/** What it costs, how near the least possible that is, how it is cut, and what is done first. */
function sayGroup(
  { answer, layouts, boardFeetBought, boardFeetUsed }: CuttingGroup,
  plans: readonly ProfilePlan[],
  shop: Shop,
): string {
  const { currency, decimalSign } = shop;
  const say = (cents: number): string => sayMoney(cents, currency, decimalSign);
  const feet = (value: number): string => formatFixed(value, 1, decimalSign);
  const proof = proofOf(answer);
  const sticks = plans.reduce((all, one) => all + one.sticks.length, 0);
  const area =
    boardFeetBought === undefined || boardFeetUsed === undefined
      ? []
      : [
          `${feet(boardFeetBought)} board feet bought or from the rack, ${feet(boardFeetUsed)} used.`,
        ];
  const isMade = plans.some(({ profile }) => profile.make !== 'buy');
  return [
    `Lumber ${sayCost(proof, say)}, least possible ${say(proof.boundCents)}: ${sayProof(proof, say, decimalSign)}.`,
    `${count(sticks, 'stick')} in ${count(layouts, 'lay-out')}.`,
    ...area,
    ...(isMade ? [sayFirst(plans, shop)] : []),
  ].join(' ');
}

function sayFirst(plans: readonly ProfilePlan[], shop: Shop): string {
  if (!shop.setUpSpare.gt(0)) return COVE_FIRST;
  const made = plans.filter(({ profile }) => profile.make !== 'buy');
  const short = made.filter((planned) => shortRest(planned, shop) !== undefined);
  if (short.length === 0) return SPARE_FIRST;
  return short.length === made.length ? COVE_FIRST : OTHERS_FIRST;
}

/** A spare that would leave too short a blank behind stays on its stick. */
function sayStays(plans: readonly ProfilePlan[], shop: Shop): string | undefined {
  const short = plans.filter((planned) => shortRest(planned, shop) !== undefined);
  if (short.length === 0) return undefined;
  const names = short.map(({ profile }) => profile.name).join(', ');
  return `Don't crosscut the set-up spare of ${names} off first: the rest would be a shorter blank than this shop's least of ${printExact(shop.leastBlankLength, shop)}. Make trial cuts in other scrap, and cut the cove on the whole stick, spare and all.`;
}

export function keptOf(sticks: readonly CutStick[]): readonly CutStick[] {
  return sticks.filter((stick) => stick.offcutKept);
}

/** Longer names take more than a line, in smaller letters. */
const LONG = 60;

/** A name as a heading over all columns; `label` is the lesser one. */
export function nameRow(name: string, rank: 'section' | 'label' = 'section'): SheetRow {
  const isLong = Array.from(name).length > LONG;
  const style = rank === 'label' ? 'fact' : isLong ? 'stick' : 'section';
  return spreadRow(name, style, [0, COLUMN.last]);
}
