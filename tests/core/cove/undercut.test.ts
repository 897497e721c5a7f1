import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { Blade, Setting } from '../../../src/core/cove/cove.ts';
import { edgesAt, slopeHeight } from '../../../src/core/cove/cut.ts';
import { computeUndercut } from '../../../src/core/cove/undercut.ts';
import { radians } from '../../../src/core/units/angle.ts';

/** The furthest that the deep side reaches past the face, looked for at 1,000 even levels. */
function furthestBeyond(blade: Blade, setting: Setting): number {
  const face = edgesAt(blade, setting, 0).far;
  const levels = Array.from({ length: 1001 }, (_, at) => (setting.height * at) / 1000);
  return Math.max(...levels.map((level) => edgesAt(blade, setting, level).far)) - face;
}

test('an undercut is found wherever the deep side passes the face, and nowhere else', () => {
  let undercut = 0;
  let straight = 0;
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 0.8, noNaN: true }),
      fc.double({ min: 0.1, max: 1, noNaN: true }),
      fc.double({ min: 0.5, max: 3.5, noNaN: true }),
      fc.double({ min: 0, max: 0.5, noNaN: true }),
      (approach, tilt, height, kerf) => {
        const blade = { diameter: 10, kerf };
        const setting = { approach: radians(approach), tilt: radians(tilt), height };
        const slope = slopeHeight(blade, setting);
        fc.pre(slope > 0 && slope < 5);
        const reached = furthestBeyond(blade, setting);
        const found = computeUndercut(blade, setting);
        if (found === undefined) {
          straight += 1;
          expect(reached).toBeLessThan(1.02e-4);
        } else {
          undercut += 1;
          expect(Math.abs(found.beyondFace - reached)).toBeLessThan(1e-4);
        }
      },
    ),
    { numRuns: 300 },
  );
  expect(Math.min(undercut, straight)).toBeGreaterThan(50);
});
