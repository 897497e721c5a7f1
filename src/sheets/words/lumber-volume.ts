/** Volume of lumber as a shop counts it: board feet, or cubic metres in one of millimetres. */
import { BOARD_FEET_PER_CUBIC_METRE } from '../../core/lumber/board-feet.ts';
import { formatFixed } from '../../core/units/format-number.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import type { LengthReading } from '../../core/units/length.ts';
import type { StyleName } from '../grammar/styles.ts';

interface VolumeUnit {
  /** As a heading and a label begin. */
  readonly name: string;
  /** As it stands behind a number. */
  readonly mark: string;
  /** Board feet in one. */
  readonly holds: number;
  /** What thickness · width · length, in the shop's unit, is divided by, as formulas have it. */
  readonly cubic: string;
  readonly decimals: number;
  readonly styles: Readonly<Record<'plain' | 'row' | 'stick' | 'total', StyleName>>;
}

/** A thousandth of a cubic metre, a litre, is about four tenths of a board foot. */
export const VOLUME: Readonly<Record<LengthUnit, VolumeUnit>> = {
  in: {
    name: 'Board feet',
    mark: 'board feet',
    holds: 1,
    cubic: '144',
    decimals: 1,
    styles: { plain: 'decimal', row: 'rowDecimal', stick: 'stickDecimal', total: 'total' },
  },
  mm: {
    name: 'm³',
    mark: 'm³',
    holds: BOARD_FEET_PER_CUBIC_METRE,
    cubic: '1000000000',
    decimals: 3,
    styles: { plain: 'volume', row: 'rowVolume', stick: 'stickVolume', total: 'totalVolume' },
  },
};

/** Of board feet: the number in the shop's unit. */
export function volumeIn(boardFeet: number, unit: LengthUnit): number {
  return boardFeet / VOLUME[unit].holds;
}

/** Of board feet: `47.9` of a shop in inches, `0.113` of a metric one. */
export function sayVolume(boardFeet: number, { unit, decimalSign }: LengthReading): string {
  return formatFixed(volumeIn(boardFeet, unit), VOLUME[unit].decimals, decimalSign);
}
