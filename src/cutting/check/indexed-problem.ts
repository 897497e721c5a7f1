import type { StickDemand, StickProblem, StickProfile, StickSupply } from '../problem/problem.ts';

/**
 * A problem as the checks read it, from the definitions in problem.ts alone: the planner reads it by
 * code of its own.
 */
export interface ProblemIndex {
  readonly problem: StickProblem;
  /** In their order; the one without a name where the problem lists none. */
  readonly profiles: ReadonlyMap<string, StickProfile>;
  readonly demands: ReadonlyMap<string, StickDemand>;
  readonly supplies: ReadonlyMap<string, StickSupply>;
  /** The demands of each matched group, in their order. */
  readonly groups: ReadonlyMap<string, readonly StickDemand[]>;
}

export function indexProblem(problem: StickProblem): ProblemIndex {
  const { profiles = [{ id: '', blank: '' }], demands, supplies } = problem;
  const groups = new Map<string, StickDemand[]>();
  for (const demand of demands) {
    const { match = '' } = demand;
    if (match === '') continue;
    const group = groups.get(match);
    if (group === undefined) groups.set(match, [demand]);
    else group.push(demand);
  }
  return {
    problem,
    profiles: new Map(profiles.map((profile) => [profile.id, profile])),
    demands: new Map(demands.map((demand) => [demand.id, demand])),
    supplies: new Map(supplies.map((supply) => [supply.id, supply])),
    groups,
  };
}

/** The id of the profile that a piece is of. A piece that names none is of the only one there is. */
export function profileOf(index: ProblemIndex, demand: StickDemand): string {
  return demand.profile ?? [...index.profiles.keys()][0] ?? '';
}

/** What a stick gives between its end trims, in the planner's units. */
export function roomOf({ problem }: ProblemIndex, supply: StickSupply): number {
  return supply.length - 2 * problem.endTrim;
}

/** How many can be had; Infinity where any number may be bought. */
export function countOf({ have, buyMost }: StickSupply): number {
  return buyMost === null ? Infinity : have + buyMost;
}

/** Whether any way to rip the stick or board gives strips of a blank. */
export function servesBlank(supply: StickSupply, blank: string): boolean {
  if (supply.rips === undefined) return supply.strips > 0;
  return supply.rips.some((rip) => rip.some((strips) => strips.blank === blank));
}

/**
 * What a stick's last cut leaves of it: its room less the pieces' lengths and a kerf each, 0 where
 * that would be less.
 */
export function offcutOf(problem: StickProblem, room: number, lengths: readonly number[]): number {
  const sum = lengths.reduce((total, length) => total + length, 0);
  return Math.max(0, room - sum - problem.kerf * lengths.length);
}

/** Cents of labor for a strip put to use, by the words of StripLabor. */
export function laborFor({ labor }: StickProfile, { length }: StickSupply): number {
  const { cents, centsPerUnit } = labor ?? { cents: 0, centsPerUnit: 0 };
  return Math.floor(cents + centsPerUnit * length + 0.5);
}

/** How an offcut is credited: by its profile, and by what its strip costs. */
export interface CreditRule {
  readonly centsPerUnit: number;
  /** The most that any is worth, in cents; 0 where none is credited. */
  readonly mostCents: number;
  /** In the planner's units. */
  readonly leastOffcut: number;
}

/** The rule for a strip of a profile, cut from a supply that is ripped by one of its rips. */
export function creditRule(
  { problem }: ProblemIndex,
  { offcutCredit }: StickProfile,
  { priceCents, stripWorthCents, strips, rips }: StickSupply,
  rip: number,
): CreditRule {
  const { centsPerUnit, mostCents } = offcutCredit ?? { centsPerUnit: 0, mostCents: 0 };
  const shares = rips?.[rip]?.reduce((sum, { count }) => sum + count, 0) ?? strips;
  const half = Math.floor((stripWorthCents ?? priceCents / shares) / 2);
  return {
    centsPerUnit,
    mostCents: Math.min(mostCents, half),
    leastOffcut: problem.keepOffcutsOver,
  };
}

/** Cents that an offcut is worth, by the words of OffcutCredit. */
export function creditFor(rule: CreditRule, offcut: number): number {
  if (offcut <= 0 || offcut < rule.leastOffcut) return 0;
  return Math.floor(Math.min(rule.mostCents, rule.centsPerUnit * offcut));
}
