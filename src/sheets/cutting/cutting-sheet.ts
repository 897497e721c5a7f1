/** The cutting sheet: what is pulled, stopped at and ripped, then every lay-out with the sticks that are cut like it. */
import { sayFault } from '../../core/faults/fault.ts';
import type { ExactInches } from '../../core/units/length.ts';
import { listJoints } from '../../planning/joints.ts';
import { cellName } from '../../core/cells/cell-range.ts';
import type { CutPiece, JobPlan } from '../../planning/job-plan.ts';
import { Anchors } from '../grammar/anchors.ts';
import type { SheetDescription } from '../grammar/description.ts';
import { lengthStyles } from '../grammar/length-styles.ts';
import { roomForRows } from '../grammar/page-size.ts';
import { SHEET_NAMES, type PlanAnchors } from '../plan-anchors.ts';
import { sum, SheetDraft, type SheetRow } from '../grammar/sheet-draft.ts';
import { markVerdict, verdictRow } from '../agreement.ts';
import { countLengths } from '../cut-so-far.ts';
import { pieceNumbers } from '../numbered-pieces.ts';
import { numberIn } from '../words/print-length.ts';
import { CROSSCUT_CAUTION, JUDGMENT_CAUTION } from '../words/standing-cautions.ts';
import { cutSticksFormula, sayCutSticks } from '../words/tick-marks.ts';
import {
  ALL,
  BOTH,
  GRID,
  HALVES,
  PRINTED_COLUMNS,
  PRINTED_GRID,
  STICKS_A_HALF,
} from './cutting-columns.ts';
import type { CuttingAnchors } from './cutting-anchors.ts';
import { addGroup, type CuttingDraft } from './cutting-group.ts';
import { BARS, HOW_IT_LIES, ON_BOARDS, sayHow, sayMostBars } from './cutting-words.ts';
import { addSummary } from './cutting-summary.ts';
import { addOffcuts } from './offcut-list.ts';
import { PagedRows, spreadRow } from '../grammar/paged-rows.ts';
import { listLayOuts } from './lay-outs.ts';
import { addPickList } from './pick-list.ts';
import { addStops } from './stop-blocks.ts';
import { lettersOf, listLots } from '../stock-lots.ts';

/**
 * As many pictures as a workbook still opens and prints with in reasonable time. Measured: LibreOffice
 * takes 7 ms of work to open one and 30 to print it, and more than half a megabyte of memory; 5,000
 * took it 3.5 GB, and it had not printed them after 15 minutes.
 */
const MOST_BARS = 2_000;

/** Lengths, whose count has room in large letters at the right of the first line. */
const MOST_IN_LARGE = 1_000;

