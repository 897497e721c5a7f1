/** A board or stick with defects as the short boards that it is crosscut into: its clear stretches. */
import Fraction from 'fraction.js';
import type { ExactInches } from '../core/units/length.ts';
import type { Shop } from './shop.ts';

/** What can't be used of a board or stick, in inches from its marked end. */
export interface Defect {
  readonly from: ExactInches;
  readonly to: ExactInches;
}

/**
 * A part of a board between its defects. It is crosscut there before all else, and is then a short board
 * of its own, trimmed at both ends as any other.
 */
export interface ClearStretch {
  /** In inches from the board's marked end. */
  readonly from: ExactInches;
  readonly to: ExactInches;
  /** Of the whole board. */
  readonly boardLength: ExactInches;
  /** Of the whole board, as they were typed, in their order. */
  readonly defects: readonly Defect[];
  /**
   * From where to where it bears the board's price, of 0 to 1: by its length among all clear stretches, which
   * together pay for the defects too.
   */
  readonly bearsFrom: Fraction;
  readonly bearsTo: Fraction;
}

/** A row of Stock: a whole board or stick, or a stretch of one. */
interface BoardOrStretch {
  readonly length: ExactInches;
  readonly stretch?: ClearStretch;
}

type Limits = Pick<Shop, 'crosscutKerf' | 'endTrim' | 'keepOffcutsOver'>;

/**
 * The clear stretches, from the marked end on. A defect narrower than a crosscut takes as much as the cut.
 * A stretch that the shop would not keep as an offcut, or that its trims leave nothing of, is waste with
 * the defects beside it: else it would bear a part of the price and nobody would pay it.
 *
 * @param defects in their order, none over another
 */
export function listClearStretches(
  boardLength: ExactInches,
  defects: readonly Defect[],
  shop: Limits,
): ClearStretch[] {
  const starts = [new Fraction(0), ...defects.map((one) => endOf(one, shop))];
  const ends = [...defects.map(({ from }) => from), boardLength];
  const all = starts.map((from, at) => ({ from, to: ends[at] ?? boardLength }));
  const clear = all.filter(({ from, to }) => {
    const length = to.sub(from);
    return length.gt(shop.endTrim.mul(2)) && length.gt(0) && length.gte(shop.keepOffcutsOver);
  });
  const sum = clear.reduce((length, { from, to }) => length.add(to.sub(from)), new Fraction(0));
  let borne = new Fraction(0);
  return clear.map(({ from, to }) => {
    const bearsFrom = borne.div(sum);
    borne = borne.add(to.sub(from));
    return { from, to, boardLength, defects, bearsFrom, bearsTo: borne.div(sum) };
  });
}

/** Where the wood is clear again behind a defect. */
function endOf({ from, to }: Defect, { crosscutKerf }: Limits): ExactInches {
  const cut = from.add(crosscutKerf);
  return cut.gt(to) ? cut : to;
}

/** What a stretch pays of so many cents for the whole board: those of a board sum to it. */
export function centsOfStretch(
  boardCents: number,
  { bearsFrom, bearsTo }: Pick<ClearStretch, 'bearsFrom' | 'bearsTo'>,
): number {
  const upTo = (share: Fraction): number => Number(share.mul(boardCents).add(1, 2).floor());
  return upTo(bearsTo) - upTo(bearsFrom);
}

/** Of the whole board or stick that a row of Stock is, or is a stretch of. */
export function boardLengthOf({ length, stretch }: BoardOrStretch): ExactInches {
  return stretch?.boardLength ?? length;
}

/** The same for the same stretch of a board as long, whatever its other defects are. */
export function stretchKey({ stretch }: Pick<BoardOrStretch, 'stretch'>): string {
  if (stretch === undefined) return '';
  const { from, to, boardLength } = stretch;
  return [from, to, boardLength].map((length) => length.toFraction()).join(' ');
}
