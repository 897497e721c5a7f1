/** The Runs table. */
import { sayArgument } from '../../core/faults/argument.ts';
import { fault } from '../../core/faults/fault.ts';
import { degrees } from '../../core/units/angle.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import { END_KINDS, MEASURES, RUN_CELLS, type Run, type RunEnd } from '../job.ts';
import { ENDS_WITHOUT_CORNER } from '../pieces/cut-length.ts';
import { USUAL_REVEAL } from '../settings/usual-sizes.ts';
import { cellsOf } from './cells-of.ts';
import { RUN_HEADINGS } from './headings/run-headings.ts';
import type { RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { readRows } from './read-rows.ts';
import { cautionRowsAgain } from './rows-again.ts';
import { cautionAllShort, notMetres } from './short-lengths.ts';
import { cautionSums } from './total-rows.ts';
import type { Findings, RowReader } from './row-reader.ts';

export const MOST_QUANTITY = 10_000;
/** Of two walls' corner, in degrees. */
const MOST_CORNER = 179;
const SQUARE = 90;

export function readRuns(table: RawTable, reading: CellReading, findings: Findings): Run[] {
  const rows = readRows(table, RUN_HEADINGS, reading, findings);
  const runs = rows.flatMap((row) => readRun(row, reading.unit) ?? []);
  cautionSums(runs, findings);
  cautionRowsAgain(table.name, runs, allOf, findings);
  cautionAllShort(table.name, rows);
  return runs;
}

/** All that a run says, but for where it stands. */
function allOf(run: Run): string {
  const { room, profile, measuredAs, quantity, left, right, match, note } = run;
  const length = run.length.toFraction();
  return JSON.stringify([
    room,
    run.run,
    profile,
    length,
    measuredAs,
    quantity,
    left,
    right,
    match,
    note,
  ]);
}

function readRun(row: RowReader, unit: LengthUnit): Run | undefined {
  const room = row.requiredText('room');
  const profile = row.requiredText('profile');
  const length = notMetres(row, 'length', row.requiredLength('length'));
  const measuredAs = row.word('measuredAs', MEASURES, 'wall');
  const rest = {
    measuredAs,
    reveal: readReveal(row, measuredAs, unit),
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
function readReveal(
  row: RowReader,
  measuredAs: Run['measuredAs'],
  unit: LengthUnit,
): Run['reveal'] {
  const reveal = row.length('reveal', true);
  if (reveal === undefined || measuredAs === 'opening') return reveal ?? USUAL_REVEAL[unit];
  const unused = fault(
    'job.reveal-unused',
    'reveal',
    { inches: Number(reveal) },
    { details: { measuredAs } },
  );
  row.caution('reveal', unused);
  return reveal;
}

/** A corner that isn't square, at an end that none is cut for, is meant for something: it is asked about, or said. */
function readEnd(row: RowReader, side: 'left' | 'right'): RunEnd {
  const [end, angle] = [`${side}End`, `${side}Corner`] as const;
  const kind = row.word(end, END_KINDS, 'square');
  const corner = row.number(angle, 0, MOST_CORNER, { degrees: true }) ?? SQUARE;
  if (corner === SQUARE || !ENDS_WITHOUT_CORNER.has(kind)) {
    return { kind, corner: degrees(row.plausibleCorner(angle, corner) ?? SQUARE) };
  }
  const details = { end: sayArgument(end), kind };
  const given = { degrees: corner };
  if (row.isBlank(end))
    row.refuse(angle, fault('job.corner-without-end', angle, given, { details }));
  else row.caution(angle, fault('job.corner-unused', angle, given, { details }));
  return { kind, corner: degrees(SQUARE) };
}
