import type {
  PlannedPiece,
  PlannedStick,
  StickDemand,
  StickPlan,
  StickProblem,
} from './problem.ts';

/**
 * Checks a cutting plan against its problem, from the definitions in problem.ts alone: it shares no
 * code with any planner.
 *
 * @param problem a sound problem
 * @param plan the plan, from wherever it comes
 * @returns one sentence for each thing that is wrong, naming the stick or the piece; none if nothing is
 */
export function checkPlan(problem: StickProblem, plan: StickPlan): readonly string[] {
  return [
    ...plan.sticks.flatMap((stick) => checkStick(problem, stick)),
    ...checkUnits(problem, plan),
    ...checkPieces(problem, plan),
    ...checkMatches(problem, plan),
    ...checkUnserved(problem, plan),
    ...checkCost(problem, plan),
    ...checkOrder(problem, plan),
  ];
}

function checkStick(problem: StickProblem, stick: PlannedStick): readonly string[] {
  const supply = problem.supplies.find(({ id }) => id === stick.supplyId);
  const name = nameStick(stick);
  if (supply === undefined) return [`${name} is of a supply that is not listed.`];
  if (stick.pieces.length === 0) return [`${name} has no pieces.`];
  const wrong: string[] = [];
  if (
    !isWholeBelow(stick.unit, supply.buyMost === null ? Infinity : supply.have + supply.buyMost)
  ) {
    wrong.push(`${name} is more than can be had of ${supply.id}.`);
  }
  if (!isWholeBelow(stick.strip, supply.strips)) {
    wrong.push(`${name} is a strip more than ${supply.id} rips into.`);
  }
  const room = supply.length - 2 * problem.endTrim;
  const lengths = stick.pieces.reduce((sum, piece) => sum + piece.length, 0);
  const tight = lengths + problem.kerf * (stick.pieces.length - 1);
  if (!(tight <= room)) wrong.push(`${name} needs ${tight} and gives ${room}.`);
  const offcut = Math.max(0, room - lengths - problem.kerf * stick.pieces.length);
  if (stick.offcut !== offcut) {
    wrong.push(`${name} leaves an offcut of ${offcut}, not ${stick.offcut}.`);
  }
  return wrong;
}

/** No two planned sticks are the same stick, or the same strip of the same board. */
function checkUnits(problem: StickProblem, plan: StickPlan): readonly string[] {
  const seen = new Set<string>();
  const wrong: string[] = [];
  for (const stick of plan.sticks) {
    const name = nameStick(stick);
    if (seen.has(name)) wrong.push(`${name} is cut twice.`);
    seen.add(name);
  }
  for (const supply of problem.supplies) {
    const most = supply.buyMost === null ? Infinity : supply.have + supply.buyMost;
    const units = unitsOf(plan, supply.id).size;
    if (units > most) wrong.push(`${units} of ${supply.id} are used and ${most} can be had.`);
  }
  return wrong;
}

/** Every demand is cut exactly once, whole or in parts, or listed as unserved. */
function checkPieces(problem: StickProblem, plan: StickPlan): readonly string[] {
  const cut = new Map<string, PlannedPiece[]>(problem.demands.map(({ id }) => [id, []]));
  const wrong: string[] = [];
  for (const piece of plan.sticks.flatMap(({ pieces }) => pieces)) {
    const pieces = cut.get(piece.demandId);
    if (pieces === undefined) wrong.push(`Piece ${piece.demandId} was never asked for.`);
    else pieces.push(piece);
  }
  const unserved = new Map<string, number>();
  for (const { demandId } of plan.unserved) {
    unserved.set(demandId, (unserved.get(demandId) ?? 0) + 1);
    if (!cut.has(demandId)) wrong.push(`Unserved ${demandId} was never asked for.`);
  }
  for (const demand of problem.demands) {
    const pieces = cut.get(demand.id) ?? [];
    const times = unserved.get(demand.id) ?? 0;
    if (times > 1) wrong.push(`Piece ${demand.id} is listed as unserved ${times} times.`);
    if (times > 0 && pieces.length > 0) {
      wrong.push(`Piece ${demand.id} is cut and listed as unserved.`);
    }
    if (times === 0) wrong.push(...checkDemand(problem, demand, pieces));
  }
  return wrong;
}

function checkDemand(
  problem: StickProblem,
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
  return checkParts(problem, demand, pieces);
}

