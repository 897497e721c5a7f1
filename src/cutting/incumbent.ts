import { firstBound } from './first-bound.ts';
import { profilesOf } from './problem/profiles.ts';
import type {
  PlanSticksOptions,
  StickAnswer,
  StickBound,
  StickPlan,
  StickProblem,
  UnservedReason,
} from './problem/problem.ts';
import type { CutList } from './quick/cut-list.ts';
import { serveMore } from './serve-more.ts';
import { exactLaborCents } from './problem/strip-labor.ts';
import { longerOffcut } from './tidy/longer-offcut.ts';
import { EPSILON_CENTS } from './tolerances.ts';
import type { WholeStick } from './whole-stick.ts';
import { costOf, creditOf, laborOf, offcutOf, writePlan } from './write-plan.ts';

/**
 * [D] Whoever prices a plan rounds each profile's labor and its overhead to the cent: two plans of n
 * profiles differ by less than 2 n cents in that, and by their overhead's share of it.
 */
const NEAR_CENTS_A_PROFILE = 3;

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
  /** What was shown and serves the same, so nearly as cheap that rounding decides; cheapest not first. */
  private near: { readonly offer: Offer; readonly exactCents: number }[] = [];

  constructor(problem: StickProblem, options: PlanSticksOptions) {
    this.problem = problem;
    this.options = options;
  }

  /**
   * Takes a plan that is better than what there was: it serves more, then it is cheaper, labor and
   * all, has fewer sticks, fewer lay-outs, a longer offcut.
   *
   * @returns whether it is
   */
  offer(offered: Offer, phase: string): boolean {
    const served = serveMore(this.problem, offered);
    const isGain = (rank: Rank): boolean =>
      this.shown === undefined || isBetter(rank, this.shown.rank);
    if (!isGain(rankOf(this.problem, served))) return false;
    // At once, not at the end: a stick that comes out empty is gone whatever the budget.
    const tidied = { ...served, sticks: longerOffcut(this.problem, served.sticks) };
    const [plain, tidy] = [served, tidied].map((one) => rankOf(this.problem, one)) as [Rank, Rank];
    this.show(...(isBetter(tidy, plain) ? ([tidied, tidy] as const) : ([served, plain] as const)));
    this.tell(phase);
    return true;
  }

  /**
   * Takes a plan of the same sticks that is cut in fewer ways. What it costs stays the same to the
   * cent for every profile, so that a larger budget's plan is never dearer than this.
   */
  offerRecut(sticks: readonly WholeStick[], phase: string): void {
    const rank = rankOf(this.problem, { ...this.best, sticks });
    if (this.shown !== undefined && isBetter(rank, this.shown.rank)) this.exchange(sticks, phase);
  }

  /**
   * Takes a plan of the same sticks whose joints lie where they are wanted more, or whose pieces have changed
   * places, for the same money.
   */
  offerExchanged(sticks: readonly WholeStick[], phase: string): void {
    if (sticks !== this.best.sticks) this.exchange(sticks, phase);
  }

  private exchange(sticks: readonly WholeStick[], phase: string): void {
    const { best } = this;
    if (this.shown === undefined) return;
    if (moneyKey(this.problem, sticks) !== moneyKey(this.problem, best.sticks)) return;
    const offer = { ...best, sticks };
    const exactCents = exactCentsOf(this.problem, sticks);
    this.near = this.near.map((one) => (one.offer === best ? { offer, exactCents } : one));
    this.shown = { ...this.shown, offer, rank: rankOf(this.problem, offer) };
    this.tell(phase);
  }

  private show(offer: Offer, rank: Rank): void {
    const served = servedKey(offer);
    if (served !== this.shown?.served) {
      this.bound = undefined;
      this.near = [];
    }
    this.shown = { offer, rank, served };
    this.near.push({ offer, exactCents: exactCentsOf(this.problem, offer.sticks) });
    const least = Math.min(...this.near.map(({ exactCents }) => exactCents));
    const most = least + NEAR_CENTS_A_PROFILE * profilesOf(this.problem).length;
    this.near = this.near.filter(({ exactCents }) => exactCents <= most);
    this.bound ??= firstBound(this.problem, offer.lists, offer.unserved);
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
    const proven = plan.costCents + plan.laborCents - plan.creditCents === bound.costCents;
    return { plan, bound, status: proven ? 'proven' : cancelled ? 'unfinished' : 'gap' };
  }

  /** Plans beside the best one between which and it only rounding decides, see StickAnswer. */
  nearPlans(): readonly StickPlan[] {
    return this.near
      .filter(({ offer }) => offer !== this.best)
      .map(({ offer }) => writePlan(this.problem, offer.sticks, offer.unserved));
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
    netCents:
      costOf(sticks, profiles) + laborOf(sticks, profiles) - creditOf(problem, sticks, profiles),
    sticks: sticks.length,
    layouts: () => countLayouts(sticks),
    longestOffcut: () =>
      sticks.reduce((most, stick) => Math.max(most, offcutOf(problem, stick)), 0),
  };
}

/** Cents before the labor of strips is rounded. */
function exactCentsOf(problem: StickProblem, sticks: readonly WholeStick[]): number {
  const profiles = profilesOf(problem);
  const labors = new Map(profiles.map(({ id, labor }) => [id, labor]));
  const labor = sticks.reduce(
    (sum, { profile, supply }) => sum + exactLaborCents(labors.get(profile), supply.length),
    0,
  );
  return costOf(sticks, profiles) - creditOf(problem, sticks, profiles) + labor;
}

/** What each profile has of each supply, and what its offcuts are worth. */
function moneyKey(problem: StickProblem, sticks: readonly WholeStick[]): string {
  const profiles = profilesOf(problem);
  const own = (id: string): readonly WholeStick[] => sticks.filter(({ profile }) => profile === id);
  return profiles
    .map(({ id }) => {
      const supplies = own(id).map(({ supply, rip }) => JSON.stringify([supply.id, rip]));
      return `${supplies.sort().join()} ${creditOf(problem, own(id), profiles)}`;
    })
    .join(';');
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
