/** The Openings table. */
import Fraction from 'fraction.js';
import { fault } from '../../core/faults/fault.ts';
import { OPENING_CELLS, OPENING_KINDS, type Opening } from '../job.ts';
import { cellsOf } from './cells-of.ts';
import { OPENING_HEADINGS } from './headings/opening-headings.ts';
import { MOST_QUANTITY, USUAL_REVEAL } from './read-runs.ts';
import type { RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { readRows } from './read-rows.ts';
import type { Findings, RowReader } from './row-reader.ts';

/** How far a stool's ends stand out beyond the casing where nothing is said. Common practice [C]. */
export const USUAL_HORN = new Fraction(1);

export function readOpenings(table: RawTable, reading: CellReading, findings: Findings): Opening[] {
  return readRows(table, OPENING_HEADINGS, reading, findings).flatMap(
    (row) => readOpening(row) ?? [],
  );
}

function readOpening(row: RowReader): Opening | undefined {
  const room = row.requiredText('Room');
  const width = row.requiredLength('Width');
  const height = row.requiredLength('Height');
  const kind = row.word('Kind', OPENING_KINDS, 'door');
  const rest = {
    wall: row.text('Wall'),
    kind,
    sidesCased: row.whole('Sides cased', 1, 1, 2),
    reveal: row.length('Reveal', true) ?? USUAL_REVEAL,
    ...named(row, 'Casing', 'casing'),
    ...named(row, 'Apron', 'apron'),
    ...named(row, 'Stool', 'stool'),
    ...lengthFrom0(row, 'Position', 'position'),
    quantity: row.whole('Quantity', 1, 1, MOST_QUANTITY),
    ...readSill(row, kind),
    horn: readHorn(row),
    ...readOtherSide(row),
    where: row.where('Width'),
    cells: cellsOf(row, OPENING_CELLS),
  };
  if (room === undefined || width === undefined || height === undefined) return undefined;
  return { room, width, height, ...rest };
}

/** Doors and cased openings reach the floor: a sill given there is not used, which is said. */
function readSill(row: RowReader, kind: Opening['kind']): { readonly sill?: Opening['height'] } {
  const read = lengthFrom0(row, 'Sill', 'sill');
  if (kind === 'window' || read.sill === undefined) return read;
  const given = { inches: Number(read.sill) };
  row.caution('Sill', fault('job.sill-unused', 'Sill', given, { details: { kind } }));
  return {};
}

/** Only a stool has horns. */
function readHorn(row: RowReader): Opening['horn'] {
  const horn = row.length('Horn', true);
  if (horn !== undefined && row.isBlank('Stool')) {
    row.caution('Horn', fault('job.horn-unused', 'Horn', { inches: Number(horn) }));
  }
  return horn ?? USUAL_HORN;
}

/** What says nothing without another cell is refused: it would leave a wall uncut. */
function readOtherSide(row: RowReader): Pick<Opening, 'otherWall' | 'otherRoom' | 'otherPosition'> {
  const otherWall = row.text('Other wall');
  const position = lengthFrom0(row, 'Other position', 'otherPosition');
  const needs = (heading: string, needed: string): void => {
    if (row.isBlank(heading) || !row.isBlank(needed)) return;
    const given = row.raw(heading);
    const missing = fault('job.cell-needs-another', heading, given.ok ? given.value : null, {
      details: { needed },
    });
    row.refuse(needed, missing);
  };
  needs('Other wall', 'Other room');
  needs('Other position', 'Other wall');
  return { otherWall, ...named(row, 'Other room', 'otherRoom'), ...position };
}

function lengthFrom0<Key extends string>(
  row: RowReader,
  heading: string,
  key: Key,
): Partial<Record<Key, Opening['height']>> {
  const length = row.length(heading, true);
  return length === undefined ? {} : ({ [key]: length } as Record<Key, Opening['height']>);
}

function named<Key extends string>(
  row: RowReader,
  heading: string,
  key: Key,
): Partial<Record<Key, string>> {
  const name = row.text(heading);
  return name === '' ? {} : ({ [key]: name } as Record<Key, string>);
}
