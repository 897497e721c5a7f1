/** One cove's block on the sheet of formulas: its sizes, what is said of them, its set-up. */
import { feedFor, type TiltSide } from '../../core/cove/rails.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { closeHeight } from '../grammar/row-height.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { factLabel, labelInDegrees } from '../words/set-up-facts.ts';
import { addSizes, type BlockSizes } from './block-sizes.ts';
import { FORMULA_GRID, RESULTS, VERDICTS } from './formula-columns.ts';
import { BlockResults, type PlannedMark } from './block-results.ts';
import { countPasses } from './count-passes.ts';
import { addSteps, type Answer } from './newton-steps.ts';
import { addWoodLimits, widestUpright } from './limits-of-wood.ts';
import { addRailMarks } from './rail-mark-rows.ts';
import { FIRM, sayOfSizes } from './say-of-sizes.ts';
import {
  absolute,
  chooseWords,
  degreesOf,
  either,
  equals,
  minus,
  number,
  plus,
  type Condition,
} from '../grammar/term.ts';

/** What was planned, lengths in the shop's unit, marks signed: to the right of the blade line. */
export interface PlannedNumbers {
  /** From the blade line. */
  readonly approachDeg: number;
  /** From upright. */
  readonly tiltDeg: number;
  readonly passes: number;
  readonly nearFlat: number;
  readonly farFlat: number;
  /** Absent where the shop gives no table. */
  readonly marks?: Readonly<Record<PlannedMark, number>>;
}

const AS_PLANNED = 'as planned';
const DIFFERS =
  'differs from the plan: drawings, marks and passes on the other sheets do not follow. Plan again before you cut by it';
const NOTHING = 'no set-up to compare';

/** @param sheet that the block is on; the steps are added to a sheet of their own */
export function addBlock(
  draft: SheetDraft,
  steps: SheetDraft,
  sheet: string,
  cove: { readonly name: string; readonly sizes: BlockSizes; readonly planned: PlannedNumbers },
  { tiltSide, ...reading }: LengthReading & { readonly tiltSide: TiltSide },
): void {
  const { unit } = reading;
  const { sizes, planned } = cove;
  const terms = addSizes(draft, sheet, sizes, unit);
  const answer = addSteps(steps, cove.name, terms);
  const wood = addWoodLimits(steps, terms, answer, unit);
  const passes = countPasses(terms);
  const { saying, texts } = sayOfSizes(terms, answer, wood, passes, reading);
  draft.put(RESULTS.headings());
  const said = addVerdict(draft, 'What is said of these sizes', texts);
  const against = addVerdict(draft, 'Against the plan', [AS_PLANNED, DIFFERS, NOTHING]);
  const sound: Condition = {
    formula: `${VERDICTS.fixed('words', said.row)}="${FIRM}"`,
    value: saying.value === FIRM,
  };
  said.set(saying);

  const results = new BlockResults(draft, sound, unit);
  const approachDeg = degreesOf(answer.approach);
  const isUpright = equals(answer.tilt, number(0));
  const feed = `feed ${feedFor(tiltSide)}`;
  const lean = chooseWords(
    [[isUpright, `blade upright, ${feed}, as the rails are marked`]],
    `blade leans ${tiltSide}, ${feed}`,
  );
  // A centered cove has no deep side.
  const deepSide = chooseWords([[isUpright, '']], 'the deep side lies toward the far rail');
  results.degrees(labelInDegrees('approach'), approachDeg, planned.approachDeg);
  results.degrees(
    labelInDegrees('approachFromFront'),
    minus(number(90), approachDeg),
    90 - planned.approachDeg,
  );
  results.degrees(labelInDegrees('tilt'), degreesOf(answer.tilt), planned.tiltDeg, lean);
  results.length(factLabel('height'), terms.depth, sizes.depth);
  results.whole(factLabel('passes'), passes, planned.passes);
  results.length(factLabel('nearFlat'), terms.nearFlat, planned.nearFlat);
  results.length(factLabel('farFlat'), terms.farFlat, planned.farFlat, deepSide);
  results.length(
    factLabel('web'),
    minus(terms.blankThickness, terms.depth),
    sizes.blankThickness - sizes.depth,
  );
  results.length(factLabel('spacing'), terms.blankWidth, sizes.blankWidth);
  if (terms.table !== undefined && planned.marks !== undefined) {
    addRailMarks(results, terms, terms.table, answer, tiltSide, planned.marks);
  }
  addCheck(results, sizes, terms, answer);
  // Also where there is no set-up: it is the number that the words above lack.
  results.always('Widest, blade upright, at that depth', widestUpright(terms));

  const differs = either(results.differ, {
    formula: `NOT(${terms.arePlanned.formula})`,
    value: !terms.arePlanned.value,
  });
  against.set({
    formula: `IF(${sound.formula},IF(${differs.formula},"${DIFFERS}","${AS_PLANNED}"),"${NOTHING}")`,
    value: sound.value ? (differs.value ? DIFFERS : AS_PLANNED) : NOTHING,
  });
}

/** Forward, as core/cove/cut.ts has it: what the answer cuts, and what it misses of the sizes. */
function addCheck(
  results: BlockResults,
  sizes: BlockSizes,
  terms: ReturnType<typeof addSizes>,
  { far, near, missWidth, missCenter }: Answer,
): void {
  results.length('What this setting cuts: width', minus(far, near), sizes.width);
  results.length(
    'What this setting cuts: off-center',
    plus(missCenter, terms.offCenter),
    sizes.offCenter,
  );
  results.fine('What this setting misses of them', plus(absolute(missWidth), absolute(missCenter)));
}

interface Verdict {
  readonly row: number;
  set(words: { readonly formula: string; readonly value: string }): void;
}

/** A row for one of several texts, high enough for the longest: none is cut off when another comes. */
function addVerdict(draft: SheetDraft, label: string, texts: readonly string[]): Verdict {
  let words = { formula: '', value: '' };
  const verdict = VERDICTS.row({
    label: cell(label, 'label'),
    words: {
      formula: () => words.formula,
      get value() {
        return words.value;
      },
      style: 'setting',
    },
  });
  const row = draft.put(verdict);
  const heights = texts.map((text) =>
    closeHeight([null, cell(text, 'setting')], FORMULA_GRID, VERDICTS.joins()),
  );
  draft.setHeight(row, Math.max(...heights));
  return {
    row,
    set: (given) => {
      words = given;
    },
  };
}
