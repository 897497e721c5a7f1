/** Where a clear stretch, and the pieces that are cut from it, lie on their board. */
import type { LengthReading } from '../../core/units/length.ts';
import type { ClearStretch } from '../../planning/clear-stretches.ts';
import type { CutStick } from '../../planning/job-plan.ts';
import type { Shop } from '../../planning/shop.ts';
import { printExact, printStick } from '../words/print-length.ts';

/** What it is of, its defects, and where it is crosscut before anything else, from the board’s marked end. */
export function sayOnBoard(
  { from, to, boardLength, defects }: ClearStretch,
  reading: LengthReading,
): string {
  const say = (length: ClearStretch['from']): string => printExact(length, reading);
  const cuts = [...(from.gt(0) ? [from] : []), ...(to.lt(boardLength) ? [to] : [])];
  const bad = defects.map((one) => `${say(one.from)} to ${say(one.to)}`).join(', ');
  const first = cuts.length === 0 ? '' : ` Crosscut it at ${cuts.map(say).join(' and ')} first.`;
  return `From the marked end of its board of ${printStick(boardLength, reading)}: ${bad} can’t be used.${first}`;
}

/** `Pieces lie: 1 from 35" to 60", 2 from 60 1/8" to 90".`; of a stick that is cut nothing, for it was cut by other marks. */
export function sayPlaces(
  { pieces, isCut }: CutStick,
  { from }: ClearStretch,
  shop: Pick<Shop, 'endTrim' | 'crosscutKerf' | 'unit' | 'decimalSign'>,
): string {
  if (isCut === true) return '';
  let at = from.add(shop.endTrim);
  const places = pieces.map(({ length }, index) => {
    const [start, end] = [at, at.add(length)];
    at = end.add(shop.crosscutKerf);
    return `${index + 1} from ${printExact(start, shop)} to ${printExact(end, shop)}`;
  });
  return `Pieces lie: ${places.join(', ')}.`;
}
