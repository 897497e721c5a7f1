/**
 * The steps from a first guess to the setting of a tilted blade, a row a step: Newton's method on
 * approach and tilt with the exact slopes of width and off-center, as core/cove/set-up.ts has it
 * (derived there and in cut.ts). Over 150,000 random coves that a saw can cut, none but one took
 * more than 13 steps, and that one, at 79° and next to the widest, never comes to rest.
 */
import { cellName, quoteSheet } from '../cell-range.ts';
import { cell, type SheetDraft } from '../sheet-draft.ts';
import {
  arccosine,
  arcsine,
  arctangent,
  choose,
  cosine,
  equals,
  least,
  minus,
  most,
  number,
  over,
  PI,
  plus,
  root,
  sine,
  termCell,
  times,
  type Term,
} from './term.ts';

export const STEPS_SHEET = 'Formula steps';
/** More than any cove was found to take. */
const STEPS = 16;

/** What a cove is worked out from, as cells or numbers; all in one unit of length. */
export interface CoveTerms {
  readonly width: Term;
  readonly depth: Term;
  readonly offCenter: Term;
  readonly diameter: Term;
  readonly kerf: Term;
}

/** Cells of the last row: the answer, and how well it meets what was asked. Angles in radians. */
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
const NAMES = [
  'step',
  'approach',
  'tilt',
  'sin approach',
  'cos approach',
  'sin tilt',
  'cos tilt',
  'tan tilt',
  'slope height',
  'slope by tilt',
  'base',
  'inner',
  'far offset',
  'far p',
  'far reach',
  'far edge',
  'far by approach',
  'far by tilt',
  'near offset',
  'near p',
  'near reach',
  'near edge',
  'near by approach',
  'near by tilt',
  'miss of width',
  'miss of off-center',
  'width by approach',
  'width by tilt',
  'center by approach',
  'center by tilt',
  'determinant',
] as const;

export const STEP_COLUMNS = NAMES.map((_, at) => ({ width: at === 0 ? 8 : 12 }));

/** Adds a cove's steps below a row with its name, and gives its answer. */
export function addSteps(draft: SheetDraft, name: string, cove: CoveTerms): Answer {
  draft.spread(name, 'section');
  draft.add(...NAMES.map((text) => cell(text, 'heading')));
  const { radius, half, mostTilt } = limitsOf(cove);
  let [approach, tilt] = firstGuess(cove, mostTilt);
  for (let step = 1; step <= STEPS; step++) {
    const at = addStep(draft, String(step), { approach, tilt }, cove, radius, half);
    [approach, tilt] = nextGuess(at, mostTilt);
  }
  const isUpright = equals(cove.offCenter, ZERO);
  const answer = addStep(
    draft,
    'answer',
    {
      approach: choose(isUpright, uprightApproach(cove), approach),
      tilt: choose(isUpright, ZERO, tilt),
    },
    cove,
    radius,
    half,
  );
  draft.blank();
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

type Cells = (name: (typeof NAMES)[number]) => Term;

function chordOf({ depth, diameter }: CoveTerms): Term {
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
  return { radius, half, mostTilt: minus(least(lean, nearlyFlat), number(1e-7)) };
}

function firstGuess(cove: CoveTerms, mostTilt: Term): [approach: Term, tilt: Term] {
  const approach = arcsine(least(number(0.98), over(cove.width, reachOf(cove))));
  const lean = arctangent(times(cove.depth, cosine(approach)), cove.offCenter);
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

/** One row: the cove that a guess cuts, what is missing, and the slopes. */
function addStep(
  draft: SheetDraft,
  label: string,
  guess: { readonly approach: Term; readonly tilt: Term },
  { width, depth, offCenter }: CoveTerms,
  radius: Term,
  half: Term,
): Cells {
  const row = draft.next - 1;
  const terms = new Map<string, Term>();
  const shown: Term[] = [];
  const put = (name: (typeof NAMES)[number], term: Term): Term => {
    const column = NAMES.indexOf(name);
    if (column !== shown.length + 1) throw new RangeError(`${name} is out of its column.`);
    shown.push(term);
    // On its own sheet a cell goes by its letters alone; one that comes to an error is blank.
    const value = Number.isFinite(term.value) ? term.value : NaN;
    const own = { formula: cellName(row, column), value };
    terms.set(name, own);
    return own;
  };
  const approach = put('approach', guess.approach);
  const tilt = put('tilt', guess.tilt);
  const sinA = put('sin approach', sine(approach));
  const cosA = put('cos approach', cosine(approach));
  const sinB = put('sin tilt', sine(tilt));
  const cosB = put('cos tilt', cosine(tilt));
  const tanB = put('tan tilt', over(sinB, cosB));
  const slope = put('slope height', over(minus(depth, times(half, sinB)), cosB));
  const slopeByTilt = put('slope by tilt', minus(times(slope, tanB), half));
  const base = put('base', minus(radius, slope));
  const across = times(sinA, sinB);
  const inner = put(
    'inner',
    over(times(radius, cosA), root(plus(times(cosA, cosA), times(across, across)))),
  );
  const backHalf = minus(ZERO, half);
  const isUpright = equals(tilt, ZERO);
  const edge = (side: 'far' | 'near', sign: 1 | -1): void => {
    const wanted = over(minus(sign > 0 ? inner : minus(ZERO, inner), base), tanB);
    const end = sign > 0 ? plus(half, ZERO) : backHalf;
    const clamped = most(backHalf, least(plus(half, ZERO), wanted));
    const offset = put(`${side} offset`, choose(isUpright, end, clamped));
    const p = put(`${side} p`, plus(base, times(offset, tanB)));
    const reach = put(`${side} reach`, root(times(minus(radius, p), plus(radius, p))));
    const y = over(offset, cosB);
    const signed = (term: Term): Term => (sign > 0 ? term : minus(ZERO, term));
    put(`${side} edge`, plus(times(y, cosA), signed(times(reach, sinA))));
    put(`${side} by approach`, minus(signed(times(reach, cosA)), times(y, sinA)));
    const turn = times(times(over(p, reach), minus(over(y, cosB), slopeByTilt)), sinA);
    put(`${side} by tilt`, minus(times(times(y, tanB), cosA), signed(turn)));
  };
  edge('far', 1);
  edge('near', -1);
  const at: Cells = (name) => {
    const term = terms.get(name);
    if (term === undefined) throw new RangeError(`There is no ${name} yet.`);
    return term;
  };
  const half2 = (one: Term, other: Term): Term => over(plus(one, other), number(2));
  put('miss of width', minus(minus(at('far edge'), at('near edge')), width));
  const peak = times(times(slope, sinB), cosA);
  put('miss of off-center', minus(minus(peak, half2(at('far edge'), at('near edge'))), offCenter));
  put('width by approach', minus(at('far by approach'), at('near by approach')));
  put('width by tilt', minus(at('far by tilt'), at('near by tilt')));
  put(
    'center by approach',
    minus(
      minus(ZERO, times(times(slope, sinB), sinA)),
      half2(at('far by approach'), at('near by approach')),
    ),
  );
  put(
    'center by tilt',
    minus(
      times(plus(times(slopeByTilt, sinB), times(slope, cosB)), cosA),
      half2(at('far by tilt'), at('near by tilt')),
    ),
  );
  put(
    'determinant',
    minus(
      times(at('width by approach'), at('center by tilt')),
      times(at('width by tilt'), at('center by approach')),
    ),
  );
  draft.add(cell(label, 'center'), ...shown.map((term) => termCell(term, 'quiet')));
  return at;
}
