/** The pieces and the stock of a group of profiles as a problem of whole numbers for the stick planner. */
import { own } from '../core/faults/argument.ts';
import { fault, type Caution, type Fault } from '../core/faults/fault.ts';
import type { ExactInches } from '../core/units/length.ts';
import type { OffcutCredit, Rip, StickDemand, StickProblem } from '../cutting/problem/problem.ts';
import { endsOfPiece } from './cut/cut-already.ts';
import type { PreparedGroup, PreparedProfile } from './group-profiles.ts';
import { nameKey, type Profile } from './job.ts';
import { wantedJoints } from './joint-places.ts';
import type { Piece } from './piece.ts';
import { roundUp } from './pieces/cut-length.ts';
import type { Shop } from './shop.ts';
import { laborOfStrip } from './strip-labor.ts';
import { countStrips, planRips, shareStock, type Blank, type SharedStock } from './share-stock.ts';
import { spliceOverlap } from './splice-overlap.ts';
import { listRippedBlanks, stateRipped, type RippedBlank } from './cut/ripped-blanks.ts';
import { remainingOf, type UsedStock } from './used-stock.ts';
import type { StockUnit } from './stock-units.ts';

/** A trial cut is a cove too: its blank is never shorter than the shop's least. No spare where the shop's is 0. */
export function spareLength(shop: Shop): ExactInches | undefined {
  if (shop.setUpSpare.lte(0)) return undefined;
  const least = shop.setUpSpare.lt(shop.leastBlankLength) ? shop.leastBlankLength : shop.setUpSpare;
  return roundUp(least, shop.lengthPrecision);
}

/** A million units an inch: finer than any tape, and a mile of it is still a safe whole number. */
export const FINEST_UNIT = 1_000_000;

export interface StatedSupply extends SharedStock {
  /** As the problem has them. */
  readonly rips: readonly Rip[];
  /** Blanks of boards that are ripped and paid for already: what is planned of it opens none. */
  readonly ripped?: readonly RippedBlank[];
}

/** A problem for the stick planner, and what stands behind its ids. */
export interface StatedGroup {
  readonly problem: StickProblem;
  /** By the ids of the problem's supplies. */
  readonly supplies: ReadonlyMap<string, StatedSupply>;
  /** By the ids of the problem's blanks. */
  readonly blanks: ReadonlyMap<string, Blank>;
  readonly cautions: readonly Caution[];
}

/** The id under which a cove's set-up spare is planned. */
export function spareId(profile: Profile): string {
  return `${profile.name} / set-up spare`;
}

/**
 * A profile's id is its name; supplies and blanks have the ids that shareStock gives them. Offcuts
 * earn the shop's credit, see `creditOf`.
 *
 * @param used what earlier groups have used of each row of Stock
 */
export function stateProblem(
  group: PreparedGroup,
  used: UsedStock,
  shop: Shop,
): { stated: StatedGroup } | { fault: Fault } {
  const { supplies: shared, blanks } = shareStock(group);
  const ripped = listRippedBlanks(group, shared, blanks);
  const overlaps = new Map(group.map(({ profile }) => [profile, spliceOverlap(profile, shop)]));
  const unitsPerInch = commonUnit(lengthsOf(group, [...overlaps.values()], shop));
  if (unitsPerInch > FINEST_UNIT) {
    const limit = FINEST_UNIT;
    return {
      fault: fault('cutting.unit-too-fine', own(nameGroup(group)), unitsPerInch, { limit }),
    };
  }
  const whole = (length: ExactInches): number => Number(length.mul(unitsPerInch));
  const cautions: Caution[] = [];
  const supplies = shared.map((stock): StatedSupply => {
    const { rips, caution } = planRips(stock, blanks, shop.kerf);
    if (caution !== undefined) cautions.push(caution);
    return { ...stock, rips };
  });
  const blankIds = new Map(blanks.flatMap(({ id, profiles }) => profiles.map((one) => [one, id])));
  const problem: StickProblem = {
    unitsPerInch,
    kerf: whole(shop.crosscutKerf),
    endTrim: whole(shop.endTrim),
    demands: group.flatMap((one) => stateDemands(one, overlaps.get(one.profile), shop, whole)),
    supplies: [
      ...ripped.map((stock) => stateRipped(stock, whole)),
      ...supplies.map((stock) => {
        const { id, item, priceCents, rips } = stock;
        // Where one row stands twice, at two prices, its rack is counted once; it is never limited.
        const isFirst = supplies.find((one) => one.item === item) === stock;
        return {
          id,
          length: whole(item.length),
          priceCents,
          strips: Math.max(...rips.map(countStrips)),
          rips,
          ...(isFirst ? remainingOf(item, used) : { have: 0, buyMost: null }),
        };
      }),
    ],
    profiles: group.map((one) => {
      const overlap = overlaps.get(one.profile);
      const grid = whole(shop.lengthPrecision);
      const leastPart = roundUp(shop.leastPart, shop.lengthPrecision);
      const { profile, works, passes } = one;
      const labor = laborOfStrip(profile, works, passes, shop.hourlyRate, unitsPerInch);
      return {
        id: one.profile.name,
        blank: behind(blankIds, one.profile, `the blank of ${one.profile.name}`),
        ...(overlap === undefined
          ? {}
          : { splice: { overlap: whole(overlap), grid, leastPart: whole(leastPart) } }),
        ...creditOf(one.units, shop.offcutCredit, whole),
        ...(labor === undefined ? {} : { labor }),
      };
    }),
    keepOffcutsOver: whole(shop.keepOffcutsOver),
  };
  const all = byId<StatedSupply>([...ripped, ...supplies]);
  const stated = { problem, supplies: all, blanks: byId(blanks), cautions };
  return { stated };
}

