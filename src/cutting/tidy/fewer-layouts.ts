import type { StickProblem } from '../problem/problem.ts';
import type { Block } from '../quick/cut-list.ts';
import { profilesOf } from '../problem/profiles.ts';
import { capacityOf } from '../problem/supplies.ts';
import { creditOf } from '../write-plan.ts';
import type { WholeStick } from '../whole-stick.ts';

/** Past so many different lay-outs the pairs are too many to go through. */
const MOST_LAYOUTS = 160;
/** Changes made, and pairs and threes of lay-outs looked at, at most. */
const MOST_CHANGES = 400;
const MOST_LOOKS = 2_000_000;

/** Sticks of one supply, rip and profile that are cut alike. */
interface Layout {
  readonly group: string;
  /** How often each weight is cut from a stick. */
  readonly counts: ReadonlyMap<number, number>;
  readonly sticks: WholeStick[];
}

/**
 * Recuts the sticks of two lay-outs, of the same supply and profile, so that there are fewer different lay-outs.
 * Of what it returns, within its counted steps, this holds: no two lay-outs are left whose sticks could all be
 * cut alike, nor some of them like a third and the rest all alike, at the same worth of offcuts. The same sticks
 * are used, so nothing that a plan costs changes. After the combination of lay-outs two by two of H.
 * Foerster and G. Wäscher, Pattern reduction in one-dimensional cutting stock problems, Int. J. of
 * Production Research 38 (2000) [M].
 */
export function fewerLayouts(
  problem: StickProblem,
  sticks: readonly WholeStick[],
): readonly WholeStick[] {
  let layouts = groupAlike(sticks);
  if (layouts.length > MOST_LAYOUTS) return sticks;
  const looks = { left: MOST_LOOKS };
  for (let change = 0; change < MOST_CHANGES; change += 1) {
    const changed = recutOnce(problem, layouts, looks);
    if (changed === undefined) break;
    layouts = groupAlike(changed);
  }
  return layouts.flatMap((layout) => layout.sticks);
}

function groupAlike(sticks: readonly WholeStick[]): Layout[] {
  const layouts = new Map<string, Layout>();
  for (const stick of sticks) {
    const weights = stick.blocks.map(({ weight }) => weight).sort((a, b) => b - a);
    const group = JSON.stringify([stick.profile, stick.supply.id, stick.rip]);
    const key = `${group} ${weights.join()}`;
    const one = layouts.get(key) ?? { group, counts: countUp(weights), sticks: [] };
    layouts.set(key, one);
    one.sticks.push(stick);
  }
  return [...layouts.values()];
}

function countUp(weights: readonly number[]): Map<number, number> {
  const counts = new Map<number, number>();
  for (const weight of weights) counts.set(weight, (counts.get(weight) ?? 0) + 1);
  return counts;
}

function recutOnce(
  problem: StickProblem,
  layouts: readonly Layout[],
  looks: { left: number },
): readonly WholeStick[] | undefined {
  const profiles = profilesOf(problem);
  const worth = (sticks: readonly WholeStick[]): number => creditOf(problem, sticks, profiles);
  for (const [at, one] of layouts.entries()) {
    for (const two of layouts.slice(at + 1)) {
      if (one.group !== two.group) continue;
      const sticks = [...one.sticks, ...two.sticks];
      const pool = poolOf(one, two);
      const thirds = layouts.filter(
        (like) => like !== one && like !== two && like.group === one.group,
      );
      looks.left -= thirds.length + 1;
      if (looks.left < 0) return undefined;
      for (const like of [undefined, ...thirds]) {
        const recut = recutLike(problem, sticks, pool, like);
        if (recut === undefined || worth(recut) !== worth(sticks)) continue;
        const others = layouts.filter((other) => other !== one && other !== two);
        return [...others.flatMap((other) => other.sticks), ...recut];
      }
    }
  }
  return undefined;
}

/** How often the sticks of both lay-outs have each weight. */
function poolOf(...layouts: readonly Layout[]): Map<number, number> {
  const pool = new Map<number, number>();
  for (const { counts, sticks } of layouts) {
    for (const [weight, count] of counts) {
      pool.set(weight, (pool.get(weight) ?? 0) + count * sticks.length);
    }
  }
  return pool;
}

/** As many of the sticks as can be like a third, and the rest all alike; without a third all of them alike. */
function recutLike(
  problem: StickProblem,
  sticks: readonly WholeStick[],
  pool: ReadonlyMap<number, number>,
  like: Layout | undefined,
): readonly WholeStick[] | undefined {
  const wanted = like?.counts ?? new Map<number, number>();
  let most = like === undefined ? 0 : sticks.length;
  for (const [weight, count] of wanted) {
    most = Math.min(most, Math.floor((pool.get(weight) ?? 0) / count));
  }
  for (let times = most; times >= (like === undefined ? 0 : 1); times -= 1) {
    const rest = restOf(pool, wanted, times, sticks.length - times);
    if (rest === undefined) continue;
    const [first] = sticks;
    if (first === undefined || heft(rest) > capacityOf(problem, first.supply)) continue;
    return deal(sticks, wanted, times, rest);
  }
  return undefined;
}

/** What each of the other sticks is cut into; undefined where it isn't the same for all, or nothing. */
function restOf(
  pool: ReadonlyMap<number, number>,
  wanted: ReadonlyMap<number, number>,
  times: number,
  others: number,
): ReadonlyMap<number, number> | undefined {
  const rest = new Map<number, number>();
  for (const [weight, count] of pool) {
    const left = count - times * (wanted.get(weight) ?? 0);
    if (left === 0) continue;
    if (others === 0 || left % others !== 0) return undefined;
    rest.set(weight, left / others);
  }
  return others > 0 && rest.size === 0 ? undefined : rest;
}

function heft(counts: ReadonlyMap<number, number>): number {
  return [...counts].reduce((sum, [weight, count]) => sum + weight * count, 0);
}

/** The first sticks are cut as wanted, all others into the rest. */
function deal(
  sticks: readonly WholeStick[],
  wanted: ReadonlyMap<number, number>,
  times: number,
  rest: ReadonlyMap<number, number>,
): readonly WholeStick[] {
  const byWeight = sortOut(sticks.flatMap(({ blocks }) => blocks));
  return sticks.map((stick, at) => {
    const counts = at < times ? wanted : rest;
    const blocks = [...byWeight].flatMap(([weight, left]) =>
      left.splice(0, counts.get(weight) ?? 0),
    );
    return { ...stick, blocks };
  });
}

/** Blocks by weight, heaviest first. */
function sortOut(blocks: readonly Block[]): Map<number, Block[]> {
  const byWeight = new Map<number, Block[]>();
  for (const block of [...blocks].sort((a, b) => b.weight - a.weight)) {
    byWeight.set(block.weight, [...(byWeight.get(block.weight) ?? []), block]);
  }
  return byWeight;
}
