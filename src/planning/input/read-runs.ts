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
  const room = row.requiredText('room');
  const profile = row.requiredText('profile');
  const length = row.requiredLength('length');
  const measuredAs = row.word('measuredAs', MEASURES, 'wall');
  const rest = {
    measuredAs,
    reveal: readReveal(row, measuredAs),
    quantity: row.whole('quantity', 1, 1, MOST_QUANTITY),
    left: readEnd(row, 'left'),
    right: readEnd(row, 'right'),
    onePiece: row.yesNo('onePiece', false),
    match: row.text('match'),
    done: row.yesNo('done', false),
    note: row.text('note'),
    where: row.where('length'),
    cells: cellsOf(row, RUN_CELLS),
  };
  const run = row.text('run');
  if (room === undefined || profile === undefined || length === undefined) return undefined;
  return { room, run: run === '' ? profile : run, profile, length, ...rest };
}

/** Only an opening has a reveal: on a run measured otherwise it is not used, which is said. */
function readReveal(row: RowReader, measuredAs: Run['measuredAs']): Run['reveal'] {
  const reveal = row.length('reveal', true);
  if (reveal === undefined || measuredAs === 'opening') return reveal ?? USUAL_REVEAL;
  const unused = fault(
    'job.reveal-unused',
    'reveal',
    { inches: Number(reveal) },
    { details: { measuredAs } },
  );
  row.caution('reveal', unused);
  return reveal;
}

function readEnd(row: RowReader, side: 'left' | 'right'): RunEnd {
  const corner = row.number(`${side}Corner`, 1, 179, { degrees: true });
  return { kind: row.word(`${side}End`, END_KINDS, 'square'), corner: degrees(corner ?? 90) };
}
