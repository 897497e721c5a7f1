/** Tells whether inputs are still those that a plan was made from. */
import type { RawTable } from './raw-table.ts';

const OFFSETS = [0x811c9dc5, 0x01000193] as const;
const PRIME = 0x01000193;

/**
 * A short text that changes with any cell, heading or order of rows, but not with where on its
 * sheet a table stands. FNV-1a (Fowler, Noll, Vo) of 32 bits over UTF-16 units,
 * twice with different offsets: it guards against slips, not against a forger.
 */
export function fingerprint(tables: readonly RawTable[]): string {
  const text = JSON.stringify(
    tables.map(({ name, headings, rows }) => [
      name,
      headings.cells,
      rows.map(({ cells }) => cells),
    ]),
  );
  return OFFSETS.map((offset) => {
    let hash: number = offset;
    for (let at = 0; at < text.length; at++) {
      hash = Math.imul(hash ^ text.charCodeAt(at), PRIME);
    }
    return (hash >>> 0).toString(16).padStart(8, '0');
  }).join('');
}
