/** What can't be used of a board, as a person types it: `30-34; 70-72 1/2`. */
import { fault, type Fault } from '../../core/faults/fault.ts';
import { parseLength, type ExactInches } from '../../core/units/length.ts';
import type { LengthMark } from '../../core/units/stated-unit.ts';
import { isBareNumber } from '../../core/units/plausible-length.ts';
import type { Defect } from '../clear-stretches.ts';
import { plannerLength } from '../planner-length.ts';
import type { CellReading } from './read-cell.ts';

/** Between two of them: a semicolon, a new line, a comma with a space behind it. */
const BETWEEN = /\s*(?:;|\n|,\s)\s*/u;
/** Between from and to; a hyphen may also stand within a length (3-1/2). */
const TO = /\s*(?:[-–—]|\bto\b|\.\.)\s*/gu;
/** The unit behind the second length. */
const UNIT_AT_END = /(mm|cm|m|ft|feet|in|ins|inch|inches|["”″'’′])\.?$/iu;
const MARKS: Readonly<Record<string, LengthMark>> = {
  ...{ mm: 'mm', cm: 'cm', m: 'm', ft: 'ft', feet: 'ft', "'": 'ft', '’': 'ft', '′': 'ft' },
  ...{ in: 'in', ins: 'in', inch: 'in', inches: 'in', '"': 'in', '”': 'in', '″': 'in' },
};

/**
 * In order along the board. A bare first length is in the unit that the second one says (30-34 mm).
 *
 * @returns the first thing that is wrong as a fault: job.defects-unreadable, job.defect-reversed,
 *   job.defect-outside, job.defects-overlap
 */
export function readDefects(
  text: string,
  boardLength: ExactInches,
  reading: CellReading,
): { readonly defects: readonly Defect[] } | { readonly fault: Fault } {
  const read: { readonly said: string; readonly defect: Defect }[] = [];
  for (const said of text.split(BETWEEN).filter((one) => one !== '')) {
    const ways = waysToRead(said, reading);
    const forward = ways.filter(({ from, to }) => to.gt(from));
    const [defect, ...more] = forward;
    if (defect === undefined || more.length > 0) {
      const code = ways.length > 0 && defect === undefined ? 'job.defect-reversed' : undefined;
      return { fault: fault(code ?? 'job.defects-unreadable', 'defects', said) };
    }
    if (defect.from.lt(0) || defect.to.gt(boardLength)) {
      const limit = { inches: Number(boardLength) };
      return { fault: fault('job.defect-outside', 'defects', said, { limit }) };
    }
    read.push({ said, defect });
  }
  if (read.length === 0) return { fault: fault('job.defects-unreadable', 'defects', text) };
  read.sort((one, other) => one.defect.from.compare(other.defect.from));
  for (const [at, { said, defect }] of read.entries()) {
    const before = read[at - 1];
    if (before === undefined || before.defect.to.lte(defect.from)) continue;
    const details = { other: before.said };
    return { fault: fault('job.defects-overlap', 'defects', said, { details }) };
  }
  return { defects: read.map(({ defect }) => defect) };
}

/** Every hyphen may be the one between from and to: most leave what is no length on one side. */
function waysToRead(said: string, reading: CellReading): Defect[] {
  return [...said.matchAll(TO)].flatMap((found): Defect[] => {
    const [first, second] = [
      said.slice(0, found.index).trim(),
      said.slice(found.index + found[0].length).trim(),
    ];
    if (first === '' || second === '') return [];
    const said2 = UNIT_AT_END.exec(second)?.[1]?.toLowerCase();
    const mark = said2 === undefined ? undefined : MARKS[said2];
    const own = isBareNumber(first) && mark !== undefined ? { ...reading, unit: mark } : reading;
    const [from, to] = [
      parseLength(first, 'defects', own),
      parseLength(second, 'defects', reading),
    ];
    if (!from.ok || !to.ok || from.value.lt(0)) return [];
    return [{ from: plannerLength(from.value, 'down'), to: plannerLength(to.value, 'up') }];
  });
}
