import { firstBound } from './first-bound.ts';
import { profilesOf } from './problem/profiles.ts';
import type {
  PlanSticksOptions,
  StickAnswer,
  StickBound,
  StickProblem,
  UnservedReason,
} from './problem/problem.ts';
import type { CutList } from './quick/cut-list.ts';
import { serveMore } from './serve-more.ts';
import { EPSILON_CENTS } from './tolerances.ts';
import type { WholeStick } from './whole-stick.ts';
import { costOf, creditOf, offcutOf, writePlan } from './write-plan.ts';

/** Sticks, and what they leave over. */
export interface Offer {
  readonly sticks: readonly WholeStick[];
  readonly unserved: ReadonlyMap<string, UnservedReason>;
  readonly lists: readonly CutList[];
}

interface Rank {
  readonly unservedCount: number;
  readonly unservedLength: number;
  readonly netCents: number;
  readonly sticks: number;
  /** Different lay-outs, counted when it comes to that. */
  readonly layouts: () => number;
  /** In the planner's units. */
  readonly longestOffcut: () => number;
}

/** The best plan so far and the best bound for what it serves; tells of every gain. */
export class Incumbent {
  private readonly problem: StickProblem;
  private readonly options: PlanSticksOptions;
  private shown:
    { readonly offer: Offer; readonly rank: Rank; readonly served: string } | undefined;
  private bound: StickBound | undefined;

  constructor(problem: StickProblem, options: PlanSticksOptions) {
    this.problem = problem;
    this.options = options;
  }

  /**
   * Takes a plan that is better than what there was: it serves more, then it is cheaper, has fewer
   * sticks, fewer lay-outs, a longer offcut.
   *
   * @returns whether it is
   */
  offer(offered: Offer, phase: string): boolean {
    const offer = serveMore(this.problem, offered);
    const rank = rankOf(this.problem, offer);
    if (this.shown !== undefined && !isBetter(rank, this.shown.rank)) return false;
    const served = servedKey(offer);
    if (served !== this.shown?.served) this.bound = undefined;
    this.shown = { offer, rank, served };
    this.bound ??= firstBound(this.problem, offer.lists, offer.unserved);
    this.tell(phase);
    return true;
  }

  /** Takes a bound for the demands that are served now. */
  raiseBound(bound: StickBound | undefined, phase: string): void {
    if (bound === undefined || bound.costCents <= (this.bound?.costCents ?? -1)) return;
    this.bound = bound;
    this.tell(phase);
  }

  /** Everything cheaper was tried, in whole numbers, and is not there. */
  allTried(phase: string): void {
    if (this.bound === undefined || this.bound.costCents >= this.netCents) return;
    const { costCents: pricesCents } = this.bound;
    this.bound = { ...this.bound, costCents: this.netCents, tried: { pricesCents } };
    this.tell(phase);
  }

  get best(): Offer {
    if (this.shown === undefined) throw new RangeError('There is no plan yet.');
    return this.shown.offer;
  }

  get netCents(): number {
    return this.shown?.rank.netCents ?? Infinity;
  }

  /** Pieces left over that some stick would give, were there enough. */
  leftOver(): number {
    const { best } = this;
    const unservable = best.lists.reduce((sum, list) => sum + list.unservable.length, 0);
    return best.unserved.size - unservable;
  }

  /**
   * What a plan must cost less than to be of use, a little added for the solver's rounding; -Infinity
   * where none can be.
   *
   * @param leastGain cents that a cheaper plan is cheaper by at least
   */
  beatCents(leastGain: number): number {
    const { netCents } = this;
    return netCents === this.bound?.costCents ? -Infinity : netCents - leastGain + EPSILON_CENTS;
  }

  /** Nothing is left to gain: all that can be served is, at a cost that can't be less. */
  isProven(): boolean {
    if (this.shown === undefined) return false;
    return this.netCents === this.bound?.costCents && this.leftOver() === 0;
  }

  answer(cancelled: boolean): StickAnswer {
    const { sticks, unserved } = this.best;
    const plan = writePlan(this.problem, sticks, unserved);
    const bound = this.bound ?? { costCents: 0, duals: [], credits: [] };
    const proven = plan.costCents - plan.creditCents === bound.costCents;
    return { plan, bound, status: proven ? 'proven' : cancelled ? 'unfinished' : 'gap' };
  }

  private tell(phase: string): void {
    this.options.onProgress?.({
      phase,
      costCents: this.netCents,
      boundCents: this.bound?.costCents ?? 0,
      answer: () => this.answer(true),
    });
  }
}

function servedKey({ unserved, lists }: Offer): string {
  const spliced = lists.map((list) => [...list.spliced].sort((a, b) => a - b).join()).join(';');
  return `${[...unserved.keys()].sort().join()}|${spliced}`;
}

function rankOf(problem: StickProblem, { sticks, unserved }: Offer): Rank {
  const profiles = profilesOf(problem);
  const unservedLength = problem.demands.reduce(
    (sum, { id, length }) => sum + (unserved.has(id) ? length : 0),
    0,
  );
  return {
    unservedCount: unserved.size,
    unservedLength,
    netCents: costOf(sticks, profiles) - creditOf(problem, sticks, profiles),
    sticks: sticks.length,
    layouts: () => countLayouts(sticks),
    longestOffcut: () =>
      sticks.reduce((most, stick) => Math.max(most, offcutOf(problem, stick)), 0),
  };
}

function countLayouts(sticks: readonly WholeStick[]): number {
  const layouts = new Set(
    sticks.map(
      ({ profile, supply, blocks }) =>
        `${profile} ${supply.id} ${blocks
          .map(({ weight }) => weight)
          .sort((a, b) => a - b)
          .join()}`,
    ),
  );
  return layouts.size;
}

function isBetter(one: Rank, than: Rank): boolean {
  const difference =
    one.unservedCount - than.unservedCount ||
    one.unservedLength - than.unservedLength ||
    one.netCents - than.netCents ||
    one.sticks - than.sticks ||
    one.layouts() - than.layouts() ||
    than.longestOffcut() - one.longestOffcut();
  return difference < 0;
}
