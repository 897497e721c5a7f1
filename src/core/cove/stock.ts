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

/** The least flat that a stock asks for; the usual one where it says nothing, or asks for none. */
export function leastFlatOf(stock: CoveStock | undefined): number {
  const { leastFlat = LEAST_FLAT_INCHES } = stock ?? {};
  return Number.isFinite(leastFlat) ? leastFlat : LEAST_FLAT_INCHES;
}

/** Rounded up to what a rule shows. */
export function upTo64th(inches: number): number {
  return Math.ceil(inches * 64 - LIMIT_SLACK_INCHES) / 64;
}

/**
 * Every fault of the blank for this cove: web and flats below their least.
 *
 * The far flat is what rides and what holds: above the face an undercut takes its share of it, so the
 * flat less the undercut is at least the least flat. The near side is never undercut. Derived: at an
 * offset n of the blade's thickness the near edge lies at (z tan b + n / cos b) cos a - sqrt(R² - p²) sin a
 * with p = R - s + (z + n sin b) / cos b (cut.ts), which grows with the level z wherever p is 0 or more,
 * so wherever the blade's middle stays below the table; and the least of functions that grow grows too.
 * A board fed against the rule (see rails.ts) has the deep side near; this program plans none so.
 *
 * @param beyondFace how far the far wall reaches past its edge at the face; 0 where it is not undercut
 */
export function checkStock(cove: Cove, stock: CoveStock, beyondFace: number): Fault[] {
  const faults: Fault[] = [];
  const { leastWeb = LEAST_WEB_INCHES, leastFlat = LEAST_FLAT_INCHES } = stock;
  const web = stock.blankThickness - cove.depth;
  if (!(web >= leastWeb - LIMIT_SLACK_INCHES)) {
    const limit = { inches: leastWeb };
    const details = { thicknessThatWould: { inches: cove.depth + leastWeb } };
    const argument = COVE_SIZES.blankThickness.key;
    faults.push(fault('cove.web-too-thin', argument, { inches: web }, { limit, details }));
  }
  const flats = computeFlats(cove.width, stock);
  const leastFar = leastFlat + beyondFace;
  // Each way out leaves the other flat as wide as it is now; a cove midway keeps both flats alike.
  const widthThatWould =
    stock.nearFlat === undefined
      ? cove.width + 2 * Math.max(leastFar, flats.far)
      : cove.width + Math.max(leastFlat, flats.near) + Math.max(leastFar, flats.far);
  const details = {
    widthThatWould: { inches: beyondFace > 0 ? upTo64th(widthThatWould) : widthThatWould },
  };
  const limit = { inches: leastFlat };
  if (flats.near < leastFlat - LIMIT_SLACK_INCHES) {
    const given = { inches: flats.near };
    faults.push(fault('cove.flat-too-narrow', COVE_SIZES.nearFlat.key, given, { limit, details }));
  }
  if (flats.far < leastFar - LIMIT_SLACK_INCHES) {
    const given = { inches: flats.far };
    if (beyondFace === 0) {
      faults.push(fault('cove.flat-too-narrow', 'farFlat', given, { limit, details }));
    } else {
      const code =
        flats.far - beyondFace > LIMIT_SLACK_INCHES
          ? 'cove.undercut-eats-flat'
          : 'cove.undercut-meets-rail';
      const more = {
        ...details,
        beyondFace: { inches: beyondFace },
        left: { inches: flats.far - beyondFace },
      };
      faults.push(fault(code, 'farFlat', given, { limit, details: more }));
    }
  }
  return faults;
}
