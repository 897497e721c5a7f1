/** The decimal sign of what is typed and said, for commands that read lists without a shop. */
import { syntax } from '../core/faults/argument.ts';
import { fault, rewordFault, type Fault } from '../core/faults/fault.ts';
import type { DecimalSign } from '../core/units/format-number.ts';
import type { Call, OptionDefinition } from './command.ts';

const NAME = '--decimal';
const WORDS: Readonly<Record<DecimalSign, string>> = { '.': 'point', ',': 'comma' };

export const DECIMAL_OPTION: OptionDefinition = {
  name: NAME,
  value: 'SIGN',
  says: 'Decimal sign of what is typed, and of the answer in words: point (where left out) or comma.',
};

export function readDecimal({ values }: Call, faults: Fault[]): DecimalSign {
  const typed = values.get(NAME)?.trim().toLowerCase() ?? WORDS['.'];
  for (const sign of ['.', ','] as const) {
    if (typed === sign || typed === WORDS[sign]) return sign;
  }
  const details = { allowed: Object.values(WORDS).join(', ') };
  faults.push(fault('word.unknown', syntax(NAME), typed, { details }));
  return '.';
}

/** As someone reads them who writes decimals so; where numbers have the other sign, with the option for it. */
export function wordDecimals(found: readonly Fault[], decimalSign: DecimalSign): Fault[] {
  return found.map((one) => {
    const other = one.details?.['sign'];
    const isOther = one.code === 'number.other-sign' && (other === '.' || other === ',');
    const details = isOther ? { ...one.details, option: `${NAME} ${WORDS[other]}` } : one.details;
    return rewordFault({ ...one, ...(details && { details }) }, 'in', decimalSign);
  });
}
