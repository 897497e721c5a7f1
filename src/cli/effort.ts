/** How long a plan is looked for, as it is typed: seconds, or steps that are the same everywhere. */
import { syntax } from '../core/faults/argument.ts';
import { fault, type Fault } from '../core/faults/fault.ts';
import { parseNumber } from '../core/units/number.ts';
import type { Call, OptionDefinition } from './command.ts';

/** Both begin after the quick plans, which are made whole: 0 seconds is these alone. */
export type Effort = { readonly seconds: number } | { readonly steps: number };

const USUAL_SECONDS = 20;
export const USUAL_EFFORT: Effort = { seconds: USUAL_SECONDS };

/** A day; and more steps than anybody waits for. */
const MOST_SECONDS = 86_400;
const MOST_STEPS = 1_000_000_000;

export const SECONDS_OPTION: OptionDefinition = {
  name: '--seconds',
  value: 'N',
  says: `How long at most to look for a cheaper plan, or for the proof that there is none (${USUAL_SECONDS}; 0 is the quick plan alone). Ctrl-C stops sooner and keeps the best plan so far.`,
};

export const STEPS_OPTION: OptionDefinition = {
  name: '--steps',
  value: 'N',
  says: 'Look for so many steps beyond the quick plans, instead of seconds: the same plan on every machine.',
};

/** `USUAL_EFFORT` where neither option is given. */
export function readEffort({ values }: Call, faults: Fault[]): Effort {
  const seconds = values.get('--seconds');
  const steps = values.get('--steps');
  if (seconds !== undefined && steps !== undefined) {
    faults.push(
      fault('call.options-exclude', syntax('--seconds'), seconds, {
        details: { other: '--steps' },
      }),
    );
  }
  if (steps !== undefined) {
    const count = readCount('--steps', steps, MOST_STEPS, faults);
    if (count !== undefined && !Number.isInteger(count)) {
      faults.push(fault('number.not-whole', syntax('--steps'), count));
    } else if (count === 0) {
      faults.push(fault('number.too-small', syntax('--steps'), count, { limit: 1 }));
    }
    return { steps: count ?? 1 };
  }
  if (seconds === undefined) return USUAL_EFFORT;
  return { seconds: readCount('--seconds', seconds, MOST_SECONDS, faults) ?? 0 };
}

function readCount(
  name: string,
  typed: string,
  limit: number,
  faults: Fault[],
): number | undefined {
  const argument = syntax(name);
  const parsed = parseNumber(typed, argument);
  if (!parsed.ok) {
    faults.push(...parsed.faults);
    return undefined;
  }
  const { value } = parsed;
  if (value < 0) faults.push(fault('number.negative', argument, value));
  if (value > limit) faults.push(fault('number.too-large', argument, value, { limit }));
  return value;
}
