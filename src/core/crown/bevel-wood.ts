/**
 * The least wood between a crown's cove and its two back bevels. Derived: each bevel begins at an arris
 * of the face, without a lip, and leans off the back by its angle β: a place x in from that edge and z
 * above the face lies x sin β - z cos β before it. Toward the near edge x is near(z) plus the near flat,
 * and near (cut.ts) is convex in z; toward the far edge it is the far flat less far(z), and far is
 * concave: the wood is convex in the level, and its least is found by parting the levels in thirds.
 * It takes the blade's own outline, not an arc.
 */
import { fault, type Caution, type Fault } from '../faults/fault.ts';
import type { Blade, Setting } from '../cove/cove.ts';
import { COVE_SIZES } from '../cove/cove-sizes.ts';
import { edgesOf } from '../cove/cut.ts';
import { upTo64th } from '../cove/stock.ts';
import { LIMIT_SLACK_INCHES } from '../units/tolerance.ts';
import type { BackBevels } from './crown-size.ts';

/** Which edge of the cove lies on the wall. */
export type WallEdge = 'near' | 'far';

/** Least wood between the cove and either bevel, by the edge that lies on the wall; below 0 a bevel breaks through. Inches. */
export type BevelWood = Readonly<Record<WallEdge, number>>;

interface Flats {
  readonly near: number;
  readonly far: number;
}

/** Each parting keeps two thirds of the levels: the level is then known to a double's half digits, the wood to all. */
const PARTINGS = 50;

/** @param flats beside the cove at the face, inches */
export function computeBevelWood(
  blade: Blade,
  setting: Setting,
  flats: Flats,
  bevels: BackBevels,
): BevelWood {
  const wood = woodBeside(blade, setting, flats);
  return {
    near: Math.min(wood.near(bevels.wall), wood.far(bevels.ceiling)),
    far: Math.min(wood.near(bevels.ceiling), wood.far(bevels.wall)),
  };
}

function woodBeside(
  blade: Blade,
  setting: Setting,
  flats: Flats,
): Record<WallEdge, (bevel: number) => number> {
  const edgesAt = edgesOf(blade, setting);
  const face = edgesAt(0);
  const fromEdge = {
    near: (level: number) => edgesAt(level).near - face.near + flats.near,
    far: (level: number) => face.far - edgesAt(level).far + flats.far,
  };
  const beside = (edge: WallEdge) => (bevel: number) =>
    leastOf(
      (level) => fromEdge[edge](level) * Math.sin(bevel) - level * Math.cos(bevel),
      setting.height,
    );
  return { near: beside('near'), far: beside('far') };
}

/** The least of a convex function on [0, high]. */
function leastOf(of: (at: number) => number, high: number): number {
  let [from, to] = [0, high];
  for (let parting = 0; parting < PARTINGS; parting++) {
    const third = (to - from) / 3;
    if (of(from + third) < of(to - third)) to -= third;
    else from += third;
  }
  return Math.min(of(0), of(high), of((from + to) / 2));
}

/**
 * Whether both back bevels leave wood to the cove: at least the least flat. (The least web is for the
 * board at the saw, pressed on a turning blade; the bevels are cut after the cove, and what they leave
 * is the edge beside it, which is what the least flat stands for.) Where one of the two ways round alone
 * leaves enough, a caution says which edge goes on the wall.
 */
export function checkBevels(
  blade: Blade,
  setting: Setting,
  flats: Flats & { readonly midway: boolean },
  bevels: BackBevels,
  leastFlat: number,
): { readonly faults: readonly Fault[]; readonly cautions: readonly Caution[] } {
  const wood = computeBevelWood(blade, setting, flats, bevels);
  const isEnough = (edge: WallEdge): boolean => wood[edge] >= leastFlat - LIMIT_SLACK_INCHES;
  const limit = { inches: leastFlat };
  if (isEnough('near') && isEnough('far')) return { faults: [], cautions: [] };
  if (isEnough('near') || isEnough('far')) {
    const [onWall, other] = isEnough('near')
      ? (['near', 'far'] as const)
      : (['far', 'near'] as const);
    const details = { onWall };
    const given = { inches: wood[other] };
    return {
      faults: [],
      cautions: [fault('crown.bevel-one-way', 'crown', given, { limit, details })],
    };
  }
  const ways = (['near', 'far'] as const).map((edge) =>
    flatsThatWould(blade, setting, flats, bevels, leastFlat, edge),
  );
  const total = (way: Flats): number => way.near + way.far;
  const [one, other] = ways as [Flats, Flats];
  const best = total(other) < total(one) - LIMIT_SLACK_INCHES ? other : one;
  const edges = edgesOf(blade, setting)(0);
  const details = {
    widthThatWould: { inches: upTo64th(edges.far - edges.near + total(best)) },
    ...(flats.midway ? {} : { nearFlat: { inches: best.near } }),
  };
  const given = { inches: Math.max(wood.near, wood.far) };
  const argument = COVE_SIZES.blankWidth.key;
  return {
    faults: [fault('crown.bevel-too-near', argument, given, { limit, details })],
    cautions: [],
  };
}

/** As wide as they are, or as the bevels need: a wider flat moves its arris off by as much · sin β. */
function flatsThatWould(
  blade: Blade,
  setting: Setting,
  flats: Flats & { readonly midway: boolean },
  { wall, ceiling }: BackBevels,
  leastFlat: number,
  onWall: WallEdge,
): Flats {
  const wood = woodBeside(blade, setting, flats);
  const flatFor = (edge: WallEdge): number => {
    const bevel = edge === onWall ? wall : ceiling;
    const lacks = Math.max(0, leastFlat - wood[edge](bevel));
    return lacks === 0 ? flats[edge] : upTo64th(flats[edge] + lacks / Math.sin(bevel));
  };
  const [near, far] = [flatFor('near'), flatFor('far')];
  // Midway in its blank the cove has both flats alike.
  return flats.midway ? { near: Math.max(near, far), far: Math.max(near, far) } : { near, far };
}
