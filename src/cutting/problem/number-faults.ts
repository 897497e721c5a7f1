/** What is wrong with a number, a length or a list of ids, as faults. */
import type { Argument } from '../../core/faults/argument.ts';
import { fault, type Fault } from '../../core/faults/fault.ts';
import type { Quantity } from '../../core/faults/quantity.ts';
import { MOST_UNITS } from './limits.ts';

/** Says a length of planner's units in inches. */
export type SayLength = (units: number) => Quantity;

/** A length in the planner's units, whole, from `least` (0 or 1) up. */
export function lengthFaults(
  argument: Argument,
  units: number,
  least: 0 | 1,
  say: SayLength,
): readonly Fault[] {
  if (!Number.isFinite(units)) return [fault('number.unreadable', argument, String(units))];
  if (least === 1 && units <= 0) return [fault('length.not-positive', argument, say(units))];
  if (units < 0) return [fault('length.negative', argument, say(units))];
  if (units > MOST_UNITS) {
    return [fault('length.too-long', argument, say(units), { limit: say(MOST_UNITS) })];
  }
  return Number.isInteger(units) ? [] : [fault('number.not-whole', argument, units)];
}

/** A bare count or price, whole, from `least` to `most`. */
export function wholeFaults(
  argument: Argument,
  value: number,
  least: 0 | 1,
  most: number,
): readonly Fault[] {
  if (!Number.isFinite(value)) return [fault('number.unreadable', argument, String(value))];
  if (value < 0) return [fault('number.negative', argument, value)];
  if (value < least) return [fault('number.too-small', argument, value, { limit: least })];
  if (value > most) return [fault('number.too-large', argument, value, { limit: most })];
  return Number.isInteger(value) ? [] : [fault('number.not-whole', argument, value)];
}

/** Ids that stand twice, and a missing one. */
export function idFaults(
  noun: 'profile' | 'piece' | 'stick',
  entries: readonly { readonly id: string }[],
): readonly Fault[] {
  const seen = new Set<string>();
  const twice = new Set<string>();
  for (const { id } of entries) {
    if (seen.has(id)) twice.add(id);
    seen.add(id);
  }
  const faults = [...twice].map((id) => fault('cutting.id-twice', noun, id));
  return seen.has('') ? [fault('text.missing', `id.${noun}`, ''), ...faults] : faults;
}
