import { profileOf, roomOf, servesBlank, type ProblemIndex } from './indexed-problem.ts';
import type {
  PlannedPiece,
  PlannedStick,
  SpliceRule,
  StickDemand,
  StickPlan,
} from '../problem/problem.ts';

/**
 * Checks that every demand is cut exactly once, whole or in parts, or listed as unserved, and that
 * matched groups lie on one stick each. A part of `checkPlan`, see there.
 */
export function checkPieces(
  index: ProblemIndex,
  plan: StickPlan,
  nameStick: (stick: PlannedStick) => string,
): readonly string[] {
  const cut = new Map<string, PlannedPiece[]>();
  const wrong: string[] = [];
  for (const { pieces } of plan.sticks) {
    for (const piece of pieces) {
      if (!index.demands.has(piece.demandId)) {
        wrong.push(`Piece ${piece.demandId} was never asked for.`);
        continue;
      }
      const same = cut.get(piece.demandId);
      if (same === undefined) cut.set(piece.demandId, [piece]);
      else same.push(piece);
    }
  }
  const unserved = new Map<string, number>();
  for (const { demandId } of plan.unserved) {
    unserved.set(demandId, (unserved.get(demandId) ?? 0) + 1);
    if (!index.demands.has(demandId)) wrong.push(`Unserved ${demandId} was never asked for.`);
  }
  for (const demand of index.problem.demands) {
    const pieces = cut.get(demand.id) ?? [];
    const times = unserved.get(demand.id) ?? 0;
    if (times > 1) wrong.push(`Piece ${demand.id} is listed as unserved ${times} times.`);
    if (times > 0 && pieces.length > 0) {
      wrong.push(`Piece ${demand.id} is cut and listed as unserved.`);
    }
    if (times === 0) wrong.push(...checkDemand(index, demand, pieces));
  }
  return [...wrong, ...checkMatches(index, plan, nameStick)];
}

function checkDemand(
  index: ProblemIndex,
  demand: StickDemand,
  pieces: readonly PlannedPiece[],
): readonly string[] {
  const name = `Piece ${demand.id}`;
  if (pieces.length === 0) return [`${name} is neither cut nor listed as unserved.`];
  if (pieces.every(({ part }) => part === undefined)) {
    if (pieces.length > 1) return [`${name} is cut ${pieces.length} times.`];
    const length = pieces[0]?.length;
    return length === demand.length ? [] : [`${name} is cut ${length ?? 0}, not ${demand.length}.`];
  }
  return checkParts(index, demand, pieces);
}

function checkParts(
  index: ProblemIndex,
  demand: StickDemand,
  pieces: readonly PlannedPiece[],
): readonly string[] {
  const name = `Piece ${demand.id}`;
  const rule = index.profiles.get(profileOf(index, demand))?.splice ?? index.problem.splice;
  if (rule === undefined) return [`${name} is spliced and the job allows no splice.`];
  const { overlap, grid = 1 } = rule;
  const wrong: string[] = [];
  if (demand.onePiece) wrong.push(`${name} is spliced and must be one piece.`);
  if (demand.match !== undefined && demand.match !== '') {
    wrong.push(`${name} is spliced and belongs to a matched group.`);
  }
  const parts = pieces.map(({ part }) => part ?? -1).sort((a, b) => a - b);
  if (parts.length < 2 || parts.some((part, at) => part !== at)) {
    wrong.push(`${name} has parts ${parts.join(', ')}; they must run from 0, two or more.`);
  }
  for (const { length, part } of pieces) {
    if (!(Number.isInteger(length) && length > overlap)) {
      wrong.push(
        `Part ${part ?? 0} of piece ${demand.id} is ${length}, no longer than the overlap.`,
      );
    }
  }
  wrong.push(...checkCount(index, demand, rule, pieces));
  const onGrid = demand.length % grid === 0 && overlap % grid === 0;
  if (onGrid && pieces.some(({ length }) => length % grid !== 0)) {
    wrong.push(`${name} has a part that is no multiple of ${grid}.`);
  }
  wrong.push(...checkJoints(index, demand, rule, pieces));
  const sum = pieces.reduce((total, { length }) => total + length, 0);
  const needed = demand.length + (pieces.length - 1) * overlap;
  if (sum !== needed) wrong.push(`The parts of piece ${demand.id} sum to ${sum}, not ${needed}.`);
  return wrong;
}

