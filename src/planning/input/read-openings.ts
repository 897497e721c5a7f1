/** The Openings table. */
import type { LengthReading } from '../../core/units/length.ts';
import { OPENING_KINDS, type Opening } from '../job.ts';
import { MOST_QUANTITY, USUAL_REVEAL } from './read-runs.ts';
import type { RawTable } from './raw-table.ts';
import { readRows } from './read-rows.ts';
import type { Findings, RowReader } from './row-reader.ts';

export const OPENING_HEADINGS = [
  { heading: 'Room', required: true },
  { heading: 'Wall' },
  { heading: 'Kind', required: true },
  { heading: 'Width', required: true },
  { heading: 'Height', required: true },
  { heading: 'Sides cased' },
  { heading: 'Reveal' },
  { heading: 'Casing' },
  { heading: 'Apron' },
  { heading: 'Stool' },
  { heading: 'Position' },
  { heading: 'Quantity' },
];

export function readOpenings(
  table: RawTable,
  reading: LengthReading,
  findings: Findings,
): Opening[] {
  return readRows(table, OPENING_HEADINGS, reading, findings).flatMap(
    (row) => readOpening(row) ?? [],
  );
}

function readOpening(row: RowReader): Opening | undefined {
  const room = row.requiredText('Room');
  const width = row.requiredLength('Width');
  const height = row.requiredLength('Height');
  const position = row.length('Position', true);
  const rest = {
    wall: row.text('Wall'),
    kind: row.word('Kind', OPENING_KINDS, 'door'),
    sidesCased: row.whole('Sides cased', 1, 1, 2),
    reveal: row.length('Reveal', true) ?? USUAL_REVEAL,
    ...named(row, 'Casing', 'casing'),
    ...named(row, 'Apron', 'apron'),
    ...named(row, 'Stool', 'stool'),
    quantity: row.whole('Quantity', 1, 1, MOST_QUANTITY),
    where: row.where('Width'),
  };
  if (room === undefined || width === undefined || height === undefined) return undefined;
  return { room, width, height, ...rest, ...(position === undefined ? {} : { position }) };
}

function named<Key extends string>(
  row: RowReader,
  heading: string,
  key: Key,
): Partial<Record<Key, string>> {
  const name = row.text(heading);
  return name === '' ? {} : ({ [key]: name } as Record<Key, string>);
}
