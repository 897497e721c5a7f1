/** The profiles of a problem, as the planner and the checks of its input look them up. */
import { isMatched } from './splice-parts.ts';
import type { SpliceRule, StickDemand, StickProblem, StickProfile } from './problem.ts';

/** The profiles of a problem; the one without a name where it lists none. */
export function profilesOf({
  profiles = [{ id: '', blank: '' }],
}: StickProblem): readonly StickProfile[] {
  return profiles;
}

/** The id of the profile that a piece is of. A piece that names none is of the only one there is. */
export function profileIdOf(problem: StickProblem, { profile }: StickDemand): string {
  return profile ?? profilesOf(problem)[0]?.id ?? '';
}

/** How pieces of a profile are spliced: by its own rule, or by the common one. */
export function spliceRuleOf(problem: StickProblem, profile: StickProfile): SpliceRule | undefined {
  return profile.splice ?? problem.splice;
}

/** The blanks that the profiles are made from, each once. */
export function blanksOf(problem: StickProblem): ReadonlySet<string> {
  return new Set(profilesOf(problem).map(({ blank }) => blank));
}

/** The demands of each matched group, in their order. */
export function matchedGroups({
  demands,
}: StickProblem): ReadonlyMap<string, readonly StickDemand[]> {
  const groups = new Map<string, StickDemand[]>();
  for (const demand of demands) {
    if (!isMatched(demand)) continue;
    const { match = '' } = demand;
    const group = groups.get(match) ?? [];
    groups.set(match, group);
    group.push(demand);
  }
  return groups;
}