/**
 * Each joint lies where the piece wants one, if so many parts can have theirs so from the sticks that
 * never run out.
 */
function checkJoints(
  index: ProblemIndex,
  demand: StickDemand,
  { overlap, grid = 1, leastPart = 0 }: SpliceRule,
  pieces: readonly PlannedPiece[],
): readonly string[] {
  if (demand.joints === undefined) return [];
  const wanted = new Set(demand.joints);
  const inOrder = [...pieces].sort((one, other) => (one.part ?? 0) - (other.part ?? 0));
  let end = overlap;
  const off = inOrder.slice(0, -1).filter(({ length }) => !wanted.has((end += length - overlap)));
  if (off.length === 0) return [];
  const longest = Math.floor(endlessRoom(index, demand) / grid) * grid;
  const parts = pieces.length;
  const even = Math.floor((demand.length + (parts - 1) * overlap) / parts / grid) * grid;
  const least = Math.max(overlap + 1, Math.min(leastPart, even));
  // From joint to joint, each part adds its length less the overlap.
  let reached = [overlap];
  for (let part = 1; part < parts; part += 1) {
    reached = [...wanted].filter((at) =>
      reached.some((from) => at - from + overlap >= least && at - from + overlap <= longest),
    );
  }
  const last = (from: number): number => demand.length - from + overlap;
  return reached.some((from) => last(from) >= least && last(from) <= longest)
    ? [`Piece ${demand.id} has a joint where it wants none, and could have them where it does.`]
    : [];
}

/** What the longest stick gives that never runs out; 0 where all do. */
function endlessRoom(index: ProblemIndex, demand: StickDemand): number {
  const blank = index.profiles.get(profileOf(index, demand))?.blank ?? '';
  return index.problem.supplies
    .filter((supply) => supply.buyMost === null && servesBlank(supply, blank))
    .reduce((longest, supply) => Math.max(longest, roomOf(index, supply)), 0);
}

/**
 * No more parts than the longest stick allows that never runs out, and none shorter than the rule
 * has it; where even parts are shorter than that, none shorter than these.
 */
function checkCount(
  index: ProblemIndex,
  demand: StickDemand,
  { overlap, grid = 1, leastPart = 0 }: SpliceRule,
  pieces: readonly PlannedPiece[],
): readonly string[] {
  const wrong: string[] = [];
  const most = endlessRoom(index, demand);
  const part = Math.floor(most / grid) * grid;
  const parts = pieces.length;
  // One part fewer would do: so many of the longest, with their overlaps, reach the piece's length.
  const reach = demand.length <= most ? 1 : Math.ceil((demand.length - overlap) / (part - overlap));
  if (part > overlap && parts > Math.max(1, reach)) {
    wrong.push(`Piece ${demand.id} is cut in ${parts} parts, and ${reach} would do.`);
  }
  const even = Math.floor((demand.length + (parts - 1) * overlap) / parts / grid) * grid;
  const least = Math.min(leastPart, even);
  const shortest = pieces.reduce((short, { length }) => Math.min(short, length), Infinity);
  if (shortest < least) {
    wrong.push(`A part of piece ${demand.id} is ${shortest}, shorter than ${least}.`);
  }
  return wrong;
}

/** A matched group is of one profile and cut from one stick, or none of it is cut. */
function checkMatches(
  index: ProblemIndex,
  plan: StickPlan,
  nameStick: (stick: PlannedStick) => string,
): readonly string[] {
  if (index.groups.size === 0) return [];
  const stickOf = new Map<string, string>();
  for (const stick of plan.sticks) {
    for (const { demandId } of stick.pieces) stickOf.set(demandId, nameStick(stick));
  }
  return [...index.groups].flatMap(([match, demands]) => {
    const found = new Set(demands.map(({ id }) => stickOf.get(id) ?? 'no stick'));
    const profiles = new Set(demands.map((demand) => profileOf(index, demand)));
    return [
      ...(found.size > 1 ? [`Matched group ${match} is on ${[...found].join(' and ')}.`] : []),
      ...(profiles.size > 1 ? [`Matched group ${match} is of ${profiles.size} profiles.`] : []),
    ];
  });
}
