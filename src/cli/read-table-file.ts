/** Opens a CSV file that a command takes, row by row. */
import { failed, fault, type Fault, type Outcome } from '../core/faults/fault.ts';
import { INCHES_AND_POINT } from '../core/units/length.ts';
import { readCsvTable } from '../hosts/file/read-csv.ts';
import { readBytes } from '../hosts/file/read-job-input.ts';
import type { Heading } from '../planning/input/headings/heading.ts';
import { readRows } from '../planning/input/read-rows.ts';
import type { Findings, RowReader } from '../planning/input/row-reader.ts';

export interface OpenTable {
  readonly rows: readonly RowReader[];
  /** The rows report into it as they are read; it begins with the cautions of the headings. */
  readonly findings: Findings;
}

/**
 * Lengths are read in inches, with a decimal point. Faults: what readBytes and readCsvTable find,
 * headings missing or twice, no rows at all.
 */
export async function readTableFile(
  path: string,
  headings: readonly Heading[],
): Promise<Outcome<OpenTable> & { readonly cautions: Findings['cautions'] }> {
  const nothing = (faults: readonly Fault[]) => ({ ...failed(...faults), cautions: [] });
  const bytes = await readBytes(path, 'a CSV file');
  if (!bytes.ok) return nothing(bytes.faults);
  const table = readCsvTable(bytes.value, path, path);
  if (!table.ok) return nothing(table.faults);
  if (table.value.headings.cells.length === 0) return nothing([fault('table.empty', path, null)]);
  const findings: Findings = { faults: [], cautions: [] };
  const rows = readRows(table.value, headings, INCHES_AND_POINT, findings);
  const { faults, cautions } = findings;
  if (faults.length === 0 && rows.length === 0) faults.push(fault('table.empty', path, null));
  if (faults.length > 0) return { ...failed(...faults), cautions };
  return { ok: true, value: { rows, findings }, cautions };
}
