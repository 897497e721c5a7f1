/**
 * What a molding needs that goes up a sloped ceiling along its wall, in words: the cuts where it turns with the
 * ceiling, and how its raked profile reaches that meets a level one round an outside corner.
 */
import { computeNestedSlopedCut } from '../../core/crown/nested-cut.ts';
import { rakedWays, type RakedWay } from '../../core/crown/raked-profile.ts';
import { computeSlopedCut, slopedCorner, type SlopeMeets } from '../../core/crown/sloped-cut.ts';
import type { CrownCut } from '../../core/crown/crown-cut.ts';
import { toDegrees, toRadians, type Degrees, type Radians } from '../../core/units/angle.ts';
import { formatDegrees, formatMark } from '../../core/units/format-mark.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { crownSizeOf } from '../../planning/crown-size-of.ts';
import type { Profile } from '../../planning/job.ts';
import { SHEET_NAMES } from '../plan-anchors.ts';
import type { Fact } from './set-up-facts.ts';

/** The cuts of one kind of turn, in words. */
export interface SlopeTurn {
  /** `Level to slope, 172.8° in the wall's plane`. */
  readonly label: string;
  readonly miter: string;
  readonly bevel: string;
}

export interface SlopeFacts {
  /** `Up a slope of 18.43° from level, on its back`. */
  readonly title: string;
  /** Lying flat on its back. */
  readonly turns: readonly SlopeTurn[];
  /** How the same is cut nested, and which edge of a piece is the longer one. */
  readonly notes: readonly string[];
  /** Heights of the raked profiles that meet the level one, and where they are drawn. */
  readonly raked: readonly Fact[];
  readonly rakedTitle: string;
}

const MEETS: Readonly<Record<SlopeMeets, string>> = {
  level: 'level to slope',
  slope: 'slope to slope',
};
const TURNS: Readonly<Record<SlopeMeets, string>> = {
  level: 'Level to slope',
  slope: 'Slope to slope',
};
const BOTH = ['level', 'slope'] as const;

/** Undefined for a molding that stays level. */
export function slopeFacts(profile: Profile, reading: LengthReading): SlopeFacts | undefined {
  const { slope, spring } = profile;
  if (slope === undefined) return undefined;
  const pitch = toRadians(slope);
  const say = (angle: Radians): string => formatDegrees(toDegrees(angle), reading.decimalSign);
  const turns = BOTH.flatMap((meets): SlopeTurn[] => {
    const cut = flatCut(spring, pitch, meets);
    if (cut === undefined) return [];
    const corner = say(slopedCorner(pitch, meets));
    const label = `${TURNS[meets]}, ${corner} in the wall's plane`;
    return [{ label, miter: say(cut.miter), bevel: say(cut.bevel) }];
  });
  return {
    title: `Up a slope of ${say(pitch)} from level, flat on its back`,
    turns,
    notes: [...sayNested(profile, pitch, say), ...sayLongEdge(profile, pitch, reading)],
    raked: [
      ...sayRaked(profile, pitch, reading),
      profile.make === 'buy' ? POINT_BY_POINT : AT_FULL_SIZE,
    ],
    rakedTitle: 'Raked, round a square outside corner',
  };
}

/** A molding without a spring lies on the saw as it does on the wall: an upright blade halves the corner. */
function flatCut(
  spring: Degrees | undefined,
  pitch: Radians,
  meets: SlopeMeets,
): CrownCut | undefined {
  if (spring === undefined) {
    const standing = computeNestedSlopedCut({ pitch, meets });
    return standing.ok ? { miter: standing.value.bevel, bevel: standing.value.miter } : undefined;
  }
  const cut = computeSlopedCut({ spring: toRadians(spring), pitch, meets });
  return cut.ok ? cut.value : undefined;
}

function sayNested({ spring }: Profile, pitch: Radians, say: (angle: Radians) => string): string[] {
  if (spring === undefined) return [];
  const tilts = BOTH.flatMap((meets) => {
    const cut = computeNestedSlopedCut({ pitch, meets });
    return cut.ok ? [`${say(cut.value.bevel)} ${MEETS[meets]}`] : [];
  });
  return [`Nested, upside down, the miter square: bevel from upright ${tilts.join(', ')}.`];
}

/** Drop down the wall; the width of what stands upright. */
function dropOf(profile: Profile): number | undefined {
  if (profile.spring !== undefined) return crownSizeOf(profile).drop;
  return profile.blankWidth === undefined ? undefined : Number(profile.blankWidth);
}

function projectionOf(profile: Profile): number | undefined {
  if (profile.spring !== undefined) return crownSizeOf(profile).projection;
  return profile.blankThickness === undefined ? undefined : Number(profile.blankThickness);
}

/** Both edges of a piece end in the plane that halves the corner, so they differ by the drop · tan of half the turn. */
function sayLongEdge(profile: Profile, pitch: Radians, reading: LengthReading): string[] {
  const drop = dropOf(profile);
  if (drop === undefined) return [];
  const [level, slope] = [1, 2].map((turns) =>
    formatMark(drop * Math.tan((turns * pitch) / 2), reading.unit, reading.decimalSign),
  );
  return [
    `At such an end the lower edge is the longer one where the molding turns up, the upper one where it turns down: by ${level} ${MEETS.level}, ${slope} ${MEETS.slope}. In Runs give its long point (Measured as), with a square end there.`,
  ];
}

/** From the lower edge to the upper one; of what stands upright, to the top of its face. */
function sayRaked(profile: Profile, pitch: Radians, reading: LengthReading): Fact[] {
  const [drop, projection] = [dropOf(profile), projectionOf(profile)];
  if (drop === undefined || projection === undefined) return [];
  const spring = profile.spring === undefined ? undefined : toRadians(profile.spring);
  const ways = rakedWays(pitch, spring);
  const facts = ways.map(({ way, slope }): Fact => {
    // The face of what stands upright is as far out below as above.
    const out = spring === undefined ? 0 : projection;
    const height = drop * Math.cos(slope) + out * Math.sin(slope);
    return {
      label: HEIGHT[way],
      value: formatMark(height, reading.unit, reading.decimalSign),
    };
  });
  return ways.length === 2 ? facts : [...facts, { label: NO_FALLING, value: 'none' }];
}

/** Square to the slope, from the lower edge to the upper. */
const HEIGHT: Readonly<Record<RakedWay, string>> = {
  rising: 'Rising, lower edge to upper',
  falling: 'Falling, lower edge to upper',
};
/** A pattern; of a molding whose shape is as bought, the function that gives it point by point. */
const AT_FULL_SIZE: Fact = { label: 'At full size, as patterns', value: SHEET_NAMES.outlines };
const POINT_BY_POINT: Fact = { label: 'Shape as bought: each point by', value: 'COVE.RAKED' };
const NO_FALLING = 'Falling: too steep for it';
