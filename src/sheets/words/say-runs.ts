/** Runs as a list has them, typed and made alike: where each comes from, its length and its ends. */
import type { Where } from '../../core/faults/fault.ts';
import { formatDegrees } from '../../core/units/format-mark.ts';
import type { DecimalSign } from '../../core/units/format-number.ts';
import type { LengthReading } from '../../core/units/length.ts';
import type { Run, RunEnd } from '../../planning/job.ts';
import type { ListedRun } from '../../planning/list-runs.ts';
import { printExact } from './print-length.ts';

const SQUARE_CORNER = 90;

/** `typed: Runs, row 3`; `made: Walls, row 2; Trim, row 4`; `typed in place of the made one: …`. */
export function sayFrom({ from: { row, made } }: ListedRun): string {
  const rows = made === undefined ? [] : [made.wall, made.trim];
  const is =
    row === undefined ? 'made' : made === undefined ? 'typed' : 'typed in place of the made one';
  const said = (row === undefined ? rows : [row]).map(sayRow);
  return `${is}: ${said.join('; ')}`;
}

function sayRow(where: Where): string {
  return 'sheet' in where
    ? `${where.sheet}, row ${where.cell.replace(/\D/gu, '')}`
    : `${where.file}, line ${where.line}`;
}

/** `120"`, or `36" (opening)` where the tape wasn't on the wall. */
export function sayRunLength(
  { length, measuredAs }: Pick<Run, 'length' | 'measuredAs'>,
  reading: LengthReading,
): string {
  const said = printExact(length, reading);
  return measuredAs === 'wall' ? said : `${said} (${measuredAs})`;
}

/** `cope`, or `cope, 135°` where the corner isn't square. */
export function sayRunEnd({ kind, corner }: RunEnd, decimalSign: DecimalSign): string {
  if (kind === 'square' || Number(corner) === SQUARE_CORNER) return kind;
  return `${kind}, ${formatDegrees(corner, decimalSign)}`;
}

/** What is left of it between openings: `38 5/16" and 38 5/16"`; empty where nothing cuts it. */
export function sayParts({ cut }: ListedRun, reading: LengthReading): string {
  if (cut === undefined) return '';
  if (cut.parts.length === 0) return 'nothing';
  return cut.parts.map(({ length }) => printExact(length, reading)).join(' and ');
}
