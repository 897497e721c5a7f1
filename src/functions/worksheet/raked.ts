import { computeRakedPoint } from '../../core/crown/raked-profile.ts';
import { failed, ok } from '../../core/faults/fault.ts';
import { degrees, toRadians } from '../../core/units/angle.ts';
import { WIDEST_INCHES } from '../../core/units/plausible-length.ts';
import type { ArgumentTable } from '../argument.ts';
import { answerEach } from '../answer.ts';
import { CROWN } from '../crown-arguments.ts';

const SIZE = { kind: 'length', most: WIDEST_INCHES, blank: 'refused' } as const;

export const ARGUMENTS = {
  out: { name: 'out', least: 'from 0', ...SIZE },
  up: { name: 'up', least: 'any', ...SIZE },
  slope: { name: 'slope', kind: 'angle', from: 'level', blank: 'refused' },
  corner: CROWN.corner,
} as const satisfies ArgumentTable;

/**
 * How high a point of a raked molding's profile stands, in inches square to the slope, so that it meets a
 * level molding's profile in the miter of an outside corner; it stands out from the wall as far as the level
 * one's. Not rounded. Draw the points full size and try the profile in scrap first.
 * @customfunction RAKED
 * @helpurl functions.html#raked
 * @param out How far the level molding's point stands out from the wall: inches, or a text such as 2 5/8 or
 * 67 mm.
 * @param up How far it stands up from the corner's height, below it less than 0: inches, or a text such as 3 1/2 or
 * 90 mm.
 * @param slope Slope of the raked molding: degrees from level, more than 0 where it rises away from the
 * corner and less than 0 where it falls; the other way round at an inside corner.
 * @param [corner] Corner of the two walls: degrees between them, above 0 and below 180; 90 when left out
 * or 0.
 * @example =COVE.RAKED("2 5/8", "3 1/2", 20)
 */
export function raked(out: any[][], up: any[][], slope: any[][], corner?: any[][]): any[][] {
  return answerEach(ARGUMENTS, { out, up, slope, corner }, (given) => {
    const point = computeRakedPoint({
      point: { out: given.out, up: given.up },
      slope: toRadians(degrees(given.slope)),
      corner: toRadians(degrees(given.corner)),
    });
    return point.ok ? ok(point.value.up) : failed(...point.faults);
  });
}
