import { own, phrase, type Argument } from '../../core/faults/argument.ts';
import { fault, type Fault } from '../../core/faults/fault.ts';
import { MOST_PLANNED_PIECES, MOST_PRICE_CENTS } from './limits.ts';
import { idFaults, lengthFaults, wholeFaults, type SayLength } from './number-faults.ts';
import type {
  OffcutCredit,
  SpliceRule,
  StickDemand,
  StickProblem,
  StickProfile,
} from './problem.ts';
import { matchedGroups, profileIdOf, profilesOf, spliceRuleOf } from './profiles.ts';
import { fewestParts, longestPartOf, maySplice } from './splice-parts.ts';
import { countOf, servesBlank, usableLength } from './supplies.ts';

/** What is wrong with the profiles by themselves. A part of `validateProblem`. */
export function profileFaults({ profiles = [] }: StickProblem): readonly Fault[] {
  return [
    // A lone profile needs no name.
    ...(profiles.length > 1 ? idFaults('profile', profiles) : []),
    ...profiles.flatMap(({ id, offcutCredit }) =>
      offcutCredit === undefined ? [] : creditFaults(id, offcutCredit),
    ),
  ];
}

function creditFaults(id: string, { centsPerUnit, mostCents }: OffcutCredit): readonly Fault[] {
  const name = ofProfile('offcutCredit', id);
  const rate = Number.isFinite(centsPerUnit)
    ? centsPerUnit < 0
      ? [fault('number.negative', name, centsPerUnit)]
      : []
    : [fault('number.unreadable', name, String(centsPerUnit))];
  return [
    ...rate,
    ...wholeFaults(ofProfile('mostOffcutCredit', id), mostCents, 0, MOST_PRICE_CENTS),
  ];
}

/** Pieces of profiles that there are not, and matched groups of two. A part of `validateProblem`. */
export function ofProfileFaults(problem: StickProblem): readonly Fault[] {
  const ids = new Set(profilesOf(problem).map(({ id }) => id));
  const isOne = ids.size === 1;
  return [
    ...problem.demands.flatMap(({ id, profile }) =>
      (profile === undefined && isOne) || (profile !== undefined && ids.has(profile))
        ? []
        : [fault('cutting.profile-unknown', phrase('pieceOf', { id: own(id) }), profile ?? '')],
    ),
    ...[...matchedGroups(problem)].flatMap(([match, demands]) => {
      const [first = '', other] = new Set(demands.map((demand) => profileIdOf(problem, demand)));
      if (other === undefined) return [];
      const name = phrase('groupMatched', { match: own(match) });
      return [fault('cutting.match-of-two-profiles', name, first, { details: { other } })];
    }),
  ];
}

/** What is wrong with the numbers of splice rules, the common one and those of profiles. */
export function ruleFaults(
  { splice, profiles = [] }: StickProblem,
  say: SayLength,
): readonly Fault[] {
  const ofRule = (
    rule: SpliceRule | undefined,
    overlap: Argument,
    grid: Argument,
  ): readonly Fault[] =>
    rule === undefined
      ? []
      : [
          ...lengthFaults(overlap, rule.overlap, 0, say),
          ...(rule.grid === undefined ? [] : lengthFaults(grid, rule.grid, 1, say)),
        ];
  return [
    ...ofRule(splice, 'spliceOverlap', 'spliceGrid'),
    ...profiles.flatMap(({ id, splice: own }) =>
      ofRule(own, ofProfile('spliceOverlap', id), ofProfile('spliceGrid', id)),
    ),
  ];
}

/**
 * Splices that no stick allows, or that come to too many parts, judged by the sticks that each
 * profile is cut from. A part of `validateProblem`; every number in the problem must be sound.
 */
export function spliceFaults(problem: StickProblem, say: SayLength): readonly Fault[] {
  const demands = new Map<string, StickDemand[]>();
  for (const demand of problem.demands) {
    const id = profileIdOf(problem, demand);
    const own = demands.get(id);
    if (own === undefined) demands.set(id, [demand]);
    else own.push(demand);
  }
  const profiles = profilesOf(problem);
  const faults: Fault[] = [];
  let pieces = 0;
  for (const profile of profiles) {
    const asked = demands.get(profile.id) ?? [];
    const longest = longestPart(problem, profile);
    const rule = spliceRuleOf(problem, profile);
    if (rule === undefined || longest === undefined || !asked.some(maySplice)) {
      pieces += asked.length;
    } else if (rule.overlap >= longest) {
      const name = ofProfile('spliceOverlap', profiles.length > 1 ? profile.id : '');
      const limit = say(longest);
      faults.push(fault('cutting.splice-too-short', name, say(rule.overlap), { limit }));
    } else {
      const { overlap } = rule;
      pieces += asked.reduce(
        (sum, demand) =>
          sum + (maySplice(demand) ? fewestParts(demand.length, longest, overlap) : 1),
        0,
      );
    }
  }
  if (pieces <= MOST_PLANNED_PIECES) return faults;
  return [
    ...faults,
    fault('cutting.too-many-pieces', 'pieces', pieces, { limit: MOST_PLANNED_PIECES }),
  ];
}

/** The longest part of a profile that some stick which can be had gives; undefined where none can. */
function longestPart(problem: StickProblem, profile: StickProfile): number | undefined {
  const rule = spliceRuleOf(problem, profile);
  const rooms = problem.supplies
    .filter((supply) => countOf(supply) > 0 && servesBlank(supply, profile.blank))
    .map((supply) => usableLength(problem, supply));
  if (rooms.length === 0 || rule === undefined) return undefined;
  const longest = rooms.reduce((most, room) => Math.max(most, room), 0);
  return longestPartOf({ ...problem, splice: rule }, longest);
}

/** `Splice overlap of Cove`, or without the profile where it has no name. */
function ofProfile(
  key: 'offcutCredit' | 'mostOffcutCredit' | 'spliceOverlap' | 'spliceGrid',
  profile: string,
): Argument {
  return profile === '' ? key : phrase(`${key}Of`, { profile: own(profile) });
}