export function draftCutting(
  plan: JobPlan,
  acrossSheets: PlanAnchors,
): { readonly finish: () => SheetDescription } {
  const { shop } = plan.job;
  const sticks = plan.profiles.flatMap((one) => one.sticks);
  const draft = new SheetDraft(SHEET_NAMES.cutting, GRID, true, PRINTED_COLUMNS);
  const pages = new PagedRows(draft, GRID, roomForRows(shop.paper, PRINTED_GRID, 'landscape'));
  const onBoards = sticks.some(({ item }) => item.stretch !== undefined) ? ON_BOARDS : '';
  const pieces = plan.profiles.flatMap((one) => one.sticks.flatMap((stick) => stick.pieces));
  const onThisSheet: CuttingAnchors = new Anchors(SHEET_NAMES.cutting);
  const reading = { shop, joints: listJoints(plan), numbers: pieceNumbers(plan) };
  const layOuts = new Map(
    plan.profiles.map((planned) => {
      const { profile, sticks: own } = planned;
      return [planned, listLayOuts(own, profile, reading, STICKS_A_HALF)] as const;
    }),
  );
  const bars = [...layOuts.values()].reduce((all, own) => all + own.length, 0);
  const verdict = verdictRow(
    () => acrossSheets.at('verdictOnProduction'),
    [0, HALVES.end('gap')],
    cutSoFar(plan, onThisSheet),
  );
  const [, verdictAt = 1] = pages.add([
    spreadRow(SHEET_NAMES.cutting, 'title', ALL),
    verdict,
    spreadRow(sayHow(shop), 'note', ALL),
  ]);
  markVerdict(draft, verdictAt, 0);
  const heads = pages.addRepeated(HALVES.headings(shop));
  pages.add([
    spreadRow(CROSSCUT_CAUTION, 'caution', ALL),
    spreadRow(JUDGMENT_CAUTION, 'caution', ALL),
    spreadRow(HOW_IT_LIES, 'note', ALL),
    spreadRow(`${BARS}${onBoards}${sayMostBars(bars, MOST_BARS)}`, 'note', ALL),
    { cells: [] },
  ]);
  for (const one of plan.cautions.filter(({ code }) => code === 'job.cut-have-changed')) {
    pages.hold(spreadRow(sayFault(one), 'caution', ALL));
  }
  const lots = listLots(plan);
  addPickList(pages, lots, shop, acrossSheets);
  addStops(pages, plan, onThisSheet);
  const lengths = sticks.flatMap(({ length, offcut, pieces }) => [
    length,
    offcut,
    ...pieces.map((piece) => piece.length),
  ]);
  const cutting: CuttingDraft = {
    draft,
    pages,
    plan,
    acrossSheets,
    onThisSheet,
    layOuts,
    styles: lengthStyles(lengths, shop.unit),
    facts: {
      ...reading,
      letters: lettersOf(lots),
      cutAt: new Map(),
      onThisSheet,
      offOnPieces: (number) => {
        const [numbers, off] = [acrossSheets.at('numbersOnPieces'), acrossSheets.at('offOnPieces')];
        // Its own place first, which is quick; a list that was sorted is searched.
        return `IF(INDEX(${numbers},${number})=${number},INDEX(${off},${number}),SUMIF(${numbers},${number},${off}))`;
      },
      bars: MOST_BARS,
    },
  };
  for (const group of plan.groups) addGroup(cutting, group);
  const lastOfLayOuts = draft.next - 1;
  placePieces(cutting, pieces);
  addOffcuts(cutting);
  addSummary(cutting);
  for (const { table, first } of BOTH) {
    const isOff = table.inColumn('off', heads + 1);
    const from = cellName(heads, first);
    draft.highlight(
      `${from}:${table.at('stick2', lastOfLayOuts)}`,
      `AND(ISNUMBER(${isOff}),${isOff}<>0)`,
      'caution',
    );
  }
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

/** How many sticks and lengths are cut, by their ticks; at the right of the first line. */
function cutSoFar(plan: JobPlan, onThisSheet: CuttingAnchors): SheetRow {
  const { totals } = plan;
  const { cut, all } = countLengths(plan);
  const rest = ` of ${all} lengths`;
  const formula = (): string => {
    const sticks = cutSticksFormula(onThisSheet.at('allSticksCut'), onThisSheet.at('allSticks'));
    return `${sticks}&", "&${onThisSheet.at('allLengthsCut')}&"${rest}"`;
  };
  const value = `${sayCutSticks(totals.sticksCut, totals.sticks)}, ${cut}${rest}`;
  return {
    ...HALVES.loose({
      lengthB: sum(formula, value, all < MOST_IN_LARGE ? 'label' : 'quietLabel'),
    }),
    joins: [[HALVES.start('lengthB'), HALVES.end('stickB2')]],
  };
}

/** Where each piece has its length, and what its parts have more than it, for Pieces to compare with. */
function placePieces({ plan, acrossSheets, facts }: CuttingDraft, cuts: readonly CutPiece[]): void {
  const lengths = new Map<string, ExactInches>();
  for (const { id, piece, length } of cuts) {
    // One that is left over has the name of the one that is cut in its place.
    if (piece !== undefined) lengths.set(id, length.add(lengths.get(id) ?? 0));
  }
  for (const { id, done, cutLength } of plan.pieces) {
    if (done) continue;
    const cells = facts.cutAt.get(id) ?? ['0'];
    const more = (lengths.get(id) ?? cutLength).sub(cutLength);
    const overlap = numberIn(more, plan.job.shop.unit);
    acrossSheets.place('pieceOnCutting', { cells: cells.join('+'), overlap }, id);
  }
}
