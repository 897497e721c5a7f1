/** Tiny random problems with every condition there is, small enough that every plan can be tried. */
import type {
  Rip,
  StickDemand,
  StickProblem,
  StickProfile,
  StickSupply,
} from '../../src/cutting/problem/problem.ts';
import { piece, problemOf, stick } from './problem-maker.ts';

export type Next = (limit: number) => number;

/** Two profiles of one blank or two, or one; boards ripped in several ways; matched pairs; credits; labor. */
export function tinyJob(next: Next, mostPieces: number): StickProblem {
  const endTrim = next(3);
  const kerf = next(3);
  const blanks = ['wide', 'narrow'].slice(0, 1 + next(2));
  const supplies = Array.from({ length: 1 + next(3) }, (_, at) =>
    tinySupply(next, `s${at}`, 2 * endTrim + 3 + next(16), blanks),
  );
  const profiles = ['P', 'Q'].slice(0, 1 + next(2)).map((id): StickProfile => {
    const blank = blanks[next(blanks.length)]!;
    return {
      id,
      blank,
      ...(next(2) === 0 ? {} : { offcutCredit: { centsPerUnit: next(9) / 8, mostCents: next(8) } }),
      ...(next(2) === 0 ? {} : { labor: { cents: next(9) / 4, centsPerUnit: next(5) / 16 } }),
    };
  });
  const used = new Set(profiles.map(({ blank }) => blank));
  const demands = Array.from({ length: next(mostPieces + 1) }, (_, at) =>
    tinyPiece(next, `p${at}`, kerf, profiles),
  );
  return problemOf(
    demands,
    supplies.map((supply) => onlyBlanks(supply, used)),
    { kerf, endTrim, profiles, keepOffcutsOver: next(6) },
  );
}

function tinyPiece(
  next: Next,
  id: string,
  kerf: number,
  profiles: readonly StickProfile[],
): StickDemand {
  const profile = profiles[next(profiles.length)]!.id;
  return piece(id, Math.max(1, kerf) + next(11), {
    profile,
    onePiece: next(2) === 0,
    ...(next(4) === 0 ? { match: `${profile} pair ${next(2)}` } : {}),
  });
}

function tinySupply(
  next: Next,
  id: string,
  length: number,
  blanks: readonly string[],
): StickSupply {
  const ways: readonly (readonly (readonly number[])[] | undefined)[] = [
    undefined,
    // A stick for the first blank, for each in turn, a board of both, one with a choice.
    [[1]],
    [[1], [0, 1]],
    [[1, 1]],
    [
      [2, 0],
      [1, 2],
      [0, 3],
    ],
  ];
  const chosen = ways[next(ways.length)];
  const rips = chosen?.flatMap((counts): Rip[] => {
    const rip = blanks.flatMap((blank, at) => {
      const count = counts[at] ?? 0;
      return count > 0 ? [{ blank, count }] : [];
    });
    return rip.length === 0 ? [] : [rip];
  });
  return stick(length, {
    id,
    priceCents: next(16),
    strips: next(3) > 0 ? 1 : 2 + next(2),
    have: next(4),
    buyMost: next(3) > 0 ? next(3) : null,
    ...(rips === undefined ? {} : { rips }),
  });
}

/** The same supply for a problem whose profiles are made from these blanks alone. */
function onlyBlanks(supply: StickSupply, blanks: ReadonlySet<string>): StickSupply {
  const { rips, ...bare } = supply;
  const kept = rips
    ?.map((rip) => rip.filter(({ blank }) => blanks.has(blank)))
    .filter((rip) => rip.length > 0);
  const some = kept?.filter(
    (rip, at) => !kept.some((other, to) => to !== at && isWithin(rip, other, to < at)),
  );
  if (some === undefined) return bare;
  // What is for other blanks alone is for nobody.
  return some.length === 0 ? { ...bare, have: 0, buyMost: 0 } : { ...bare, rips: some };
}

function isWithin(rip: Rip, other: Rip, isEarlier: boolean): boolean {
  const countIn = (blank: string, of: Rip): number =>
    of.find((one) => one.blank === blank)?.count ?? 0;
  const fits = rip.every(({ blank, count }) => count <= countIn(blank, other));
  const alike = other.every(({ blank, count }) => count <= countIn(blank, rip));
  return fits && (!alike || isEarlier);
}
