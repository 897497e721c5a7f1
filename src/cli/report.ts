/** How every command answers: results on the output, faults on the errors, or all as one JSON. */
import type { Caution, Fault } from '../core/faults/fault.ts';
import { faultsToJson } from '../core/faults/fault-json.ts';
import { groupFaults, sayGroup } from '../core/faults/group-faults.ts';
import type { Exit, Report } from './command.ts';
import { onOneLine, plainJson } from './terminal.ts';

/** What is said together: a line, or several. A line end in one, out of an input, starts no other. */
export type Paragraph = string | readonly string[];

export interface Findings {
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

export function reportJson(exit: Exit, value: unknown): Report {
  return { exit, output: `${plainJson(value)}\n`, errors: '' };
}

/** A result in words, its cautions after it, and what was at fault beside it. */
export function reportWords(
  exit: Exit,
  paragraphs: readonly Paragraph[],
  { faults, cautions }: Findings,
): Report {
  const inLines = paragraphs.map((one) => [one].flat().map(onOneLine).join('\n'));
  const said = cautions.length === 0 ? [] : [lines(cautions, 'Caution: ')];
  return {
    exit,
    output: `${[...inLines, ...said].join('\n\n')}\n`,
    errors: faults.length === 0 ? '' : `${lines(faults)}\n`,
  };
}

/** No result at all: the faults, then the cautions, which may tell how a fault came about. */
export function reportRefusal(exit: Exit, findings: Findings, json: boolean): Report {
  const { faults, cautions } = findings;
  if (json) {
    return reportJson(exit, { faults: faultsToJson(faults), cautions: faultsToJson(cautions) });
  }
  const errors = [lines(faults), lines(cautions, 'Caution: ')].filter((one) => one !== '');
  return { exit, output: '', errors: errors.map((one) => `${one}\n`).join('') };
}

/** What is said of several cells is said once, with all of them; JSON keeps each. */
function lines(findings: readonly Fault[], before = ''): string {
  return groupFaults(findings)
    .map((one) => `${before}${onOneLine(sayGroup(one))}`)
    .join('\n');
}
