import { describe, expect, test } from '@jest/globals';
import type { Blade, Cove } from '../../../src/core/cove/cove.ts';
import { computeOutline, type OutlinePoint } from '../../../src/core/cove/outline.ts';
import { solveSetting } from '../../../src/core/cove/set-up.ts';
import { fitOutline } from '../../../src/core/match/fit-outline.ts';
import { matchCove, type MatchAnswer, type MatchAsk } from '../../../src/core/match/match-cove.ts';
import { outlineOf, placeBlade } from '../../../src/core/match/outline-of.ts';
import type { TracePoint } from '../../../src/core/match/trace.ts';
import { toDegrees } from '../../../src/core/units/angle.ts';
import { count } from '../../deep.ts';
import { seededNumbers } from '../../seeded-numbers.ts';

const BLADE: Blade = { diameter: 10, kerf: 1 / 8 };
const NOISE_IN = 1 / 64;

/** So many points at even steps along a cove's outline, in its own u. */
function traceOf(cove: Cove, points: number, blade = BLADE): OutlinePoint[] {
  const setting = solveSetting(cove, blade);
  if (setting === undefined) throw new RangeError('no such cove');
  const fine = computeOutline(blade, setting, 600);
  let along = 0;
  const walked = fine.map((point, at) => {
    const before = fine[at - 1] ?? point;
    along += Math.hypot(point.u - before.u, point.depth - before.depth);
    return { point, along };
  });
  return Array.from({ length: points }, (_, which) => {
    const wanted = (along * (which + 0.5)) / points;
    const found = walked.find((each) => each.along >= wanted);
    if (found === undefined) throw new RangeError('past the end');
    return found.point;
  });
}

/** As measured, with a point of the flat beyond each edge. */
const withFlats = (points: readonly OutlinePoint[], flat = 3): TracePoint[] => [
  { across: -flat, out: 0 },
  ...points.map(({ u, depth }) => ({ across: u, out: depth })),
  { across: flat, out: 0 },
];

function answer(ask: Partial<MatchAsk> & Pick<MatchAsk, 'points'>): MatchAnswer {
  const matched = matchCove({ blades: [BLADE], ...ask });
  if (!matched.ok) throw new Error(matched.faults.map(({ message }) => message).join(' '));
  return matched.value;
}

function refusal(points: readonly TracePoint[], more: Partial<MatchAsk> = {}): string {
  const matched = matchCove({ points, blades: [BLADE], ...more });
  expect(matched.ok).toBe(false);
  return matched.ok ? '' : matched.faults.map(({ code }) => code).join(' ');
}

/** A true arc of that width and depth, from edge to edge. */
function arcOf(width: number, depth: number, points = 200): OutlinePoint[] {
  const radius = (width ** 2 / 4 + depth ** 2) / (2 * depth);
  const half = Math.asin(width / 2 / radius);
  return Array.from({ length: points + 1 }, (_, at) => {
    const turn = half * ((2 * at) / points - 1);
    return { u: radius * Math.sin(turn), depth: depth - radius + radius * Math.cos(turn) };
  });
}

