/** What is found of a job with an option taken up, said with the option: what the job has anyway is said once. */
import { fault, placeFault, type Caution, type Fault } from '../../core/faults/fault.ts';
import type { JobOption } from '../job.ts';

/** So many are said of one option; more are counted. */
const MOST_SAID = 3;

type Named = Pick<JobOption, 'name' | 'where'>;

/** The option's new faults, where they stand, and one at the option itself that says which they are. */
export function sayOptionFaults(
  option: Named,
  faults: readonly Fault[],
  known: readonly Fault[],
): Fault[] {
  const more = notIn(faults, known);
  if (more.length === 0) return [];
  return [...more, said('job.option-at-fault', option, more)];
}

export function sayOptionCautions(
  option: Named,
  cautions: readonly Caution[],
  known: readonly Caution[],
): Caution[] {
  const more = notIn(cautions, known);
  return more.length === 0 ? [] : [said('job.option-caution', option, more)];
}

function said(
  code: 'job.option-at-fault' | 'job.option-caution',
  { name, where }: Named,
  found: readonly Fault[],
): Fault {
  const messages = [...new Set(found.map(({ message }) => message))];
  const more = messages.length - MOST_SAID;
  const says = `${messages.slice(0, MOST_SAID).join(' ')}${more > 0 ? ` And ${more} more.` : ''}`;
  return placeFault(fault(code, 'option', name, { details: { says } }), where);
}

function notIn(found: readonly Fault[], known: readonly Fault[]): Fault[] {
  const keyOf = ({ code, message, where }: Fault): string => JSON.stringify([code, message, where]);
  const keys = new Set(known.map(keyOf));
  return found.filter((one) => !keys.has(keyOf(one)));
}
