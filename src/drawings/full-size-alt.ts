/** Title and text alternative of a board's end at full size. */
import type { LengthReading } from '../core/units/length.ts';
import type { BoardEnd } from './board-end.ts';
import type { FullSizePart } from './full-size-parts.ts';
import { sayLength } from './say.ts';

export function titleFullSize(
  { cut }: BoardEnd,
  part: FullSizePart,
  reading: LengthReading,
): string {
  const which = part.count === 1 ? '' : `, part ${part.number} of ${part.count}`;
  const size = `${sayLength(cut.width, reading)} by ${sayLength(cut.depth, reading)}`;
  return `Cove ${size} at full size, in the board's end${which}`;
}

export function sayFullSize(end: BoardEnd, part: FullSizePart, reading: LengthReading): string {
  const { cut, flats, width, thickness, farSide } = end;
  const say = (inches: number): string => sayLength(inches, reading);
  const center =
    farSide === 'left'
      ? `${say(end.deepest[0])} from the left side`
      : `${say(width - end.deepest[0])} from the right side`;
  const joins = part.joins.map(({ name }) => name).join(' and ');
  return [
    `The board's end at full size, face down, seen from the front of the saw along the feed; the far rail is at the ${farSide}.`,
    `The board is ${say(width)} wide and ${say(thickness)} thick, the cove ${say(cut.width)} wide and ${say(cut.depth)} deep, deepest ${center}; flats are ${say(flats.near)} by the near rail and ${say(flats.far)} by the far rail.`,
    ...(part.count === 1
      ? []
      : [
          `This is part ${part.number} of ${part.count}, from left to right; lay ${joins} on the same line of the part beside it.`,
        ]),
    'Bars of 100 mm and of 4 in stand under it, to check the print by.',
  ].join(' ');
}
