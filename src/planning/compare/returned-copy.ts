/** What a client's copy that came back says: quantities, and what else is otherwise than it was handed over. */
import type { Caution, Where } from '../../core/faults/fault.ts';
import type { ExactInches } from '../../core/units/length.ts';
import type { Piece } from '../piece.ts';
import type { PriceOfLines } from './price-of-lines.ts';

/** A line of the copy with the quantity that it came back with. */
export interface CopyLine {
  readonly room: string;
  readonly molding: string;
  readonly length: ExactInches;
  /** As quoted. */
  readonly quantity: number;
  readonly pieces: readonly Piece[];
  /** As quoted. */
  readonly priceCents: number;
  readonly now: number;
  /** At the price each that was quoted, rounded to the cent as the copy does. */
  readonly nowCents: number;
  /** Its quantity; absent where the row was taken out, and is counted as quoted. */
  readonly where?: Where;
}

/** `Hall, Crown` */
export function nameOfLine({ room, molding }: Pick<CopyLine, 'room' | 'molding'>): string {
  return `${room}, ${molding}`;
}

/** An option that could be taken up on the copy. */
export interface CopyOption {
  readonly name: string;
  readonly isTaken: boolean;
  /** What it comes on the price with, as quoted. */
  readonly priceCents: number;
  /** Its box; absent where the row was taken out, and it is not taken up. */
  readonly where?: Where;
}

export interface ReturnedCopy {
  /** All lines, in the order of the copy. */
  readonly lines: readonly CopyLine[];
  /** In the order of the copy; those that are in its price are none of them. */
  readonly options: readonly CopyOption[];
  readonly price: { readonly quoted: PriceOfLines; readonly now: PriceOfLines };
  /** The line to sign, as typed; empty where nothing is. */
  readonly accepted: { readonly name: string; readonly date: string };
  /** What is otherwise than it was handed over, but quantities, and what was typed beside: each at its cell. */
  readonly findings: readonly Caution[];
}

export function takenUp({ options }: Pick<ReturnedCopy, 'options'>): CopyOption[] {
  return options.filter(({ isTaken }) => isTaken);
}

/** Lines that came back with another quantity than quoted. */
export function changedLines({ lines }: Pick<ReturnedCopy, 'lines'>): CopyLine[] {
  return lines.filter(({ quantity, now }) => quantity !== now);
}
