/** What formulas of a client's sheet take from other rows of it. */
import type { Anchors } from '../grammar/anchors.ts';

interface ClientPlaces {
  /** Of a room: the sums of its lines. */
  readonly pieces: string;
  readonly price: string;
  /** Without tax, and with it. */
  readonly 'price of all': string;
  readonly 'to pay': string;
}

export type ClientAnchors = Anchors<ClientPlaces>;
