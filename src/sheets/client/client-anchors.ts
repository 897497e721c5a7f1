/** What formulas of a client's sheet take from other rows of it. */
import type { Anchors } from '../grammar/anchors.ts';

interface ClientPlaces {
  /** Of a room: the sums of its lines. */
  readonly pieces: string;
  readonly price: string;
  /** Without tax, and with it. */
  readonly 'price of all': string;
  readonly 'to pay': string;
  readonly 'pieces of all': string;
  /** First and last row of the rooms' lines and sums; none where the first comes after. */
  readonly lines: { readonly first: number; readonly last: number };
  /** How many are taken up, what they come to, and what of that is taxed where material is. */
  readonly options: { readonly taken: string; readonly price: string; readonly taxable: string };
}

export type ClientAnchors = Anchors<ClientPlaces>;
