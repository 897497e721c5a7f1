/** A group of profiles on the cutting sheet: its boards, then profile by profile its sticks and their sums. */
import type { ExactInches } from '../../core/units/length.ts';
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
import type { ColumnName } from '../grammar/columns.ts';
import { money, total } from '../grammar/figures.ts';
import { spreadRow, type PagedRows } from '../grammar/paged-rows.ts';
import {
  cell,
  sum,
  type DraftCell,
  type SheetDraft,
  type SheetRow,
} from '../grammar/sheet-draft.ts';
import { onSheet, type PlanAnchors } from '../plan-anchors.ts';
import { count, numberIn, printExact } from '../words/print-length.ts';
import { sayMoney } from '../words/say-money.ts';
import { proofOf, sayCost, sayProof } from '../words/say-proof.ts';
import type { CuttingAnchors } from './cutting-anchors.ts';
import { boardRows } from './cutting-boards.ts';
import { ALL, CHOICE, COST, PIECES, STICKS, SUMS } from './cutting-columns.ts';
import { addStick, type StickFacts } from './cutting-stick.ts';
import { edgeMark, railOf, type EdgeMark } from './how-it-lies.ts';

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
  readonly acrossSheets: PlanAnchors;
  readonly onThisSheet: CuttingAnchors;
  readonly facts: StickFacts;
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
  return CHOICE.row({
    tickUpper: cell(null, 'tick'),
    upper: cell('upper edge', 'fact'),
    tickLower: cell(null, 'tick'),
    lower: cell('lower edge', 'fact'),
    words: cell(text, 'caution'),
  });
}

function addProfile(cutting: CuttingDraft, planned: ProfilePlan, scale: number): void {
  const { draft, pages, plan, acrossSheets, onThisSheet, facts } = cutting;
  const { profile, sticks, money: lines } = planned;
  const again = [continued(profile.name)];
  const places = sticks.map((stick) => {
    const row = addStick(draft, pages, facts, profile, stick, scale, again);
    if (stick.offcutKept) onThisSheet.place('kept', STICKS.at('kept', row), stick);
    return row;
  });
  const lumber = money(lines.lumberCents);
  const cost = COST.row({
    label: cell(`Lumber of ${profile.name} (${plan.totals.currency})`, 'wrapped'),
    lumber: sum(() => acrossSheets.at('lumberOnProduction', planned), lumber, 'money'),
  });
  const last = draft.next - 1;
  const sums = sumsRow(planned, facts, places[0] ?? draft.next, last);
  const [sumsAt, costAt] = pages.addBoth(sums, cost, again);
  const at = (column: ColumnName<typeof SUMS>): string => SUMS.at(column, sumsAt);
  onThisSheet.place('sticks', at('sticks'), planned);
  onThisSheet.place('lumber', COST.at('lumber', costAt), planned);
  onThisSheet.place('stickLength', at('stickLength'), planned);
  onThisSheet.place('keptLength', at('keptLength'), planned);
  acrossSheets.place('sticksOnCutting', onSheet('cutting', at('sticks')), planned);
  acrossSheets.place('cutsOnCutting', onSheet('cutting', at('cuts')), planned);
  acrossSheets.place('lengthOnCutting', onSheet('cutting', at('stickLength')), planned);
}

/** Counts and sums of a profile's rows. */
function sumsRow(
  { sticks }: ProfilePlan,
  { shop: { unit }, styles }: StickFacts,
  first: number,
  last: number,
): SheetRow {
  const pieces = sticks.flatMap((stick) => stick.pieces);
  const kept = keptOf(sticks);
  const label = (text: string | null): DraftCell => cell(text, 'totalLabel');
  const counted = (range: string, of: readonly unknown[]): DraftCell =>
    sum(`COUNT(${range})`, of.length, 'totalWhole');
  const added = (formula: string, lengths: readonly ExactInches[]): DraftCell =>
    sum(formula, total(lengths.map((length) => numberIn(length, unit))), styles.total);
  return SUMS.row({
    tick: label(null),
    label: label('Cuts, with overlaps and spare'),
    cuts: counted(PIECES.range('length', first, last), pieces),
    pieceLength: added(
      PIECES.sum('length', first, last),
      pieces.map(({ length }) => length),
    ),
    stickLength: added(
      STICKS.sum('length', first, last),
      sticks.map(({ length }) => length),
    ),
    sticksLabel: label('Sticks'),
    sticks: counted(STICKS.range('length', first, last), sticks),
    keptLabel: label('Offcuts kept'),
    kept: counted(STICKS.range('kept', first, last), kept),
    keptLength: added(
      STICKS.sum('kept', first, last),
      kept.map(({ offcut }) => offcut),
    ),
  });
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
  return spreadRow(name, style, ALL);
}
