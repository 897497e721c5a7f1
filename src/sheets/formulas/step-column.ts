/**
 * One step as a column of cells: what a setting cuts, what that misses, and how both change with the
 * setting, as core/cove/set-up.ts has it. Angles in radians, lengths in the unit of the sizes.
 */
import { cellName } from '../../core/cells/cell-range.ts';
import type { DraftCell } from '../grammar/sheet-draft.ts';
import {
  choose,
  cosine,
  equals,
  least,
  minus,
  most,
  number,
  over,
  plus,
  root,
  sine,
  termCell,
  times,
  type Term,
} from '../grammar/term.ts';

/** What a cove is worked out from, as cells; all in one unit of length. */
export interface CoveTerms {
  readonly width: Term;
  readonly depth: Term;
  readonly offCenter: Term;
  /** From the blade's middle plane toward its corner, to the line that the off-center leads to. */
  readonly towardCorner: Term;
  readonly diameter: Term;
  readonly kerf: Term;
}

/** What the rows of a step hold, in their order. */
export const STEP_QUANTITIES = [
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
  'line',
  'line by tilt',
  'miss of width',
  'miss of off-center',
  'width by approach',
  'width by tilt',
  'center by approach',
  'center by tilt',
  'determinant',
] as const;
type Quantity = (typeof STEP_QUANTITIES)[number];

/** The cell of a quantity in one step. */
export type Cells = (name: Quantity) => Term;

const ZERO = number(0);

/** One column: the cove that a guess cuts, what is missing, and the slopes. */
export function stepAt(
  top: number,
  column: number,
  guess: { readonly approach: Term; readonly tilt: Term },
  { width, depth, offCenter, towardCorner }: CoveTerms,
  radius: Term,
  half: Term,
): { readonly at: Cells; readonly cells: DraftCell[] } {
  const terms = new Map<string, Term>();
  const cells: DraftCell[] = [];
  const put = (name: Quantity, term: Term): Term => {
    const row = STEP_QUANTITIES.indexOf(name);
    if (row !== cells.length) throw new RangeError(`${name} is out of its row.`);
    cells.push(termCell(term, 'quiet'));
    // On its own sheet a cell goes by its letters alone; one that comes to an error is blank.
    const value = Number.isFinite(term.value) ? term.value : NaN;
    const own = { formula: cellName(top + row, column), value };
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
  const line = put('line', minus(times(slope, sinB), times(towardCorner, cosB)));
  const lineByTilt = put(
    'line by tilt',
    plus(plus(times(slopeByTilt, sinB), times(slope, cosB)), times(towardCorner, sinB)),
  );
  put('miss of width', minus(minus(at('far edge'), at('near edge')), width));
  const peak = times(line, cosA);
  put('miss of off-center', minus(minus(peak, half2(at('far edge'), at('near edge'))), offCenter));
  put('width by approach', minus(at('far by approach'), at('near by approach')));
  put('width by tilt', minus(at('far by tilt'), at('near by tilt')));
  put(
    'center by approach',
    minus(minus(ZERO, times(line, sinA)), half2(at('far by approach'), at('near by approach'))),
  );
  put(
    'center by tilt',
    minus(times(lineByTilt, cosA), half2(at('far by tilt'), at('near by tilt'))),
  );
  put(
    'determinant',
    minus(
      times(at('width by approach'), at('center by tilt')),
      times(at('width by tilt'), at('center by approach')),
    ),
  );
  return { at, cells };
}
