/** What a molding at a spring angle needs for its corners: miter and bevel for each, flat and nested. */
import type { BevelWood } from '../../core/crown/bevel-wood.ts';
import { computeBackBevels } from '../../core/crown/crown-size.ts';
import { toDegrees, toRadians, type Degrees } from '../../core/units/angle.ts';
import type { ProfilePlan, SetUpJob } from '../../planning/job-plan.ts';
import { crownSizeOf } from '../../planning/crown-size-of.ts';
import type { Profile } from '../../planning/job.ts';
import { formatDegrees, formatMark } from '../../core/units/format-mark.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { nameStyle } from '../grammar/name-style.ts';
import { CORNER_HEADS, CORNER_TITLE, cornerFacts } from '../words/corner-facts.ts';
import { addSlope } from './slope-cuts.ts';
import { addParts, leftRow, leftText, rightFact, rightText, type Part } from './set-up-columns.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';

/** The cove is cut on a blank of square edges. */
const LEANS = 'How it leans, and its bevels';

/** Adds the table of corners, with drop, projection and back bevels; nothing without a spring angle. */
export function addCrown(
  draft: SheetDraft,
  plan: SetUpJob,
  profile: Profile,
  bevelWood?: BevelWood,
): void {
  const { spring } = profile;
  if (spring === undefined) return;
  const { corners = [], nested } = cornerFacts(plan, profile) ?? {};
  const [corner, miter, bevel] = CORNER_HEADS;
  const heads = leftRow(
    cell(corner, 'heading'),
    cell(miter, 'headingRight'),
    cell(bevel, 'headingRight'),
  );
  const rows = [
    ...corners.map((one) =>
      leftRow(
        cell(one.label, 'row'),
        cell(one.miter, 'figureRight'),
        cell(one.bevel, 'figureRight'),
      ),
    ),
    ...(nested === undefined ? [] : [leftText(nested, 'row')]),
  ];
  addParts(
    draft,
    [leftText(CORNER_TITLE, 'section'), ...(rows.length === 0 ? [] : [heads, ...rows])],
    [rightText(LEANS, 'section'), ...leaning(spring, profile, bevelWood, plan.job.shop)],
  );
}

/** The page of a molding that is bought: its corners, where it stands at a spring angle, and its slope. */
export function addBought(draft: SheetDraft, plan: SetUpJob, { profile }: ProfilePlan): void {
  const as = profile.spring === undefined ? 'for a slope' : 'at a spring angle';
  draft.spread(profile.name, nameStyle(profile.name));
  draft.spread(`Bought ${as}: no cove to cut, corners to miter`, 'subtitle');
  draft.blank();
  addCrown(draft, plan, profile);
  addSlope(draft, profile, plan.job.shop);
}

function leaning(
  spring: Degrees,
  profile: Profile,
  bevelWood: BevelWood | undefined,
  { unit, decimalSign }: LengthReading,
): Part[] {
  const say = (angle: Degrees): string => formatDegrees(angle, decimalSign);
  const mark = (inches: number): string => formatMark(inches, unit, decimalSign);
  const facts = [rightFact('Spring angle, from the wall', say(spring))];
  const { drop, projection } = crownSizeOf(profile);
  if (drop !== undefined) facts.push(rightFact('Drop, down the wall', mark(drop)));
  if (projection !== undefined) {
    facts.push(rightFact('Projection, along the ceiling', mark(projection)));
  }
  const bevels = computeBackBevels({ spring: toRadians(spring) });
  if (bevels.ok) {
    const { wall, ceiling } = bevels.value;
    facts.push(rightFact('Wall bevel, from the back', say(toDegrees(wall))));
    facts.push(rightFact('Ceiling bevel, from the back', say(toDegrees(ceiling))));
  }
  if (bevelWood !== undefined) {
    // Whichever edge goes on the wall.
    const least = Math.min(bevelWood.near, bevelWood.far);
    facts.push(rightFact('Least wood, bevels to cove', mark(least)));
  }
  return facts;
}
