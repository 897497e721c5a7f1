/** The Openings table. */
import { sayArgument, type HeadingKey } from '../../core/faults/argument.ts';
import { fault } from '../../core/faults/fault.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import { OPENING_CELLS, OPENING_KINDS, type Opening } from '../job.ts';
import { USUAL_HORN, USUAL_REVEAL } from '../settings/usual-sizes.ts';
import { cellsOf } from './cells-of.ts';
import { OPENING_HEADINGS } from './headings/opening-headings.ts';
import { MOST_QUANTITY } from './read-runs.ts';
import type { RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { readRows } from './read-rows.ts';
import { notShort } from './short-lengths.ts';
import type { Findings, RowReader } from './row-reader.ts';

/** Doors and windows are up to so many feet, or metres, wide and high. Common practice [C]. */
const MOST_FEET = 8;

export function readOpenings(table: RawTable, reading: CellReading, findings: Findings): Opening[] {
  return readRows(table, OPENING_HEADINGS, reading, findings).flatMap(
    (row) => readOpening(row, reading.unit) ?? [],
  );
}

function readOpening(row: RowReader, unit: LengthUnit): Opening | undefined {
  const room = row.requiredText('room');
  const width = notShort(row, 'width', row.requiredLength('width'), MOST_FEET);
  const height = notShort(row, 'height', row.requiredLength('height'), MOST_FEET);
  const kind = row.word('kind', OPENING_KINDS, 'door');
  const rest = {
    wall: row.text('wall'),
    kind,
    sidesCased: row.whole('sidesCased', 1, 1, 2),
    reveal: row.length('reveal', true) ?? USUAL_REVEAL[unit],
    ...named(row, 'casing'),
    ...named(row, 'apron'),
    ...named(row, 'stool'),
    ...lengthFrom0(row, 'position'),
    quantity: row.whole('quantity', 1, 1, MOST_QUANTITY),
    ...readSill(row, kind),
    horn: readHorn(row, unit),
    ...readOtherSide(row),
    where: row.where('width'),
    cells: cellsOf(row, OPENING_CELLS),
  };
  if (room === undefined || width === undefined || height === undefined) return undefined;
  return { room, width, height, ...rest };
}

/** Doors and cased openings reach the floor: a sill given there is not used, which is said. */
function readSill(row: RowReader, kind: Opening['kind']): { readonly sill?: Opening['height'] } {
  const read = lengthFrom0(row, 'sill');
  if (kind === 'window' || read.sill === undefined) return read;
  const given = { inches: Number(read.sill) };
  row.caution('sill', fault('job.sill-unused', 'sill', given, { details: { kind } }));
  return {};
}

/** Only a stool has horns. */
function readHorn(row: RowReader, unit: LengthUnit): Opening['horn'] {
  const horn = row.length('horn', true);
  if (horn !== undefined && row.isBlank('stool')) {
    row.caution('horn', fault('job.horn-unused', 'horn', { inches: Number(horn) }));
  }
  return horn ?? USUAL_HORN[unit];
}

/** What says nothing without another cell is refused: it would leave a wall uncut. */
function readOtherSide(row: RowReader): Pick<Opening, 'otherWall' | 'otherRoom' | 'otherPosition'> {
  const otherWall = row.text('otherWall');
  const position = lengthFrom0(row, 'otherPosition');
  const needs = (heading: HeadingKey, needed: HeadingKey): void => {
    if (row.isBlank(heading) || !row.isBlank(needed)) return;
    const given = row.raw(heading);
    const missing = fault('job.cell-needs-another', heading, given.ok ? given.value : null, {
      details: { needed: sayArgument(needed) },
    });
    row.refuse(needed, missing);
  };
  needs('otherWall', 'otherRoom');
  needs('otherPosition', 'otherWall');
  return { otherWall, ...named(row, 'otherRoom'), ...position };
}

/** The cell under a heading, by the heading's key. */
function lengthFrom0<Key extends HeadingKey>(
  row: RowReader,
  key: Key,
): Partial<Record<Key, Opening['height']>> {
  const length = row.length(key, true);
  return length === undefined ? {} : ({ [key]: length } as Record<Key, Opening['height']>);
}

function named<Key extends HeadingKey>(row: RowReader, key: Key): Partial<Record<Key, string>> {
  const name = row.text(key);
  return name === '' ? {} : ({ [key]: name } as Record<Key, string>);
}
