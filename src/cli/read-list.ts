/** Reads a list that a command takes, row by row. */
import { tableArgument } from '../planning/input/raw-table.ts';
import { own } from '../core/faults/argument.ts';
import { failed, fault, type Fault, type Outcome } from '../core/faults/fault.ts';
import type { DecimalSign } from '../core/units/format-number.ts';
import type { Heading } from '../planning/input/headings/heading.ts';
import { readRows } from '../planning/input/read-rows.ts';
import type { Findings, RowReader } from '../planning/input/row-reader.ts';
import { openList, type OpenedList } from './open-list.ts';

export interface ReadList {
  readonly rows: readonly RowReader[];
  /** The rows report into it as they are read; it begins with the cautions of the table and its headings. */
  readonly findings: Findings;
}

/**
 * Bare lengths are read in inches. Faults: what openList finds,
 * headings missing or twice, no rows at all.
 */
export async function readList(
  name: string,
  headings: readonly Heading[],
  decimalSign: DecimalSign,
): Promise<Outcome<ReadList> & { readonly cautions: Findings['cautions'] }> {
  const nothing = (faults: readonly Fault[]) => ({ ...failed(...faults), cautions: [] });
  const table = await openList(name);
  if (!table.ok) return nothing(table.faults);
  if (table.value.headings.cells.length === 0) {
    const details = { headings: headings.map(({ heading }) => heading).join(', ') };
    return nothing([fault('table.empty', tableArgument(table.value.name), null, { details })]);
  }
  const findings: Findings = { faults: [], cautions: [...(table.value.cautions ?? [])] };
  const rows = readRows(table.value, headings, { unit: 'in', decimalSign }, findings);
  const { faults, cautions } = findings;
  if (faults.length === 0 && rows.length === 0)
    faults.push(fault('table.empty', tableArgument(table.value.name), null));
  faults.push(...sayFirstSheet(table.value, name, faults));
  if (faults.length > 0) return { ...failed(...faults), cautions };
  return { ok: true, value: { rows, findings }, cautions };
}

/** A sheet without the headings may be the wrong one, where nobody named it. */
function sayFirstSheet(list: OpenedList, name: string, faults: readonly Fault[]): Fault[] {
  const [first, second] = list.sheets ?? [];
  const isNamed = name !== list.name;
  const isOther = faults.some(({ code }) => code === 'table.heading-missing');
  if (isNamed || !isOther || first === undefined || second === undefined) return [];
  const details = { name: `${name}#${second}`, sheets: list.sheets?.join(', ') ?? '' };
  return [fault('table.first-sheet', own(first), name, { details })];
}
