/** Reads a table of the person's own as one of ours: which of their columns stands for which. */
import { COVE_SIZES } from '../../core/cove/cove-sizes.ts';
import type { RawCell, RawTable } from './raw-table.ts';
import type { JobTableName } from './read-job.ts';
import { headingKey } from './row-reader.ts';
import { TABLE_HEADINGS } from './table-headings.ts';

/** Our heading to theirs; a heading of ours that is left out has no column. */
export type ColumnMap = Readonly<Record<string, string>>;

/** What lists of trim are often headed, by our heading. Common practice [C]. */
const OFTEN_HEADED: Readonly<Record<string, readonly string[]>> = {
  Room: ['area', 'location', 'space', 'where'],
  Run: ['wall', 'mark', 'item', 'no', 'number', 'tag', 'id'],
  Profile: ['molding', 'moulding', 'trim', 'type', 'name', 'style'],
  Length: ['len', 'wall length', 'long', 'size', 'inches', 'feet', 'mm'],
  Quantity: ['qty', 'count', 'pcs', 'pieces', 'how many', 'amount'],
  Note: ['notes', 'remark', 'remarks', 'comment', 'comments'],
  Done: ['finished', 'complete', 'completed', 'cut'],
  'Left end': ['left', 'start', 'end 1', 'end a'],
  'Right end': ['right', 'end', 'end 2', 'end b'],
  Width: ['wide'],
  Height: ['high', 'tall'],
  Casing: ['case', 'trim'],
  [COVE_SIZES.blankWidth.label]: ['face', 'width', 'board width'],
  [COVE_SIZES.blankThickness.label]: ['thickness', 'thick', 'board thickness'],
  Species: ['wood', 'material', 'timber'],
  For: ['profile', 'species', 'item', 'material'],
  Price: ['cost', 'unit price', 'each', 'rate'],
  Per: ['unit', 'priced by'],
  Have: ['stock', 'on hand', 'in stock', 'rack'],
};

/**
 * A guess at which of their headings stands for each of ours: the same word first, then what such
 * lists are often headed, then one that contains ours. None of theirs is taken twice.
 */
export function guessColumns(headings: readonly RawCell[], name: JobTableName): ColumnMap {
  const theirs = headings.filter((cell): cell is string => headingKey(cell) !== '');
  const wanted = TABLE_HEADINGS[name].map(({ heading }) => heading);
  const map = new Map<string, string>();
  const take = (matches: (key: string, ours: string) => boolean): void => {
    for (const ours of wanted) {
      if (map.has(ours)) continue;
      const taken = new Set(map.values());
      const found = theirs.find((one) => !taken.has(one) && matches(headingKey(one), ours));
      if (found !== undefined) map.set(ours, found);
    }
  };
  take((key, ours) => key === headingKey(ours));
  take((key, ours) => (OFTEN_HEADED[ours] ?? []).some((word) => headingKey(word) === key));
  take((key, ours) => key.includes(headingKey(ours)));
  return Object.fromEntries(map);
}

/**
 * The table with our headings in place of theirs. Columns that stand for none of ours keep their
 * heading, but where it would be taken for one of ours. Rows and places stay as they are.
 */
export function mapColumns(table: RawTable, name: JobTableName, map: ColumnMap): RawTable {
  const ours = new Map(
    Object.entries(map).map(([heading, theirs]) => [headingKey(theirs), heading]),
  );
  const known = new Set(TABLE_HEADINGS[name].map(({ heading }) => headingKey(heading)));
  const cells = table.headings.cells.map((cell): RawCell => {
    const key = headingKey(cell);
    const heading = ours.get(key);
    if (heading === undefined) return known.has(key) ? null : cell;
    ours.delete(key);
    return heading;
  });
  return { ...table, name, headings: { ...table.headings, cells } };
}
