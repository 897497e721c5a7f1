/** The table Job: what names the job, one thing a row. */
import { fault, type Fault } from '../../core/faults/fault.ts';
import { findNearNames } from '../../core/words/near-words.ts';
import { SETTINGS } from '../shop.ts';
import { NO_TITLE, TITLE_ROWS, type TitleBlock, type TitleKey } from '../title-block.ts';
import { headNotUsed, saysNotUsed } from './headings/meant-headings.ts';
import { TITLE_HEADINGS } from './headings/title-headings.ts';
import type { RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { readRows } from './read-rows.ts';
import { headingKey, type Findings, type RowReader } from './row-reader.ts';

const BY_NAME = new Map<string, TitleKey>(
  (Object.keys(TITLE_ROWS) as TitleKey[]).flatMap((key) =>
    [TITLE_ROWS[key].name, ...TITLE_ROWS[key].also].map((name) => [headingKey(name), key] as const),
  ),
);
const OF_SHOP = new Set(Object.values(SETTINGS).map(({ name }) => headingKey(name)));
const NAMES = Object.values(TITLE_ROWS).map(({ name }) => name);

/** More rows than these are no suggestion any more. */
const MOST_NEAR = 3;

/** As `settingNamed` of Shop: a percent is said, since a sum may be meant. */
function rowNamed(name: string): TitleKey | undefined {
  const key = BY_NAME.get(headingKey(name));
  return key === 'deposit' && !name.includes('%') ? undefined : key;
}

/**
 * What the table says; a row that it hasn't says nothing. Refused: a row twice, a near miss of one, a
 * setting of Shop (it would not be used here), a day that can't be told.
 */
export function readTitleBlock(
  table: RawTable | undefined,
  reading: CellReading,
  findings: Findings,
): TitleBlock {
  if (table === undefined) return NO_TITLE;
  const said: Partial<Record<TitleKey, string | number>> = {};
  const seen = new Set<TitleKey>();
  for (const row of readRows(table, TITLE_HEADINGS, reading, findings)) {
    const name = row.requiredText('setting');
    if (name === undefined) continue;
    const key = rowNamed(name);
    if (key === undefined) {
      judgeUnknown(row, name);
    } else if (seen.has(key)) {
      row.refuse('setting', fault('job.title-twice', 'setting', name));
    } else if (!row.isBlank('value')) {
      const value = readValue(row, key);
      if (value !== undefined) said[key] = value;
      seen.add(key);
    }
  }
  return { ...NO_TITLE, ...said } as TitleBlock;
}

function readValue(row: RowReader, key: TitleKey): string | number | undefined {
  switch (TITLE_ROWS[key].holds) {
    case 'day':
      return row.day('value', TITLE_ROWS[key].key);
    case 'percent':
      return row.number('value', 0, 100, { percent: true });
    case 'text':
      return row.text('value');
  }
}

function judgeUnknown(row: RowReader, name: string): void {
  if (saysNotUsed(name)) return;
  const refuse = (one: Fault): undefined => row.refuse('setting', one);
  if (OF_SHOP.has(headingKey(name))) return refuse(fault('job.setting-of-shop', 'setting', name));
  const near = findNearNames(name, NAMES).slice(0, MOST_NEAR);
  const details = { may: near.join(' or '), notUsed: headNotUsed(name) };
  if (near.length > 0) return refuse(fault('job.title-near', 'setting', name, { details }));
  row.caution('setting', fault('job.title-unknown', 'setting', name));
}