function checkParts(
  problem: StickProblem,
  demand: StickDemand,
  pieces: readonly PlannedPiece[],
): readonly string[] {
  const name = `Piece ${demand.id}`;
  if (problem.splice === undefined) return [`${name} is spliced and the job allows no splice.`];
  const { overlap } = problem.splice;
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
  const { grid = 1 } = problem.splice;
  const onGrid = demand.length % grid === 0 && overlap % grid === 0;
  if (onGrid && pieces.some(({ length }) => length % grid !== 0)) {
    wrong.push(`${name} has a part that is no multiple of ${grid}.`);
  }
  const sum = pieces.reduce((total, { length }) => total + length, 0);
  const needed = demand.length + (pieces.length - 1) * overlap;
  if (sum !== needed) wrong.push(`The parts of piece ${demand.id} sum to ${sum}, not ${needed}.`);
  return wrong;
}

/** A matched group is cut from one stick, or none of it is cut. */
function checkMatches(problem: StickProblem, plan: StickPlan): readonly string[] {
  const places = new Map<string, Set<string>>();
  const stickOf = new Map<string, string>();
  for (const stick of plan.sticks) {
    for (const { demandId } of stick.pieces) stickOf.set(demandId, nameStick(stick));
  }
  for (const { id, match } of problem.demands) {
    if (match === undefined || match === '') continue;
    const found = places.get(match) ?? new Set();
    places.set(match, found.add(stickOf.get(id) ?? 'no stick'));
  }
  return [...places].flatMap(([match, found]) =>
    found.size > 1 ? [`Matched group ${match} is on ${[...found].join(' and ')}.`] : [],
  );
}

/** The reason that a piece is unserved holds, and no fresh stick would have served it. */
function checkUnserved(problem: StickProblem, plan: StickPlan): readonly string[] {
  const { demands, supplies, kerf, endTrim, splice } = problem;
  const roomOf = (length: number): number => length - 2 * endTrim;
  const longest = supplies.reduce((most, supply) => Math.max(most, roomOf(supply.length)), 0);
  const groups = new Map<string, number>();
  for (const { length, match } of demands) {
    if (match === undefined || match === '') continue;
    const before = groups.get(match);
    groups.set(match, length + (before === undefined ? 0 : before + kerf));
  }
  const fresh = supplies.filter((supply) => {
    const used = unitsOf(plan, supply.id).size;
    return supply.buyMost === null || used < supply.have + supply.buyMost;
  });
  const byId = new Map(demands.map((demand) => [demand.id, demand]));
  return plan.unserved.flatMap(({ demandId, why }) => {
    const demand = byId.get(demandId);
    if (demand === undefined) return [];
    const together = groups.get(demand.match ?? '') ?? demand.length;
    if (why === 'longer than every stick') {
      if (demand.length <= longest) return [`Piece ${demandId} is not longer than every stick.`];
      const spliceable = !demand.onePiece && (demand.match ?? '') === '';
      return spliceable &&
        splice !== undefined &&
        splice.overlap < Math.floor(longest / (splice.grid ?? 1)) * (splice.grid ?? 1)
        ? [`Piece ${demandId} could be spliced.`]
        : [];
    }
    if (why === 'matched group too long') {
      return together > longest ? [] : [`The matched group of piece ${demandId} is not too long.`];
    }
    const other = fresh.find((supply) => together <= roomOf(supply.length));
    return other === undefined
      ? []
      : [`Piece ${demandId} is unserved and ${other.id} is not used up.`];
  });
}

function checkCost(problem: StickProblem, plan: StickPlan): readonly string[] {
  const cost = problem.supplies.reduce(
    (sum, supply) => sum + unitsOf(plan, supply.id).size * supply.priceCents,
    0,
  );
  return cost === plan.costCents ? [] : [`The plan costs ${cost} cents, not ${plan.costCents}.`];
}

function checkOrder(problem: StickProblem, plan: StickPlan): readonly string[] {
  const lengths = new Map(problem.supplies.map(({ id, length }) => [id, length]));
  return plan.sticks.flatMap((stick, at) => {
    const before = plan.sticks[at - 1];
    const longer =
      (lengths.get(stick.supplyId) ?? 0) > (lengths.get(before?.supplyId ?? '') ?? Infinity);
    return longer ? [`${nameStick(stick)} stands after a shorter stick.`] : [];
  });
}

function unitsOf(plan: StickPlan, supplyId: string): ReadonlySet<number> {
  return new Set(
    plan.sticks.filter((stick) => stick.supplyId === supplyId).map(({ unit }) => unit),
  );
}

function isWholeBelow(value: number, limit: number): boolean {
  return Number.isInteger(value) && value >= 0 && value < limit;
}

function nameStick(stick: PlannedStick): string {
  return `Stick ${stick.supplyId} no. ${stick.unit + 1}, strip ${stick.strip + 1}`;
}
