/** What one sheet of a plan takes over from another by formula, and what the sheets are called. */
import { quoteSheet } from '../core/cells/cell-range.ts';
import { Anchors } from './grammar/anchors.ts';

export const SHEET_NAMES = {
  production: 'Production',
  pieces: 'Pieces',
  setUps: 'Set-ups',
  outlines: 'Outlines',
  cutting: 'Cutting',
  client: 'Client',
} as const;

interface PlanPlaces {
  /** Of a profile's plan, on Production: what lumber it bears. */
  readonly lumberOnProduction: string;
  /** Of a profile's plan, on Cutting: how many sticks and blanks are cut up. */
  readonly sticksOnCutting: string;
  /** Of a profile's plan, on Cutting: how many lengths are cut from them, parts and spares included. */
  readonly cutsOnCutting: string;
  /** Of a profile's plan, on Cutting: length of its sticks and blanks together. */
  readonly lengthOnCutting: string;
  /** Of all profiles, on Cutting. */
  readonly allLengthOnCutting: string;
  readonly allLumberOnCutting: string;
  readonly priceOnClient: string;
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
