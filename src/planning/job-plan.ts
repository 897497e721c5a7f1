/** A planned job: what the sheets, the pane and the command line show. Lengths in inches, money in whole cents. */
import type { PriceRange } from '../core/bid/price-range.ts';
import type { Caution } from '../core/faults/fault.ts';
import type { ExactInches } from '../core/units/length.ts';
import type { StickAnswer, StickProblem } from '../cutting/problem/problem.ts';
import type { CutAlready, PieceThen } from './cut/cut-already.ts';
import type { BoughtProfile, CoveProfile, Job, JobOption, Profile, StockItem } from './job.ts';
import type { Piece } from './piece.ts';
import type { CutAway } from './pieces/cut-away.ts';
import type { RippedBoard, StockUse } from './opened-stock.ts';
import type { SetUp } from './plan-setup.ts';
import type { AllowedLumber } from './stock-units.ts';
import type { Counts, WorkLine } from './work/work-row.ts';
import type { Hours } from './work/hours.ts';

export interface CutPiece {
  /** A piece's id, or that of the cove's set-up spare. */
  readonly id: string;
  /** Absent for a set-up spare. */
  readonly piece?: Piece;
  /** From 1 where the piece is spliced from several. */
  readonly part?: number;
  readonly length: ExactInches;
  /** Off its stick already, by a tick on the sheets of an earlier plan. */
  readonly isCut?: true;
  /** Cut for an earlier plan, and nothing asks for it any more: it is left over, with no `piece`. */
  readonly unneeded?: PieceThen;
  /** Of one left over: a piece still to be cut that could be made from it; the plan doesn't count on it. */
  readonly recutTo?: Piece;
}

/** Whether it is a cove's set-up spare. */
export function isSpare({ piece, unneeded }: CutPiece): boolean {
  return piece === undefined && unneeded === undefined;
}

export interface CutStick {
  /** The profile and a number of its own. */
  readonly id: string;
  readonly item: StockItem;
  /** Which stick or board of its row in Stock, from 1, through all groups. */
  readonly unit: number;
  /** Which blank of that board, from 1, and how many the board is ripped into; 1 of 1 for a stick. */
  readonly strip: number;
  readonly strips: number;
  readonly fromRack: boolean;
  readonly length: ExactInches;
  readonly pieces: readonly CutPiece[];
  readonly offcut: ExactInches;
  readonly offcutKept: boolean;
  /** Cut, or begun, by an earlier plan: it stays as it is. */
  readonly isCut?: true;
}

/**
 * Profiles that share boards or limited stock, planned as one problem with one cost; a profile that
 * shares nothing is a group of its own.
 */
export interface CuttingGroup {
  /** The names of its profiles: `Cove`, or `Cove, Crown`. */
  readonly name: string;
  /** In the order of Profiles. */
  readonly profiles: readonly Profile[];
  /** Of the pieces that are still to be cut, of what stock is left to cut them from. */
  readonly problem: StickProblem;
  readonly answer: StickAnswer;
  /** What the sticks that are cut already come to, beside the answer. Absent: none is. */
  readonly cut?: CutPart;
  readonly stockUse: readonly StockUse[];
  /** Opened boards that are ripped, row by row of Stock. */
  readonly boards: readonly RippedBoard[];
  /** How many different ways of cutting a stick there are: of one row, for one profile, alike in their lengths. */
  readonly layouts: number;
  /** Of all opened boards and sticks; absent where it is not known of one of them. */
  readonly boardFeetBought?: number;
  /** Of these, what the pieces are, set-up spares and overlaps included: strip width times length. */
  readonly boardFeetUsed?: number;
  /** Whole boards and sticks; the sum of its profiles' shares. */
  readonly lumberCents: number;
  /** What the kept offcuts are worth; the sum of its profiles' credits. */
  readonly offcutCreditCents: number;
}

/** The sticks of a group that are cut already: no plan can change what they cost. */
export interface CutPart {
  readonly sticks: number;
  /** Of whole boards and sticks. */
  readonly lumberCents: number;
  readonly offcutCreditCents: number;
  /** Of their trimming cuts and passes, as the stick planner rounds it. */
  readonly laborCents: number;
}

export interface Money {
  /** The profile's share of what its group pays for lumber, see shareLumber. */
  readonly lumberCents: number;
  /** What its own kept offcuts are worth: comes off. */
  readonly offcutCreditCents: number;
  readonly laborCents: number;
  readonly overheadCents: number;
  readonly costCents: number;
  /** On the cost. */
  readonly contingencyCents: number;
  /** On lumber less credit, and on labor. */
  readonly markupCents: number;
  readonly priceCents: number;
}

export interface Tally {
  readonly pieces: number;
  readonly sticks: number;
  readonly lengthNet: ExactInches;
  readonly lengthBought: ExactInches;
  /** Of the blanks that the net length takes; absent for what is bought ready made. */
  readonly boardFeetNet?: number;
  /** The net board feet and the offcut allowance on them, see `allowanceFactor`. */
  readonly boardFeetWithAllowance?: number;
  /** Its share of the boards and sticks that the plan opens; absent where those aren't known. */
  readonly boardFeetBought?: number;
  /** Of net or of what is bought, as the shop's `allowance of` says. */
  readonly offcutAllowancePercent: number;
  /** Passes over the blade: those of one blank times the blanks. */
  readonly passes: number;
  /** Of its spliced pieces: their parts less one each. */
  readonly joints: number;
  readonly hours: Hours;
  readonly pounds?: number;
}

