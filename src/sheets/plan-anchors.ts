/** What one sheet of a plan takes over from another by formula, and what the sheets are called. */
import { quoteSheet } from '../core/cells/cell-range.ts';
import { Anchors } from './grammar/anchors.ts';

export const SHEET_NAMES = {
  production: 'Production',
  labor: 'Labor',
  office: 'Office',
  pieces: 'Pieces',
  setUps: 'Set-ups',
  outlines: 'Outlines',
  cutting: 'Cutting',
  labels: 'Labels',
  rooms: 'Rooms',
  yard: 'Yard',
  client: 'Client',
} as const;

/** All that is added up on Production. */
export const PRODUCTION_TOTALS = [
  'pieces',
  'sticks',
  'lengthNet',
  'lengthBought',
  'boardFeetNet',
  'boardFeetWithAllowance',
  'boardFeetBought',
  'boardFeetOfStock',
  'passes',
  'hours',
  'hoursInOrder',
  'fromRack',
  'toBuy',
  'piecesByRoom',
  'lengthByRoom',
  'boardFeetByRoom',
  'passesByRoom',
  'hoursByRoom',
] as const;

export type ProductionTotal = (typeof PRODUCTION_TOTALS)[number];

/** A rate of the shop that formulas go by. */
export type RateName =
  | 'hourlyRate'
  | 'overhead'
  | 'contingency'
  | 'materialMarkup'
  | 'laborMarkup'
  | 'margin'
  | 'minimumCharge'
  | 'delivery'
  | 'rounding'
  | 'tax'
  | 'taxOn';

interface PlanPlaces {
  /** Of a profile's plan, on Office: what lumber it bears as planned. */
  readonly lumberOnOffice: string;
  /** Of a profile's plan, on Office, as its price goes: lumber, credit (below 0), labor, price. */
  readonly moneyOnOffice: Readonly<Record<'lumber' | 'offcutCredit' | 'labor' | 'price', string>>;
  /** What the work for the whole job comes to; 0 where there is none. */
  readonly jobPriceOnOffice: string;
  readonly ratesOnOffice: Readonly<Record<RateName, string>>;
  /** By its name, on Production. */
  readonly totalOnProduction: string;
  /** The hours of the work for the whole job; 0 where there is none. */
  readonly jobHoursOnProduction: string;
  /** Of what a group uses of a row of Stock, on Production: all that is pulled and bought of it. */
  readonly countOnProduction: string;
  /** Of a line by room, on Production: the columns of profiles' numbers and of lengths down to it, and its own number. */
  readonly downToLineOnProduction: Readonly<Record<'numbers' | 'lengths' | 'number', string>>;
  /** Of a profile's plan, on Cutting: how many sticks and blanks are cut up. */
  readonly sticksOnCutting: string;
  /** Of a profile's plan, on Cutting: how many lengths are cut from them, parts and spares included. */
  readonly cutsOnCutting: string;
  /** Of a profile's plan, on Cutting: length of its sticks and blanks together. */
  readonly lengthOnCutting: string;
  /** Of all profiles, on Cutting. */
  readonly allLengthOnCutting: string;
  /** How many of its sticks there are, and are ticked as cut or begun. */
  readonly allSticksOnCutting: string;
  readonly sticksCutOnCutting: string;
  /** How many lengths of all sticks are ticked as cut. */
  readonly lengthsCutOnCutting: string;
  /** Of a piece's id, on Cutting: the lengths of all its parts, added up; what their joints overlap, in the shop's unit. */
  readonly pieceOnCutting: { readonly cells: string; readonly overlap: number };
  /** On Cutting, profile by profile: what its lengths, and its sticks, are off by; 0 is none. */
  readonly lengthsOffOnCutting: string;
  readonly sticksOffOnCutting: string;
  /** On Cutting: the counts of the pick list, and what each is off by. */
  readonly picksOnCutting: string;
  readonly picksOffOnCutting: string;
  readonly allKeptOnCutting: string;
  readonly priceOnClient: string;
  readonly toPayOnClient: string;
  readonly piecesOnClient: string;
  /** In the shop's unit. */
  readonly lengthOnClient: string;
  /** Whether all sheets agree, in a sentence; and what the price without tax is now. */
  readonly verdictOnProduction: string;
  readonly priceOnOffice: string;
  /** What all must agree with, on Office: verdicts in a column, and beside each what it is of. */
  readonly verdictsOnOffice: {
    readonly range: string;
    readonly labels: string;
    readonly count: number;
  };
  /** What Client must agree with: verdicts in a column. */
  readonly clientVerdicts: { readonly range: string; readonly count: number };
  /** Of a line of work, on Labor: how many, hours, and what it costs beside them. */
  readonly countOnLabor: string;
  readonly hoursOnLabor: string;
  readonly moneyOnLabor: string;
  /** Of a profile's plan, on Production: its hours; its pieces, and the length of its sticks. */
  readonly hoursOnProduction: string;
  readonly piecesOnProduction: string;
  readonly stickLengthOnProduction: string;
  /** Its board feet, net and with the allowance; and the percent of that. */
  readonly boardFeetOnProduction: string;
  readonly allowedFeetOnProduction: string;
  readonly allowanceOnProduction: string;
  /** Of a profile's plan, on Office: net length with the allowance, what it costs, how many sticks it is. */
  readonly allowedOnOffice: Readonly<Record<'length' | 'lumber' | 'sticks', string>>;
  /** Of a profile's plan, in the order of work: passes, square feet to smooth, crosscuts. */
  readonly passesOnProduction: string;
  readonly squareFeetOnProduction: string;
  readonly crosscutsOnProduction: string;
  /** Of a profile's plan, on Production: the length of its pieces. */
  readonly netLengthOnProduction: string;
  /** Of a row of Stock that is used, on Production: how many are pulled, and bought; cells to be taken off one by one. */
  readonly fromRackOnProduction: string;
  readonly toBuyOnProduction: string;
  /** The same added up. */
  readonly allToBuyOnProduction: string;
  /** On Pieces, row by row: the pieces' numbers, and what Cutting's length is off by. */
  readonly numbersOnPieces: string;
  readonly offOnPieces: string;
  /** On Pieces, row by row: the boxes of what is done or cut. */
  readonly boxesOnPieces: string;
  /** On Pieces, row by row: in which line of Production a piece counts, and its length to cut. */
  readonly linesOnPieces: string;
  readonly lengthsOnPieces: string;
}

export type PlanAnchors = Anchors<PlanPlaces>;

export function newPlanAnchors(): PlanAnchors {
  return new Anchors('the plan');
}

/** A cell or range of a sheet, as the others' formulas name it. */
export function onSheet(sheet: keyof typeof SHEET_NAMES, at: string): string {
  return `${quoteSheet(SHEET_NAMES[sheet])}!${at}`;
}
