/** A cell's value as a length, a number or a text: what is seen in it is what is meant. */
import type { Argument } from '../../core/faults/argument.ts';
import { failed, fault, type Fault, type Outcome } from '../../core/faults/fault.ts';
import { writeCurrency } from '../../core/units/currency.ts';
import { dayOfIso, fractionsBehind } from '../../core/units/date-text.ts';
import {
  lengthOfNumber,
  parseLength,
  type BareReading,
  type ExactInches,
  type LengthReading,
} from '../../core/units/length.ts';
import { checkUnit, parseNumber, type AllowedUnits } from '../../core/units/number.ts';
import { statedUnitOf } from '../../core/units/stated-unit.ts';
import type { RawCell, ShownNumber, VeiledNumber } from './raw-table.ts';

/** How a job's cells are read: bare lengths, decimals, and the money that the shop counts in. */
export interface CellReading extends LengthReading {
  /** Absent or empty where no shop is known: any is read then. */
  readonly currency?: string;
}

/** A cell that holds a value, with what is seen beside its number. */
export type CellValue = string | number | boolean | ShownNumber | VeiledNumber;

/** A cell without one: a date, an error, a formula that was never worked out. */
export type NoValue = Exclude<RawCell, CellValue | null>;

/** What the cell says where a text is wanted; a bare number stays one. */
export function plainValue(cell: CellValue): string | number | boolean {
  if (typeof cell !== 'object') return cell;
  if (cell.kind === 'veiled') return cell.text;
  return cell.unit === undefined && String(cell.value) === cell.text ? cell.value : cell.text;
}

/** Faults: those of `parseLength`, `table.veiled-number`, and what can't stand with a length. */
export function lengthIn(
  cell: CellValue,
  argument: Argument,
  reading: BareReading,
): Outcome<ExactInches> {
  if (typeof cell !== 'object') return parseLength(cell, argument, reading);
  if (cell.kind === 'veiled') return failed(veiled(argument, cell));
  const { value, text, unit } = cell;
  if (unit === undefined) return lengthOfNumber(value, argument, reading.unit);
  if (unit.kind === 'length') return lengthOfNumber(value, argument, unit.unit);
  return failed(checkUnit(unit, argument, text, {}) ?? fault('length.unreadable', argument, text));
}

/** Faults: those of `parseNumber`, `table.veiled-number`. */
export function numberIn(
  cell: CellValue,
  argument: Argument,
  reading: CellReading,
  allowed: AllowedUnits = {},
): Outcome<number> {
  const units = withShopsMoney(allowed, reading);
  if (typeof cell !== 'object') return parseNumber(cell, argument, reading.decimalSign, units);
  if (cell.kind === 'veiled') return failed(veiled(argument, cell));
  const { value, text, unit } = cell;
  const wrong = unit && checkUnit(unit, argument, text, units);
  return wrong === undefined ? { ok: true, value } : failed(wrong);
}

/** Money is the shop's own where it is known. */
function withShopsMoney(allowed: AllowedUnits, { currency = '' }: CellReading): AllowedUnits {
  return allowed.currency === undefined ? allowed : { ...allowed, currency };
}

/** Whether the cell says its unit of length itself, so that no other is to be looked for. */
export function saysLengthUnit(cell: CellValue): boolean {
  return typeof cell === 'object' && cell.kind === 'shown' && cell.unit?.kind === 'length';
}

/** Whether a cell says by itself that it is a percent. */
export function saysPercent(cell: CellValue): boolean {
  if (typeof cell === 'string') return cell.includes('%');
  return typeof cell === 'object' && cell.kind === 'shown' && cell.unit?.kind === 'percent';
}

/** The money that a cell whose number is read says: its sign or letters; undefined where it says none. */
export function currencyIn(cell: CellValue): string | undefined {
  const unit =
    typeof cell === 'string'
      ? statedUnitOf(cell.replace(/[^\p{L}\p{Sc}]/gu, ''))
      : typeof cell === 'object' && cell.kind === 'shown'
        ? cell.unit
        : undefined;
  return unit?.kind === 'money' ? writeCurrency(unit.currency) : undefined;
}

/** Less than one percent, bare: a share may have been meant (0.15 for 15 %). */
export function askAboutShare(
  cell: CellValue,
  argument: Argument,
  percent: number,
): Fault | undefined {
  if (!(percent > 0 && percent < 1) || saysPercent(cell)) return undefined;
  const whole = Number((percent * 100).toPrecision(12));
  return fault('number.below-one-percent', argument, percent, { details: { whole } });
}

function veiled(argument: Argument, { held, text }: VeiledNumber): Fault {
  return fault('table.veiled-number', argument, held, { details: { seen: text } });
}

/** Why a cell holds no value. */
export function whyNoValue(argument: Argument, cell: NoValue): Fault {
  switch (cell.kind) {
    case 'error':
      return fault('table.error-cell', argument, cell.text);
    case 'date': {
      const fraction =
        cell.day === undefined ? '' : fractionsBehind(dayOfIso(cell.day)).join(' or ');
      return fault('table.date-cell', argument, cell.day ?? 'a date', { details: { fraction } });
    }
    case 'uncalculated':
      return fault('table.uncalculated', argument, null);
  }
}

export function isValue(cell: RawCell): cell is CellValue {
  if (cell === null) return false;
  return typeof cell !== 'object' || cell.kind === 'shown' || cell.kind === 'veiled';
}
