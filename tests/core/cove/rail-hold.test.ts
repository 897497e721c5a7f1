/**
 * Rails as lines drawn on the table's rectangle, walked along from point to point: what holds them,
 * how much of them lies on the table, and where they cross its edges, by nothing of the core's.
 */
import { expect, test } from '@jest/globals';
import { computeCut } from '../../../src/core/cove/cut.ts';
import { checkRails, LEAST_CLAMP_LIP_INCHES } from '../../../src/core/cove/rail-hold.ts';
import { layOutRails, type TiltSide } from '../../../src/core/cove/rails.ts';
import { degrees, toRadians } from '../../../src/core/units/angle.ts';
import { count } from '../../deep.ts';
import { seededNumbers } from '../../seeded-numbers.ts';
import { seeDisc } from './sampled-disc.ts';

interface Table {
  readonly front: number;
  readonly back: number;
  readonly width: number;
}

/** Operator's right and toward the back, of the place `along` the feed and `across` it. */
function placeOn(
  along: number,
  across: number,
  approach: number,
  side: TiltSide,
): { right: number; back: number } {
  const back = along * Math.cos(approach) + across * Math.sin(approach);
  const right = along * Math.sin(approach) - across * Math.cos(approach);
  return { right: side === 'left' ? right : -right, back };
}

/** First and last place along the feed at which the rail lies on the table; undefined where it misses. */
function walkRail(
  across: number,
  approach: number,
  side: TiltSide,
  table: Table,
): { from: number; to: number } | undefined {
  const isOn = (along: number): boolean => {
    const { right, back } = placeOn(along, across, approach, side);
    return Math.abs(right) <= table.width / 2 && back >= -table.front && back <= table.back;
  };
  const reach = 2 * (table.front + table.back + table.width);
  const step = 1 / 4;
  const on: number[] = [];
  for (let along = -reach; along <= reach; along += step) if (isOn(along)) on.push(along);
  if (on.length === 0) return undefined;
  const edge = (inside: number, outside: number): number => {
    let [within, beyond] = [inside, outside];
    for (let halving = 0; halving < 40; halving++) {
      const middle = (within + beyond) / 2;
      if (isOn(middle)) within = middle;
      else beyond = middle;
    }
    return within;
  };
  return { from: edge(on[0]!, on[0]! - step), to: edge(on.at(-1)!, on.at(-1)! + step) };
}

