/** The Stock table. */
import { fault } from '../../core/faults/fault.ts';
import { WIDEST_INCHES } from '../../core/units/plausible-length.ts';
import { findThicknessClass } from '../../core/lumber/thickness-class.ts';
import { plannerLength } from '../planner-length.ts';
import { PRICE_PER, STOCK_CELLS, STOCK_KINDS, type StockItem } from '../job.ts';
import { cellsOf } from './cells-of.ts';
import { STOCK_HEADINGS } from './headings/stock-headings.ts';
import type { RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { readRows } from './read-rows.ts';
import type { Findings, RowReader } from './row-reader.ts';

const MOST_ON_RACK = 100_000;
const MOST_PRICE = 1_000_000;

export function readStock(table: RawTable, reading: CellReading, findings: Findings): StockItem[] {
  return readRows(table, STOCK_HEADINGS, reading, findings).flatMap((row) => readItem(row) ?? []);
}

function readItem(row: RowReader): StockItem | undefined {
  const wanted = row.requiredText('for');
  const length = row.requiredLength('length');
  const price = row.isBlank('price')
    ? row.refuse('price', fault('cutting.price-missing', 'sheet.Stock', null))
    : row.number('price', 0, MOST_PRICE, { currency: '' });
  const kind = row.word('kind', STOCK_KINDS, 'stick');
  const width = row.length('width', false, WIDEST_INCHES);
  const thicknessClass = row.text('thicknessClass');
  if (thicknessClass !== '') {
    const found = findThicknessClass(thicknessClass, 'thicknessClass');
    if (!found.ok) for (const one of found.faults) row.refuse('thicknessClass', one);
  }
  if (kind === 'board' && row.isBlank('width')) {
    row.refuse('width', fault('job.board-needs-width', 'sheet.Stock', null));
  }
  const rest = {
    kind,
    thicknessClass,
    per: row.word('per', PRICE_PER, 'piece'),
    have: row.whole('have', 0, 0, MOST_ON_RACK),
    buyMost: readBuy(row),
    where: row.where('for'),
    cells: cellsOf(row, STOCK_CELLS),
  };
  if (wanted === undefined || length === undefined || price === undefined) return undefined;
  return {
    for: wanted,
    length: plannerLength(length, 'down'),
    price,
    ...rest,
    ...(width === undefined ? {} : { width }),
  };
}

/** Yes (or blank) is as many as needed, no is none, a whole number is the most. */
function readBuy(row: RowReader): number | null {
  const buy = row.raw('buy');
  if (!buy.ok) return null;
  const text = buy.value === null ? 'yes' : String(buy.value).trim().toLowerCase();
  if (/^-?\d/u.test(text)) return row.whole('buy', 0, 0, MOST_ON_RACK);
  if (['yes', 'y', 'true'].includes(text)) return null;
  if (['no', 'n', 'false'].includes(text)) return 0;
  const details = { allowed: 'yes, no, or a most (whole number)' };
  row.refuse('buy', fault('word.unknown', 'buy', text, { details }));
  return 0;
}
