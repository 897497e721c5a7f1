/** What a molding at a spring angle needs for its corners: miter and bevel for each, flat and nested. */
import { computeCrownCut } from '../../core/crown/crown-cut.ts';
import { computeNestedCut } from '../../core/crown/nested-cut.ts';
import type { BevelWood } from '../../core/crown/bevel-wood.ts';
import { computeBackBevels } from '../../core/crown/crown-size.ts';
import { degrees, toDegrees, toRadians, type Degrees } from '../../core/units/angle.ts';
import type { JobPlan, ProfilePlan } from '../../planning/job-plan.ts';
import { crownSizeOf } from '../../planning/crown-size-of.ts';
import { sameName, type Profile } from '../../planning/job.ts';
import type { Piece } from '../../planning/piece.ts';
import { formatDegrees, formatMark } from '../../core/units/format-mark.ts';
import type { LengthReading } from '../../core/units/length.ts';
import type { DecimalSign } from '../../core/units/format-number.ts';
import { nameStyle } from '../grammar/name-style.ts';
import { count } from '../words/print-length.ts';
import { addSlope } from './slope-cuts.ts';
import {
  addParts,
  leftRow,
  leftText,
  rightFact,
  rightText,
  type Part,
  type Spacing,
} from './set-up-columns.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';

const MOST_NESTED = 2;
/** The cove is cut on a blank of square edges. */
const LEANS = 'How it leans; bevels come after the cove';

/** The corners that the pieces of a profile turn, each once, with how many ends turn it. */
interface Corner {
  readonly kind: 'inside' | 'outside' | 'return';
  readonly cornerDeg: number;
  ends: number;
}

/** Adds the table of corners, with drop, projection and back bevels; nothing without a spring angle. */
export function addCrown(
  draft: SheetDraft,
  plan: JobPlan,
  profile: Profile,
  bevelWood?: BevelWood,
  spacing: Spacing = 'roomy',
): void {
  const { spring } = profile;
  if (spring === undefined) return;
  const corners = listCorners(plan.pieces.filter((one) => isLive(one, profile)));
  const heads = leftRow(
    cell('Corner of the walls, and its ends', 'heading'),
    cell('Miter, from square', 'headingRight'),
    cell('Bevel, from upright', 'headingRight'),
  );
  const { decimalSign } = plan.job.shop;
  const rows = [
    ...corners.flatMap((corner) => cornerRow(spring, corner, decimalSign)),
    ...nestedLine(corners, decimalSign),
  ];
  const title = 'Crown on the saw: flat on its back, or nested';
  addParts(
    draft,
    [leftText(title, 'section'), ...(rows.length === 0 ? [] : [heads, ...rows])],
    [rightText(LEANS, 'section'), ...leaning(spring, profile, bevelWood, plan.job.shop)],
    spacing,
  );
}

/** The page of a molding that is bought: its corners, where it stands at a spring angle, and its slope. */
export function addBought(draft: SheetDraft, plan: JobPlan, { profile }: ProfilePlan): void {
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

function cornerRow(
  spring: Degrees,
  { kind, cornerDeg, ends }: Corner,
  decimalSign: DecimalSign,
): Part[] {
  const cut = computeCrownCut({ spring: toRadians(spring), corner: toRadians(degrees(cornerDeg)) });
  if (!cut.ok) return [];
  const { miter, bevel } = cut.value;
  const how = { inside: 'inside, miter or cope', outside: 'outside', return: 'return to the wall' };
  return [
    leftRow(
      cell(`${formatDegrees(cornerDeg, decimalSign)}, ${how[kind]}: ${count(ends, 'end')}`, 'row'),
      cell(formatDegrees(toDegrees(miter), decimalSign), 'rowRight'),
      cell(formatDegrees(toDegrees(bevel), decimalSign), 'rowRight'),
    ),
  ];
}

/**
 * Nested it takes the same miter in and out, and an upright blade. A page of set-ups has room for one
 * line of it: beyond two measures of corners that is the rule.
 */
function nestedLine(corners: readonly Corner[], decimalSign: DecimalSign): Part[] {
  const measures = [...new Set(corners.map(({ cornerDeg }) => cornerDeg))];
  if (measures.length === 0) return [];
  const say = (angle: number): string => formatDegrees(angle, decimalSign);
  const miters = measures
    .sort((one, other) => one - other)
    .flatMap((cornerDeg) => {
      const cut = computeNestedCut({ corner: toRadians(degrees(cornerDeg)) });
      return cut.ok ? [`${say(toDegrees(cut.value.miter))} at ${say(cornerDeg)}`] : [];
    });
  const said = miters.length > MOST_NESTED ? '90° less half of the corner' : miters.join(', ');
  return [leftText(`Nested, upside down, the blade upright: miter ${said}`, 'row')];
}

function isLive(piece: Piece, profile: Profile): boolean {
  return !piece.done && sameName(piece.profile, profile.name);
}

/** A cope begins as an inside miter; a return turns a right angle. */
function listCorners(pieces: readonly Piece[]): Corner[] {
  const found = new Map<string, Corner>();
  for (const { kind, cornerDeg } of pieces.flatMap((piece) => [piece.left, piece.right])) {
    if (kind === 'square') continue;
    const corner =
      kind === 'return'
        ? ({ kind: 'return', cornerDeg: 90 } as const)
        : ({ kind: kind === 'outside miter' ? 'outside' : 'inside', cornerDeg } as const);
    const key = `${corner.kind} ${corner.cornerDeg}`;
    const known = found.get(key);
    if (known === undefined) found.set(key, { ...corner, ends: 1 });
    else known.ends += 1;
  }
  return [...found.values()].sort(
    (one, other) => one.kind.localeCompare(other.kind, 'en') || one.cornerDeg - other.cornerDeg,
  );
}
