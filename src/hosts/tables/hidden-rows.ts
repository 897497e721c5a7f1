/** Rows that are read and not seen: hidden by hand, or by a filter. */
import { fault, placeFault } from '../../core/faults/fault.ts';
import { tableArgument, whereIs, type RawTable } from '../../planning/input/raw-table.ts';

/** @param isHidden Of a row's line, from 1. */
export function sayHiddenRows(table: RawTable, isHidden: (line: number) => boolean): RawTable {
  const hidden = table.rows.filter(({ line }) => isHidden(line));
  const [first] = hidden;
  if (first === undefined) return table;
  const one = fault('table.hidden-rows', tableArgument(table.name), hidden.length);
  const place = placeFault(one, whereIs(table, first.line, 0));
  return { ...table, cautions: [...(table.cautions ?? []), place] };
}
