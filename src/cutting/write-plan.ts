import { entryAt } from './entry-at.ts';
import { creditCap, offcutCents } from './problem/offcut-credit.ts';
import { profilesOf } from './problem/profiles.ts';
import type {
  PlannedStick,
  StickPlan,
  StickProblem,
  StickProfile,
  StickSupply,
} from './problem/problem.ts';
import { laborCents } from './problem/strip-labor.ts';
import { stripsOf, usableLength } from './problem/supplies.ts';
import { weightOf, type WholeStick } from './whole-stick.ts';

/**
 * Writes sticks out as a plan: profile by profile, longest sticks first, like sticks beside each
 * other; boards are numbered as they come, all of one rip together.
 *
 * @param unserved the reason for each demand that is left over, by id
 */
export function writePlan(
  problem: StickProblem,
  sticks: readonly WholeStick[],
  unserved: ReadonlyMap<string, StickPlan['unserved'][number]['why']>,
): StickPlan {
  const profiles = profilesOf(problem);
  const place = new Map(profiles.map(({ id }, at) => [id, at]));
  const sorted = [...sticks].sort(
    (a, b) =>
      (place.get(a.profile) ?? 0) - (place.get(b.profile) ?? 0) ||
      b.supply.length - a.supply.length ||
      compareSupplies(a.supply, b.supply) ||
      a.rip - b.rip ||
      longestPiecesFirst(a, b),
  );
  const boards = numberBoards(sorted, profiles);
  const planned = sorted.map((stick) => writeStick(problem, stick, boards));
  const left = problem.demands.flatMap(({ id }) => {
    const why = unserved.get(id);
    return why === undefined ? [] : [{ demandId: id, why }];
  });
  return {
    sticks: planned,
    unserved: left,
    costCents: costOf(sticks, profiles),
    creditCents: creditOf(problem, sticks, profiles),
    laborCents: laborOf(sticks, profiles),
  };
}

/** Whole boards and sticks times their prices. */
export function costOf(sticks: readonly WholeStick[], profiles: readonly StickProfile[]): number {
  let cents = 0;
  for (const { supply, boards } of countBoards(sticks, profiles))
    cents += boards * supply.priceCents;
  return cents;
}

/** What the sticks cost in labor, each rounded to the cent, by their profiles. */
export function laborOf(sticks: readonly WholeStick[], profiles: readonly StickProfile[]): number {
  const labors = new Map(profiles.map(({ id, labor }) => [id, labor]));
  return sticks.reduce(
    (sum, { profile, supply }) => sum + laborCents(labors.get(profile), supply.length),
    0,
  );
}

export function creditOf(
  problem: StickProblem,
  sticks: readonly WholeStick[],
  profiles: readonly StickProfile[],
): number {
  const credits = new Map(profiles.map(({ id, offcutCredit }) => [id, offcutCredit]));
  return sticks.reduce(
    (sum, stick) =>
      sum +
      offcutCents(
        offcutOf(problem, stick),
        problem.keepOffcutsOver,
        credits.get(stick.profile),
        creditCap(stick.supply, stick.rip),
      ),
    0,
  );
}

/** How many boards of each supply and rip are opened: as many as the blank needs that needs most. */
export function countBoards(
  sticks: readonly WholeStick[],
  profiles: readonly StickProfile[],
): readonly { readonly supply: StickSupply; readonly key: string; readonly boards: number }[] {
  const blanks = new Map(profiles.map(({ id, blank }) => [id, blank]));
  const opened = new Map<
    StickSupply,
    Map<string, { supply: StickSupply; key: string; boards: number; strips: Map<string, number> }>
  >();
  for (const { supply, rip, profile } of sticks) {
    const blank = blanks.get(profile) ?? '';
    const rips = opened.get(supply) ?? new Map<string, never>();
    opened.set(supply, rips);
    const key = ripKey(supply, rip, blank);
    const one = rips.get(key) ?? { supply, key, boards: 0, strips: new Map<string, number>() };
    rips.set(key, one);
    const strips = (one.strips.get(blank) ?? 0) + 1;
    one.strips.set(blank, strips);
    one.boards = Math.max(one.boards, Math.ceil(strips / stripsOf(supply, rip, blank)));
  }
  return [...opened.values()].flatMap((rips) => [...rips.values()]);
}

/** Boards of one key are ripped alike: by their rip, or, where there are none, into one blank. */
function ripKey(supply: StickSupply, rip: number, blank: string): string {
  return supply.rips === undefined ? `blank ${blank}` : `rip ${rip}`;
}

interface Numbering {
  /** The first unit of a supply that is ripped in one way. */
  readonly first: ReadonlyMap<string, number>;
  readonly blanks: ReadonlyMap<string, string>;
  /** How many sticks of a blank have been numbered, by supply, rip and blank. */
  readonly given: Map<string, number>;
}

function numberBoards(sticks: readonly WholeStick[], profiles: readonly StickProfile[]): Numbering {
  const first = new Map<string, number>();
  const next = new Map<string, number>();
  for (const { supply, key, boards } of countBoards(sticks, profiles)) {
    const from = next.get(supply.id) ?? 0;
    first.set(`${key} of ${supply.id}`, from);
    next.set(supply.id, from + boards);
  }
  const blanks = new Map(profiles.map(({ id, blank }) => [id, blank]));
  return { first, blanks, given: new Map() };
}

function writeStick(
  problem: StickProblem,
  stick: WholeStick,
  { first, blanks, given }: Numbering,
): PlannedStick {
  const { supply, rip, profile } = stick;
  const blank = blanks.get(profile) ?? '';
  const strips = stripsOf(supply, rip, blank);
  const key = JSON.stringify([supply.id, rip, blank]);
  const at = given.get(key) ?? 0;
  given.set(key, at + 1);
  return {
    supplyId: supply.id,
    profile,
    unit:
      (first.get(`${ripKey(supply, rip, blank)} of ${supply.id}`) ?? 0) + Math.floor(at / strips),
    rip,
    strip: stripsBefore(supply, rip, blank) + (at % strips),
    pieces: stick.blocks.flatMap(({ pieces }) => pieces),
    offcut: offcutOf(problem, stick),
  };
}

function stripsBefore(supply: StickSupply, rip: number, blank: string): number {
  const strips = supply.rips?.[rip] ?? [];
  const place = strips.findIndex((one) => one.blank === blank);
  return strips.slice(0, Math.max(0, place)).reduce((sum, { count }) => sum + count, 0);
}

export function offcutOf(problem: StickProblem, stick: WholeStick): number {
  return Math.max(0, usableLength(problem, stick.supply) - weightOf(stick));
}

// By what they are, so that a reordered stock list gives the same plan; alike ones by their names.
function compareSupplies(a: StickSupply, b: StickSupply): number {
  return (
    a.priceCents - b.priceCents || a.strips - b.strips || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)
  );
}

function longestPiecesFirst(a: WholeStick, b: WholeStick): number {
  const one = a.blocks.flatMap(({ pieces }) => pieces);
  const other = b.blocks.flatMap(({ pieces }) => pieces);
  const differing = one.findIndex(({ length }, at) => length !== other[at]?.length);
  if (differing >= 0) return (other[differing]?.length ?? 0) - entryAt(one, differing).length;
  return other.length - one.length;
}
