/** What is pulled from the rack, then what is bought: a row each with a box to tick. */
import type { LengthReading } from '../../core/units/length.ts';
import { sayStock } from '../words/say-stock.ts';
import { cell } from '../grammar/sheet-draft.ts';
import { COLUMN } from './cutting-columns.ts';
import { spreadRow, type PagedRows, type SheetRow } from '../grammar/paged-rows.ts';
import { nameUnits, type StockLot } from './stock-lots.ts';

const JOINS: NonNullable<SheetRow['joins']> = [
  [COLUMN.what, COLUMN.length],
  [COLUMN.leftEnd, COLUMN.leftEnd + 1],
  [COLUMN.rightEnd, COLUMN.last],
];

export function addPickList(
  pages: PagedRows,
  lots: readonly StockLot[],
  reading: LengthReading,
): void {
  if (lots.length === 0) return;
  const heads: SheetRow = {
    cells: [
      cell(null, 'stick'),
      cell('Lot', 'stick'),
      cell('What', 'stick'),
      null,
      cell('How many', 'stick'),
      cell('From', 'stick'),
      cell('Chalk these numbers on them', 'stick'),
      null,
      cell('To cut', 'stick'),
    ],
    joins: JOINS,
  };
  pages.hold(spreadRow('Pull from the rack, and buy', 'section', [0, COLUMN.last]), heads);
  const pulled = lots.filter(({ fromRack }) => fromRack.length > 0);
  const bought = lots.filter((lot) => lot.bought.length > 0);
  for (const lot of pulled) pages.add([pickRow(lot, lot.fromRack, 'rack', reading)], [heads]);
  for (const lot of bought) pages.add([pickRow(lot, lot.bought, 'buy', reading)], [heads]);
  pages.add([{ cells: [] }]);
}

function pickRow(
  { letter, item, profiles }: StockLot,
  units: readonly number[],
  from: string,
  reading: LengthReading,
): SheetRow {
  return {
    cells: [
      cell(null, 'tick'),
      cell(letter, 'rowStrong'),
      cell(`${sayStock(item, reading)}: ${item.for}`, 'row'),
      null,
      cell(units.length, 'rowWhole'),
      cell(from, 'rowStrong'),
      cell(nameUnits(letter, units), 'row'),
      null,
      cell(profiles.join(', '), 'row'),
    ],
    joins: JOINS,
  };
}
