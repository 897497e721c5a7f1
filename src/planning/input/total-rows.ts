/** Rows that sum up those above them: never one of the rows themselves, and never passed over unsaid. */
import Fraction from 'fraction.js';
import { fault, placeFault, type Where } from '../../core/faults/fault.ts';
import type { ExactInches } from '../../core/units/length.ts';
import { nameKey } from '../job.ts';
import { tableArgument, whereIs, type RawCell, type RawRow, type RawTable } from './raw-table.ts';
import type { Findings } from './row-reader.ts';

/** As sheets write them, here and in other languages. Common practice [C]. */
const TOTALS = new Set([
  ...[
    'total',
    'totals',
    'grand total',
    'subtotal',
    'sub-total',
    'sub total',
    'sum',
    'all together',
  ],
  ...['gesamt', 'summe', 'zwischensumme', 'totale', 'totaal', 'som', 'summa', 'suma', 'razem'],
  ...['celkem', 'totalt', 'somme', 'total general', 'sous-total', 'i alt'],
]);

/**
 * The rows that aren't totals. One with such a word that lacks a needed cell can be no row, and is
 * left out, which is cautioned; one that could be a row is refused, since nobody can tell.
 *
 * @param needed Columns, from 0, of the cells that every row needs.
 * @param names Those that name a row beside them.
 */
export function withoutTotals(
  table: RawTable,
  needed: readonly number[],
  names: readonly number[],
  findings: Findings,
): readonly RawRow[] {
  const naming = new Set([...needed, ...names]);
  const kept = table.rows.filter(({ line, cells }) => {
    const isWhole = needed.every((column) => isFilled(cells[column] ?? null));
    // In a row with all that it needs, a note may well say so.
    const at = cells.findIndex((cell, column) =>
      isWhole ? naming.has(column) && isTotalOf(cell) : isTotal(cell),
    );
    if (at < 0) return true;
    const where = whereIs(table, line, at);
    const cell = cells[at];
    const given = typeof cell === 'string' ? cell.trim() : null;
    if (isWhole) {
      findings.faults.push(
        placeFault(fault('table.total-row', tableArgument(table.name), given), where),
      );
      return true;
    }
    findings.cautions.push(
      placeFault(fault('table.total-ignored', tableArgument(table.name), given), where),
    );
    return false;
  });
  if (kept.length === 0 && table.rows.length > 0) {
    findings.faults.push(fault('table.empty', tableArgument(table.name), null));
  }
  return kept;
}

/** Whether a cell holds a word for a total, and nothing else. */
export function isTotal(cell: RawCell): boolean {
  return (
    typeof cell === 'string' && cell.length < 40 && TOTALS.has(nameKey(cell).replace(/[:.]+$/u, ''))
  );
}

/** A total of something: Hall total, Subtotal Base. A name may begin with the word: Total wine room. */
const TOTAL_OF =
  /(?:^|[\s:,-])(?:sub-?)?totals?[:.]?$|^(?:sub-?totals?|grand totals?|totals? (?:of|for))[\s:]/u;

function isTotalOf(cell: RawCell): boolean {
  return isTotal(cell) || (typeof cell === 'string' && TOTAL_OF.test(nameKey(cell)));
}

function isFilled(cell: RawCell): boolean {
  return cell !== null && (typeof cell !== 'string' || cell.trim() !== '');
}

/** Fewer rows come to another's length by chance: 24, 24 and 48. Common practice [C]. */
const LEAST_SUMMED = 3;

/** What a row is asked for: its length, so many times. */
interface Summed {
  readonly length: ExactInches;
  readonly quantity: number;
  readonly where: Where;
}

/** A row with all that it needs may be the total of those above all the same: its length tells. */
export function cautionSums(rows: readonly Summed[], { cautions }: Findings): void {
  const all = new Sum();
  let part = new Sum();
  for (const row of rows) {
    const summed = [part, all].find((sum) => sum.comesTo(row));
    if (summed === undefined) {
      all.add(row);
      part.add(row);
      continue;
    }
    const given = { inches: Number(row.length) };
    const one = fault('table.total-length', 'length', given, { limit: summed.count });
    cautions.push(placeFault(one, row.where));
    part = new Sum();
  }
}

class Sum {
  count = 0;
  #once = new Fraction(0);
  #times = new Fraction(0);

  add({ length, quantity }: Summed): void {
    this.count += 1;
    this.#once = this.#once.add(length);
    this.#times = this.#times.add(length.mul(quantity));
  }

  /** Whether the row may be the total: as long as the others, each taken once or as often as it is asked for. */
  comesTo({ length, quantity }: Summed): boolean {
    const isEqual = length.equals(this.#once) || length.equals(this.#times);
    return this.count >= LEAST_SUMMED && quantity === 1 && isEqual;
  }
}
