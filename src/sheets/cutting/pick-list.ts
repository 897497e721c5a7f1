/** What is pulled from the rack, then what is bought: a row each with a box to tick, and rows of what is cut already. */
import type { LengthReading } from '../../core/units/length.ts';
import type { Shop } from '../../planning/shop.ts';
import { sayStock, sayToOrder } from '../words/say-stock.ts';
import { onSheet, type PlanAnchors } from '../plan-anchors.ts';
import { TICK } from '../words/tick-marks.ts';
import { cell, type DraftCell, type LateFormula, type SheetRow } from '../grammar/sheet-draft.ts';
import { ALL, PICKS } from './cutting-columns.ts';
import { spreadRow, type PagedRows } from '../grammar/paged-rows.ts';
import { nameUnits, type StockLot } from '../stock-lots.ts';

/**
 * What the counts of a lot are off from that on Production stands beside its last row. What is cut already
 * has a row of its own, so that nobody pulls or buys it again.
 */
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
    const left = units.filter((unit) => !lot.cut.has(unit));
    const cut = units.filter((unit) => lot.cut.has(unit));
    const kinds = [
      ...(left.length === 0 ? [] : [[left, from] as const]),
      ...(cut.length === 0 ? [] : [[cut, 'cut'] as const]),
    ];
    const own = [places.length, places.length + kinds.length - 1] as const;
    const off: LateFormula = {
      formula: () => {
        const counts = own.map((at) => PICKS.at('count', placeOf(places, at)));
        return `${[...new Set(counts)].join('+')}-${acrossSheets.at(name, lot.item)}`;
      },
      value: 0,
      style: 'rowOff',
    };
    kinds.forEach(([numbers, where], at) => {
      const beside = at === kinds.length - 1 ? off : cell(null, 'rowOff');
      places.push(...pages.add([pickRow(lot, numbers, where, beside, shop)], [heads]));
    });
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
  from: 'rack' | 'buy' | 'cut',
  off: DraftCell,
  reading: LengthReading,
): SheetRow {
  const order = from === 'buy' ? sayToOrder(item, units.length, reading) : '';
  return PICKS.row({
    tick: cell(from === 'cut' ? TICK : null, 'tick'),
    lot: cell(letter, 'rowStrong'),
    what: cell(`${sayStock(item, reading)}: ${item.for}${order}`, 'row'),
    count: cell(units.length, 'rowWhole'),
    from: cell(from === 'cut' ? 'cut already' : from, 'rowStrong'),
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
