/**
 * What a cove's page says: the saw, the rails and the passes beside the drawings, then what the
 * scales do to it, its blank, its corners and its cautions.
 */
import { sayWhere, type FaultCode } from '../../core/faults/fault.ts';
import { CLAMP_LIP_INCHES, feedFor } from '../../core/cove/rails.ts';
import { toDegrees } from '../../core/units/angle.ts';
import type { CovePlan, JobPlan } from '../../planning/job-plan.ts';
import type { CoveProfile, Profile } from '../../planning/job.ts';
import type { SetUp } from '../../planning/plan-setup.ts';
import type { Shop } from '../../planning/shop.ts';
import { tableSizeOf } from '../../planning/table-size.ts';
import { addCrown } from './crown-corners.ts';
import { passList, type PassSpan } from './pass-list.ts';
import { formatInches } from '../../core/units/format-length.ts';
import { formatDegrees, formatMark } from '../../core/units/format-mark.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { nameStyle } from '../grammar/name-style.ts';
import { SHEET_NAMES } from '../plan-anchors.ts';
import { count, printBoth, printDecimal, printExact } from '../words/print-length.ts';
import { railMarks } from './rail-marks.ts';
import { miterGauge } from './miter-gauge.ts';
import {
  addParts,
  leftFact,
  leftRow,
  leftText,
  rightFact,
  rightText,
  type Part,
  type Spacing,
} from './set-up-columns.ts';
import type { SetUpRows } from './set-up-drawings.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { MANUAL_CAUTION } from '../words/standing-cautions.ts';

/** The page's part beside the drawings, down to the passes shown. */
export function addAtTheSaw(
  draft: SheetDraft,
  plan: JobPlan,
  { profile, setUp, sticks }: CovePlan,
  spacing: Spacing,
  more?: { readonly passes: PassSpan; readonly note: string },
): SetUpRows {
  const { shop } = plan.job;
  const top = draft.next;
  const parts = [
    leftText(profile.name, nameStyle(profile.name)),
    leftText(sayCove(profile, sticks.length, shop), 'wrapped'),
    ...(profile.note === '' ? [] : [leftText(profile.note, 'note')]),
    leftText(MANUAL_CAUTION, 'caution'),
    ...(more === undefined ? [] : [leftText(more.note, 'note')]),
    ...saw(shop, setUp, spacing),
    ...rails(shop, setUp),
    ...miterGauge(shop, setUp),
    ...passList(setUp.passHeights, shop, spacing, more?.passes),
  ];
  addParts(draft, parts, [], spacing);
  return { top, spacer: draft.add() };
}

/** Below the drawings, all of the page's width: scales and blank, corners, cautions of its own. */
export function addBelow(
  draft: SheetDraft,
  plan: JobPlan,
  { profile, setUp }: CovePlan,
  spacing: Spacing,
): void {
  const { shop } = plan.job;
  addParts(draft, scales(setUp, shop), blank(setUp, shop), spacing);
  addCrown(draft, plan, profile, spacing);
  addOwnCautions(draft, plan, profile);
}

function sayCove(profile: CoveProfile, blanks: number, reading: LengthReading): string {
  const { cove, blankWidth, blankThickness, species } = profile;
  const center =
    cove.offCenter === 0 ? 'centered' : `${printBoth(cove.offCenter, reading)} off center`;
  const wood = species === '' ? '' : ` of ${species}`;
  const size = `${printExact(blankWidth, reading)} wide, ${printExact(blankThickness, reading)} thick`;
  return `Cove ${printBoth(cove.width, reading)} wide, ${printBoth(cove.depth, reading)} deep, ${center}. ${count(blanks, 'blank')}${wood}, ${size}. At full size: sheet ${SHEET_NAMES.outlines}.`;
}

function saw(shop: Shop, { blade, setting }: SetUp, spacing: Spacing): Part[] {
  const { tiltSide, decimalSign } = shop;
  const say = (degrees: number): string => formatDegrees(degrees, decimalSign);
  const approach = toDegrees(setting.approach);
  const tilt = toDegrees(setting.tilt);
  const feed = feedFor(tiltSide);
  const [diameter, kerf] = [blade.diameter, blade.kerf].map((inches) =>
    printBoth(inches, shop),
  ) as [string, string];
  const isUpright = tilt === 0;
  // A centered cove has no deep side.
  const hand = isUpright ? `${feed}, as it is marked` : `${feed}; deep side at the far rail`;
  const lean = isUpright ? 'it stands upright' : `its top to the ${tiltSide}`;
  return [
    leftText('Set the saw', 'section'),
    leftFact('Approach, from the blade line', say(approach)),
    leftFact('Approach, from the front edge', say(90 - approach)),
    leftFact('Tilt of the blade, from upright', `${say(tilt)}, ${lean}`),
    leftFact('Highest tooth above table, last pass', printBoth(setting.height, shop)),
    ...(spacing === 'close'
      ? [leftFact('Blade and kerf: measure both', `${diameter}, ${kerf}`)]
      : [leftFact('Blade diameter: measure it', diameter), leftFact('Kerf: measure it', kerf)]),
    leftFact('Feed, front to back', hand),
  ];
}