function byId<One extends { readonly id: string }>(list: readonly One[]): ReadonlyMap<string, One> {
  return new Map(list.map((one) => [one.id, one]));
}

/** @throws RangeError where nothing stands behind an id */
export function behind<Key, One>(map: ReadonlyMap<Key, One>, id: Key, name: string): One {
  const found = map.get(id);
  if (found === undefined) throw new RangeError(`Nothing stands behind ${name}.`);
  return found;
}

/** `Cove`, or `Cove, Crown`. */
export function nameGroup(group: PreparedGroup): string {
  return group.map(({ profile }) => profile.name).join(', ');
}

function lengthsOf(
  group: PreparedGroup,
  overlaps: readonly (ExactInches | undefined)[],
  shop: Shop,
): readonly ExactInches[] {
  const spare = spareLength(shop);
  return [
    shop.crosscutKerf,
    shop.endTrim,
    shop.keepOffcutsOver,
    shop.lengthPrecision,
    ...group.flatMap(({ units, toPlan, partsLeft }) => [
      ...units.map(({ item }) => item.length),
      ...toPlan.map(({ cutLength }) => cutLength),
      ...partsLeft.map(({ length }) => length),
    ]),
    ...overlaps.flatMap((overlap) => overlap ?? []),
    ...(spare === undefined ? [] : [spare]),
  ];
}

function stateDemands(
  { profile, toPlan, partsLeft, needsSpare }: PreparedProfile,
  overlap: ExactInches | undefined,
  shop: Shop,
  whole: (length: ExactInches) => number,
): StickDemand[] {
  const spare = needsSpare ? spareLength(shop) : undefined;
  const jointsOf = (piece: Piece): Pick<StickDemand, 'joints' | 'firstJointsBest'> => {
    // Up a slope studs are farther apart along the piece, and nobody says where it begins.
    if (overlap === undefined || profile.slope !== undefined) return {};
    const joints = wantedJoints(piece, overlap, shop);
    if (joints.length === 0) return {};
    const best = piece.onWall?.door === undefined ? {} : ({ firstJointsBest: true } as const);
    return { joints: joints.map(whole), ...best };
  };
  const demands = toPlan.map((piece): StickDemand => ({
    id: piece.id,
    length: whole(piece.cutLength),
    onePiece: piece.onePiece,
    profile: profile.name,
    ends: `${endsOfPiece(piece)} ${piece.left.point} ${piece.right.point}`,
    // A matched group of two profiles is refused by name elsewhere; here each has its own.
    ...(piece.match === '' ? {} : { match: `${profile.name} / ${nameKey(piece.match)}` }),
    ...jointsOf(piece),
  }));
  // The other parts are cut: how long this one is can't be chosen any more.
  const parts = partsLeft.map(({ piece, part, length }): StickDemand => ({
    id: partId(piece.id, part),
    length: whole(length),
    onePiece: true,
    profile: profile.name,
  }));
  const own = [...demands, ...parts];
  if (spare === undefined) return own;
  const id = spareId(profile);
  return [...own, { id, length: whole(spare), onePiece: true, profile: profile.name }];
}

/** The id under which a part is planned of a piece of which another part is cut. */
export function partId(pieceId: string, part: number): string {
  return `${pieceId} / part ${part}`;
}

/**
 * What an offcut of a profile is worth to its plan: for each unit of length, the shop's percent of
 * what it costs in the cheapest stock. It is worth at most half a blank of the cheapest stock, so that
 * no offcut is worth a stick of its own: else the planner would hoard. Derived. None at 0 %, or where
 * some stock is free.
 */
function creditOf(
  units: readonly StockUnit[],
  percent: number,
  whole: (length: ExactInches) => number,
): { offcutCredit?: OffcutCredit } {
  const strip = units.map(({ priceCents, strips }) => priceCents / strips);
  const mostCents = Math.floor(Math.min(...strip) / 2);
  if (!(percent > 0 && mostCents > 0)) return {};
  const perUnit = units.map(({ priceCents, strips, item }) => {
    return priceCents / strips / whole(item.length);
  });
  return { offcutCredit: { centsPerUnit: (percent / 100) * Math.min(...perUnit), mostCents } };
}

/** The coarsest unit, as units an inch, that divides every length: least common denominator. */
export function commonUnit(lengths: readonly ExactInches[]): number {
  let common = 1n;
  for (const { d } of lengths) common = (common / gcd(common, d)) * d;
  return Number(common);
}

function gcd(one: bigint, other: bigint): bigint {
  return other === 0n ? one : gcd(other, one % other);
}
