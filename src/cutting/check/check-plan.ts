import { checkPieces } from './check-pieces.ts';
import { checkUnserved } from './check-unserved.ts';
import {
  countOf,
  creditFor,
  creditRule,
  indexProblem,
  laborFor,
  offcutOf,
  profileOf,
  roomOf,
  type ProblemIndex,
} from './indexed-problem.ts';
import type { PlannedStick, StickPlan, StickProblem, StickSupply } from '../problem/problem.ts';

/**
 * Checks a cutting plan against its problem, from the definitions in problem.ts alone: it shares no
 * code with any planner. Its time is in proportion to pieces and sticks.
 *
 * @param problem a sound problem
 * @param plan the plan, from wherever it comes
 * @returns one sentence for each thing that is wrong, naming the stick or the piece; none if nothing is
 */
export function checkPlan(problem: StickProblem, plan: StickPlan): readonly string[] {
  const index = indexProblem(problem);
  const opened = openedUnits(plan);
  return [
    ...plan.sticks.flatMap((stick) => checkStick(index, stick)),
    ...checkUnits(index, opened),
    ...checkPieces(index, plan, nameStick),
    ...checkUnserved(index, plan, (supply) => opened.get(supply.id)?.size ?? 0),
    ...checkMoney(index, plan, opened),
    ...checkOrder(index, plan),
  ];
}

/** The planned sticks by supply and by the stick or board that they are cut from. */
type Opened = ReadonlyMap<string, ReadonlyMap<number, readonly PlannedStick[]>>;

function openedUnits(plan: StickPlan): Opened {
  const opened = new Map<string, Map<number, PlannedStick[]>>();
  for (const stick of plan.sticks) {
    const units = opened.get(stick.supplyId) ?? new Map<number, PlannedStick[]>();
    opened.set(stick.supplyId, units);
    const unit = units.get(stick.unit);
    if (unit === undefined) units.set(stick.unit, [stick]);
    else unit.push(stick);
  }
  return opened;
}

function checkStick(index: ProblemIndex, stick: PlannedStick): readonly string[] {
  const { problem } = index;
  const supply = index.supplies.get(stick.supplyId);
  const name = nameStick(stick);
  if (supply === undefined) return [`${name} is of a supply that is not listed.`];
  if (stick.pieces.length === 0) return [`${name} has no pieces.`];
  const wrong: string[] = [];
  if (!isWholeBelow(stick.unit, countOf(supply))) {
    wrong.push(`${name} is more than can be had of ${supply.id}.`);
  }
  const room = roomOf(index, supply);
  const lengths = stick.pieces.map(({ length }) => length);
  const sum = lengths.reduce((total, length) => total + length, 0);
  const tight = sum + problem.kerf * (lengths.length - 1);
  if (!(tight <= room)) wrong.push(`${name} needs ${tight} and gives ${room}.`);
  const offcut = offcutOf(problem, room, lengths);
  if (stick.offcut !== offcut) {
    wrong.push(`${name} leaves an offcut of ${offcut}, not ${stick.offcut}.`);
  }
  return [...wrong, ...checkProfile(index, stick), ...checkStrip(index, stick, supply)];
}

function checkProfile(index: ProblemIndex, stick: PlannedStick): readonly string[] {
  const name = nameStick(stick);
  if (!index.profiles.has(stick.profile)) {
    return [`${name} is of the profile “${stick.profile}”, which is not listed.`];
  }
  return stick.pieces.flatMap(({ demandId }) => {
    const demand = index.demands.get(demandId);
    if (demand === undefined || profileOf(index, demand) === stick.profile) return [];
    return [`${name} gives piece ${demandId}, which is of another profile.`];
  });
}

/** The strip is one of those that its rip gives of the profile's blank. */
function checkStrip(
  index: ProblemIndex,
  stick: PlannedStick,
  supply: StickSupply,
): readonly string[] {
  const name = nameStick(stick);
  if (!isWholeBelow(stick.rip, supply.rips?.length ?? 1)) {
    return [`${name} is of a rip that ${supply.id} does not have.`];
  }
  const blank = index.profiles.get(stick.profile)?.blank;
  const rip = supply.rips?.[stick.rip] ?? [{ blank: blank ?? '', count: supply.strips }];
  const strips = rip.reduce((sum, { count }) => sum + count, 0);
  if (!isWholeBelow(stick.strip, strips)) {
    return [`${name} is a strip more than ${supply.id} rips into.`];
  }
  let from = 0;
  for (const given of rip) {
    const isHere = stick.strip < from + given.count;
    if (isHere && blank !== undefined && given.blank !== blank) {
      return [`${name} is a strip of another blank.`];
    }
    if (isHere) break;
    from += given.count;
  }
  return [];
}

