/** How much a board's width changes with the moisture in it. */
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';
import { faultsOf, readSize } from './size.ts';
import type { Species } from './species.ts';

/** The coefficients hold from 6 % to 14 % of moisture, so no change can be more than 8 %. */
const MOST_CHANGE_PERCENT = 8;

/** Flatsawn faces move along the growth rings, quartersawn ones across them. */
export type Sawn = 'flatsawn' | 'quartersawn';

/** A species' change of width per 1 % of moisture, as a share of the width. */
export function movementPerPercent(species: Species, sawn: Sawn): number {
  return sawn === 'flatsawn' ? species.movement.tangential : species.movement.radial;
}

/**
 * Change of a board's width with its moisture: ΔD = D · C · ΔMC.
 * Source: Wood Handbook (FPL-GTR-190, 2010), chapter 13, table 13-5.
 * @param width in inches above 0, at the moisture that the change begins from.
 * @param perPercent coefficient C, above 0 and below 0.01; see `movementPerPercent`.
 * @param changePercent moisture gained (swells) or, below 0, lost (shrinks), from -8 to 8 %.
 * @returns inches, below 0 for shrinking; faults `length.not-positive`, `length.unreadable`,
 * `number.too-large`, `number.too-small`, `number.unreadable`.
 */
export function computeMovement(given: {
  readonly width: number;
  readonly perPercent: number;
  readonly changePercent: number;
}): Outcome<number> {
  const { perPercent, changePercent } = given;
  if (!(perPercent > 0 && perPercent < 0.01)) {
    throw new RangeError('computeMovement needs a coefficient above 0 and below 0.01.');
  }
  const faults = [...faultsOf(readSize(given.width, 'width'))];
  if (!Number.isFinite(changePercent)) {
    faults.push(fault('number.unreadable', 'moistureChange', String(changePercent)));
  } else if (Math.abs(changePercent) > MOST_CHANGE_PERCENT) {
    const limit = Math.sign(changePercent) * MOST_CHANGE_PERCENT;
    const code = changePercent > 0 ? 'number.too-large' : 'number.too-small';
    faults.push(fault(code, 'moistureChange', changePercent, { limit }));
  }
  if (faults.length > 0) return failed(...faults);
  return ok(given.width * perPercent * changePercent);
}
