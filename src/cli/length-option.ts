/** An option that holds a length: bare numbers are inches. */
import Fraction from 'fraction.js';
import { syntax } from '../core/faults/argument.ts';
import { fault, type Fault } from '../core/faults/fault.ts';
import type { DecimalSign } from '../core/units/format-number.ts';
import { parseLength, type ExactInches } from '../core/units/length.ts';
import { askAboutLength } from '../core/units/plausible-length.ts';
import type { Call } from './command.ts';

export interface LengthOption {
  readonly name: string;
  /** As it is typed in an option. */
  readonly usual: string;
  /** Inches: a bare number of more is asked about, which may be millimeters. */
  readonly most: number;
}

/** Of one at fault, 0. */
export function readLengthOption(
  call: Call,
  { name, usual: usualText, most }: LengthOption,
  decimalSign: DecimalSign,
  faults: Fault[],
): ExactInches {
  const typed = call.values.get(name) ?? usualText;
  const argument = syntax(name);
  const parsed = parseLength(typed, argument, { unit: 'in', decimalSign });
  if (!parsed.ok) {
    faults.push(...parsed.faults);
    return new Fraction(0);
  }
  const inches = Number(parsed.value);
  const wrong =
    inches < 0
      ? fault('length.negative', argument, { inches })
      : askAboutLength(argument, typed, inches, most);
  if (wrong === undefined) return parsed.value;
  faults.push(wrong);
  return new Fraction(0);
}
