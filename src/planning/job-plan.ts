/** A planned job: what the sheets, the pane and the command line show. Lengths in inches, money in whole cents. */
import type { Caution } from '../core/faults/fault.ts';
import type { ExactInches } from '../core/units/length.ts';
import type { StickAnswer, StickProblem } from '../cutting/problem.ts';
import type { Job, Profile, StockItem } from './job.ts';
import type { Piece } from './piece.ts';
import type { SetUp } from './plan-setup.ts';

export interface CutPiece {
  /** A piece's id, or that of the cove's set-up spare. */
  readonly id: string;
  /** Absent for a set-up spare. */
  readonly piece?: Piece;
  /** From 1 where the piece is spliced from several. */
  readonly part?: number;
  readonly length: ExactInches;
}

export interface CutStick {
  /** The profile and a number of its own. */
  readonly id: string;
  readonly item: StockItem;
  /** Which stick or board of its row in Stock, from 1, and which blank of that board. */
  readonly unit: number;
  readonly strip: number;
  readonly strips: number;
  readonly fromRack: boolean;
  readonly length: ExactInches;
  readonly pieces: readonly CutPiece[];
  readonly offcut: ExactInches;
  readonly offcutKept: boolean;
}

/** How many of one row of Stock are pulled from the rack and how many are bought. */
export interface StockUse {
  readonly item: StockItem;
  readonly fromRack: number;
  readonly bought: number;
  /** Whole blanks of the opened boards that nothing was cut from: kept. */
  readonly unusedBlanks: number;
  readonly priceCents: number;
  readonly costCents: number;
  readonly boardFeet?: number;
}

export interface Hours {
  readonly setUp: number;
  /** Passing blanks over the blade and carrying them round. */
  readonly passes: number;
  readonly smoothing: number;
  readonly crosscuts: number;
}

export interface Money {
  readonly lumberCents: number;
  /** What the kept offcuts are worth: comes off. */
  readonly offcutCreditCents: number;
  readonly laborCents: number;
  readonly overheadCents: number;
  readonly costCents: number;
  readonly priceCents: number;
}

export interface Tally {
  readonly pieces: number;
  readonly sticks: number;
  readonly lengthNet: ExactInches;
  readonly lengthBought: ExactInches;
  /** Absent where the profile's blank has no width or thickness given. */
  readonly boardFeetNet?: number;
  readonly boardFeetWithAllowance?: number;
  readonly offcutAllowancePercent: number;
  /** Passes over the blade: those of one blank times the blanks. */
  readonly passes: number;
  readonly hours: Hours;
  readonly pounds?: number;
}

export interface ProfilePlan {
  readonly profile: Profile;
  readonly setUp?: SetUp;
  readonly problem: StickProblem;
  readonly answer: StickAnswer;
  readonly sticks: readonly CutStick[];
  readonly stockUse: readonly StockUse[];
  readonly tally: Tally;
  readonly money: Money;
}

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
  readonly sticks: number;
  readonly lengthNet: ExactInches;
  readonly lengthBought: ExactInches;
  readonly boardFeetNet: number;
  readonly boardFeetWithAllowance: number;
  readonly passes: number;
  readonly hours: number;
  readonly costCents: number;
  readonly priceCents: number;
  readonly taxCents: number;
  readonly currency: string;
}

export interface JobPlan {
  readonly job: Job;
  /** All of them, done ones too, in the order of the runs. */
  readonly pieces: readonly Piece[];
  readonly profiles: readonly ProfilePlan[];
  readonly rooms: readonly RoomLine[];
  readonly totals: Totals;
  readonly cautions: readonly Caution[];
}

/** At the table saw: set-ups and passes. */
export function machineHoursOf(hours: Hours): number {
  return hours.setUp + hours.passes;
}

/** Smoothing and cutting to length. */
export function benchHoursOf(hours: Hours): number {
  return hours.smoothing + hours.crosscuts;
}

export function hoursOf(hours: Hours): number {
  return hours.setUp + hours.passes + hours.smoothing + hours.crosscuts;
}
