import {
  fewestParts,
  leastPartOf,
  longestPartOf,
  spliceParts,
  evenPart,
} from '../problem/splice-parts.ts';
import { jointWays } from '../problem/joint-ways.ts';
import type { SpliceRule, StickDemand, StickProblem } from '../problem/problem.ts';

/** Ways to splice one piece that are offered to the program at most. */
const MOST_WAYS = 48;

/**
 * Ways to cut a spliced piece into `count` parts, all no shorter than the rule's least: those with their
 * joints where the piece wants them; where there are none, whole sticks and a rest for every stick, even
 * parts, and parts that fill a stick up just so beside a piece that is asked for.
 *
 * @param demand the piece
 * @param usable what each stick gives at most, in the planner's units
 * @param beside lengths of other pieces, those asked for most first
 * @param count how many parts, 2 or more
 */
export function spliceWays(
  problem: StickProblem,
  rule: SpliceRule,
  demand: StickDemand,
  usable: readonly number[],
  beside: readonly number[],
  count: number,
): readonly (readonly number[])[] {
  const { overlap, grid = 1 } = rule;
  const { length } = demand;
  const own = { ...problem, splice: rule };
  const least = leastPartOf(rule, length, count);
  const longest = longestPartOf(own, Math.max(0, ...usable));
  if (longest <= overlap) return [];
  const atJoints = jointWays(demand, rule, count, longest);
  if (atJoints.length > 0) return spreadOut(atJoints);
  const ways = new Map<string, readonly number[]>();
  const add = (parts: readonly number[]): void => {
    if (parts.length !== count || ways.size >= MOST_WAYS) return;
    if (parts.some((part) => part < least || part > longest)) return;
    ways.set([...parts].sort((a, b) => b - a).join(), parts);
  };
  const addLongest = (part: number): void => {
    // A part that is little but overlap would come in absurd numbers.
    if (part <= 2 * overlap || part > longest || part >= length) return;
    if (fewestParts(length, part, overlap) !== count) return;
    add(spliceParts(length, part, overlap, least, grid));
  };
  addLongest(longest);
  addLongest(evenPart(length, longest, overlap, grid));
  for (const one of usable) addLongest(longestPartOf(own, one));
  if (count !== 2) return [...ways.values()];
  for (const one of usable) {
    for (const other of beside) {
      const part = Math.floor((one - other - problem.kerf) / grid) * grid;
      const rest = length + overlap - part;
      if (part >= least && rest >= least && part < length)
        add([Math.max(part, rest), Math.min(part, rest)]);
    }
  }
  return [...ways.values()];
}

/** As many of them as are offered at most, from the longest parts to the most even. */
function spreadOut(ways: readonly (readonly number[])[]): readonly (readonly number[])[] {
  if (ways.length <= MOST_WAYS) return ways;
  const step = (ways.length - 1) / (MOST_WAYS - 1);
  return ways.filter((_, at) => Math.round(Math.round(at / step) * step) === at);
}
