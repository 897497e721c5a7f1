/** One row of the set-ups file answered: the saw's set-up, or every reason against it. */
import {
  bladeOf,
  COVE_SIZES,
  coveOf,
  isComplete,
  readSizes,
  type SizeKey,
} from '../core/cove/cove-sizes.ts';
import { OFF_CENTER_TO } from '../core/cove/cove.ts';
import { computeCut } from '../core/cove/cut.ts';
import { checkCove } from '../core/cove/feasibility.ts';
import { planPasses } from '../core/cove/passes.ts';
import type { HeadingKey } from '../core/faults/argument.ts';
import { placeFault, type Caution, type Fault } from '../core/faults/fault.ts';
import { toDegrees } from '../core/units/angle.ts';
import { headed, type Heading } from '../planning/input/headings/heading.ts';
import { OFF_CENTER_TO_COLUMN, sizeHeading } from '../planning/input/headings/profile-headings.ts';
import type { Findings, RowReader } from '../planning/input/row-reader.ts';

const SIZES = [
  'width',
  'depth',
  'offCenter',
  'bladeDiameter',
  'kerf',
] as const satisfies readonly SizeKey[];

export const SET_UP_HEADINGS: readonly Heading[] = [
  {
    ...headed('profile'),
    required: true,
    holds: 'name',
    meaning: 'Its name.',
    also: ['molding', 'moulding', 'trim', 'item', 'profile name'],
    often: ['name'],
  },
  ...SIZES.map((key) => ({
    ...sizeHeading(key),
    required: COVE_SIZES[key].blank === 'refused',
  })),
  OFF_CENTER_TO_COLUMN,
];

/** As `setups --json` gives it: angles in degrees and heights in inches, unrounded. */
export interface SetUpAnswer {
  readonly profile: string | null;
  readonly ok: boolean;
  /** From the blade line, and its complement from the table's front edge; null where not ok. */
  readonly approachDeg: number | null;
  readonly approachFromFrontDeg: number | null;
  /** From upright. */
  readonly tiltDeg: number | null;
  readonly passCount: number | null;
  /** Of the highest tooth above the table; the last is the cove's depth. */
  readonly passHeights: readonly number[];
  /** How far the deepest line on the wood lies from the middle of the cove at its face. */
  readonly deepestLine: number | null;
  /** The same of the line where the blade's middle plane tops out. */
  readonly bladeMiddle: number | null;
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/** `findings` is where the row reports to: what it reports is taken out of it, into the answer. */
export function answerSetUp(row: RowReader, findings: Findings): SetUpAnswer {
  const profile = row.requiredText('profile') ?? null;
  const sizes = readSizes(SIZES, ({ key, least, blank, most }) =>
    blank === 'refused' ? row.requiredLength(key, most) : row.length(key, least === 'from 0', most),
  );
  const offCenterTo = row.word('offCenterTo', OFF_CENTER_TO, 'deepest line');
  const unreadable = findings.faults.splice(0);
  if (unreadable.length > 0 || !isComplete(sizes)) return refused(profile, unreadable, []);
  const cove = { ...coveOf(sizes), offCenterTo };
  const blade = bladeOf(sizes);
  const judged = checkCove(cove, blade);
  const passes = planPasses(cove.depth);
  const place = (one: Fault): Fault => placeFault(one, row.where(columnOf(one)));
  const faults = [...judged.faults, ...passes.faults].map(place);
  const cautions = [...judged.cautions, ...passes.cautions].map(place);
  if (faults.length > 0 || judged.setting === undefined) return refused(profile, faults, cautions);
  const cut = computeCut(blade, judged.setting);
  const approachDeg = toDegrees(judged.setting.approach);
  return {
    profile,
    ok: true,
    approachDeg,
    approachFromFrontDeg: 90 - approachDeg,
    tiltDeg: toDegrees(judged.setting.tilt),
    passCount: passes.heights.length,
    passHeights: passes.heights,
    deepestLine: cut.offCenter,
    bladeMiddle: cut.bladeMiddle,
    faults,
    cautions,
  };
}

function refused(
  profile: string | null,
  faults: readonly Fault[],
  cautions: readonly Caution[],
): SetUpAnswer {
  if (faults.length === 0) throw new RangeError('A set-up is refused without a reason.');
  return {
    profile,
    ok: false,
    approachDeg: null,
    approachFromFrontDeg: null,
    tiltDeg: null,
    passCount: null,
    passHeights: [],
    deepestLine: null,
    bladeMiddle: null,
    faults,
    cautions,
  };
}

/** The column that a fault is about; one about the cove as a whole stands at its profile. */
function columnOf({ argument }: Fault): HeadingKey {
  return SET_UP_HEADINGS.find(({ key }) => key === argument)?.key ?? 'profile';
}
