/** The two tables of `cut`: the pieces that are wanted and the sticks that there are. */
import { MOST_PLANNED_PIECES, MOST_STICKS } from '../cutting/problem/limits.ts';
import { exactDecimal, type ExactInches } from '../core/units/length.ts';
import { fault, type Where } from '../core/faults/fault.ts';
import type { Findings, RowReader } from '../planning/input/row-reader.ts';

export const PIECE_HEADINGS = [
  { heading: 'Length', required: true },
  { heading: 'Quantity' },
  { heading: 'Label' },
];

export const STICK_HEADINGS = [
  { heading: 'Length', required: true },
  { heading: 'Price', required: true },
  { heading: 'Count' },
];

const MOST_PRICE = 1_000_000;

export interface PieceRow {
  readonly length: ExactInches;
  readonly quantity: number;
  /** Empty where the person gave none. */
  readonly label: string;
  readonly where: Where;
}

export interface StickRow {
  readonly length: ExactInches;
  readonly priceCents: number;
  /** Null is as many as needed. */
  readonly count: number | null;
  readonly where: Where;
}

export function readPieceRows(rows: readonly RowReader[], findings: Findings): PieceRow[] {
  const pieces = rows.flatMap((row): PieceRow[] => {
    const length = row.requiredLength('Length');
    const quantity = row.whole('Quantity', 1, 1, MOST_PLANNED_PIECES);
    const label = row.text('Label');
    return length === undefined ? [] : [{ length, quantity, label, where: row.where('Length') }];
  });
  const count = pieces.reduce((sum, { quantity }) => sum + quantity, 0);
  if (count > MOST_PLANNED_PIECES) {
    const limit = MOST_PLANNED_PIECES;
    findings.faults.push(fault('cutting.too-many-pieces', 'Pieces', count, { limit }));
  }
  return pieces;
}

export function readStickRows(rows: readonly RowReader[]): StickRow[] {
  return rows.flatMap((row): StickRow[] => {
    const length = row.requiredLength('Length');
    const priceCents = readCents(row);
    const count = row.isBlank('Count') ? null : row.whole('Count', 0, 0, MOST_STICKS);
    if (length === undefined || priceCents === undefined) return [];
    return [{ length, priceCents, count, where: row.where('Length') }];
  });
}

/** Sums of prices are exact since a price is whole cents: a finer one is refused, never rounded. */
function readCents(row: RowReader): number | undefined {
  if (row.isBlank('Price')) {
    return row.refuse('Price', fault('cutting.price-missing', 'The stick', null));
  }
  const price = row.number('Price', 0, MOST_PRICE, { currency: '' });
  if (price === undefined) return undefined;
  const exact = exactDecimal(price).mul(100);
  if (exact.d === 1n) return Number(exact);
  return row.refuse('Price', fault('cutting.price-too-fine', 'Price', price));
}
