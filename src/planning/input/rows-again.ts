/** Rows that were pasted twice: the same ones in the same order. */
import { fault, placeFault, sayWhere, type Where } from '../../core/faults/fault.ts';
import { tableArgument } from './raw-table.ts';
import type { Findings } from './row-reader.ts';

/** Two or one may well be alike: opposite walls, both sides of a door. Common practice [C]. */
const LEAST_DIFFERENT = 3;

interface Again {
  readonly from: Where;
  /** Of the first of those before. */
  readonly first: Where;
  readonly rows: Set<string>;
  count: number;
}

/**
 * Cautions stretches of rows that stand further up already, at the first row of each.
 *
 * @param keyOf all that a row says
 */
export function cautionRowsAgain<Row extends { readonly where: Where }>(
  name: string,
  rows: readonly Row[],
  keyOf: (row: Row) => string,
  { cautions }: Findings,
): void {
  const keys = rows.map(keyOf);
  const seen = new Map<string, number>();
  const found: Again[] = [];
  let open: Again | undefined;
  let last = -1;
  rows.forEach((row, at) => {
    const key = keys[at] ?? '';
    // A stretch goes on where it can; else the nearest row above begins another.
    const goesOn = open !== undefined && keys[last + 1] === key && last + 1 < at;
    const before = goesOn ? last + 1 : seen.get(key);
    seen.set(key, at);
    const first = before === undefined ? undefined : rows[before];
    if (before === undefined || first === undefined) {
      open = undefined;
    } else if (open !== undefined && goesOn) {
      open.rows.add(key);
      open.count += 1;
    } else {
      open = { from: row.where, first: first.where, rows: new Set([key]), count: 1 };
      found.push(open);
    }
    last = before ?? -1;
  });
  for (const { from, first, rows: different, count } of found) {
    if (different.size < LEAST_DIFFERENT) continue;
    const details = { at: sayWhere(first) };
    cautions.push(
      placeFault(fault('table.rows-again', tableArgument(name), count, { details }), from),
    );
  }
}
