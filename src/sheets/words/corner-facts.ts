/** The corners of a molding that leans against its wall, and how a saw stands for each: flat, and nested. */
import { computeCrownCut } from '../../core/crown/crown-cut.ts';
import { computeNestedCut } from '../../core/crown/nested-cut.ts';
import { degrees, toDegrees, toRadians, type Degrees } from '../../core/units/angle.ts';
import { formatDegrees } from '../../core/units/format-mark.ts';
import type { DecimalSign } from '../../core/units/format-number.ts';
import type { SetUpJob } from '../../planning/job-plan.ts';
import { sameName, type Profile } from '../../planning/job.ts';
import type { Piece } from '../../planning/piece.ts';
import { count } from './print-length.ts';

const MOST_NESTED = 2;

export const CORNER_TITLE = 'Crown on the saw: flat on its back, or nested';
/** Over corner, miter and bevel. */
export const CORNER_HEADS = [
  'Corner of the walls, and its ends',
  'Miter, from square',
  'Bevel, from upright',
] as const;

export interface CornerFacts {
  /** Flat on its back; none where the pieces turn no corner. */
  readonly corners: readonly {
    readonly label: string;
    readonly miter: string;
    readonly bevel: string;
  }[];
  /** Nested, in one line. */
  readonly nested?: string;
}

/** Of the pieces that are still to be made; undefined without a spring angle. */
export function cornerFacts(plan: SetUpJob, profile: Profile): CornerFacts | undefined {
  const { spring } = profile;
  if (spring === undefined) return undefined;
  const { decimalSign } = plan.job.shop;
  const corners = listCorners(plan.pieces.filter((one) => isLive(one, profile)));
  const nested = nestedLine(corners, decimalSign);
  return {
    corners: corners.flatMap((corner) => sayCorner(spring, corner, decimalSign)),
    ...(nested === undefined ? {} : { nested }),
  };
}

/** The corners that the pieces of a profile turn, each once, with how many ends turn it. */
interface Corner {
  readonly kind: 'inside' | 'outside' | 'return';
  readonly cornerDeg: number;
  ends: number;
}

function sayCorner(
  spring: Degrees,
  { kind, cornerDeg, ends }: Corner,
  decimalSign: DecimalSign,
): CornerFacts['corners'] {
  const cut = computeCrownCut({ spring: toRadians(spring), corner: toRadians(degrees(cornerDeg)) });
  if (!cut.ok) return [];
  const say = (angle: Degrees): string => formatDegrees(angle, decimalSign);
  const how = { inside: 'inside, miter or cope', outside: 'outside', return: 'return to the wall' };
  return [
    {
      label: `${say(degrees(cornerDeg))}, ${how[kind]}: ${count(ends, 'end')}`,
      miter: say(toDegrees(cut.value.miter)),
      bevel: say(toDegrees(cut.value.bevel)),
    },
  ];
}

/**
 * Nested it takes the same miter in and out, and an upright blade. A page of set-ups has room for one
 * line of it: beyond two measures of corners that is the rule.
 */
function nestedLine(corners: readonly Corner[], decimalSign: DecimalSign): string | undefined {
  const measures = [...new Set(corners.map(({ cornerDeg }) => cornerDeg))];
  if (measures.length === 0) return undefined;
  const say = (angle: number): string => formatDegrees(angle, decimalSign);
  const miters = measures
    .sort((one, other) => one - other)
    .flatMap((cornerDeg) => {
      const cut = computeNestedCut({ corner: toRadians(degrees(cornerDeg)) });
      return cut.ok ? [`${say(toDegrees(cut.value.miter))} at ${say(cornerDeg)}`] : [];
    });
  const said = miters.length > MOST_NESTED ? '90° less half of the corner' : miters.join(', ');
  return `Nested, upside down, the blade upright: miter ${said}`;
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
