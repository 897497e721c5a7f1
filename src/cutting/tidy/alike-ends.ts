import { entryAt } from '../entry-at.ts';
import type { StickProblem } from '../problem/problem.ts';
import { isMatched } from '../problem/splice-parts.ts';
import type { Block } from '../quick/cut-list.ts';
import type { WholeStick } from '../whole-stick.ts';

/** Ways of cutting weighed against the pieces that are left, at most; what is left then stays as it comes. */
const MOST_LOOKS = 200_000;

/** Sticks of one supply, rip and profile, cut into the same lengths. */
interface Alike {
  readonly profile: string;
  readonly sticks: WholeStick[];
  /** How often each weight is cut whose pieces may change places. */
  readonly slots: ReadonlyMap<number, number>;
}

/** The ends of the pieces of each weight, in one way of cutting. */
type Way = ReadonlyMap<number, readonly string[]>;

/** Pieces not yet given out: by profile and weight, then by their ends. */
type Pool = Map<string, Map<string, Block[]>>;

/**
 * Lets pieces of one length and profile change places, so that sticks cut into the same lengths are as far as
 * may be cut alike to their ends: always those next of which the most can be. No stick's lengths change, and
 * so nothing that a plan costs does. Parts of a spliced piece, and matched pieces, stay where they are.
 *
 * @returns sticks with no more ways of cutting than before, ends and all
 */
export function alikeEnds(
  problem: StickProblem,
  sticks: readonly WholeStick[],
): readonly WholeStick[] {
  if (problem.demands.every(({ ends }) => ends === undefined)) return sticks;
  const groups = groupByLengths(problem, sticks);
  const pool = poolOf(problem, sticks);
  const given = new Map<WholeStick, WholeStick>();
  const left = new Map(groups.map((group) => [group, [...group.sticks]]));
  const ways = new Map<Alike, Way[]>();
  const take = (group: Alike, way: Way, times: number): void => {
    ways.set(group, [...(ways.get(group) ?? []), way]);
    for (const stick of left.get(group)?.splice(0, times) ?? []) {
      given.set(stick, refill(problem, stick, way, pool));
    }
  };
  let looks = MOST_LOOKS;
  for (;;) {
    let best: { readonly group: Alike; readonly times: number } | undefined;
    for (const group of groups) {
      const most = left.get(group)?.length ?? 0;
      if (most < 2 || most <= (best?.times ?? 1)) continue;
      looks -= group.slots.size;
      const times = mostTimes(group, pool, most);
      if (times > (best?.times ?? 1)) best = { group, times };
    }
    if (best === undefined || looks < 0) break;
    take(best.group, wayFor(best.group, pool, best.times), best.times);
  }
  for (const group of groups) {
    for (let rest = left.get(group)?.length ?? 0; rest > 0; rest -= 1) {
      const known = ways.get(group)?.find((way) => hasAll(group, pool, way));
      take(group, known ?? wayFor(group, pool, 1), 1);
    }
  }
  const changed = sticks.map((stick) => given.get(stick) ?? stick);
  return countWays(problem, changed) < countWays(problem, sticks) ? changed : sticks;
}

/** How many ways of cutting a stick there are, ends and all. */
export function countWays(problem: StickProblem, sticks: readonly WholeStick[]): number {
  return new Set(
    sticks.map(({ profile, supply, rip, blocks }) =>
      JSON.stringify([profile, supply.id, rip, blocks.map((one) => nameOf(problem, one)).sort()]),
    ),
  ).size;
}

/** Its lengths with their ends, and of a part which one it is. */
function nameOf(problem: StickProblem, { pieces, demands }: Block): string {
  return JSON.stringify(
    pieces.map(({ length, part }, at) => [length, part, endsOf(problem, demands[at] ?? 0)]),
  );
}

function endsOf({ demands }: StickProblem, at: number): string {
  return entryAt(demands, at).ends ?? '';
}

function mayMove({ demands }: StickProblem, { pieces, demands: own }: Block): boolean {
  const [piece, ...others] = pieces;
  return (
    piece !== undefined &&
    others.length === 0 &&
    piece.part === undefined &&
    !isMatched(entryAt(demands, entryAt(own, 0)))
  );
}

