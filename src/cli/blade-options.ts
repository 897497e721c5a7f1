/** The blade, for commands that know no shop. */
import { syntax } from '../core/faults/argument.ts';
import { fault, type Fault } from '../core/faults/fault.ts';
import type { Blade } from '../core/cove/cove.ts';
import type { DecimalSign } from '../core/units/format-number.ts';
import { THICKEST_INCHES, WIDEST_INCHES } from '../core/units/plausible-length.ts';
import type { Call, OptionDefinition } from './command.ts';
import { readLengthOption } from './length-option.ts';

export const BLADE_OPTIONS: readonly OptionDefinition[] = [
  { name: '--diameter', value: 'LENGTH', says: 'Diameter of the blade as measured (10).' },
  { name: '--kerf', value: 'LENGTH', says: 'Thickness of the cut (1/8).' },
];

export function readBlade(call: Call, decimalSign: DecimalSign, faults: Fault[]): Blade {
  const option = (name: string, usual: string, most: number): number =>
    Number(readLengthOption(call, { name, usual, most }, decimalSign, faults));
  const diameter = option('--diameter', '10', WIDEST_INCHES);
  const kerf = option('--kerf', '1/8', THICKEST_INCHES);
  if (!(diameter > 0)) {
    faults.push(fault('length.not-positive', syntax('--diameter'), { inches: diameter }));
  } else if (kerf > diameter / 4) {
    const limit = { inches: diameter / 4 };
    faults.push(fault('cove.kerf-too-thick', syntax('--kerf'), { inches: kerf }, { limit }));
  }
  return { diameter, kerf };
}
