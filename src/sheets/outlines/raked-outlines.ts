/** The raked profiles that a plan's coves need: which there are, and what is said over each. */
import type { WallEdge } from '../../core/crown/bevel-wood.ts';
import { rakedWays, type RakedWay } from '../../core/crown/raked-profile.ts';
import { toRadians, type Radians } from '../../core/units/angle.ts';
import { formatDegrees } from '../../core/units/format-mark.ts';
import type { LengthReading } from '../../core/units/length.ts';
import type { RakedView } from '../../drawings/raked-section.ts';
import type { CovePlan } from '../../planning/job-plan.ts';
import type { CoveProfile } from '../../planning/job.ts';
import { lowerEdges } from '../../planning/lower-edges.ts';
import type { Shop } from '../../planning/shop.ts';
import type { CellDescription } from '../grammar/description.ts';
import { nameStyle } from '../grammar/name-style.ts';
import { cell } from '../grammar/sheet-draft.ts';
import { MANUAL_CAUTION } from '../words/standing-cautions.ts';

export interface RakedOutline {
  readonly profile: CoveProfile;
  /** Behind the profile's name, in names of files and drawings: `raked rising`. */
  readonly name: string;
  readonly way: RakedWay;
  /** The edge of the level cove that is the lower one; absent where both are alike. */
  readonly lower?: WallEdge;
  readonly view: RakedView;
}

/** None for a cove that stays level. Where its sides differ, for each of them that may go down on the wall. */
export function listRaked({ profile, setUp }: CovePlan, shop: Shop): RakedOutline[] {
  if (profile.slope === undefined) return [];
  const { blade, setting, blank } = setUp;
  const spring: { spring?: Radians } =
    profile.spring === undefined ? {} : { spring: toRadians(profile.spring) };
  const lowers = lowerEdges(setUp, Number(shop.leastFlat));
  return rakedWays(toRadians(profile.slope), spring.spring).flatMap(({ way, slope }) =>
    lowers.map((lower): RakedOutline => {
      const edge = lower === undefined ? {} : { lower };
      const name = `raked ${way}${lower === undefined ? '' : `, ${lower} edge down`}`;
      const view = { blade, setting, blank, ...spring, lower: lower ?? 'near', slope };
      return { profile, name, way, ...edge, view };
    }),
  );
}

/** One cell a row; `part` counts from 1. */
export function rakedWords(
  { profile, way, lower }: RakedOutline,
  reading: LengthReading,
  part: number,
  parts: number,
): CellDescription[] {
  const which = parts > 1 ? `, part ${part} of ${parts}` : '';
  const angle = formatDegrees(profile.slope ?? 0, reading.decimalSign);
  const other = way === 'rising' ? 'falls' : 'rises';
  const edge = lower === undefined ? '' : `, ${lower} rail edge down`;
  const typed = profile.drop !== undefined || profile.projection !== undefined;
  return [
    cell(profile.name, nameStyle(profile.name)),
    cell(`Raked profile at full size, ${way}${edge}${which}: a pattern to be matched`, 'subtitle'),
    cell(MANUAL_CAUTION, 'caution'),
    cell(
      `For a molding that ${way === 'rising' ? 'rises' : 'falls'} ${angle} from level as it leaves an outside corner of 90°, or ${other} as it leaves an inside one, and meets the level one there in a miter. Its end is drawn square to its length, the wall at the left.`,
      'wrapped',
    ),
    cell(
      'Its curve is the level one stretched, which no set-up here cuts: shape the molding to the pattern by other means.',
      'wrapped',
    ),
    ...(typed
      ? [
          cell(
            "Its back is drawn from the edges of the face; Profiles' Drop and Projection don't change it.",
            'wrapped',
          ),
        ]
      : []),
    ...(parts > 1
      ? [
          cell(
            `The profile is wider than the paper: lay the ${parts} parts so that each joining line lies on the line of the same number, and tape them.`,
            'wrapped',
          ),
        ]
      : []),
    cell(
      'Hold it to the end of the level one first, and try the miter of both in scrap before any molding is cut.',
      'wrapped',
    ),
  ];
}

/** In place of a drawing that no page holds. */
export const RAKED_TOO_HIGH =
  'This profile is higher than the page, so it is not printed here. Set the paper larger, or use the outline saved as a file of its own.';
