/** The sizes at the top of a block: marked cells to type over, beside what was planned. */
import type { OffCenterTo } from '../../core/cove/cove.ts';
import { COVE_SIZES } from '../../core/cove/cove-sizes.ts';
import { FLANGE_ALLOWANCE_INCHES } from '../../core/cove/saw-limits.ts';
import { USUAL_HALF_TABLE_INCHES } from '../../core/cove/rails.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import { quoteSheet } from '../../core/cells/cell-range.ts';
import { numberIn } from '../words/print-length.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';
import {
  choose,
  cosine,
  least,
  minus,
  number,
  over,
  PI,
  type Condition,
  type Term,
} from '../grammar/term.ts';
import { SIZES } from './formula-columns.ts';

/** In the shop's unit; what the shop doesn't say is left out. */
export interface BlockSizes {
  readonly width: number;
  readonly depth: number;
  readonly offCenter: number;
  /** See Cove. */
  readonly offCenterTo?: OffCenterTo;
  readonly diameter: number;
  readonly kerf: number;
  readonly blankWidth: number;
  readonly blankThickness: number;
  /** Absent: the cove sits midway in its blank. */
  readonly nearFlat?: number;
  /** From above the arbor to the table's front and back edges, and how wide the table is. */
  readonly front?: number;
  readonly back?: number;
  readonly tableWidth?: number;
  readonly tiltStopDeg: number;
  /** Of the highest tooth above the table, see SawLimits. */
  readonly riseUpright?: number;
  readonly riseAt45?: number;
  /** Diameter of the blade that both heights hold for; present where one of them is. */
  readonly riseMeasuredWith?: number;
  readonly steepestDeg: number;
  readonly leastWeb: number;
  readonly leastFlat: number;
  readonly firstPass: number;
  readonly step: number;
  readonly lastPass: number;
}

/** Cells and what follows from them; lengths in one unit. */
export interface SizeTerms {
  readonly width: Term;
  readonly depth: Term;
  readonly offCenter: Term;
  /** See towardCorner of core/cove/deepest-line.ts. */
  readonly towardCorner: Term;
  readonly diameter: Term;
  readonly kerf: Term;
  readonly blankWidth: Term;
  readonly blankThickness: Term;
  readonly nearFlat: Term;
  readonly farFlat: Term;
  /** Absent where the shop gives no table. */
  readonly table?: { readonly front: Term; readonly back: Term; readonly halfWidth: Term };
  readonly tiltStopDeg: Term;
  readonly steepestDeg: Term;
  /** As high as the blade rises along its own plane: upright, and leaning by 45°. */
  readonly rise: { readonly upright: Term; readonly at45: Term };
  readonly leastWeb: Term;
  readonly leastFlat: Term;
  readonly firstPass: Term;
  readonly step: Term;
  readonly lastPass: Term;
  /** Whether a marked cell that must have a number has none, or the near flat holds words. */
  readonly lackNumbers: Condition;
  /** Whether all are as they were planned. */
  readonly arePlanned: Condition;
}

type SizeCell = Exclude<keyof BlockSizes, 'offCenterTo'>;

const LABELS: readonly (readonly [SizeCell, string])[] = [
  ['width', COVE_SIZES.width.label],
  ['depth', COVE_SIZES.depth.label],
  ['offCenter', `${COVE_SIZES.offCenter.label}, 0 for none`],
  ['diameter', COVE_SIZES.bladeDiameter.label],
  ['kerf', COVE_SIZES.kerf.label],
  ['blankWidth', COVE_SIZES.blankWidth.label],
  ['blankThickness', COVE_SIZES.blankThickness.label],
  ['nearFlat', `${COVE_SIZES.nearFlat.label}; blank: as wide as the far one`],
  ['front', 'Table, from above the arbor to its front'],
  ['back', 'Table, from above the arbor to its back'],
  ['tableWidth', 'Table, from side to side'],
  ['tiltStopDeg', 'Tilt stop of the saw, degrees from upright'],
  ['steepestDeg', 'Steepest approach, degrees from the blade line'],
  ['riseUpright', 'Highest that the blade rises, upright'],
  ['riseAt45', 'Highest that the blade rises, tilted 45°'],
  ['riseMeasuredWith', 'Diameter of the blade that they hold for'],
  ['leastWeb', 'Least web over the cove'],
  ['leastFlat', 'Least flat beside the cove'],
  ['firstPass', 'First pass, its height'],
  ['step', 'Step, most that a later pass takes'],
  ['lastPass', 'Last pass, what it takes'],
];

const TO_MIDDLE = `${COVE_SIZES.offCenter.label} of the blade’s middle, 0 for none`;

