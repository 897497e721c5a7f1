/** A group of profiles on the cutting sheet: its boards, then profile by profile its lay-outs. */
import {
  plansOf,
  type CuttingGroup,
  type JobPlan,
  type ProfilePlan,
} from '../../planning/job-plan.ts';
import { boardLengthOf } from '../../planning/clear-stretches.ts';
import { listCutStock } from '../../planning/cut/cut-stock.ts';
import type { Profile } from '../../planning/job.ts';
import { spreadRow, type PagedRows } from '../grammar/paged-rows.ts';
import { cell, type SheetDraft, type SheetRow } from '../grammar/sheet-draft.ts';
import type { PlanAnchors } from '../plan-anchors.ts';
import type { LengthStyles } from '../grammar/length-styles.ts';
import type { CuttingAnchors } from './cutting-anchors.ts';
import { boardRows, listRippings } from './cutting-boards.ts';
import { ALL, CHOICE, HALVES } from './cutting-columns.ts';
import { sayEdgeChoice, sayGroup, sayGroupCost, sayHowCut, sayStays } from './cutting-words.ts';
import { edgeMark, type EdgeMark } from './how-it-lies.ts';
import type { LayOut } from './lay-outs.ts';
import { addLayOuts } from './lay-out-rows.ts';
import type { LayOutFacts } from './half-band.ts';

/** What is drafted, and what later rows of it, and other sheets, point to. */
export interface CuttingDraft {
  readonly draft: SheetDraft;
  readonly pages: PagedRows;
  readonly plan: JobPlan;
  readonly acrossSheets: PlanAnchors;
  readonly onThisSheet: CuttingAnchors;
  readonly layOuts: ReadonlyMap<ProfilePlan, readonly LayOut[]>;
  /** Of sums of lengths. */
  readonly styles: LengthStyles;
  readonly facts: LayOutFacts;
}

/** Air below a group. */
const AFTER_POINTS = 7.5;

export function addGroup(cutting: CuttingDraft, group: CuttingGroup): void {
  const { pages, plan, facts } = cutting;
  const plans = plansOf(plan, group);
  const layOuts = plans.reduce((all, one) => all + layOutsOf(cutting, one).length, 0);
  const [only, ...others] = plans;
  const isOne = only !== undefined && others.length === 0;
  const lies = isOne ? [sayHowCut(only.profile)] : [];
  const said = [sayGroup(group, plans, layOuts, plan.job.shop), ...lies].join(' ');
  const row = spreadRow(said, 'wrapped', ALL);
  const onScreen = HALVES.loose({
    offA: cell(sayGroupCost(group, plan.job.shop), 'quietLabel'),
  }).cells.slice(row.cells.length);
  pages.hold(nameRow(group.name), { ...row, cells: [...row.cells, ...onScreen] });
  const { letters, shop } = facts;
  const boards = boardRows(listRippings(group, listCutStock(plans), letters, shop));
  if (boards.length > 0) pages.hold(spreadRow('Rip the boards first', 'label', ALL));
  for (const board of boards) pages.add([board], [continued(group.name)]);
  const longest = plans.flatMap(({ sticks }) =>
    sticks.map(({ item }) => Number(boardLengthOf(item))),
  );
  const scale = longest.reduce((most, length) => Math.max(most, length), 0);
  const stays = sayStays(plans, plan.job.shop);
  if (stays !== undefined) pages.hold(spreadRow(stays, 'caution', ALL));
  for (const planned of plans) {
    if (!isOne) pages.hold(nameRow(planned.profile.name, 'label'));
    const mark = edgeMark(planned.profile);
    if (mark !== undefined) pages.hold(edgeRow(planned.profile, mark));
    if (!isOne) pages.hold(spreadRow(sayHowCut(planned.profile), 'wrapped', ALL));
    addProfile(cutting, planned, scale);
  }
  pages.add([{ cells: [], points: AFTER_POINTS }]);
}

function continued(name: string): SheetRow {
  return nameRow(`${name}, continued`);
}

/** Boxes for what the shop decides once. */
function edgeRow(profile: Profile, mark: EdgeMark): SheetRow {
  return CHOICE.row({
    tickUpper: cell(null, 'tick'),
    upper: cell('upper edge', 'fact'),
    tickLower: cell(null, 'tick'),
    lower: cell('lower edge', 'fact'),
    words: cell(sayEdgeChoice(profile, mark), 'caution'),
  });
}

function addProfile(cutting: CuttingDraft, planned: ProfilePlan, scale: number): void {
  const { draft, pages, onThisSheet, facts } = cutting;
  const { profile } = planned;
  // What is held for it comes before its first stick.
  const first = draft.next;
  const own = layOutsOf(cutting, planned);
  addLayOuts(draft, pages, facts, profile, own, scale, [continued(profile.name)]);
  onThisSheet.place('layOuts', [first, Math.max(first, draft.next - 1)], planned);
}

function layOutsOf({ layOuts }: CuttingDraft, planned: ProfilePlan): readonly LayOut[] {
  return layOuts.get(planned) ?? [];
}

/** Longer names take more than a line, in smaller letters. */
const LONG = 60;

/** A name as a heading over all columns; `label` is the lesser one. */
export function nameRow(name: string, rank: 'section' | 'label' = 'section'): SheetRow {
  const isLong = Array.from(name).length > LONG;
  const style = rank === 'label' ? 'fact' : isLong ? 'stick' : 'section';
  return spreadRow(name, style, ALL);
}
