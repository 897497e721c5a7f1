/** One cove's block on the sheet of formulas: its sizes, what is said of them, its set-up. */
import type { LengthUnit } from '../../core/faults/quantity.ts';
import { MOST_PASS_INCHES } from '../../core/cove/passes.ts';
import type { TiltSide } from '../../core/cove/rails.ts';
import { numberIn } from '../print-length.ts';
import type { DraftCell, SheetDraft } from '../sheet-draft.ts';
import { cell } from '../sheet-draft.ts';
import type { StyleName } from '../styles.ts';
import { addSteps, type Answer } from './newton-steps.ts';
import { sayOfSizes, type SizeTerms } from './say-of-sizes.ts';
import {
  at,
  choose,
  cosine,
  degreesOf,
  equals,
  less,
  minus,
  most,
  least,
  number,
  over,
  plus,
  roundedUp,
  sine,
  times,
  type Condition,
  type Term,
} from './term.ts';

/** In the shop's unit; what the shop doesn't say is left out. */
export interface BlockSizes {
  readonly width: number;
  readonly depth: number;
  readonly offCenter: number;
  readonly diameter: number;
  readonly kerf: number;
  readonly blankWidth: number;
  readonly blankThickness: number;
  /** Absent: the cove sits midway in its blank. */
  readonly nearFlat?: number;
  /** From above the arbor to the table's front and back edges. */
  readonly front?: number;
  readonly back?: number;
  readonly tiltStopDeg: number;
  readonly leastWeb: number;
  readonly leastFlat: number;
  readonly firstPass: number;
  readonly step: number;
  readonly lastPass: number;
}

export interface PlannedNumbers {
  /** From the blade line. */
  readonly approachDeg: number;
  /** From upright. */
  readonly tiltDeg: number;
  readonly passes: number;
}

type Size = Exclude<keyof BlockSizes, 'nearFlat'>;

const LABELS: readonly (readonly [keyof BlockSizes, string])[] = [
  ['width', 'Cove width'],
  ['depth', 'Cove depth'],
  ['offCenter', 'Off-center, 0 for none'],
  ['diameter', 'Blade diameter'],
  ['kerf', 'Kerf'],
  ['blankWidth', 'Blank width'],
  ['blankThickness', 'Blank thickness'],
  ['nearFlat', 'Near flat; blank: as wide as the far one'],
  ['front', 'Table, from above the arbor to its front'],
  ['back', 'Table, from above the arbor to its back'],
  ['tiltStopDeg', 'Tilt stop of the saw, degrees from upright'],
  ['leastWeb', 'Least web over the cove'],
  ['leastFlat', 'Least flat beside the cove'],
  ['firstPass', 'First pass, its height'],
  ['step', 'Step, most that a later pass takes'],
  ['lastPass', 'Last pass, what it takes'],
];

const VALUE_COLUMN = 1;
/** A limit counts as kept when it is missed by less. */
const SLACK = number(1e-9);
const ONE = number(1);
const TWO = number(2);
/** Angles that agree to this, in degrees, are the planned ones. */
const SAME_DEGREES = number(1e-6);
const NONE = 'none';
const PLAN_AGAIN = 'differs from the plan: plan again before you cut';

export function addBlock(
  draft: SheetDraft,
  steps: SheetDraft,
  sheet: string,
  cove: { readonly name: string; readonly sizes: BlockSizes; readonly planned: PlannedNumbers },
  { unit, tiltSide }: { readonly unit: LengthUnit; readonly tiltSide: TiltSide },
): void {
  const terms = addSizes(draft, sheet, cove.sizes, unit);
  const answer = addSteps(steps, cove.name, terms);
  const { firm, saying } = sayOfSizes(terms, answer, numberIn(MOST_PASS_INCHES, unit));
  draft.add(
    cell('Set-up', 'heading'),
    cell('by formula', 'headingRight'),
    cell('as planned', 'headingRight'),
    cell(null, 'heading'),
  );
  const said = draft.next - 1;
  const status = draft.add(cell('What is said of these sizes', 'label'), {
    formula: saying.formula,
    value: saying.value,
    style: 'setting',
  });
  draft.merge(status, 1, 3);
  const sound: Condition = {
    formula: `$B$${said + 1}="${firm}"`,
    value: saying.value === firm,
  };
  const row = (label: string, term: Term, style: StyleName, planned?: number, note = ''): void => {
    draft.add(
      cell(label, 'label'),
      result(sound, term, style),
      planned === undefined ? null : cell(planned, style),
      cell(note === '' ? null : note, 'wrapped'),
    );
  };
  const approachDeg = degreesOf(answer.approach);
  const tiltDeg = degreesOf(answer.tilt);
  const { planned } = cove;
  row('Approach, degrees from the blade line', approachDeg, 'degreesFine', planned.approachDeg);
  row(
    'Approach, degrees from the front edge',
    minus(number(90), approachDeg),
    'degreesFine',
    90 - planned.approachDeg,
  );
  row('Tilt of the blade, degrees from upright', tiltDeg, 'degreesFine', planned.tiltDeg);
  row(`Highest tooth above the table, last pass (${unit})`, plus(terms.depth, number(0)), 'inches');
  const passes = passesOf(terms);
  row('Passes', passes, 'whole', planned.passes);
  const same = planIsSame(approachDeg, tiltDeg, passes, planned);
  const agrees = draft.add(cell('These are', 'label'), {
    formula: `IF(${sound.formula},IF(${same.formula},"as planned","${PLAN_AGAIN}"),"${NONE}")`,
    value: sound.value ? (same.value ? 'as planned' : PLAN_AGAIN) : NONE,
    style: 'setting',
  });
  draft.merge(agrees, 1, 3);
  addRails(row, terms, answer, { unit, tiltSide });
  row(`What this setting cuts: width (${unit})`, minus(answer.far, answer.near), 'inches');
  row(
    `What this setting cuts: off-center (${unit})`,
    plus(answer.missCenter, terms.offCenter),
    'inches',
  );
}

