/** What is pulled from the rack, then what is bought: a row each with a box to tick. */
import type { LengthReading } from '../../core/units/length.ts';
import type { Shop } from '../../planning/shop.ts';
import { sayStock } from '../words/say-stock.ts';
import { cell, type SheetRow } from '../grammar/sheet-draft.ts';
import { ALL, PICKS } from './cutting-columns.ts';
import { spreadRow, type PagedRows } from '../grammar/paged-rows.ts';
import { nameUnits, type StockLot } from './stock-lots.ts';

export function addPickList(pages: PagedRows, lots: readonly StockLot[], shop: Shop): void {
  if (lots.length === 0) return;
  const heads = PICKS.headings(shop);
  pages.hold(spreadRow('Pull from the rack, and buy', 'section', ALL), heads);
  const pulled = lots.filter(({ fromRack }) => fromRack.length > 0);
  const bought = lots.filter((lot) => lot.bought.length > 0);
  for (const lot of pulled) pages.add([pickRow(lot, lot.fromRack, 'rack', shop)], [heads]);
  for (const lot of bought) pages.add([pickRow(lot, lot.bought, 'buy', shop)], [heads]);
  pages.add([{ cells: [] }]);
}

function pickRow(
  { letter, item, profiles }: StockLot,
  units: readonly number[],
  from: string,
  reading: LengthReading,
): SheetRow {
  return PICKS.row({
    tick: cell(null, 'tick'),
    lot: cell(letter, 'rowStrong'),
    what: cell(`${sayStock(item, reading)}: ${item.for}`, 'row'),
    count: cell(units.length, 'rowWhole'),
    from: cell(from, 'rowStrong'),
    numbers: cell(nameUnits(letter, units), 'row'),
    profiles: cell(profiles.join(', '), 'row'),
  });
}
