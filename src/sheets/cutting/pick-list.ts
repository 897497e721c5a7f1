/** What is pulled from the rack, then what is bought: a row each with a box to tick. */
import type { LengthReading } from '../../core/units/length.ts';
import type { Shop } from '../../planning/shop.ts';
import { sayStock } from '../words/say-stock.ts';
import { onSheet, type PlanAnchors } from '../plan-anchors.ts';
import { cell, type LateFormula, type SheetRow } from '../grammar/sheet-draft.ts';
import { ALL, PICKS } from './cutting-columns.ts';
import { spreadRow, type PagedRows } from '../grammar/paged-rows.ts';
import { nameUnits, type StockLot } from './stock-lots.ts';

/** What each count is off from that on Production stands beside it. */
export function addPickList(
  pages: PagedRows,
  lots: readonly StockLot[],
  shop: Shop,
  acrossSheets: PlanAnchors,
): void {
  if (lots.length === 0) {
    acrossSheets.place('picksOnCutting', '0');
    acrossSheets.place('picksOffOnCutting', '0');
    return;
  }
  const heads = PICKS.headings(shop);
  pages.hold(spreadRow('Pull from the rack, and buy', 'section', ALL), heads);
  const pulled = lots.filter(({ fromRack }) => fromRack.length > 0);
  const bought = lots.filter((lot) => lot.bought.length > 0);
  const places: number[] = [];
  const add = (lot: StockLot, units: readonly number[], from: 'rack' | 'buy'): void => {
    const name = from === 'rack' ? 'fromRackOnProduction' : 'toBuyOnProduction';
    const off: LateFormula = {
      formula: () => {
        const count = PICKS.at('count', placeOf(places, rowOf));
        return `${count}-${acrossSheets.at(name, lot.item)}`;
      },
      value: 0,
      style: 'rowOff',
    };
    const rowOf = places.length;
    places.push(...pages.add([pickRow(lot, units, from, off, shop)], [heads]));
  };
  for (const lot of pulled) add(lot, lot.fromRack, 'rack');
  for (const lot of bought) add(lot, lot.bought, 'buy');
  const range = (column: 'count' | 'off'): string =>
    onSheet('cutting', PICKS.fixedRange(column, placeOf(places, 0), placeOf(places, -1)));
  acrossSheets.place('picksOnCutting', range('count'));
  acrossSheets.place('picksOffOnCutting', range('off'));
  pages.add([{ cells: [] }]);
}

function pickRow(
  { letter, item, profiles }: StockLot,
  units: readonly number[],
  from: string,
  off: LateFormula,
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
    off,
  });
}

/** The row at a place, counted from the end where it is less than 0. */
function placeOf(places: readonly number[], at: number): number {
  const row = places.at(at);
  if (row === undefined) throw new RangeError('The pick list has no such row.');
  return row;
}
