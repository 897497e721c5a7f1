/** Where a learned rate is written by whoever takes it over: no program writes it there unasked. */
import type { Where } from '../../core/faults/fault.ts';
import type { Job } from '../job.ts';
import { inShopUnit } from '../shop.ts';
import { usualWorkOf, WORK_SETTINGS, type WorkSetting } from './usual-work.ts';
import type { WorkRow } from './work-row.ts';

/** As many digits as hours can tell. */
const DIGITS = 3;

export type HomeOfRate =
  /** The cell of Work that somebody typed. */
  | { readonly kind: 'cell'; readonly where: Where }
  /** A setting that Shop has a row for, and what it would be. */
  | {
      readonly kind: 'setting';
      readonly setting: WorkSetting;
      readonly where: Where;
      /** In the shop's own unit. */
      readonly value: number;
      readonly unit: string;
    }
  /** No row of Work says it yet. */
  | { readonly kind: 'row' };

/** @param minutes as learned, for one */
export function homeOfRate(
  { shop, shopCells, work }: Pick<Job, 'shop' | 'shopCells' | 'work'>,
  row: WorkRow,
  minutes: number,
): HomeOfRate {
  // A row of an earlier job stands on another sheet.
  if (row.typed !== undefined && work.includes(row))
    return { kind: 'cell', where: row.typed.cells.minutes };
  const setting = usualWorkOf(row)?.setting;
  const where = setting === undefined ? undefined : shopCells[setting];
  if (setting === undefined || where === undefined || minutes === 0) return { kind: 'row' };
  const { value, unit } = inShopUnit(setting, WORK_SETTINGS[setting](minutes), shop.unit);
  return { kind: 'setting', setting, where, value: roundRate(value), unit };
}

/** To three digits. */
export function roundRate(rate: number): number {
  return Number(rate.toPrecision(DIGITS));
}
