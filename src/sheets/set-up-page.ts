/** The page of one cove: the saw, the rails, the passes, what the scales do to it, its cautions. */
import { sayWhere } from '../core/faults/fault.ts';
import { CLAMP_LIP_INCHES, feedFor } from '../core/cove/rails.ts';
import { toDegrees } from '../core/units/angle.ts';
import type { LengthUnit } from '../core/faults/quantity.ts';
import type { JobPlan, ProfilePlan } from '../planning/job-plan.ts';
import type { Profile } from '../planning/job.ts';
import type { SetUp } from '../planning/plan-setup.ts';
import { addCrown, addFact } from './crown-corners.ts';
import {
  count,
  printBoth,
  printDecimal,
  printDegrees,
  printExact,
  printMark,
} from './print-length.ts';
import { addRailMarks } from './rail-marks.ts';
import { addPassList } from './pass-list.ts';
import type { SheetDraft } from './sheet-draft.ts';

export const SET_UP_COLUMNS = [32, 11, 12, 12, 12, 11, 12, 13].map((width) => ({ width }));

export function addSetUp(
  draft: SheetDraft,
  plan: JobPlan,
  planned: ProfilePlan,
  setUp: SetUp,
): void {
  const { profile, sticks } = planned;
  const { unit } = plan.job.shop;
  draft.spread(profile.name, 'title');
  draft.spread(sayCove(profile, sticks.length, unit), 'wrapped');
  if (profile.note !== '') draft.spread(profile.note, 'note');
  addSaw(draft, plan, setUp);
  addRails(draft, plan, setUp);
  addPassList(draft, setUp.passHeights, unit);
  addScales(draft, setUp, unit);
  addBlank(draft, setUp, unit);
  addCrown(draft, plan, profile);
  addOwnCautions(draft, plan, profile);
}

function sayCove(profile: Profile, blanks: number, unit: LengthUnit): string {
  const { cove, blankWidth, blankThickness, species } = profile;
  if (cove === undefined || blankWidth === undefined || blankThickness === undefined) return '';
  const center =
    cove.offCenter === 0 ? 'centered' : `${printBoth(cove.offCenter, unit)} off center`;
  const wood = species === '' ? '' : ` of ${species}`;
  const size = `${printExact(blankWidth, unit)} wide, ${printExact(blankThickness, unit)} thick`;
  return `Cove ${printBoth(cove.width, unit)} wide, ${printBoth(cove.depth, unit)} deep, ${center}. ${count(blanks, 'blank')}${wood}, ${size}.`;
}

function addSaw(draft: SheetDraft, plan: JobPlan, { blade, setting }: SetUp): void {
  const { unit, tiltSide } = plan.job.shop;
  const approach = toDegrees(setting.approach);
  const tilt = toDegrees(setting.tilt);
  const feed = feedFor(tiltSide);
  draft.spread('Set the saw', 'section');
  addFact(
    draft,
    'Approach, from the blade line',
    printDegrees(approach),
    'between the line of the blade and the rails',
  );
  addFact(
    draft,
    'Approach, from the front edge',
    printDegrees(90 - approach),
    "the same rails, measured from the table's front edge",
  );
  const leaning =
    tilt === 0 ? 'the blade stands upright' : `from upright, its top to the ${tiltSide}`;
  addFact(draft, 'Tilt of the blade', printDegrees(tilt), leaning);
  addFact(
    draft,
    'Height of the blade',
    printBoth(setting.height, unit),
    'highest tooth above the table, at the last pass',
  );
  addFact(
    draft,
    'Blade',
    printBoth(blade.diameter, unit),
    `diameter, and a kerf of ${printBoth(blade.kerf, unit)}: measure both`,
  );
  const hand =
    tilt === 0 ? `${feed} (upright: either way would do, the marks are for this one)` : feed;
  // A centered cove has no deep side.
  const deep = tilt === 0 ? '' : '; deep side toward the far rail';
  addFact(draft, 'Feed', 'front to back', `${hand}${deep}`);
}

function addRails(draft: SheetDraft, plan: JobPlan, { rails, flats, cut }: SetUp): void {
  const { unit } = plan.job.shop;
  draft.spread('Rails', 'section');
  if (rails === undefined) {
    const spacing = flats.near + cut.width + flats.far;
    addFact(
      draft,
      'Between the faces of the rails',
      printMark(spacing, unit),
      'the width of the blank',
    );
    draft.spread(
      'No marks: Shop does not say how far the table reaches before and behind the arbor (table front, table back).',
      'note',
    );
    return;
  }
  addRailMarks(draft, rails, unit);
  addFact(
    draft,
    'Between the faces of the rails',
    printMark(rails.spacing, unit),
    'the width of the blank, just free to slide',
  );
  addFact(
    draft,
    'Length of each rail, at least',
    printMark(rails.railLength, unit),
    `past both edges of the table, with ${printMark(CLAMP_LIP_INCHES, unit)} for a clamp at each end`,
  );
}

/** What setting the saw by its scales makes of the cove. */
function addScales(draft: SheetDraft, { scale }: SetUp, unit: LengthUnit): void {
  const { rounded, cut, widthChange, offCenterChange, perHalfDegree } = scale;
  const approach = toDegrees(rounded.approach);
  const tilt = toDegrees(rounded.tilt);
  const text = `${printDegrees(approach)} and ${printDegrees(tilt)}`;
  draft.spread('Set by the scales of this saw', 'section');
  addFact(
    draft,
    'Approach and tilt, rounded',
    text,
    `from the blade line (${printDegrees(90 - approach)} from the front edge); from upright`,
  );
  addFact(
    draft,
    'Then it cuts',
    printDecimal(cut.width, unit),
    `wide (${sayChange(widthChange, unit)}), ${printDecimal(cut.offCenter, unit)} off center (${sayChange(offCenterChange, unit)})`,
  );
  for (const [name, change] of [
    ['Half a degree more approach', perHalfDegree.approach],
    ['Half a degree more tilt', perHalfDegree.tilt],
  ] as const) {
    const rest = `of width; off center ${sayChange(change.offCenter, unit)}`;
    addFact(draft, name, sayChange(change.width, unit), rest);
  }
}

function sayChange(inches: number, unit: LengthUnit): string {
  const size = printDecimal(Math.abs(inches), unit);
  if (Number.parseFloat(size) === 0) return 'no change';
  return `${size} ${inches < 0 ? 'less' : 'more'}`;
}

function addBlank(draft: SheetDraft, { flats, web, arcLength }: SetUp, unit: LengthUnit): void {
  draft.spread('The cove in its blank', 'section');
  addFact(
    draft,
    'Flats that ride on the table',
    printMark(flats.near, unit),
    `by the near rail; ${printMark(flats.far, unit)} by the far rail`,
  );
  addFact(draft, 'Web', printBoth(web, unit), 'stock left above the cove at its deepest');
  addFact(
    draft,
    'Along the curve',
    printMark(arcLength, unit),
    'from edge to edge of the cove: what is scraped and sanded',
  );
}

/** Cautions that were found at this profile's own row. */
function addOwnCautions(draft: SheetDraft, plan: JobPlan, profile: Profile): void {
  const here = sayWhere(profile.where);
  const own = plan.cautions.filter(({ where }) => where !== undefined && sayWhere(where) === here);
  if (own.length === 0) return;
  draft.spread('Mind with this cove', 'section');
  for (const { message } of own) draft.spread(message, 'caution');
}
