/**
 * What a set-up says, each fact once: how it is called, from what it is measured, its value in words.
 * The Set-ups sheet, the sheet of formulas, the pane, the lists for other programs and the command
 * line pick from here, so that a shop reads one word for one thing. A fact that comes in is shown by
 * none of them before it picks it.
 */
import type { Cove } from '../../core/cove/cove.ts';
import { COVE_SIZES } from '../../core/cove/cove-sizes.ts';
import { CLAMP_LIP_INCHES, feedFor, type RailLayout } from '../../core/cove/rails.ts';
import { toDegrees } from '../../core/units/angle.ts';
import { formatInches } from '../../core/units/format-length.ts';
import { formatDegrees, formatMark } from '../../core/units/format-mark.ts';
import { MM_PER_INCH, type LengthUnit } from '../../core/units/length-unit.ts';
import type { LengthReading } from '../../core/units/length.ts';
import type { SetUp } from '../../planning/plan-setup.ts';
import type { SawShop } from '../../planning/shop.ts';
import { LIMIT_SLACK_INCHES } from '../../core/units/tolerance.ts';
import { printBoth, printDecimal } from './print-length.ts';

/** What each fact is called, and what its name goes on with. */
const NAMES = {
  approach: ['Approach', 'from the blade line'],
  approachFromFront: ['Approach', 'from the front edge'],
  tilt: ['Tilt of the blade', 'from upright'],
  height: ['Highest tooth above table', 'last pass'],
  passes: ['Passes'],
  diameter: [COVE_SIZES.bladeDiameter.label],
  kerf: [COVE_SIZES.kerf.label],
  feed: ['Feed', 'front to back'],
  spacing: ['Between the faces of the rails'],
  railLength: ['Rail length'],
  deepestLine: ['Deepest line', 'off center'],
  bladeMiddle: ["Blade's middle", 'off center'],
  nearFlat: ['Flat by the near rail'],
  farFlat: ['Flat by the far rail'],
  web: ['Web', 'left above the cove'],
  arcLength: ['Along the curve', 'to smooth'],
  leastRadius: ['Sanding dowel', 'at most'],
} as const satisfies Readonly<Record<string, readonly [what: string, detail?: string]>>;

export type FactName = keyof typeof NAMES;

export interface Fact {
  readonly label: string;
  readonly value: string;
  /** May stand beside the value, or below it. */
  readonly note?: string;
}

type NotedName =
  'approach' | 'approachFromFront' | 'tilt' | 'diameter' | 'kerf' | 'feed' | 'spacing';

export type SetUpFacts = Readonly<Record<Exclude<FactName, NotedName | 'railLength'>, Fact>> &
  Readonly<Record<NotedName, Required<Fact>>> & {
    /** Absent where the shop gives no table. */
    readonly railLength?: Fact;
  };

/** What a fact is called without its detail: `Approach`. */
export function factName(name: FactName): string {
  return NAMES[name][0];
}

/** `Approach, from the blade line`. */
export function factLabel(name: FactName): string {
  return NAMES[name].join(', ');
}

/** Over or beside a bare number: `Approach, degrees from the blade line`. */
export function labelInDegrees(name: 'approach' | 'approachFromFront' | 'tilt'): string {
  const [what, detail] = NAMES[name];
  return `${what}, degrees ${detail}`;
}

/** `Web, left above the cove (mm)`. */
export function labelInUnit(name: FactName, unit: LengthUnit): string {
  return `${factLabel(name)} (${unit})`;
}

