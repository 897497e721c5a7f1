/** What is left of the blank around a cove: the web over it and the flats that ride on the table. */
import { fault, type Fault } from '../faults/fault.ts';
import { LIMIT_SLACK_INCHES } from '../units/tolerance.ts';
import type { Cove } from './cove.ts';
import { COVE_SIZES } from './cove-sizes.ts';

export interface CoveStock {
  readonly blankWidth: number;
  readonly blankThickness: number;
  /** Flat beside the near edge; the cove sits midway in the blank where absent. */
  readonly nearFlat?: number;
  /** 1/4 where absent: stock at least 1/4 in thicker than the cove is deep (woodcentral.com archive). */
  readonly leastWeb?: number;
  /** 1/8 where absent: flats of at least 1/8 in each side as bearing (woodcraft.com cove article). */
  readonly leastFlat?: number;
}

export const LEAST_WEB_INCHES = 1 / 4;
export const LEAST_FLAT_INCHES = 1 / 8;

/** The two flats beside the cove at its face; negative where the blank is too narrow. */
export function computeFlats(
  coveWidth: number,
  stock: Pick<CoveStock, 'blankWidth' | 'nearFlat'>,
): { near: number; far: number } {
  const near = stock.nearFlat ?? (stock.blankWidth - coveWidth) / 2;
  return { near, far: stock.blankWidth - coveWidth - near };
}

/** Every fault of the blank for this cove: web and flats below their least. */
export function checkStock(cove: Cove, stock: CoveStock): Fault[] {
  const faults: Fault[] = [];
  const { leastWeb = LEAST_WEB_INCHES, leastFlat = LEAST_FLAT_INCHES } = stock;
  const web = stock.blankThickness - cove.depth;
  if (!(web >= leastWeb - LIMIT_SLACK_INCHES)) {
    faults.push(
      fault(
        'cove.web-too-thin',
        COVE_SIZES.blankThickness.label,
        { inches: web },
        {
          limit: { inches: leastWeb },
          details: { thicknessThatWould: { inches: cove.depth + leastWeb } },
        },
      ),
    );
  }
  const flats = computeFlats(cove.width, stock);
  // Either way out is named: a blank that leaves the other flat as wide as it is now.
  const widthThatWould =
    cove.width + Math.max(leastFlat, flats.near) + Math.max(leastFlat, flats.far);
  for (const [argument, flat] of [
    [COVE_SIZES.nearFlat.label, flats.near],
    ['Far flat', flats.far],
  ] as const) {
    if (flat >= leastFlat - LIMIT_SLACK_INCHES) continue;
    faults.push(
      fault(
        'cove.flat-too-narrow',
        argument,
        { inches: flat },
        {
          limit: { inches: leastFlat },
          details: { widthThatWould: { inches: widthThatWould } },
        },
      ),
    );
  }
  return faults;
}
