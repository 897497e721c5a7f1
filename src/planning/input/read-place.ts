/** Where on the wall a profile is: the columns Where and Height of Profiles. */
import { fault } from '../../core/faults/fault.ts';
import { PLACES, type WallPlace } from '../room-rows.ts';
import type { RowReader } from './row-reader.ts';

/**
 * Where is blank: the usual place, or `height` where a Height stands beside what would be on the floor.
 * Refused: a Height beside another Where, or beside what is usually at the ceiling or round an opening,
 * since it may be meant for a size of the molding.
 */
export function readPlace(row: RowReader, usual: WallPlace['at']): WallPlace {
  const height = row.length('height', true);
  const isSaid = !row.isBlank('where');
  const isHeight = !row.isBlank('height');
  const said = row.word<WallPlace['at'] | 'unknown'>('where', PLACES, 'unknown');
  const unsaid = isHeight && usual === 'floor' ? 'height' : usual;
  // A word that isn't known has its fault; what Height means beside it can't be told.
  const at = !isSaid ? unsaid : said === 'unknown' ? (isHeight ? 'height' : usual) : said;
  const cell = row.where(at === 'height' && isSaid ? 'height' : 'where');
  if (isHeight && at !== 'height') {
    const given = height === undefined ? null : { inches: Number(height) };
    const code = isSaid ? 'job.height-elsewhere' : 'job.height-needs-where';
    row.refuse(isSaid ? 'height' : 'where', fault(code, 'height', given, { details: { at } }));
  }
  return {
    at,
    isSaid: isSaid || at === 'height',
    ...(height === undefined ? {} : { height }),
    cell,
  };
}