/** A marked cell a size; a near flat that isn't given stands there as a blank one. */
function addSizes(
  draft: SheetDraft,
  sheet: string,
  sizes: BlockSizes,
  unit: LengthUnit,
): SizeTerms & Partial<Record<'front' | 'back', Term>> {
  const heads = draft.add(
    cell('Sizes', 'heading'),
    cell(unit === 'mm' ? 'in millimetres' : 'in inches', 'headingRight'),
    cell(null, 'heading'),
    cell(null, 'heading'),
  );
  draft.merge(heads, 2, 3);
  const terms = new Map<keyof BlockSizes, Term>();
  for (const [key, label] of LABELS) {
    const value = sizes[key];
    if (value === undefined && key !== 'nearFlat') continue;
    const row = draft.add(cell(label, 'label'), cell(value ?? null, 'input'));
    terms.set(key, at(sheet, row - 1, VALUE_COLUMN, value ?? NaN));
  }
  const term = (key: Size): Term => terms.get(key) ?? number(NaN);
  const nearFlatCell = terms.get('nearFlat') ?? number(NaN);
  const spare = minus(term('blankWidth'), term('width'));
  const isGiven: Condition = {
    formula: `ISNUMBER(${nearFlatCell.formula})`,
    value: sizes.nearFlat !== undefined,
  };
  const nearFlat = choose(isGiven, nearFlatCell, over(spare, TWO));
  const { front, back } = sizes;
  return {
    width: term('width'),
    depth: term('depth'),
    offCenter: term('offCenter'),
    diameter: term('diameter'),
    kerf: term('kerf'),
    blankWidth: term('blankWidth'),
    blankThickness: term('blankThickness'),
    nearFlat,
    farFlat: minus(spare, nearFlat),
    tiltStopDeg: term('tiltStopDeg'),
    leastWeb: term('leastWeb'),
    leastFlat: term('leastFlat'),
    firstPass: term('firstPass'),
    step: term('step'),
    lastPass: term('lastPass'),
    ...(front === undefined || back === undefined
      ? {}
      : { front: term('front'), back: term('back') }),
  };
}

/** `none` where the sizes have no set-up; no cell ever shows an error. */
function result(sound: Condition, { formula, value }: Term, style: StyleName): DraftCell {
  return {
    formula: `IF(${sound.formula},IFERROR(${formula},"${NONE}"),"${NONE}")`,
    value: sound.value && Number.isFinite(value) ? value : NONE,
    style,
  };
}

/** As planPasses counts them: a first pass, even steps, a light last one. */
function passesOf({ depth, firstPass, step, lastPass }: SizeTerms): Term {
  const before = minus(depth, lastPass);
  const stepsNeeded = roundedUp(
    over(minus(minus(before, least(firstPass, before)), SLACK), step),
    number(0),
  );
  const light = choose(less(SLACK, lastPass), ONE, number(0));
  const several = plus(plus(ONE, most(number(0), stepsNeeded)), light);
  const onlyLast = choose(less(SLACK, before), several, ONE);
  return choose(less(depth, plus(firstPass, SLACK)), ONE, onlyLast);
}

function planIsSame(
  approachDeg: Term,
  tiltDeg: Term,
  passes: Term,
  planned: PlannedNumbers,
): Condition {
  const near = (one: Term, other: number): Condition => {
    const apart = minus(one, number(other));
    return {
      formula: `ABS(${apart.formula})<${SAME_DEGREES.formula}`,
      value: Math.abs(apart.value) < SAME_DEGREES.value,
    };
  };
  const all = [
    near(approachDeg, planned.approachDeg),
    near(tiltDeg, planned.tiltDeg),
    equals(passes, number(planned.passes)),
  ];
  return {
    formula: `AND(${all.map(({ formula }) => formula).join(',')})`,
    value: all.every(({ value }) => value),
  };
}

/** Derived in core/cove/rails.ts: a rail lies along a line u, crossed at x before or behind the arbor. */
function addRails(
  row: (label: string, term: Term, style: StyleName, planned?: number, note?: string) => void,
  terms: SizeTerms & Partial<Record<'front' | 'back', Term>>,
  { approach, near, far }: Answer,
  { unit, tiltSide }: { readonly unit: LengthUnit; readonly tiltSide: TiltSide },
): void {
  row(`Flat by the near rail (${unit})`, plus(terms.nearFlat, number(0)), 'inches');
  row(`Flat by the far rail (${unit})`, plus(terms.farFlat, number(0)), 'inches');
  row(`Web over the cove (${unit})`, minus(terms.blankThickness, terms.depth), 'inches');
  row(`Between the faces of the rails (${unit})`, plus(terms.blankWidth, number(0)), 'inches');
  if (terms.front === undefined || terms.back === undefined) return;
  const nearFace = minus(near, terms.nearFlat);
  const farFace = plus(far, terms.farFlat);
  const mark = (u: Term, x: Term): Term => {
    const along = times(x, sine(approach));
    const right = tiltSide === 'left' ? minus(along, u) : minus(u, along);
    return over(right, cosine(approach));
  };
  const frontX = minus(number(0), terms.front);
  for (const [name, u] of [
    ['Near rail', nearFace],
    ['Far rail', farFace],
  ] as const) {
    row(`${name}, front edge (${unit})`, mark(u, frontX), 'inches', undefined, RIGHT);
    row(`${name}, back edge (${unit})`, mark(u, terms.back), 'inches', undefined, RIGHT);
  }
}

const RIGHT = 'to the right of the blade line; less than 0 is to the left';
