/** Reads a table of the person's own as one of ours: which of their columns stands for which. */
import type { Heading } from './headings/heading.ts';
import { headNotUsed } from './headings/meant-headings.ts';
import { TABLE_HEADINGS } from './headings/table-headings.ts';
import { headingWithoutUnit } from './headings/unit-of-heading.ts';
import { unitUnder } from './heading-units.ts';
import type { RawCell, RawTable } from './raw-table.ts';
import type { JobTableName } from './read-job.ts';
import { headingKey } from './row-reader.ts';

/**
 * Our heading to theirs; a heading of ours that is left out has no column. A column of theirs that the
 * person says is not used stands as `Total (not used)` to `Total`.
 */
export type ColumnMap = Readonly<Record<string, string>>;

/** A column of theirs, to be guessed at. */
interface Theirs {
  readonly heading: string;
  /** Of the heading, whole and without the unit that it names. */
  readonly keys: readonly string[];
  readonly isFilled: boolean;
}

/**
 * A guess at which of their headings stands for each of ours: the same word first, then what such
 * lists are often headed, then one that contains ours; needed columns before those that may be left
 * out, and filled columns before empty ones. None of theirs is taken twice.
 *
 * @param isFilled whether anything stands in the column, by its place from 0
 */
export function guessColumns(
  headings: readonly RawCell[],
  name: JobTableName,
  isFilled: (column: number) => boolean = () => true,
): ColumnMap {
  const theirs = headings.flatMap((cell, column): Theirs[] => {
    if (typeof cell !== 'string' || headingKey(cell) === '') return [];
    const keys = [cell, headingWithoutUnit(cell)].map(headingKey).filter((key) => key !== '');
    return [{ heading: cell, keys, isFilled: isFilled(column) }];
  });
  const ours: readonly Heading[] = TABLE_HEADINGS[name];
  const needed = ours.filter(({ required }) => required === true);
  const others = ours.filter(({ required }) => required !== true);
  const map = new Map<string, string>();
  const take = (
    wanted: readonly Heading[],
    among: readonly Theirs[],
    matches: (key: string, one: Heading) => boolean,
  ): void => {
    for (const one of wanted) {
      if (map.has(one.heading)) continue;
      const taken = new Set(map.values());
      const found = among.find(
        ({ heading, keys }) => !taken.has(heading) && keys.some((key) => matches(key, one)),
      );
      if (found !== undefined) map.set(one.heading, found.heading);
    }
  };
  const filled = theirs.filter((one) => one.isFilled);
  take(ours, filled, isSame);
  for (const wanted of [needed, others]) {
    take(wanted, filled, (key, { also }) => isAmong(key, also));
    take(wanted, filled, (key, { often }) => isAmong(key, often));
    take(wanted, filled, (key, { heading }) => key.includes(headingKey(heading)));
  }
  take(ours, theirs, isSame);
  take(ours, theirs, (key, { also }) => isAmong(key, also));
  return Object.fromEntries(map);
}

function isSame(key: string, { heading }: Heading): boolean {
  return headingKey(heading) === key;
}

function isAmong(key: string, words: readonly string[] = []): boolean {
  return words.some((word) => headingKey(word) === key);
}

/**
 * The table with our headings in place of theirs, and the unit that theirs name. Columns that stand
 * for none of ours keep their heading and are left out, whatever that is. Rows and places stay as
 * they are.
 */
export function mapColumns(table: RawTable, name: JobTableName, map: ColumnMap): RawTable {
  const ours = new Map(
    Object.entries(map).map(([heading, theirs]) => [headingKey(theirs), { heading, theirs }]),
  );
  const theirs = table.headings.cells;
  const leftOut: number[] = [];
  const cells = theirs.map((cell, column): RawCell => {
    const key = headingKey(cell);
    const found = ours.get(key);
    if (found === undefined) {
      leftOut.push(column);
      return cell;
    }
    ours.delete(key);
    const unit = unitUnder(found.heading, found.theirs);
    return unit === undefined ? found.heading : `${found.heading} (${unit})`;
  });
  return { ...table, name, headings: { ...table.headings, cells }, mapped: { theirs, leftOut } };
}

/** The choice with one more column said not to be used, or with that taken back. */
export function chooseNotUsed(map: ColumnMap, theirs: string, isUsed: boolean): ColumnMap {
  const key = headNotUsed(theirs);
  const others = Object.entries(map).filter(([heading, one]) => heading !== key && one !== theirs);
  return Object.fromEntries(isUsed ? others : [...others, [key, theirs]]);
}