describe('A trace without noise', () => {
  // Invented sizes.
  const COVES: Cove[] = [
    { width: 2.75, depth: 0.625, offCenter: 0.375 },
    { width: 3.5, depth: 0.875, offCenter: 0.25 },
    { width: 4.25, depth: 0.75, offCenter: 0 },
    { width: 1.875, depth: 0.5, offCenter: 0.1875 },
  ];

  test('gives back the setting that it was cut with, its sizes and its hand', () => {
    for (const cove of COVES) {
      for (const mirror of [1, -1]) {
        const drawn = traceOf(cove, 60).map(({ u, depth }) => ({ u: mirror * u, depth }));
        const { best, intervals } = answer({ points: withFlats(drawn) });
        const [only] = best.settings;
        const wanted = solveSetting(cove, BLADE);
        expect(only?.width).toBeCloseTo(cove.width, 5);
        expect(only?.depth).toBeCloseTo(cove.depth, 5);
        expect(only?.offCenter).toBeCloseTo(cove.offCenter, 4);
        expect(only?.setting.approach).toBeCloseTo(wanted?.approach ?? 0, 4);
        expect(only?.setting.tilt).toBeCloseTo(wanted?.tilt ?? 0, 3);
        if (cove.offCenter > 0) expect(only?.deepSide).toBe(mirror === 1 ? 'right' : 'left');
        expect(Math.abs(best.worst.inches)).toBeLessThan(1e-5);
        expect(typeof intervals).toBe('object');
      }
    }
  });

  test('may lie turned and away from 0, run backward, and repeat points', () => {
    const cove = { width: 2.75, depth: 0.625, offCenter: 0.375 };
    const [turn, right, up] = [0.3, 5, -2];
    const laid = withFlats(traceOf(cove, 40)).map(({ across, out }) => ({
      across: right + across * Math.cos(turn) - out * Math.sin(turn),
      out: up + across * Math.sin(turn) + out * Math.cos(turn),
    }));
    const backward = [...laid].reverse();
    const twice = laid.flatMap((point) => [point, point]);
    for (const points of [laid, backward, twice]) {
      const { best } = answer({ points });
      expect(best.settings[0]?.width).toBeCloseTo(cove.width, 5);
      expect(best.settings[0]?.offCenter).toBeCloseTo(cove.offCenter, 4);
      expect(best.settings[0]?.deepSide).toBe('right');
    }
    expect(answer({ points: twice }).trace.doubles).toBe(laid.length);
    const shuffled = [
      ...laid.slice(0, 10),
      ...laid.slice(20, 30),
      ...laid.slice(10, 20),
      ...laid.slice(30),
    ];
    expect(answer({ points: shuffled }).best.settings[0]?.width).toBeCloseTo(cove.width, 5);
    expect(answer({ points: backward }).trace.isReordered).toBe(false);
  });

  test('the face line may be given by two points of its own', () => {
    const cove = { width: 2.75, depth: 0.625, offCenter: 0.375 };
    const points = traceOf(cove, 40).map(({ u, depth }) => ({ across: u, out: depth - 0.5 }));
    const face = [
      { across: -2, out: -0.5 },
      { across: 2.2, out: -0.5 },
    ] as const;
    expect(answer({ points, face }).best.settings[0]?.depth).toBeCloseTo(cove.depth, 5);
  });

  test('ordinates of a contour gauge every 1/8 in are enough', () => {
    const cove = { width: 3.5, depth: 0.875, offCenter: 0.25 };
    const fine = traceOf(cove, 4000);
    const ordinates = Array.from({ length: 29 }, (_, at) => at / 8 - 1.75).map((across) => {
      const near = fine.reduce((a, b) => (Math.abs(b.u - across) < Math.abs(a.u - across) ? b : a));
      const isOff = Math.abs(near.u - across) > 0.01;
      return { across, out: isOff ? 0 : Math.round(near.depth * 64) / 64 };
    });
    const { best } = answer({
      points: withFlats([]).slice(0, 1).concat(ordinates, withFlats([]).slice(1)),
    });
    expect(Math.abs((best.settings[0]?.width ?? 0) - cove.width)).toBeLessThan(1 / 32);
    expect(best.rms).toBeLessThan(1 / 64);
  });
});

