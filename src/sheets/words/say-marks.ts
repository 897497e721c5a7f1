/** Where a rail crosses an edge of the table, in words: the marks for a tape. */
import type { RailMark } from '../../core/cove/rails.ts';
import { formatMark } from '../../core/units/format-mark.ts';
import type { LengthReading } from '../../core/units/length.ts';

export type RailName = 'near' | 'far';

export const RAIL_NAMES: Readonly<Record<RailName, string>> = {
  near: 'Near rail',
  far: 'Far rail',
};
export const RAIL_PLACES: Readonly<Record<RailName, string>> = {
  near: 'before the blade',
  far: 'behind the blade',
};

/** `Near rail, front edge`. */
export function markLabel(rail: RailName, edge: 'front' | 'back' | 'left' | 'right'): string {
  return `${RAIL_NAMES[rail]}, ${edge} edge`;
}

export const OFF_TABLE = 'off the table at this edge';

export function sayMark(
  { fromBlade, fromSlot, onTable }: RailMark,
  reading: LengthReading,
): string {
  if (!onTable) return OFF_TABLE;
  const blade = saySide(fromBlade, 'the blade line', reading);
  return fromSlot === undefined
    ? blade
    : `${blade}, ${saySide(fromSlot, 'the left miter slot', reading)}`;
}

/** `7 5/32" left of the blade line`; a mark that rounds to nothing is on it. */
export function saySide(toTheRight: number, of: string, reading: LengthReading): string {
  const way = sayWay(toTheRight, reading);
  return way === ON_IT ? `on ${of}` : `${way} of ${of}`;
}

const ON_IT = 'on it';

/** `7 5/32" left`, under a heading that says of what. */
export function sayWay(toTheRight: number, reading: LengthReading): string {
  const size = formatMark(Math.abs(toTheRight), reading.unit, reading.decimalSign);
  if (/^0\D*$/u.test(size)) return ON_IT;
  return `${size} ${toTheRight < 0 ? 'left' : 'right'}`;
}

/** `← 7 5/32" left`: an arrow before the words, for who looks before they read. */
export function pointAlong(toTheRight: number, said: string): string {
  return said === ON_IT ? said : `${toTheRight < 0 ? '←' : '→'} ${said}`;
}

export function sayAlong(towardTheBack: number, reading: LengthReading): string {
  const said = sayDepth(towardTheBack, reading);
  if (said === LEVEL) return `${LEVEL} with the middle of the blade`;
  return `${said}${said.endsWith('behind') ? '' : ' of'} the middle of the blade`;
}

const LEVEL = 'level';

/** `9 27/32" in front`, beside a label that says of what. */
export function sayDepth(towardTheBack: number, reading: LengthReading): string {
  const size = formatMark(Math.abs(towardTheBack), reading.unit, reading.decimalSign);
  if (/^0\D*$/u.test(size)) return LEVEL;
  return `${size} ${towardTheBack < 0 ? 'in front' : 'behind'}`;
}
