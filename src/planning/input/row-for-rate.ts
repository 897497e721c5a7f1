/** A learned rate as a row of a person's own Work, read back before it is believed. */
import { failed, fault, ok, placeFault, type Outcome } from '../../core/faults/fault.ts';
import { writeDecimal } from '../../core/units/format-number.ts';
import { sameName, type Job } from '../job.ts';
import type { WorkLearned } from '../work/learn-from-hours.ts';
import { cellsOfLearned } from '../work/learned-rows.ts';
import { WORK_HEADINGS } from './headings/work-headings.ts';
import { matchHeadings } from './match-headings.ts';
import { whereIs, type RawTable } from './raw-table.ts';
import { readWork } from './read-work.ts';
import type { Findings } from './row-reader.ts';
import type { RunRow } from './rows-for-runs.ts';

/** Faults: rates.lack-heading, and rates.reads-otherwise where it would not be read as it is shown. */
export function rowForRate(
  table: RawTable,
  learned: WorkLearned,
  { shop, profiles }: Pick<Job, 'shop' | 'profiles'>,
): Outcome<RunRow> {
  const found: Findings = { faults: [], cautions: [] };
  const { columns } = matchHeadings(table, WORK_HEADINGS, shop, found, new Set());
  const row: (string | null)[] = Array.from(
    { length: Math.max(-1, ...columns.values()) + 1 },
    () => null,
  );
  const cells = cellsOfLearned(learned);
  const { work } = learned.row;
  for (const [key, value] of cells) {
    const text = typeof value === 'number' ? writeDecimal(String(value), shop.decimalSign) : value;
    const column = columns.get(key);
    if (column === undefined) {
      const lacking = fault('rates.lack-heading', key, text, { details: { work } });
      return failed(placeFault(lacking, whereIs(table, table.headings.line, 0)));
    }
    row[column] = text;
  }
  const alone = { ...table, rows: [{ line: table.headings.line + 1, cells: row }] };
  const facts = { shop, shopCells: {}, left: [], profiles };
  // A row that says what is usual anyway is read as the usual one.
  const isSame = readWork(alone, facts, shop, found).some(
    (read) =>
      sameName(read.work, work) &&
      read.per === learned.row.per &&
      read.minutes === cells.get('minutes') &&
      read.isOurs === learned.row.isOurs,
  );
  return isSame && found.faults.length === 0
    ? ok(row)
    : failed(...found.faults, fault('rates.reads-otherwise', 'workDone', work));
}