describe('Forms that no setting cuts exactly', () => {
  // [D] orthogonal misses of the arc's points, edges included; two independent searches agree.
  test('a true arc of 2 1/2 by 7/8 is missed by no more than the derived values', () => {
    const points = arcOf(2.5, 0.875);
    const worst = (passes: 'one' | 'two mirrored' | 'two apart'): number =>
      Math.max(
        ...fitOutline({ points, blade: BLADE, saw: {}, passes, loss: 'least worst' }).misses.map(
          Math.abs,
        ),
      );
    expect(worst('one')).toBeLessThanOrEqual(0.0263);
    expect(worst('two mirrored')).toBeLessThanOrEqual(0.0108 + 5e-5);
    expect(worst('two apart')).toBeLessThanOrEqual(0.0112);
  });

  test.each([
    [2.5, 0.875, 0.0483],
    [3, 0.75, 0.0174],
    [4, 0.5, 0.0024],
  ])(
    'a cove of equal width and depth, %d by %d, misses its true arc by %d',
    (width, depth, miss) => {
      const setting = solveSetting({ width, depth, offCenter: 0 }, BLADE);
      if (setting === undefined) throw new RangeError('no such cove');
      const off = outlineOf(BLADE, placeBlade(setting, BLADE));
      const worst = Math.max(...arcOf(width, depth).map((point) => Math.abs(off(point).distance)));
      expect(worst).toBeCloseTo(miss, 4);
    },
  );

  test('two settings are offered where one misses by more than the tolerance', () => {
    const { best, two, arc } = answer({ points: withFlats(arcOf(2.5, 0.875, 80)) });
    expect(Math.abs(best.worst.inches)).toBeGreaterThan(1 / 32);
    expect(two?.settings).toHaveLength(2);
    expect(Math.abs(two?.worst.inches ?? 1)).toBeLessThan(0.02);
    expect(arc.radius).toBeCloseTo(1.3304, 3);
    expect(arc.worst).toBeLessThan(1e-6);
    const { two: none } = answer({ points: withFlats(arcOf(2.5, 0.875, 80)), tolerance: 1 / 8 });
    expect(none).toBeUndefined();
  });

  test('misses that lie in waves tell no interval', () => {
    expect(answer({ points: withFlats(arcOf(2.5, 0.875, 80)) }).intervals).toBe('waves');
  });
});

describe('A noisy trace of 100 points', () => {
  const next = seededNumbers(77_021);
  const gauss = (): number =>
    Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()) * NOISE_IN;
  const noisy = (points: readonly OutlinePoint[]): OutlinePoint[] =>
    points.map(({ u, depth }) => ({ u: u + gauss(), depth: depth + gauss() }));
  const TRIALS = count(1000, 60);

  test.each([
    ['3 by 5/8, 3/8 off', { width: 3, depth: 0.625, offCenter: 0.375 }],
    ['2 1/4 by 1/2, 1/4 off', { width: 2.25, depth: 0.5, offCenter: 0.25 }],
  ])('is met in outline, and its intervals hold as often as they say: %s', (_, cove) => {
    const even = traceOf(cove, 100);
    const setting = solveSetting(cove, BLADE);
    if (setting === undefined) throw new RangeError('no such cove');
    // u is counted from the first point of the flats.
    const outline = computeOutline(BLADE, setting, 100).map(({ u, depth }) => ({
      u: u + 3,
      depth,
    }));
    let [met, within, approach, tilt] = [0, 0, 0, 0];
    for (let trial = 0; trial < TRIALS; trial++) {
      const { best, intervals } = answer({ points: withFlats(noisy(even)), tolerance: 1 });
      const [placed] = best.placed;
      if (placed === undefined || typeof intervals === 'string') continue;
      const off = outlineOf(BLADE, placed);
      const misses = outline.map((point) => off(point).distance);
      const rms = Math.sqrt(misses.reduce((sum, miss) => sum + miss ** 2, 0) / misses.length);
      if (rms <= 0.01) met++;
      if (Math.max(...misses.map(Math.abs)) <= 0.015) within++;
      const holds = ([least, most]: readonly [number, number], truth: number): boolean =>
        truth >= least && truth <= most;
      if (holds(intervals.approach, toDegrees(setting.approach))) approach++;
      if (holds(intervals.tilt, toDegrees(setting.tilt))) tilt++;
    }
    // Of the few of a short run less can be asked: three standard deviations of a share of .95.
    const slack = 3 * Math.sqrt((0.95 * 0.05) / TRIALS);
    expect(met / TRIALS).toBeGreaterThanOrEqual(0.95);
    expect(within / TRIALS).toBeGreaterThanOrEqual(0.95 - slack);
    for (const held of [approach, tilt]) {
      expect(held / TRIALS).toBeGreaterThanOrEqual(0.95 - Math.max(0.02, slack));
      if (TRIALS >= 1000) expect(held / TRIALS).toBeLessThanOrEqual(0.97);
    }
  });

  test('stray points move it little, and paint is seen through where it is said', () => {
    const cove = { width: 3, depth: 0.625, offCenter: 0.375 };
    const strays = noisy(traceOf(cove, 100)).map((point, at) =>
      at % 25 === 7 ? { ...point, depth: point.depth - 0.2 } : point,
    );
    const { best } = answer({ points: withFlats(strays), tolerance: 1 });
    expect(best.settings[0]?.width).toBeCloseTo(cove.width, 1);
    expect(best.settings[0]?.depth).toBeCloseTo(cove.depth, 1);

    const painted = traceOf(cove, 100).map(({ u, depth }, at) => ({
      u,
      depth: depth - (at % 3 === 0 ? 0 : 0.03 * next()),
    }));
    const plain = answer({ points: withFlats(painted), tolerance: 1 });
    const seen = answer({ points: withFlats(painted), tolerance: 1, loss: 'paint' });
    const missOf = ({ best: found }: MatchAnswer): number =>
      Math.abs((found.settings[0]?.depth ?? 0) - cove.depth);
    expect(missOf(seen)).toBeLessThan(missOf(plain));
    expect(seen.intervals).toBe('paint');
  });

  test('a tilt that the trace does not tell from upright is upright', () => {
    const drawn = noisy(traceOf({ width: 3.5, depth: 0.625, offCenter: 0 }, 100));
    const { best, isUprightByChoice, intervals } = answer({ points: withFlats(drawn) });
    expect(best.settings[0]?.setting.tilt).toBe(0);
    expect(isUprightByChoice).toBe(true);
    expect(intervals).toMatchObject({ tilt: [0, expect.any(Number)] });
  });
});

