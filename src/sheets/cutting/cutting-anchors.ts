/** What formulas of the cutting sheet take from other rows of it. */
import type { Anchors } from '../grammar/anchors.ts';

interface CuttingPlaces {
  /** Of a stick: the number of its kept offcut. */
  readonly kept: string;
  /** Of a profile's plan: what its sticks come to. */
  readonly sticks: string;
  readonly stickLength: string;
  readonly keptLength: string;
  /** How many are ticked as cut, or begun; and how many of their lengths are. */
  readonly sticksCut: string;
  readonly lengthsCut: string;
  /** What its pieces' lengths are off from those on Pieces. */
  readonly lengthsOff: string;
  /** Of all profiles. */
  readonly allSticks: string;
  readonly allSticksCut: string;
  readonly allLengthsCut: string;
}

export type CuttingAnchors = Anchors<CuttingPlaces>;
