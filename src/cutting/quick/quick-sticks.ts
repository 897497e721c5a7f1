import { entryAt } from '../entry-at.ts';
import { profileIdOf, profilesOf, spliceRuleOf } from '../problem/profiles.ts';
import type {
  StickProblem,
  StickProfile,
  StickSupply,
  UnservedReason,
} from '../problem/problem.ts';
import { stickKinds, type StickKind } from '../stick-kind.ts';
import { stripsOf } from '../problem/supplies.ts';
import type { WholeStick } from '../whole-stick.ts';
import { costOf } from '../write-plan.ts';
import type { Block, CutList } from './cut-list.ts';
import type { Draft } from './draft.ts';
import { quickPlans } from './quick-plans.ts';

/** A quick plan of every profile. */
export interface QuickSticks {
  readonly sticks: readonly WholeStick[];
  readonly unserved: ReadonlyMap<string, UnservedReason>;
  /** The blocks of each profile; their demands are places in `problem.demands`. */
  readonly lists: readonly CutList[];
  /** Of the sticks alone. */
  readonly costCents: number;
}

/**
 * Quick plans of a problem of several profiles: each by itself in their order, taking what those
 * before it left of the stock; boards are ripped into one blank each.
 */
export function* quickSticks(problem: StickProblem, seed: number): Generator<QuickSticks, void> {
  const profiles = profilesOf(problem);
  const parts: Part[] = [];
  for (const profile of profiles) {
    const steps = partsOf(problem, profile, parts, seed);
    let last: Part | undefined;
    let joined: QuickSticks | undefined;
    for (const part of steps) {
      // Nothing can be shown before every profile has a plan.
      if (parts.length === profiles.length - 1) {
        if (part !== last || joined === undefined) joined = join([...parts, part], profiles);
        yield joined;
      }
      last = part;
    }
    if (last !== undefined) parts.push(last);
  }
}

interface Part {
  readonly sticks: readonly WholeStick[];
  readonly unserved: ReadonlyMap<string, UnservedReason>;
  readonly list: CutList;
}

function* partsOf(
  problem: StickProblem,
  profile: StickProfile,
  before: readonly Part[],
  seed: number,
): Generator<Part, void> {
  const places = problem.demands.flatMap((demand, at) =>
    profileIdOf(problem, demand) === profile.id ? [at] : [],
  );
  const taken = before.flatMap(({ sticks }) => sticks);
  const opened = openStrips(taken, profilesOf(problem), profile.blank);
  const own = ownProblem(problem, profile, places, taken, opened);
  const kinds = stickKinds(own, profile.labor);
  let shown: Draft | undefined;
  let part: Part | undefined;
  for (const draft of quickPlans(own, kinds, seed)) {
    if (draft !== shown || part === undefined) {
      shown = draft;
      part = readDraft(problem, own, profile, kinds, draft, places, opened);
    }
    yield part;
  }
}

/** One profile's pieces, and the stock as it serves that profile alone. */
function ownProblem(
  problem: StickProblem,
  profile: StickProfile,
  places: readonly number[],
  taken: readonly WholeStick[],
  opened: readonly OpenStrips[],
): StickProblem {
  const { unitsPerInch, kerf, endTrim, keepOffcutsOver, supplies } = problem;
  const splice = spliceRuleOf(problem, profile);
  const profiles = profilesOf(problem);
  return {
    unitsPerInch,
    kerf,
    endTrim,
    keepOffcutsOver,
    ...(splice === undefined ? {} : { splice }),
    demands: places.map((at) => entryAt(problem.demands, at)),
    supplies: [
      ...opened.map(({ own }) => own),
      ...supplies.flatMap((supply) => {
        const strips = stripsOf(supply, widestRip(supply, profile.blank), profile.blank);
        if (strips === 0) return [];
        const used = boardsUsed(
          taken.filter((stick) => stick.supply === supply),
          profiles,
        );
        const fromRack = Math.min(used, supply.have);
        const buyMost = supply.buyMost === null ? null : supply.buyMost - (used - fromRack);
        return [{ ...supply, strips, have: supply.have - fromRack, buyMost }];
      }),
    ],
  };
}