/** Every fact of a set-up but its rails' marks and the heights of its passes, in words as this shop reads lengths. */
export function setUpFacts(setUp: SetUp, shop: SawShop): SetUpFacts {
  const { setting, blade, rails, flats, cut } = setUp;
  const approach = toDegrees(setting.approach);
  const tilt = toDegrees(setting.tilt);
  const say = (degrees: number): string => formatDegrees(degrees, shop.decimalSign);
  const mark = (inches: number): string => formatMark(inches, shop.unit, shop.decimalSign);
  const fact = (name: FactName, value: string): Fact => ({ label: factLabel(name), value });
  const noted = (name: NotedName, value: string, note: string): Required<Fact> => ({
    label: factLabel(name),
    value,
    note,
  });
  const isUpright = tilt === 0;
  const spacing = rails?.spacing ?? flats.near + cut.width + flats.far;
  return {
    approach: noted('approach', say(approach), 'between the line of the blade and the rails'),
    approachFromFront: noted(
      'approachFromFront',
      say(90 - approach),
      "the same rails, measured from the table's front edge",
    ),
    tilt: noted(
      'tilt',
      say(tilt),
      isUpright ? 'it stands upright' : `its top to the ${shop.tiltSide}`,
    ),
    height: fact('height', printBoth(setting.height, shop)),
    passes: fact('passes', String(setUp.passHeights.length)),
    diameter: noted('diameter', printBoth(blade.diameter, shop), 'measure it'),
    kerf: noted('kerf', printBoth(blade.kerf, shop), 'measure it'),
    // A centered cove has no deep side.
    feed: noted(
      'feed',
      feedFor(shop.tiltSide),
      isUpright ? 'as it is marked' : 'deep side at the far rail',
    ),
    spacing: noted('spacing', mark(spacing), 'the blank just free'),
    ...(rails === undefined ? {} : { railLength: railLength(rails, mark) }),
    deepestLine: fact('deepestLine', sayLine(cut.offCenter, shop)),
    bladeMiddle: fact('bladeMiddle', sayLine(cut.bladeMiddle, shop)),
    nearFlat: fact('nearFlat', mark(flats.near)),
    farFlat: fact('farFlat', mark(flats.far)),
    web: fact('web', mark(setUp.web)),
    arcLength: fact('arcLength', mark(setUp.arcLength)),
    leastRadius: {
      ...fact('leastRadius', `${sayLeastRadius(setUp.leastRadius, shop.unit)} radius`),
      note: 'a dowel, or a curved scraper, no rounder reaches all of the cove',
    },
  };
}

/** How far a line lies from the middle of the cove at its face, toward the far rail. */
function sayLine(inches: number, reading: LengthReading): string {
  return inches > LIMIT_SLACK_INCHES ? printBoth(inches, reading) : 'in the middle';
}

/** Where a cove is deepest, as it was asked for: `3/8" (0.375 in) off center`. */
export function sayOffCenter({ offCenter, offCenterTo }: Cove, reading: LengthReading): string {
  if (offCenter === 0) return 'centered';
  const size = printBoth(offCenter, reading);
  return offCenterTo === 'blade middle'
    ? `the blade's middle ${size} off center`
    : `${size} off center`;
}

function railLength({ railLength: inches }: RailLayout, mark: (inches: number) => string): Fact {
  const lip = `${mark(CLAMP_LIP_INCHES)} to clamp each end`;
  return { label: `${factLabel('railLength')}, ${lip}`, value: `at least ${mark(inches)}` };
}

/** Rounded down, so that what is no rounder reaches everywhere: to 1/16 in, or to a millimetre. */
export function sayLeastRadius(inches: number, unit: LengthUnit): string {
  if (unit === 'mm') {
    const whole = Math.floor(inches * MM_PER_INCH);
    return whole === 0 ? 'under 1 mm' : `${whole} mm`;
  }
  if (inches < 1 / 16) return 'under 1/16"';
  return formatInches(inches, { denominator: 16, marks: 'inch mark', rounding: 'down' });
}

/** Why there are no marks for the rails. */
export const NO_TABLE =
  'No marks: Shop does not say how far the table reaches before and behind the arbor (table front, table back).';

export const BY_SCALES = 'Set by the scales of this saw';

/** What the scales of the saw can be set to: `30° from the blade line (60° from the front edge), …`. */
export function sayScales({ scale: { rounded } }: SetUp, { decimalSign }: LengthReading): string {
  const say = (degrees: number): string => formatDegrees(degrees, decimalSign);
  const approach = toDegrees(rounded.approach);
  return `${say(approach)} from the blade line (${say(90 - approach)} from the front edge), tilt ${say(toDegrees(rounded.tilt))} from upright`;
}

/** What is then cut. */
export function sayScaledCove(
  { scale: { cut, offCenter } }: SetUp,
  reading: LengthReading,
): string {
  return `${printDecimal(cut.width, reading)} wide, ${printDecimal(offCenter, reading)} off center`;
}
