/** Single cells of a copy that came back: a quantity, a number, and what any cell says. */
import type { Argument } from '../../core/faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import type { RawCell } from '../../planning/input/raw-table.ts';
import { MOST_QUANTITY } from './client-words.ts';

/**
 * A quantity as a person may have typed it: a whole number, 0 to 9,999. Nothing is guessed: a text that looks
 * like one is none to the copy's own prices.
 *
 * @param quoted what stood there
 * @param most what may stand there
 */
export function readQuantity(
  cell: RawCell,
  isFormula: boolean,
  argument: Argument,
  quoted: number,
  most = MOST_QUANTITY,
): Outcome<number> {
  const refuse = (
    code: 'copy.quantity-blank' | 'copy.quantity-formula' | 'copy.quantity-text',
    given: string | null,
  ) => failed(fault(code, argument, given, { details: { quoted } }));
  if (typeof cell === 'object' && cell?.kind === 'error') {
    return failed(fault('table.error-cell', argument, cell.text));
  }
  if (isFormula || (typeof cell === 'object' && cell?.kind === 'uncalculated')) {
    return refuse('copy.quantity-formula', cell === null ? null : sayCell(cell));
  }
  if (cell === null || (typeof cell === 'string' && cell.trim() === '')) {
    return refuse('copy.quantity-blank', null);
  }
  if (typeof cell === 'object' && cell.kind === 'veiled') {
    const details = { seen: cell.text };
    return failed(fault('table.veiled-number', argument, cell.held, { details }));
  }
  const isPlain = typeof cell !== 'object' || (cell.kind === 'shown' && cell.unit === undefined);
  const value = isPlain ? numberIn(cell) : undefined;
  if (value === undefined) return refuse('copy.quantity-text', sayCell(cell));
  if (value < 0) return failed(fault('number.negative', argument, value));
  if (!Number.isInteger(value)) return failed(fault('number.not-whole', argument, value));
  if (value > most) return failed(fault('number.too-large', argument, value, { limit: most }));
  return ok(value);
}

/** The number that a cell holds, however it is shown. */
export function numberIn(cell: RawCell): number | undefined {
  if (typeof cell === 'number') return cell;
  if (typeof cell !== 'object' || cell === null) return undefined;
  if (cell.kind === 'shown') return cell.value;
  return cell.kind === 'veiled' ? cell.held : undefined;
}

/** What a cell says, on one line. */
export function sayCell(cell: RawCell): string {
  if (cell === null) return '';
  if (typeof cell !== 'object') return String(cell).replace(/\s+/gu, ' ').trim();
  switch (cell.kind) {
    case 'shown':
      return cell.text;
    case 'veiled':
      return String(cell.held);
    case 'date':
      return cell.day ?? 'a date';
    case 'error':
      return cell.text;
    case 'uncalculated':
      return 'a formula without a value';
  }
}
