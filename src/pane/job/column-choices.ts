/** What can be chosen when a table of the person's own is taken for one of the job's. */
import type { ColumnMap } from '../../planning/input/map-columns.ts';
import type { RawCell } from '../../planning/input/raw-table.ts';
import type { JobTableName } from '../../planning/input/read-job.ts';
import { TABLE_HEADINGS } from '../../planning/input/headings/table-headings.ts';

/** Their headings that are text, each once. */
export function listColumnChoices(headings: readonly RawCell[]): readonly string[] {
  const texts = headings.filter(
    (one): one is string => typeof one === 'string' && one.trim() !== '',
  );
  return [...new Set(texts)];
}

/** Needed columns that none of theirs stands for yet. */
export function unfilledColumns(table: JobTableName, columns: ColumnMap): readonly string[] {
  return TABLE_HEADINGS[table]
    .filter(({ heading, required }) => required === true && columns[heading] === undefined)
    .map(({ heading }) => heading);
}
