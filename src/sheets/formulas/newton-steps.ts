/**
 * The steps from a first guess to the setting of a tilted blade, a column a step: Newton's method on
 * approach and tilt with the exact slopes of width and off-center, as core/cove/set-up.ts has it
 * (derived there and in cut.ts). Of 400,000 random coves that a saw can cut (blades of 7 to 12 in,
 * kerfs to 1/4 in, tilts to 45°) one strayed, none took more than 12 steps, all but 37 no more than 7:
 * a blade next to the widest cove that it cuts is slow to settle. What doesn't settle is said.
 */
import { TILT_MARGIN_RADIANS } from '../../core/units/tolerance.ts';
import { quoteSheet } from '../../core/cells/cell-range.ts';
import { nameStyle } from '../grammar/name-style.ts';
import { cell, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';
import {
  arccosine,
  arcsine,
  arctangent,
  choose,
  cosine,
  equals,
  least,
  less,
  minus,
  most,
  number,
  over,
  PI,
  plus,
  root,
  times,
  type Term,
} from '../grammar/term.ts';
import { STEP_QUANTITIES, stepAt, type Cells, type CoveTerms } from './step-column.ts';

export const STEPS_SHEET = 'Formula steps';
const STEPS = 12;
/** The first guess's approach gives at most this share of the widest cove. */
const STEEPEST_GUESS = number(0.95);
const LEAST_GUESS = number(0.001);

/** Cells of the last column: the answer, and how well it meets what was asked. Angles in radians. */
export interface Answer {
  readonly approach: Term;
  readonly tilt: Term;
  readonly near: Term;
  readonly far: Term;
  readonly missWidth: Term;
  readonly missCenter: Term;
  /** How the width grows with the approach: below 0 the larger of two answers was met. */
  readonly widthByApproach: Term;
}

const ZERO = number(0);
const HALF = number(0.5);

export const STEP_COLUMNS = [
  { width: 19 },
  ...Array.from({ length: STEPS + 1 }, () => ({ width: 12 })),
];

/** Adds a cove's steps below a row with its name, and gives its answer. */
export function addSteps(draft: SheetDraft, name: string, cove: CoveTerms): Answer {
  draft.spread(name, nameStyle(name));
  const labels = Array.from({ length: STEPS }, (_, at) => `step ${at + 1}`);
  draft.add(
    cell(null, 'heading'),
    ...[...labels, 'answer'].map((text) => cell(text, 'headingRight')),
  );
  const top = draft.next - 1;
  const { radius, half, mostTilt } = limitsOf(cove);
  const columns: DraftCell[][] = [];
  const addColumn = (approach: Term, tilt: Term): Cells => {
    const { at, cells } = stepAt(top, columns.length + 1, { approach, tilt }, cove, radius, half);
    columns.push(cells);
    return at;
  };
  let [approach, tilt] = firstGuess(cove, mostTilt);
  for (let step = 1; step <= STEPS; step++) {
    [approach, tilt] = nextGuess(addColumn(approach, tilt), mostTilt);
  }
  const isUpright = equals(cove.offCenter, ZERO);
  const answer = addColumn(
    choose(isUpright, uprightApproach(cove), approach),
    choose(isUpright, ZERO, tilt),
  );
  STEP_QUANTITIES.forEach((text, row) => {
    draft.add(cell(text, 'quietLabel'), ...columns.map((cells) => cells[row] ?? null));
  });
  // Other sheets go by the sheet's name too.
  const elsewhere: Cells = (name) => {
    const { formula, value } = answer(name);
    return { formula: `${quoteSheet(STEPS_SHEET)}!${formula}`, value };
  };
  return {
    approach: elsewhere('approach'),
    tilt: elsewhere('tilt'),
    near: elsewhere('near edge'),
    far: elsewhere('far edge'),
    missWidth: elsewhere('miss of width'),
    missCenter: elsewhere('miss of off-center'),
    widthByApproach: elsewhere('width by approach'),
  };
}

export function chordOf({ depth, diameter }: CoveTerms): Term {
  return times(number(2), root(times(depth, minus(diameter, depth))));
}

/** The blade's chord at the table with its kerf, corner to corner. */
function reachOf(cove: CoveTerms): Term {
  const chord = chordOf(cove);
  return root(plus(times(chord, chord), times(cove.kerf, cove.kerf)));
}

/** Closed form: width = reach · sin(approach + atan(kerf / chord)), the smaller root. */
function uprightApproach(cove: CoveTerms): Term {
  return minus(arcsine(over(cove.width, reachOf(cove))), arctangent(chordOf(cove), cove.kerf));
}

/** `mostTilt`: the blade's middle stays below the table, h = R cos b + (t/2) sin b. */
function limitsOf({ depth, diameter, kerf }: CoveTerms): {
  radius: Term;
  half: Term;
  mostTilt: Term;
} {
  const radius = over(diameter, number(2));
  const half = over(kerf, number(2));
  const corner = root(plus(times(radius, radius), times(half, half)));
  const lean = plus(arctangent(radius, half), arccosine(over(depth, corner)));
  const nearlyFlat = minus(over(PI, number(2)), number(0.001));
  // Past this a corner of the blade alone would cut.
  const cornerAlone = choose(less(depth, half), arcsine(over(depth, half)), nearlyFlat);
  const lowest = least(least(lean, nearlyFlat), cornerAlone);
  return { radius, half, mostTilt: minus(lowest, number(TILT_MARGIN_RADIANS)) };
}

/** As if the blade stood upright, and leaned as one without thickness would to bring its middle there. */
function firstGuess(cove: CoveTerms, mostTilt: Term): [approach: Term, tilt: Term] {
  const steepest = least(STEEPEST_GUESS, over(cove.width, reachOf(cove)));
  const square = arctangent(chordOf(cove), cove.kerf);
  const approach = most(minus(arcsine(steepest), square), LEAST_GUESS);
  const middle = plus(cove.offCenter, times(cove.towardCorner, cosine(approach)));
  const lean = arctangent(times(cove.depth, cosine(approach)), middle);
  return [approach, least(lean, times(mostTilt, number(0.9)))];
}

/** Never further than halfway to the limits in one step. */
function nextGuess(at: Cells, mostTilt: Term): [approach: Term, tilt: Term] {
  const within = (value: Term, from: Term, limit: Term): Term =>
    least(most(value, times(from, HALF)), times(plus(from, limit), HALF));
  const [approach, tilt, determinant] = [at('approach'), at('tilt'), at('determinant')];
  const approachStep = minus(
    times(at('miss of width'), at('center by tilt')),
    times(at('width by tilt'), at('miss of off-center')),
  );
  const tiltStep = minus(
    times(at('width by approach'), at('miss of off-center')),
    times(at('miss of width'), at('center by approach')),
  );
  return [
    within(minus(approach, over(approachStep, determinant)), approach, over(PI, number(2))),
    within(minus(tilt, over(tiltStep, determinant)), tilt, mostTilt),
  ];
}