/** No strip is cut twice, a board is ripped in one way, and no more are used than can be had. */
function checkUnits({ profiles, supplies }: ProblemIndex, opened: Opened): readonly string[] {
  const wrong: string[] = [];
  for (const [supplyId, units] of opened) {
    const supply = supplies.get(supplyId);
    for (const sticks of units.values()) {
      const strips = new Set<number>();
      const ways = new Set<number | string | undefined>();
      for (const stick of sticks) {
        if (strips.has(stick.strip)) wrong.push(`${nameStick(stick)} is cut twice.`);
        strips.add(stick.strip);
        ways.add(supply?.rips === undefined ? profiles.get(stick.profile)?.blank : stick.rip);
      }
      const [first] = sticks;
      if (first !== undefined && ways.size > 1) {
        wrong.push(`${supplyId} no. ${first.unit + 1} is ripped in ${ways.size} ways.`);
      }
    }
    const most = supply === undefined ? Infinity : countOf(supply);
    if (units.size > most)
      wrong.push(`${units.size} of ${supplyId} are used and ${most} can be had.`);
  }
  return wrong;
}

/** Whole sticks and boards at their prices, the credit of every stick's offcut, the labor of each. */
function checkMoney(index: ProblemIndex, plan: StickPlan, opened: Opened): readonly string[] {
  const { problem, profiles, supplies } = index;
  const cost = problem.supplies.reduce(
    (sum, { id, priceCents }) => sum + (opened.get(id)?.size ?? 0) * priceCents,
    0,
  );
  const credit = plan.sticks.reduce((sum, { supplyId, profile, rip, pieces }) => {
    const supply = supplies.get(supplyId);
    const own = profiles.get(profile);
    if (supply === undefined || own === undefined || pieces.length === 0) return sum;
    const lengths = pieces.map(({ length }) => length);
    const offcut = offcutOf(problem, roomOf(index, supply), lengths);
    return sum + creditFor(creditRule(index, own, supply, rip), offcut);
  }, 0);
  const labor = plan.sticks.reduce((sum, { supplyId, profile }) => {
    const supply = supplies.get(supplyId);
    const own = profiles.get(profile);
    return supply === undefined || own === undefined ? sum : sum + laborFor(own, supply);
  }, 0);
  return [
    ...(cost === plan.costCents ? [] : [`The plan costs ${cost} cents, not ${plan.costCents}.`]),
    ...(credit === plan.creditCents
      ? []
      : [`The offcuts are worth ${credit} cents, not ${plan.creditCents}.`]),
    ...(labor === plan.laborCents
      ? []
      : [`The sticks cost ${labor} cents of labor, not ${plan.laborCents}.`]),
  ];
}

/** Profile by profile, and the longest sticks of each first. */
function checkOrder({ supplies }: ProblemIndex, plan: StickPlan): readonly string[] {
  const seen = new Set<string>();
  return plan.sticks.flatMap((stick, at) => {
    const before = plan.sticks[at - 1];
    if (before?.profile !== stick.profile) {
      const isApart = seen.has(stick.profile);
      seen.add(stick.profile);
      return isApart ? [`${nameStick(stick)} stands apart from the others of its profile.`] : [];
    }
    const length = supplies.get(stick.supplyId)?.length ?? 0;
    const longest = supplies.get(before.supplyId)?.length ?? Infinity;
    return length > longest ? [`${nameStick(stick)} stands after a shorter stick.`] : [];
  });
}

function isWholeBelow(value: number, limit: number): boolean {
  return Number.isInteger(value) && value >= 0 && value < limit;
}

function nameStick(stick: PlannedStick): string {
  return `Stick ${stick.supplyId} no. ${stick.unit + 1}, strip ${stick.strip + 1}`;
}
