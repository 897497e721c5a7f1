/** What formulas of the cutting sheet take from other rows of it. */
import type { Anchors } from '../grammar/anchors.ts';

interface CuttingPlaces {
  /** Of a stick: the length of its kept offcut. */
  readonly kept: string;
  /** Of a profile: the first and the last row of its lay-outs. */
  readonly layOuts: readonly [first: number, last: number];
  /** Of all profiles. */
  readonly allSticks: string;
  readonly allSticksCut: string;
  readonly allLengthsCut: string;
}

export type CuttingAnchors = Anchors<CuttingPlaces>;
