/** A group of profiles on the cutting sheet: its boards, then profile by profile its sticks and their sums. */
import Fraction from 'fraction.js';
import type { ExactInches } from '../../core/units/length.ts';
import {
  plansOf,
  type CuttingGroup,
  type CutPiece,
  type JobPlan,
  type ProfilePlan,
} from '../../planning/job-plan.ts';
import { boardLengthOf } from '../../planning/clear-stretches.ts';
import { listCutStock } from '../../planning/cut/cut-stock.ts';
import type { Profile } from '../../planning/job.ts';
import type { ColumnName } from '../grammar/columns.ts';
import { total } from '../grammar/figures.ts';
import { spreadRow, type PagedRows } from '../grammar/paged-rows.ts';
import {
  cell,
  sum,
  type DraftCell,
  type SheetDraft,
  type SheetRow,
} from '../grammar/sheet-draft.ts';
import { countCut } from '../cut-so-far.ts';
import { keptOf } from '../kept-offcuts.ts';
import { onSheet, type PlanAnchors } from '../plan-anchors.ts';
import { OFF_DECIMALS } from '../tolerance.ts';
import { numberIn } from '../words/print-length.ts';
import type { CuttingAnchors } from './cutting-anchors.ts';
import { boardRows, listRippings } from './cutting-boards.ts';
import { ALL, CHOICE, CUT_SO_FAR, PIECES, STICKS, SUMS } from './cutting-columns.ts';
import { addStick, type StickFacts } from './cutting-stick.ts';
import { sayEdgeChoice, sayGroup, sayStays } from './cutting-words.ts';
import { edgeMark, type EdgeMark } from './how-it-lies.ts';

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
  return CHOICE.row({
    tickUpper: cell(null, 'tick'),
    upper: cell('upper edge', 'fact'),
    tickLower: cell(null, 'tick'),
    lower: cell('lower edge', 'fact'),
    words: cell(sayEdgeChoice(profile, mark), 'caution'),
  });
}

function addProfile(cutting: CuttingDraft, planned: ProfilePlan, scale: number): void {
  const { draft, pages, acrossSheets, onThisSheet, facts } = cutting;
  const { profile, sticks } = planned;
  const again = [continued(profile.name)];
  const places = sticks.map((stick) => {
    const { row, cuts } = addStick(draft, pages, facts, profile, stick, scale, again);
    cuts.forEach((cut, at) => noteCut(facts, stick.pieces[at], cut));
    if (stick.offcutKept) onThisSheet.place('kept', STICKS.at('kept', row), stick);
    return row;
  });
  const [first, last] = [places[0] ?? draft.next, draft.next - 1];
  // A stick's own row alone has a number where its length is, and one where it says what is cut of it.
  const lengths = STICKS.range('length', first, last);
  const cutSoFar = STICKS.range('cutSoFar', first, last);
  const cutSoFarRow = CUT_SO_FAR.sparseRow({
    sticksCutLabel: cell('Cut or begun', 'wrapped'),
    sticksCut: sum(
      `COUNTIFS(${lengths},">0",${cutSoFar},">0")`,
      sticks.filter(({ isCut }) => isCut).length,
      'whole',
    ),
    lengthsCutLabel: cell('Lengths cut', 'wrapped'),
    lengthsCut: sum(`SUMIF(${lengths},">0",${cutSoFar})`, total(sticks.map(countCut)), 'whole'),
  });
  const sums = sumsRow(planned, cutting, first, last);
  const [sumsAt, cutAt] = pages.addBoth(sums, cutSoFarRow, again);
  const at = (column: ColumnName<typeof SUMS>): string => SUMS.at(column, sumsAt);
  onThisSheet.place('sticks', at('sticks'), planned);
  onThisSheet.place('stickLength', at('stickLength'), planned);
  onThisSheet.place('keptLength', at('keptLength'), planned);
  onThisSheet.place('lengthsOff', at('off'), planned);
  onThisSheet.place('sticksCut', CUT_SO_FAR.at('sticksCut', cutAt), planned);
  onThisSheet.place('lengthsCut', CUT_SO_FAR.at('lengthsCut', cutAt), planned);
  acrossSheets.place('sticksOnCutting', onSheet('cutting', at('sticks')), planned);
  acrossSheets.place('cutsOnCutting', onSheet('cutting', at('cuts')), planned);
  acrossSheets.place('lengthOnCutting', onSheet('cutting', at('stickLength')), planned);
}

/** Where a piece, or a part of it, has its length. */
function noteCut({ cutAt }: StickFacts, cut: CutPiece | undefined, row: number): void {
  if (cut?.piece === undefined) return;
  const cells = cutAt.get(cut.id) ?? [];
  cutAt.set(cut.id, cells);
  cells.push(onSheet('cutting', PIECES.fixed('length', row)));
}

/**
 * Counts and sums of a profile's rows; and what its pieces' lengths are off from those on Pieces, once
 * overlaps and spares are taken off.
 */
function sumsRow(
  planned: ProfilePlan,
  { facts: { shop, styles }, acrossSheets }: CuttingDraft,
  first: number,
  last: number,
): SheetRow {
  const { sticks, tally } = planned;
  const { unit } = shop;
  const pieces = sticks.flatMap((stick) => stick.pieces);
  const kept = keptOf(sticks);
  const cut = pieces.reduce((all, { length }) => all.add(length), new Fraction(0));
  // Overlaps and spares are cut, but are no piece's.
  const more = numberIn(cut.sub(tally.lengthNet), unit);
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
    off: sum(
      () => {
        const net = acrossSheets.at('netLengthOnProduction', planned);
        return `ROUND(${PIECES.sum('length', first, last)}-${more}-${net},${OFF_DECIMALS})`;
      },
      0,
      'totalOff',
    ),
  });
}

/** Longer names take more than a line, in smaller letters. */
const LONG = 60;

/** A name as a heading over all columns; `label` is the lesser one. */
export function nameRow(name: string, rank: 'section' | 'label' = 'section'): SheetRow {
  const isLong = Array.from(name).length > LONG;
  const style = rank === 'label' ? 'fact' : isLong ? 'stick' : 'section';
  return spreadRow(name, style, ALL);
}
