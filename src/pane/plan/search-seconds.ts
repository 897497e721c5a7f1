/** How long the pane looks for a cheaper plan, as it is typed. */
import { sayArgument } from '../../core/faults/argument.ts';
import { failed, fault, type Outcome } from '../../core/faults/fault.ts';
import type { DecimalSign } from '../../core/units/format-number.ts';
import { parseNumber } from '../../core/units/number.ts';

const SECONDS = 'secondsToLook';
export const SECONDS_LABEL = sayArgument(SECONDS);
export const USUAL_SECONDS = '20';
/** An hour: nobody keeps a pane open for longer. */
const MOST_SECONDS = 3600;

/** 0 is the quick plan alone. */
export function readSeconds(typed: string, decimalSign: DecimalSign = '.'): Outcome<number> {
  const parsed = parseNumber(typed, SECONDS, decimalSign);
  if (!parsed.ok) return parsed;
  const { value } = parsed;
  if (value < 0) return failed(fault('number.negative', SECONDS, value));
  const limit = MOST_SECONDS;
  return value > limit ? failed(fault('number.too-large', SECONDS, value, { limit })) : parsed;
}