/** What a profile comes to, by the plan's sticks or by the offcut allowance. */
export interface Costing {
  readonly counts: Counts;
  /** What its hours and its labor are made of. */
  readonly work: readonly WorkLine[];
  readonly hours: Hours;
  readonly money: Money;
}

/** Without offcut credit, and the same whatever sticks are opened. */
export interface AllowedCosting extends Costing {
  readonly lumber: AllowedLumber;
}

interface Planned {
  readonly sticks: readonly CutStick[];
  /** As planned, whatever the price goes by. */
  readonly tally: Tally;
  /** What the price is made of: byPlan's, or byAllowance's where that is the shop's price basis. */
  readonly work: readonly WorkLine[];
  readonly money: Money;
  /** What the shop does and pays. */
  readonly byPlan: Costing;
  readonly byAllowance: AllowedCosting;
}

/** Work for the whole job, which no profile or room bears. */
export interface JobWork {
  readonly lines: readonly WorkLine[];
  readonly hours: number;
  /** No lumber; absent where there are no lines. */
  readonly money?: Money;
}

export interface BoughtPlan extends Planned {
  readonly profile: BoughtProfile;
  readonly setUp?: undefined;
}

export interface CovePlan extends Planned {
  readonly profile: CoveProfile;
  readonly setUp: SetUp;
}

export type ProfilePlan = BoughtPlan | CovePlan;

/** One profile in one room: the line that a client sees. */
export interface RoomLine {
  readonly room: string;
  readonly profile: string;
  readonly pieces: number;
  readonly lengthNet: ExactInches;
  readonly priceCents: number;
}

export interface Totals {
  readonly pieces: number;
  readonly done: number;
  /** Those that are cut already among them; so it is with every total of cost, hours and lumber. */
  readonly sticks: number;
  readonly sticksCut: number;
  readonly lengthNet: ExactInches;
  readonly lengthBought: ExactInches;
  readonly boardFeetNet: number;
  readonly boardFeetWithAllowance: number;
  /** Whole boards and sticks, bought or from the rack; undefined where they aren't known of all. */
  readonly boardFeetBought?: number;
  readonly passes: number;
  readonly joints: number;
  /** What the joints' hours as planned cost, a part of the labor, without overhead. */
  readonly jointCostCents: number;
  /** As planned, whatever the price goes by. */
  readonly hours: number;
  /** What the price goes by, see `price basis`: it and all money that follows. */
  readonly costCents: number;
  readonly contingencyCents: number;
  readonly markupCents: number;
  /** Of all moldings: the sum of the rooms' lines. */
  readonly linesCents: number;
  /** Of the work for the whole job. */
  readonly jobWorkCents: number;
  /** What brings both up to the minimum charge. */
  readonly toMinimumCents: number;
  readonly deliveryCents: number;
  /** What brings all that up to a round price. */
  readonly roundingCents: number;
  /** Without tax: these five together. */
  readonly priceCents: number;
  /** What of the price is taxed. */
  readonly taxableCents: number;
  readonly taxCents: number;
  readonly currency: string;
}

export interface PricedOption {
  readonly option: JobOption;
  /** The job with it taken up, which has no options itself. */
  readonly plan: JobPlan;
  /** What its totals have more than those of the job without it; below 0 where they have less. */
  readonly more: MoreOfOption;
}

/** Without a plan of its own it is in the plan as it stands. */
export type PlannedOption =
  PricedOption | (Pick<PricedOption, 'option'> & { plan?: never; more?: never });

export function isPriced(planned: PlannedOption): planned is PricedOption {
  return planned.plan !== undefined;
}

export type MoreOfOption = Readonly<
  Record<'priceCents' | 'taxableCents' | 'taxCents' | 'costCents' | 'hours', number>
>;

export interface JobPlan {
  readonly job: Job;
  /** All of them, done ones too, in the order of the runs. */
  readonly pieces: readonly Piece[];
  /** What openings take out of runs, in the order of the runs. */
  readonly cutAways: readonly CutAway[];
  /** In the order of Profiles. */
  readonly profiles: readonly ProfilePlan[];
  /** Every planned profile is in one of them; in the order of their first profiles. */
  readonly groups: readonly CuttingGroup[];
  readonly rooms: readonly RoomLine[];
  readonly jobWork: JobWork;
  readonly totals: Totals;
  /** Of the price without tax, in the currency; absent where nothing has a low or a high. */
  readonly range?: PriceRange;
  /** Those of `job.options`, their prices over that of this plan; none that what is cut leaves no price of. */
  readonly options: readonly PlannedOption[];
  /** What was cut already when it was planned, as it was told then. */
  readonly cut: readonly CutAlready[];
  readonly cautions: readonly Caution[];
}

/** As much of a plan as the page of a set-up tells of: there may be no more, of a cove without a job. */
export interface SetUpJob extends Pick<JobPlan, 'pieces' | 'cautions'> {
  readonly job: Pick<Job, 'shop'>;
}
export type SetUpPlan = Pick<CovePlan, 'profile' | 'setUp' | 'sticks'>;

export function isCovePlan(planned: ProfilePlan): planned is CovePlan {
  return planned.setUp !== undefined;
}

/** Plans of a group, in the order of its profiles. */
export function plansOf(plan: JobPlan, group: CuttingGroup): readonly ProfilePlan[] {
  return plan.profiles.filter(({ profile }) => group.profiles.includes(profile));
}
