/** The Stock table. */
import { own } from '../../core/faults/argument.ts';
import { fault, type Fault } from '../../core/faults/fault.ts';
import { isSameCurrency } from '../../core/units/currency.ts';
import { WIDEST_INCHES } from '../../core/units/plausible-length.ts';
import { findThicknessClass } from '../../core/lumber/thickness-class.ts';
import { plannerLength } from '../planner-length.ts';
import { listClearStretches } from '../clear-stretches.ts';
import { countClear } from '../grade-yield.ts';
import { nameKey, PRICE_PER, sameName, STOCK_CELLS, STOCK_KINDS, type StockItem } from '../job.ts';
import type { Shop } from '../shop.ts';
import { cellsOf } from './cells-of.ts';
import { STOCK_HEADINGS } from './headings/stock-headings.ts';
import type { RawTable } from './raw-table.ts';
import { currencyIn, type CellReading } from './read-cell.ts';
import { readDefects } from './read-defects.ts';
import { readRows } from './read-rows.ts';
import { readYield } from './read-yield.ts';
import { notShort } from './short-lengths.ts';
import type { Findings, RowReader } from './row-reader.ts';

const MOST_ON_RACK = 100_000;
const MOST_PRICE = 1_000_000;

/** A board with defects is a row for each of its clear stretches. */
export function readStock(
  table: RawTable,
  shop: Shop,
  reading: CellReading,
  findings: Findings,
): StockItem[] {
  const rows = readRows(table, STOCK_HEADINGS, reading, findings);
  const currencies: string[] = [];
  const items = rows.flatMap((row) => {
    const item = readItem(row);
    if (item === undefined) return [];
    checkCurrency(row, currencies);
    return [{ row, item }];
  });
  for (const [at, { row, item }] of items.entries()) {
    const twin = items.slice(0, at).find((other) => isSameAtOtherPrice(other.item, item));
    if (twin === undefined) continue;
    const details = { other: twin.item.price };
    row.caution('price', fault('job.stock-two-prices', own(item.for), item.price, { details }));
  }
  return items.flatMap(({ row, item }) => readStretches(row, item, shop, reading));
}

/** The same wood, both without end: of the dearer nothing is ever bought. */
function isSameAtOtherPrice(one: StockItem, other: StockItem): boolean {
  return (
    one.buyMost === null &&
    other.buyMost === null &&
    one.per === other.per &&
    one.price !== other.price &&
    sameName(one.for, other.for) &&
    one.kind === other.kind &&
    one.thicknessClass === other.thicknessClass &&
    nameKey(one.grade ?? '') === nameKey(other.grade ?? '') &&
    one.length.equals(other.length) &&
    (one.width ?? one.length).equals(other.width ?? other.length)
  );
}

/** Both US$ and C$ may be a shop's $, and not both at once. */
function checkCurrency(row: RowReader, earlier: string[]): void {
  const cell = row.value('price');
  const said = cell.ok && cell.value !== null ? currencyIn(cell.value) : undefined;
  if (said === undefined) return;
  const other = earlier.find((one) => !isSameCurrency(one, said));
  if (other === undefined) earlier.push(said);
  else row.refuse('price', fault('cutting.currency-differs', 'price', said, { limit: other }));
}

/** A capital M is a thousand to a lumber yard, a metre to nobody. [C] */
function readPer(row: RowReader): StockItem['per'] {
  const said = row.raw('per');
  if (!said.ok) return 'piece';
  if (String(said.value).trim() !== 'M') return row.word('per', PRICE_PER, 'piece');
  const details = { allowed: PRICE_PER.join(', ') };
  row.refuse('per', fault('word.unknown', 'per', 'M', { details }));
  return 'piece';
}

function readItem(row: RowReader): StockItem | undefined {
  const wanted = row.requiredText('for');
  const length = notShort(row, 'length', row.requiredLength('length'));
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
  if (kind === 'board' && row.isBlank('per') && price !== undefined && price > 0) {
    row.caution('per', fault('job.board-price', 'per', price));
  }
  const grade = row.text('grade');
  const have = row.whole('have', 0, 0, MOST_ON_RACK);
  const mayBuy = readBuy(row);
  const yieldPercent = readYield(row, { kind, have, buyMost: mayBuy });
  const rest = {
    kind,
    thicknessClass,
    per: readPer(row),
    have,
    buyMost:
      mayBuy === null
        ? null
        : countClear(yieldPercent === undefined ? {} : { yieldPercent }, mayBuy),
    ...(grade === '' ? {} : { grade }),
    ...(yieldPercent === undefined ? {} : { yieldPercent }),
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

function readStretches(
  row: RowReader,
  item: StockItem,
  shop: Shop,
  reading: CellReading,
): StockItem[] {
  if (row.isBlank('defects')) return [item];
  const text = row.text('defects');
  const refuse = (one: Fault): StockItem[] => {
    row.refuse('defects', one);
    return [item];
  };
  if (text === '') return [item];
  if (item.have !== 1) {
    const details = { have: item.have };
    return refuse(fault('job.defects-of-many', 'defects', text, { details }));
  }
  if (item.buyMost !== 0) return refuse(fault('job.defects-of-bought', 'defects', text));
  const read = readDefects(text, item.length, reading);
  if ('fault' in read) return refuse(read.fault);
  const stretches = listClearStretches(item.length, read.defects, shop);
  if (stretches.length > 0) {
    return stretches.map((stretch) => ({ ...item, length: stretch.to.sub(stretch.from), stretch }));
  }
  const trims = shop.endTrim.mul(2);
  const least = trims.gt(shop.keepOffcutsOver) ? trims : shop.keepOffcutsOver;
  const limit = { inches: Number(least) };
  return refuse(fault('job.defects-leave-none', 'defects', text, { limit }));
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