interface OpenStrips {
  readonly own: StickSupply;
  readonly supply: StickSupply;
  readonly rip: number;
}

/** Strips of a blank on boards that others have opened: paid for already. */
function openStrips(
  taken: readonly WholeStick[],
  profiles: readonly StickProfile[],
  blank: string,
): readonly OpenStrips[] {
  const blanks = new Map(profiles.map((one) => [one.id, one.blank]));
  const groups = new Map<string, WholeStick[]>();
  for (const stick of taken) {
    if (stick.supply.rips === undefined) continue;
    const key = JSON.stringify([stick.supply.id, stick.rip]);
    groups.set(key, [...(groups.get(key) ?? []), stick]);
  }
  return [...groups].flatMap(([key, sticks]) => {
    const [first] = sticks;
    if (first === undefined) return [];
    const { supply, rip } = first;
    const used = sticks.filter((stick) => blanks.get(stick.profile) === blank).length;
    const left = boardsUsed(sticks, profiles) * stripsOf(supply, rip, blank) - used;
    const own = { ...supply, id: `open ${key}`, priceCents: 0, strips: 1, have: left, buyMost: 0 };
    return left > 0 ? [{ own, supply, rip }] : [];
  });
}

function boardsUsed(sticks: readonly WholeStick[], profiles: readonly StickProfile[]): number {
  const [first] = sticks;
  if (first === undefined) return 0;
  // At a cent each the cost is the count.
  const supply = { ...first.supply, priceCents: 1 };
  return costOf(
    sticks.map((stick) => ({ ...stick, supply })),
    profiles,
  );
}

/** The rip that gives most of a blank, by its place; 0 where there are none. */
export function widestRip(supply: StickProblem['supplies'][number], blank: string): number {
  const rips = supply.rips ?? [];
  return rips.reduce(
    (best, _, rip) => (stripsOf(supply, rip, blank) > stripsOf(supply, best, blank) ? rip : best),
    0,
  );
}

function readDraft(
  problem: StickProblem,
  own: StickProblem,
  profile: StickProfile,
  kinds: readonly StickKind[],
  draft: Draft,
  places: readonly number[],
  opened: readonly OpenStrips[],
): Part {
  const supplies = new Map(
    problem.supplies.map((supply) => [
      supply.id,
      { supply, rip: widestRip(supply, profile.blank) },
    ]),
  );
  for (const { own: open, supply, rip } of opened) supplies.set(open.id, { supply, rip });
  const sticks = new Map<number, { blocks: Block[]; kind: StickKind }>();
  const unserved = new Map(draft.list.unservable.map(({ demandId, why }) => [demandId, why]));
  const inPlace = (block: Block): Block => ({
    ...block,
    demands: block.demands.map((at) => entryAt(places, at)),
  });
  const blocks = draft.list.blocks.map(inPlace);
  draft.list.blocks.forEach((block, at) => {
    const stick = draft.stickOf[at] ?? -1;
    const kind = kinds[draft.kindOf[stick] ?? -1];
    const placed = blocks[at];
    if (stick < 0 || kind === undefined || placed === undefined) {
      for (const demand of block.demands) {
        unserved.set(entryAt(own.demands, demand).id, 'stock used up');
      }
      return;
    }
    const one = sticks.get(stick) ?? { blocks: [], kind };
    sticks.set(stick, one);
    one.blocks.push(placed);
  });
  const whole = [...sticks.values()].flatMap(({ blocks: cut, kind }) => {
    const lies = supplies.get(kind.supply.id);
    return lies === undefined ? [] : [{ profile: profile.id, ...lies, blocks: cut }];
  });
  const spliced = new Set([...draft.list.spliced].map((at) => entryAt(places, at)));
  return { sticks: whole, unserved, list: { ...draft.list, blocks, spliced } };
}

function join(parts: readonly Part[], profiles: readonly StickProfile[]): QuickSticks {
  const sticks = parts.flatMap((part) => part.sticks);
  return {
    sticks,
    unserved: new Map(parts.flatMap(({ unserved }) => [...unserved])),
    lists: parts.map(({ list }) => list),
    costCents: costOf(sticks, profiles),
  };
}