test('rails are held where they lie on the table past both ends of the blade, and nowhere else', () => {
  const next = seededNumbers(5_150);
  const seen = { held: 0, corner: 0, missed: 0, marks: 0 };
  for (let drawn = 0; drawn < count(2000, 100); drawn++) {
    const blade = { diameter: 8 + 4 * next(), kerf: 0.125 };
    const approach = toRadians(degrees(12 + 62 * next()));
    const setting = { approach, tilt: toRadians(degrees(40 * next())), height: 0.3 + 1.2 * next() };
    const table = { front: 6 + 10 * next(), back: 6 + 12 * next(), width: 16 + 34 * next() };
    const side = next() < 0.5 ? 'left' : 'right';
    const cut = computeCut(blade, setting);
    const flats = { near: 0.2 + 14 * next() ** 2, far: 0.2 + 22 * next() ** 2 };
    const faults = checkRails(blade, setting, cut, { ...flats, midway: false }, table);
    const layout = layOutRails(approach, cut, flats, table, side);
    // The blade's reach along the feed at the table, by its rim's middle.
    const rim = seeDisc({ ...blade, kerf: 0, approach: 0, ...bladeStanding(blade, setting) }, 720);
    const slope = Math.max(...rim.map(({ level }) => level));
    const half = Math.sqrt(slope * (blade.diameter - slope));
    const needed = half * Math.cos(approach) + LEAST_CLAMP_LIP_INCHES;
    for (const rail of ['near', 'far'] as const) {
      const across = rail === 'near' ? cut.near - flats.near : cut.far + flats.far;
      const walked = walkRail(across, approach, side, table);
      const one = faults.find(({ details }) => details?.['rail'] === rail);
      const isHeld = walked !== undefined && walked.from <= -needed && walked.to >= needed;
      const spare =
        walked === undefined
          ? 1
          : Math.min(Math.abs(walked.from + needed), Math.abs(walked.to - needed));
      if (spare > 1e-3) expect([drawn, rail, one === undefined]).toEqual([drawn, rail, isHeld]);
      if (one === undefined) seen.held += 1;
      else if (walked === undefined) {
        // The walk takes steps of 1/4: it may pass over a shorter stretch.
        if ((one.limit as { inches: number }).inches > 0.3) seen.missed = -Infinity;
        else if (one.code === 'rails.miss-table') seen.missed += 1;
      } else if (walked.to - walked.from > 0.3) {
        seen.corner += 1;
        expect(one.code).toBe('rails.corner-alone');
        const { inches } = one.limit as { inches: number };
        expect(Math.abs(inches - (walked.to - walked.from))).toBeLessThan(1e-6);
      }
      if (walked === undefined) continue;
      // Marks: where the walk leaves the table by its front edge, the tape finds the same place.
      const { right, back } = placeOn(walked.from, across, approach, side);
      if (Math.abs(back + table.front) < 1e-6) {
        seen.marks += 1;
        expect(Math.abs(layout[rail].front.fromBlade - right)).toBeLessThan(1e-5);
        expect(layout[rail].front.onTable).toBe(true);
      }
    }
  }
  expect(Math.min(...Object.values(seen))).toBeGreaterThan(10);
});

/** The same blade upright in its own plane: as high as its slope. */
function bladeStanding(
  blade: { kerf: number },
  { tilt, height }: { tilt: number; height: number },
): { tilt: number; height: number } {
  return { tilt: 0, height: (height - (blade.kerf / 2) * Math.sin(tilt)) / Math.cos(tilt) };
}

// A table of 15 before and 12 behind the arbor, 40 wide: the far rail of a blank 30 wide misses it.
test('names the widest blank that the table holds; a hair wider is refused', () => {
  const blade = { diameter: 10, kerf: 0.125 };
  const setting = { approach: toRadians(degrees(30)), tilt: toRadians(degrees(37)), height: 0.7 };
  const table = { front: 15, back: 12, width: 40 };
  const cut = computeCut(blade, setting);
  const judge = (blankWidth: number, nearFlat?: number) => {
    const near = nearFlat ?? (blankWidth - cut.width) / 2;
    const flats = { near, far: blankWidth - cut.width - near, midway: nearFlat === undefined };
    return checkRails(blade, setting, cut, flats, table);
  };
  const [far] = judge(34, 1);
  expect(far!.message).toMatch(/34 in apart, the far rail would (miss|lie on)/u);
  const widest = (far!.details as Record<string, { inches: number }>)['widest']!.inches;
  expect(judge(widest, 1)).toEqual([]);
  expect(judge(widest + 1 / 32, 1)).toHaveLength(1);
  const midway = judge(60);
  expect(midway).toHaveLength(2);
  const both = (midway[0]!.details as Record<string, { inches: number }>)['widest']!.inches;
  expect(judge(both)).toEqual([]);
  expect(judge(both + 1 / 16)).toHaveLength(1);
  const [near] = judge(40, 36);
  const { nearFlat } = near!.details as Record<string, { inches: number }>;
  expect(near!.message).toMatch(/with a near flat of .* would do, or an extension/u);
  expect(judge(nearFlat!.inches + cut.width + 1, nearFlat!.inches)).toEqual([]);
  // No blank at all where the table ends beside the blade.
  const tiny = checkRails(
    blade,
    setting,
    cut,
    { near: 1, far: 1, midway: true },
    { front: 2, back: 2, width: 8 },
  );
  expect(tiny[0]!.message).toMatch(/Extend the table to that side\.$/u);
});
