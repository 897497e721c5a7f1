import type { StickProblem } from '../problem/problem.ts';
import type { Block } from '../quick/cut-list.ts';
import { capacityOf } from '../problem/supplies.ts';
import type { WholeStick } from '../whole-stick.ts';

/** Past so many different lay-outs the pairs are too many to go through. */
const MOST_LAYOUTS = 160;
/** Changes made, and pairs and threes of lay-outs looked at, at most. */
const MOST_CHANGES = 400;
const MOST_LOOKS = 2_000_000;

/** Sticks of one supply, rip and profile that are cut alike. */
interface Layout {
  readonly group: string;
  readonly weights: readonly number[];
  readonly sticks: WholeStick[];
}

/**
 * Recuts sticks in pairs, of the same supply and profile, so that there are fewer different lay-outs:
 * all sticks of two lay-outs cut alike where their pieces divide evenly, or two odd ones cut so that
 * one is like others. Costs the same sticks. After the combination of lay-outs two by two of H.
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
    const one = layouts.get(key) ?? { group, weights, sticks: [] };
    layouts.set(key, one);
    one.sticks.push(stick);
  }
  return [...layouts.values()];
}

function recutOnce(
  problem: StickProblem,
  layouts: readonly Layout[],
  looks: { left: number },
): readonly WholeStick[] | undefined {
  const others = (used: readonly Layout[]): readonly WholeStick[] =>
    layouts.filter((one) => !used.includes(one)).flatMap(({ sticks }) => sticks);
  for (const [at, one] of layouts.entries()) {
    for (const two of layouts.slice(at + 1)) {
      if (one.group !== two.group) continue;
      const even = cutEvenly(one, two);
      if (even !== undefined) return [...others([one, two]), ...even];
      if (one.sticks.length > 1 || two.sticks.length > 1) continue;
      for (const like of layouts) {
        looks.left -= 1;
        if (looks.left < 0) return undefined;
        if (like === one || like === two || like.group !== one.group) continue;
        if (!isWithin(like.weights, one.weights, two.weights)) continue;
        const recut = cutLike(problem, one, two, like);
        if (recut !== undefined) return [...others([one, two]), ...recut];
      }
    }
  }
  return undefined;
}

/** Whether two lay-outs together have every length of a third; all stand heaviest first. */
function isWithin(
  wanted: readonly number[],
  one: readonly number[],
  two: readonly number[],
): boolean {
  let atOne = 0;
  let atTwo = 0;
  for (const weight of wanted) {
    while ((one[atOne] ?? 0) > weight) atOne += 1;
    while ((two[atTwo] ?? 0) > weight) atTwo += 1;
    if (one[atOne] === weight) atOne += 1;
    else if (two[atTwo] === weight) atTwo += 1;
    else return false;
  }
  return true;
}

/** Whether every length of both lay-outs comes a number of times that all their sticks share evenly. */
function isEven(one: Layout, two: Layout): boolean {
  const all = one.sticks.length + two.sticks.length;
  const counts = new Map<number, number>();
  for (const { weights, sticks } of [one, two]) {
    for (const weight of weights) counts.set(weight, (counts.get(weight) ?? 0) + sticks.length);
  }
  for (const count of counts.values()) if (count % all !== 0) return false;
  return true;
}

/** All sticks of two lay-outs cut alike, where every length divides evenly among them. */
function cutEvenly(one: Layout, two: Layout): readonly WholeStick[] | undefined {
  if (!isEven(one, two)) return undefined;
  const sticks = [...one.sticks, ...two.sticks];
  const byWeight = sortOut(sticks.flatMap(({ blocks }) => blocks));
  return sticks.map((stick, at) => ({
    ...stick,
    blocks: [...byWeight.values()].flatMap((blocks) => {
      const each = blocks.length / sticks.length;
      return blocks.slice(at * each, (at + 1) * each);
    }),
  }));
}

/** Two odd sticks recut so that the first is like others, where the rest fits the second. */
function cutLike(
  problem: StickProblem,
  one: Layout,
  two: Layout,
  like: Layout,
): readonly WholeStick[] | undefined {
  const [first] = one.sticks;
  const [second] = two.sticks;
  if (first === undefined || second === undefined) return undefined;
  const byWeight = sortOut([...first.blocks, ...second.blocks]);
  const blocks: Block[] = [];
  for (const weight of like.weights) {
    const block = byWeight.get(weight)?.pop();
    if (block === undefined) return undefined;
    blocks.push(block);
  }
  const rest = [...byWeight.values()].flat();
  const used = rest.reduce((sum, { weight }) => sum + weight, 0);
  if (rest.length === 0 || used > capacityOf(problem, second.supply)) return undefined;
  return [
    { ...first, blocks },
    { ...second, blocks: rest.sort((a, b) => b.weight - a.weight) },
  ];
}

/** Blocks by weight, heaviest first. */
function sortOut(blocks: readonly Block[]): Map<number, Block[]> {
  const byWeight = new Map<number, Block[]>();
  for (const block of [...blocks].sort((a, b) => b.weight - a.weight)) {
    byWeight.set(block.weight, [...(byWeight.get(block.weight) ?? []), block]);
  }
  return byWeight;
}
