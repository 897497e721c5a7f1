/** The Runs table. */
import Fraction from 'fraction.js';
import { fault } from '../../core/faults/fault.ts';
import { degrees } from '../../core/units/angle.ts';
import { END_KINDS, MEASURES, RUN_CELLS, type Run, type RunEnd } from '../job.ts';
import { cellsOf } from './cells-of.ts';
import { RUN_HEADINGS } from './headings/run-headings.ts';
import type { RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { readRows } from './read-rows.ts';
import type { Findings, RowReader } from './row-reader.ts';

/** Reveal of a casing where nothing else is said: 3/16 in. Common practice [C]. */
export const USUAL_REVEAL = new Fraction(3, 16);
export const MOST_QUANTITY = 10_000;

export function readRuns(table: RawTable, reading: CellReading, findings: Findings): Run[] {
  return readRows(table, RUN_HEADINGS, reading, findings).flatMap((row) => readRun(row) ?? []);
}

function readRun(row: RowReader): Run | undefined {
  const room = row.requiredText('Room');
  const profile = row.requiredText('Profile');
  const length = row.requiredLength('Length');
  const measuredAs = row.word('Measured as', MEASURES, 'wall');
  const rest = {
    measuredAs,
    reveal: readReveal(row, measuredAs),
    quantity: row.whole('Quantity', 1, 1, MOST_QUANTITY),
    left: readEnd(row, 'Left'),
    right: readEnd(row, 'Right'),
    onePiece: row.yesNo('One piece', false),
    match: row.text('Match'),
    done: row.yesNo('Done', false),
    note: row.text('Note'),
    where: row.where('Length'),
    cells: cellsOf(row, RUN_CELLS),
  };
  const run = row.text('Run');
  if (room === undefined || profile === undefined || length === undefined) return undefined;
  return { room, run: run === '' ? profile : run, profile, length, ...rest };
}

/** Only an opening has a reveal: on a run measured otherwise it is not used, which is said. */
function readReveal(row: RowReader, measuredAs: Run['measuredAs']): Run['reveal'] {
  const reveal = row.length('Reveal', true);
  if (reveal === undefined || measuredAs === 'opening') return reveal ?? USUAL_REVEAL;
  const unused = fault(
    'job.reveal-unused',
    'Reveal',
    { inches: Number(reveal) },
    { details: { measuredAs } },
  );
  row.caution('Reveal', unused);
  return reveal;
}

function readEnd(row: RowReader, side: 'Left' | 'Right'): RunEnd {
  const corner = row.number(`${side} corner`, 1, 179, { degrees: true });
  return { kind: row.word(`${side} end`, END_KINDS, 'square'), corner: degrees(corner ?? 90) };
}
