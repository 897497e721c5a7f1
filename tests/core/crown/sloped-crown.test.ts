/** Crown under a sloped ceiling, nested crown, and a raked profile: hand-worked values, and planes in space. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { computeCrownCut } from '../../../src/core/crown/crown-cut.ts';
import { computeNestedCut, computeNestedSlopedCut } from '../../../src/core/crown/nested-cut.ts';
import { computeRakedPoint, rakedWays } from '../../../src/core/crown/raked-profile.ts';
import { computeSlopedCut, type SlopeMeets } from '../../../src/core/crown/sloped-cut.ts';
import type { Outcome } from '../../../src/core/faults/fault.ts';
import { degrees, radians, toDegrees, toRadians } from '../../../src/core/units/angle.ts';
import { between, cutBetween, leaningBack, type Vector } from './backs-in-space.ts';

const inRadians = (angle: number) => toRadians(degrees(angle));

function valueOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.faults[0]!.message);
  return outcome.value;
}

function sloped(spring: number, pitch: number, meets: SlopeMeets): readonly [number, number] {
  const given = { spring: inRadians(spring), pitch: inRadians(pitch), meets };
  const { miter, bevel } = valueOf(computeSlopedCut(given));
  return [toDegrees(miter), toDegrees(bevel)];
}

const anySpring = fc.double({ min: 1, max: 89, noNaN: true });
const anyPitch = fc.double({ min: 0.5, max: 80, noNaN: true });

describe('crown that turns along its wall, under a ceiling that slopes', () => {
  test('spring 45°, pitch 7.2°: miter 2.547° from level, 5.105° where two slopes meet', () => {
    // A forum thread of 13 Feb 2017 prints 4.45 for the latter; recomputed [D]: cos 45° / tan 82.8°.
    expect(sloped(45, 7.2, 'level')[0]).toBeCloseTo(2.547, 3);
    expect(sloped(45, 7.2, 'slope')[0]).toBeCloseTo(5.105, 3);
  });

  test('the printed 4.45 comes of dividing 35.26°, the angle, by the tangent', () => {
    const angle = toDegrees(radians(Math.atan(Math.cos(inRadians(45)))));
    expect(angle / Math.tan(inRadians(82.8))).toBeCloseTo(4.45, 2);
    expect(sloped(45, 7.2, 'slope')[0]).not.toBeCloseTo(4.45, 0);
  });

  test('two crowns in space meet in the plane that the two angles cut', () => {
    fc.assert(
      fc.property(anySpring, anyPitch, fc.boolean(), (spring, pitch, isRidge) => {
        const intoRoom: Vector = [0, 1, 0];
        // Leaving the corner to either side, so many degrees above level.
        const leaving = (side: 1 | -1, slope: number) => {
          const [cosine, sine] = [Math.cos(inRadians(slope)), Math.sin(inRadians(slope))];
          return leaningBack([side * cosine, 0, sine], intoRoom, [-side * sine, 0, cosine], spring);
        };
        // From level into a slope; or down both sides of a ridge.
        const built = isRidge
          ? cutBetween(leaving(-1, -pitch), leaving(1, -pitch))
          : cutBetween(leaving(-1, 0), leaving(1, pitch));
        const computed = sloped(spring, pitch, isRidge ? 'slope' : 'level');
        expect(Math.abs(computed[0] - built[0])).toBeLessThan(1e-9);
        expect(Math.abs(computed[1] - built[1])).toBeLessThan(1e-9);
      }),
      { numRuns: 300 },
    );
  });

  test('two slopes meet as one of twice the pitch meets the level', () => {
    const [one, other] = [sloped(38, 14, 'slope'), sloped(38, 28, 'level')];
    expect(one[0]).toBeCloseTo(other[0], 12);
    expect(one[1]).toBeCloseTo(other[1], 12);
  });

  test('turns less and less the less the slope, down to none', () => {
    fc.assert(
      fc.property(anySpring, anyPitch, (spring, pitch) => {
        const [miter, bevel] = sloped(spring, pitch, 'level');
        const less = sloped(spring, pitch / 2, 'level');
        expect(less[0]).toBeLessThan(miter);
        expect(less[1]).toBeLessThan(bevel);
        const least = sloped(spring, 1e-6, 'level');
        expect(Math.max(...least)).toBeLessThan(1e-6);
      }),
    );
  });

  test.each([
    [45, 0, 'crown.pitch-out-of-range'],
    [45, -5, 'crown.pitch-out-of-range'],
    [45, 90, 'crown.pitch-out-of-range'],
    [45, NaN, 'crown.pitch-out-of-range'],
    [0, 10, 'crown.spring-out-of-range'],
    [90, 10, 'crown.spring-out-of-range'],
  ])('spring %d°, pitch %d° is refused', (spring, pitch, code) => {
    const outcome = computeSlopedCut({
      spring: inRadians(spring),
      pitch: inRadians(pitch),
      meets: 'level',
    });
    expect(!outcome.ok && outcome.faults.map((one) => one.code)).toEqual([code]);
  });

  test('a pitch out of range is said with what it is measured from', () => {
    const spring = inRadians(45);
    const outcome = computeSlopedCut({ spring, pitch: inRadians(95), meets: 'level' });
    expect(!outcome.ok && outcome.faults[0]!.message).toBe(
      'Pitch is 95°; the pitch of a ceiling lies between 0° and 90° from level.',
    );
  });
});

describe('nested crown', () => {
  test.each([
    [90, 45],
    [135, 22.5],
    [120, 30],
  ])('a corner of %d° takes a miter of %d° and an upright blade', (corner, miter) => {
    const cut = valueOf(computeNestedCut({ corner: inRadians(corner) }));
    expect(toDegrees(cut.miter)).toBeCloseTo(miter, 12);
    expect(cut.bevel).toBe(0);
  });

  test('is cut by the same plane as crown that lies flat, seen from fence and table', () => {
    fc.assert(
      fc.property(anySpring, fc.double({ min: 5, max: 175, noNaN: true }), (spring, corner) => {
        const { miter } = valueOf(computeNestedCut({ corner: inRadians(corner) }));
        // A plane turned so far about the vertical halves the corner: the run's mirror image in it.
        const along: Vector = [1, 0, 0];
        const c = inRadians(corner);
        const mirror: Vector = [1 - Math.cos(c), -Math.sin(c), 0];
        expect(between(mirror, along)).toBeCloseTo(toDegrees(miter), 9);
        // Flat, the same plane stands to the run at miter and bevel: cos of both gives the turn.
        const flat = valueOf(computeCrownCut({ spring: inRadians(spring), corner: c }));
        expect(Math.cos(flat.miter) * Math.cos(flat.bevel)).toBeCloseTo(Math.cos(miter), 9);
      }),
      { numRuns: 200 },
    );
  });

  test('turning with the ceiling takes a square miter and half of the turn as a bevel', () => {
    fc.assert(
      fc.property(anySpring, anyPitch, fc.boolean(), (spring, pitch, isRidge) => {
        const meets = isRidge ? 'slope' : 'level';
        const given = { pitch: inRadians(pitch), meets } as const;
        const { miter, bevel } = valueOf(computeNestedSlopedCut(given));
        expect(miter).toBe(0);
        // The fence is the wall: the run's mirror image in the blade's plane is the other run.
        const turn = isRidge ? 2 * pitch : pitch;
        const t = inRadians(turn);
        const mirror: Vector = [1 + Math.cos(t), 0, Math.sin(t)];
        expect(between(mirror, [1, 0, 0])).toBeCloseTo(toDegrees(bevel), 9);
        // Flat, the same plane stands to the run at miter and bevel: cos of both gives the turn.
        const flat = valueOf(computeSlopedCut({ ...given, spring: inRadians(spring) }));
        expect(Math.cos(flat.miter) * Math.cos(flat.bevel)).toBeCloseTo(Math.cos(bevel), 9);
      }),
      { numRuns: 200 },
    );
    const wrong = computeNestedSlopedCut({ pitch: inRadians(90), meets: 'level' });
    expect(!wrong.ok && wrong.faults.map((one) => one.code)).toEqual(['crown.pitch-out-of-range']);
  });

  test.each([0, 180, -10, NaN])('a corner of %d° is refused', (corner) => {
    const outcome = computeNestedCut({ corner: inRadians(corner) });
    expect(!outcome.ok && outcome.faults.map((one) => one.code)).toEqual([
      'crown.corner-out-of-range',
    ]);
  });
});

describe('a raked profile', () => {
  const raked = (out: number, up: number, slope: number, corner = 90) =>
    valueOf(
      computeRakedPoint({
        point: { out, up },
        slope: inRadians(slope),
        corner: inRadians(corner),
      }),
    );

  test('2 out and 1 up, at 30° round a square corner, stands 1.866 up', () => {
    // cos 30° + 2 sin 30°, worked by hand [D]
    expect(raked(2, 1, 30).up).toBeCloseTo(1.866, 3);
    expect(raked(2, 1, 30).out).toBe(2);
  });

  test('falling away it stands lower, and level it is the level one', () => {
    expect(raked(2, 1, -30).up).toBeCloseTo(Math.sqrt(3) / 2 - 1, 9);
    expect(raked(2, 1, 0)).toEqual({ out: 2, up: 1 });
  });

  test('meets the level molding in space, point by point, whatever the corner', () => {
    const size = fc.double({ min: 0, max: 6, noNaN: true });
    const slope = fc.double({ min: -60, max: 60, noNaN: true });
    const corner = fc.double({ min: 30, max: 170, noNaN: true });
    fc.assert(
      fc.property(size, size, slope, corner, (out, up, slopeDeg, cornerDeg) => {
        // The raked wall runs along x, its room on the side of y; the level one leaves the corner at C.
        const c = inRadians(cornerDeg);
        const [leaving, awayFromWall] = [
          [Math.cos(c), -Math.sin(c)],
          [-Math.sin(c), -Math.cos(c)],
        ] as const;
        // The level molding's line is followed to where it stands out from the raked wall as far.
        const along = (out - out * awayFromWall[1]) / leaving[1];
        const x = out * awayFromWall[0] + along * leaving[0];
        const t = inRadians(slopeDeg);
        expect(raked(out, up, slopeDeg, cornerDeg).up).toBeCloseTo(
          up * Math.cos(t) - x * Math.sin(t),
          9,
        );
      }),
      { numRuns: 300 },
    );
  });

  // F cos(s + θ): a face of spring 45° that falls by 45° lies on its back.
  test.each([
    [45, 44.9, ['rising', 'falling']],
    [45, 45, ['rising']],
    [38, 55, ['rising']],
    [undefined, 59, ['rising', 'falling']],
  ])('of spring %s° and slope %d° comes %s', (spring, slope, ways) => {
    const found = rakedWays(inRadians(slope), spring === undefined ? spring : inRadians(spring));
    expect(found.map(({ way }) => way)).toEqual(ways);
    expect(found.map((one) => Math.sign(one.slope))).toEqual([1, -1].slice(0, ways.length));
  });

  test.each([
    [90, 90, 'crown.slope-out-of-range'],
    [-90, 90, 'crown.slope-out-of-range'],
    [NaN, 90, 'crown.slope-out-of-range'],
    [30, 0, 'crown.corner-out-of-range'],
    [30, 180, 'crown.corner-out-of-range'],
  ])('a slope of %d° at a corner of %d° is refused', (slope, corner, code) => {
    const outcome = computeRakedPoint({
      point: { out: 2, up: 1 },
      slope: inRadians(slope),
      corner: inRadians(corner),
    });
    expect(!outcome.ok && outcome.faults.map((one) => one.code)).toEqual([code]);
  });
});