const TWO = number(2);

/** Adds a marked cell a size, as planned; a near flat that isn't given stands there as a blank one. */
export function addSizes(
  draft: SheetDraft,
  sheet: string,
  sizes: BlockSizes,
  unit: LengthUnit,
): SizeTerms {
  draft.put(SIZES.headings(undefined, { value: unit === 'mm' ? 'in mm' : 'in inches' }));
  const first = draft.next;
  // The steps stand on another sheet and go by the same terms.
  const onThisSheet = (at: string): string => `${quoteSheet(sheet)}!${at}`;
  const toMiddle = sizes.offCenterTo === 'blade middle';
  const cells = new Map<SizeCell, Term>();
  for (const [key, label] of LABELS) {
    const value = sizes[key];
    if (value === undefined && key !== 'nearFlat') continue;
    const row = draft.put(
      SIZES.sparseRow({
        label: cell(key === 'offCenter' && toMiddle ? TO_MIDDLE : label, 'label'),
        value: cell(value ?? null, 'input'),
        planned: cell(value ?? null, 'plannedSize'),
      }),
    );
    cells.set(key, { formula: onThisSheet(SIZES.at('value', row)), value: value ?? NaN });
  }
  const columnOf = (column: 'value' | 'planned'): string =>
    onThisSheet(SIZES.range(column, first, draft.next - 1));
  const term = (key: SizeCell): Term => {
    const found = cells.get(key);
    if (found === undefined) throw new RangeError(`There is no cell for ${key}.`);
    return found;
  };
  const nearFlatCell = term('nearFlat');
  const spare = minus(term('blankWidth'), term('width'));
  const isGiven: Condition = {
    formula: `ISNUMBER(${nearFlatCell.formula})`,
    value: sizes.nearFlat !== undefined,
  };
  const nearFlat = choose(isGiven, nearFlatCell, over(spare, TWO));
  const halfWidth = cells.has('tableWidth')
    ? over(term('tableWidth'), TWO)
    : number(numberIn(USUAL_HALF_TABLE_INCHES, unit));
  return {
    width: term('width'),
    depth: term('depth'),
    offCenter: term('offCenter'),
    towardCorner: toMiddle ? number(0) : over(least(term('offCenter'), term('kerf')), TWO),
    diameter: term('diameter'),
    kerf: term('kerf'),
    blankWidth: term('blankWidth'),
    blankThickness: term('blankThickness'),
    nearFlat,
    farFlat: minus(spare, nearFlat),
    ...(cells.has('front') && cells.has('back')
      ? { table: { front: term('front'), back: term('back'), halfWidth } }
      : {}),
    tiltStopDeg: term('tiltStopDeg'),
    steepestDeg: term('steepestDeg'),
    rise: riseOf(cells, term('diameter'), unit),
    leastWeb: term('leastWeb'),
    leastFlat: term('leastFlat'),
    firstPass: term('firstPass'),
    step: term('step'),
    lastPass: term('lastPass'),
    lackNumbers: lackNumbers(cells, nearFlatCell),
    // A blank cell counts as 0 here: what a near flat of 0 changes is compared among the results.
    arePlanned: {
      formula: `SUMPRODUCT(ABS(${columnOf('value')}-${columnOf('planned')}))<1E-9`,
      value: true,
    },
  };
}

/** As computeRise has it: what the shop says, for this blade; else what flange and arbor leave of it. */
function riseOf(
  cells: ReadonlyMap<SizeCell, Term>,
  diameter: Term,
  unit: LengthUnit,
): SizeTerms['rise'] {
  const measuredWith = cells.get('riseMeasuredWith') ?? diameter;
  const lower = over(minus(measuredWith, diameter), TWO);
  const given = cells.get('riseUpright');
  const upright =
    given === undefined
      ? minus(over(diameter, TWO), number(numberIn(FLANGE_ALLOWANCE_INCHES, unit)))
      : minus(given, lower);
  const at45 = cells.get('riseAt45');
  const slope45 = at45 && minus(over(at45, cosine(over(PI, number(4)))), lower);
  return { upright, at45: slope45 ?? upright };
}

function lackNumbers(cells: ReadonlyMap<SizeCell, Term>, { formula: nearFlat }: Term): Condition {
  const needed = [...cells].filter(([key]) => key !== 'nearFlat').map(([, term]) => term);
  const count = `COUNT(${needed.map(({ formula }) => formula).join(',')})`;
  return {
    formula: `OR(${count}<${needed.length},NOT(OR(ISNUMBER(${nearFlat}),ISBLANK(${nearFlat}))))`,
    value: needed.some(({ value }) => !Number.isFinite(value)),
  };
}