function groupByLengths(problem: StickProblem, sticks: readonly WholeStick[]): readonly Alike[] {
  const groups = new Map<string, Alike>();
  for (const stick of sticks) {
    const { profile, supply, rip, blocks } = stick;
    const slots = new Map<number, number>();
    const fixed: string[] = [];
    for (const block of blocks) {
      if (mayMove(problem, block)) slots.set(block.weight, (slots.get(block.weight) ?? 0) + 1);
      else fixed.push(nameOf(problem, block));
    }
    const weights = [...slots].sort(([one], [other]) => one - other);
    const key = JSON.stringify([profile, supply.id, rip, fixed.sort(), weights]);
    const group = groups.get(key) ?? { profile, sticks: [], slots };
    groups.set(key, group);
    group.sticks.push(stick);
  }
  return [...groups.values()];
}

const poolKey = (profile: string, weight: number): string => `${weight} ${profile}`;

/** In the order of the demands, so that the order of the sticks decides nothing. */
function poolOf(problem: StickProblem, sticks: readonly WholeStick[]): Pool {
  const pool: Pool = new Map();
  const moving = sticks
    .flatMap(({ profile, blocks }) => blocks.map((block) => ({ profile, block })))
    .filter(({ block }) => mayMove(problem, block))
    .sort((one, other) => entryAt(one.block.demands, 0) - entryAt(other.block.demands, 0));
  for (const { profile, block } of moving) {
    const key = poolKey(profile, block.weight);
    const ofWeight = pool.get(key) ?? new Map<string, Block[]>();
    pool.set(key, ofWeight);
    const ends = endsOf(problem, entryAt(block.demands, 0));
    ofWeight.set(ends, [...(ofWeight.get(ends) ?? []), block]);
  }
  return pool;
}

/** How many sticks of a group, at most so many, can be cut alike from what is left. */
function mostTimes({ profile, slots }: Alike, pool: Pool, most: number): number {
  let times = most;
  for (const [weight, count] of slots) {
    const left = [...(pool.get(poolKey(profile, weight))?.values() ?? [])].map((one) => one.length);
    const fills = (): boolean =>
      left.reduce((sum, own) => sum + Math.floor(own / times), 0) >= count;
    while (times > 1 && !fills()) times -= 1;
  }
  return times;
}

/** Ends for each weight that are there so many times; of what there is most, first. */
function wayFor({ profile, slots }: Alike, pool: Pool, times: number): Way {
  return new Map(
    [...slots].map(([weight, count]) => {
      const ofWeight = [...(pool.get(poolKey(profile, weight)) ?? [])].sort(
        ([, one], [, other]) => other.length - one.length,
      );
      const all = ofWeight.flatMap(([ends, blocks]) =>
        Array.from({ length: Math.floor(blocks.length / times) }, () => ends),
      );
      return [weight, all.slice(0, count)];
    }),
  );
}

function hasAll({ profile }: Alike, pool: Pool, way: Way): boolean {
  return [...way].every(([weight, wanted]) => {
    const ofWeight = pool.get(poolKey(profile, weight));
    const counts = new Map<string, number>();
    for (const ends of wanted) counts.set(ends, (counts.get(ends) ?? 0) + 1);
    return [...counts].every(([ends, count]) => (ofWeight?.get(ends)?.length ?? 0) >= count);
  });
}

/** The stick with pieces of these ends, taken out of what is left. */
function refill(problem: StickProblem, stick: WholeStick, way: Way, pool: Pool): WholeStick {
  const next = new Map([...way].map(([weight, ends]) => [weight, [...ends].sort()]));
  const blocks = stick.blocks.map((block) => {
    if (!mayMove(problem, block)) return block;
    const ends = next.get(block.weight)?.shift() ?? '';
    const taken = pool.get(poolKey(stick.profile, block.weight))?.get(ends)?.shift();
    if (taken === undefined) throw new RangeError('A piece is given out twice.');
    return taken;
  });
  return { ...stick, blocks };
}