function rails(shop: Shop, { rails: layout, flats, cut }: SetUp): Part[] {
  const mark = (inches: number): string => formatMark(inches, shop.unit, shop.decimalSign);
  const table = tableSizeOf(shop);
  const title = leftText('Rails', 'section');
  const between = (inches: number): Part =>
    leftFact('Between the faces of the rails', `${mark(inches)}, the blank just free`);
  if (layout === undefined || table === undefined) {
    return [
      title,
      between(flats.near + cut.width + flats.far),
      leftText(
        'No marks: Shop does not say how far the table reaches before and behind the arbor (table front, table back).',
        'note',
      ),
    ];
  }
  const lip = mark(CLAMP_LIP_INCHES);
  const least = mark(layout.railLength);
  return [
    title,
    ...railMarks(layout, table, shop),
    between(layout.spacing),
    leftFact(`Rail length, ${lip} to clamp each end`, `at least ${least}`),
  ];
}

/** What setting the saw by its scales makes of the cove. */
function scales({ scale }: SetUp, reading: LengthReading): Part[] {
  const { rounded, cut, widthChange, offCenterChange, perHalfDegree } = scale;
  const approach = toDegrees(rounded.approach);
  const tilt = toDegrees(rounded.tilt);
  const say = (degrees: number): string => formatDegrees(degrees, reading.decimalSign);
  const row = (what: string, width: string, offCenter: string): Part =>
    leftRow(cell(what, 'row'), cell(width, 'row'), cell(offCenter, 'row'));
  return [
    leftText('Set by the scales of this saw', 'section'),
    leftRow(
      cell('Set so', 'heading'),
      cell('the cove is wide', 'heading'),
      cell('and off center', 'heading'),
    ),
    row(
      `${say(approach)} from the blade line (${say(90 - approach)} from the front edge), tilt ${say(tilt)} from upright`,
      `${printDecimal(cut.width, reading)}, ${sayChange(widthChange, reading)}`,
      `${printDecimal(cut.offCenter, reading)}, ${sayChange(offCenterChange, reading)}`,
    ),
    ...(['approach', 'tilt'] as const).map((which) => {
      const { width, offCenter } = perHalfDegree[which];
      return row(
        `Half a degree more ${which}`,
        sayChange(width, reading),
        sayChange(offCenter, reading),
      );
    }),
  ];
}

function sayChange(inches: number, reading: LengthReading): string {
  const size = printDecimal(Math.abs(inches), reading);
  if (!/[1-9]/u.test(size)) return 'no change';
  return `${size} ${inches < 0 ? 'less' : 'more'}`;
}

function blank(
  { flats, web, arcLength, leastRadius }: SetUp,
  { unit, decimalSign }: LengthReading,
): Part[] {
  const mark = (inches: number): string => formatMark(inches, unit, decimalSign);
  return [
    rightText('The cove in its blank', 'section'),
    rightFact('Flat by the near rail', mark(flats.near)),
    rightFact('Flat by the far rail', mark(flats.far)),
    rightFact('Web, left above the cove', mark(web)),
    rightFact('Along the curve, to smooth', mark(arcLength)),
    rightFact('Sanding dowel, at most', `${sayLeastRadius(leastRadius, unit)} radius`),
  ];
}

/** Rounded down, so that what is no rounder reaches everywhere: to 1/16 in, or to a millimetre. */
export function sayLeastRadius(inches: number, unit: LengthReading['unit']): string {
  if (unit === 'mm') {
    const whole = Math.floor(inches * 25.4);
    return whole === 0 ? 'under 1 mm' : `${whole} mm`;
  }
  if (inches < 1 / 16) return 'under 1/16"';
  return formatInches(inches, { denominator: 16, marks: 'inch mark', rounding: 'down' });
}

/** What the rows of the rails say already, with the marks to use instead. */
const SAID_BY_MARKS: readonly FaultCode[] = ['rails.off-table', 'rails.off-usual-table'];

/** Cautions that were found at this profile's own row. */
function addOwnCautions(draft: SheetDraft, plan: JobPlan, profile: Profile): void {
  const here = sayWhere(profile.where);
  const own = plan.cautions.filter(
    ({ code, where }) =>
      where !== undefined && sayWhere(where) === here && !SAID_BY_MARKS.includes(code),
  );
  if (own.length === 0) return;
  draft.spread('Mind with this cove', 'section');
  for (const { message } of own) draft.spread(message, 'caution');
}