describe('Blades', () => {
  test('the blade of the shop that comes nearest is chosen, and what the others miss is said', () => {
    const small = { diameter: 7.25, kerf: 3 / 32 };
    const cove = { width: 2.5, depth: 0.875, offCenter: 0 };
    const points = withFlats(traceOf(cove, 60, small));
    const { blade, others } = answer({ points, blades: [BLADE, small] });
    expect(blade).toBe(small);
    expect(others).toHaveLength(1);
    expect(others[0]?.worst).toBeGreaterThan(0.002);
  });
});

describe('Bad traces are refused in words', () => {
  const good = withFlats(traceOf({ width: 3, depth: 0.625, offCenter: 0.375 }, 30));

  test('three points, or eight times the same', () => {
    expect(refusal(good.slice(0, 3))).toBe('match.too-few-points');
    expect(refusal([])).toBe('match.too-few-points');
    const [first] = good;
    if (first !== undefined)
      expect(refusal(Array.from({ length: 9 }, () => first))).toBe('match.too-few-points');
  });

  test('a way that crosses itself', () => {
    const back = good.slice(8, 22).map(({ across, out }) => ({ across: -across, out: out / 3 }));
    const eight = [...good.slice(0, 22), ...back, ...good.slice(22)];
    expect(refusal(eight)).toBe('match.crosses');
  });

  test('no depth, both sides of the face, ends that lie together', () => {
    expect(refusal(good.map(({ across }) => ({ across, out: 0 })))).toBe('match.no-depth');
    expect(refusal([...good, { across: -2.9, out: 0 }])).toBe('match.face-too-short');
    const wave = good.map(({ across }) => ({ across, out: Math.sin(across * 2.2) * 0.5 }));
    const face = [
      { across: -3, out: 0 },
      { across: 3, out: 0 },
    ] as const;
    expect(refusal(wave, { face })).toBe('match.both-sides');
  });

  test('a part of the cove alone', () => {
    const face = [
      { across: -3, out: 0 },
      { across: 3, out: 0 },
    ] as const;
    const inside = good.slice(1, -1);
    expect(refusal(inside.slice(0, 10), { face })).toBe('match.too-little');
  });
});
