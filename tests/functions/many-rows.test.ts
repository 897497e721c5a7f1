import { describe, expect, test } from '@jest/globals';
import { computeCut } from '../../src/core/cove/cut.ts';
import { checkCove } from '../../src/core/cove/feasibility.ts';
import { planPasses } from '../../src/core/cove/passes.ts';
import { layOutRails } from '../../src/core/cove/rails.ts';
import { computeCrownCut } from '../../src/core/crown/crown-cut.ts';
import { computeBoardFeet } from '../../src/core/lumber/board-feet.ts';
import { degrees, toDegrees, toRadians } from '../../src/core/units/angle.ts';
import { formatInches } from '../../src/core/units/format-length.ts';
import { parseLength } from '../../src/core/units/length.ts';
import { count } from '../deep.ts';
import { seededNumbers } from '../seeded-numbers.ts';
import { answer, call, callWith, isError } from './calls.ts';

const ROWS = 10_000;
const RANDOM_CALLS = count(1_000);

describe('ten thousand rows', () => {
  const sixteenths = (row: number): string => `${2 + (row % 2)} ${1 + (row % 15)}/16`;
  const widths = Array.from({ length: ROWS }, (_, row) => [sixteenths(row)] as unknown[]);
  const depths = Array.from({ length: ROWS }, (_, row) => [`${4 + (row % 5)}/8"`]);
  const bad = [0, 17, 500, 1234, 4999, 5000, 7777, 9000, 9998, 9999];
  const faults = ['x', '', null, '1/0', -2, { code: '#N/A' }, 40, true, Number.NaN, '#REF!'];
  bad.forEach((row, at) => (widths[row] = [faults[at]]));

  test.each(['APPROACH', 'TILT', 'SETUP', 'FEASIBLE'])(
    'with ten bad ones give exactly ten error cells from COVE.%s, each in its row',
    (id) => {
      const results = call(id, widths, depths, [[0.25]]);
      expect(results).toHaveLength(ROWS);
      const rows = results.flatMap((row, at) => (row.some(isError) ? [at] : []));
      // 40 in is a sound width that no blade here cuts: FALSE, not an error.
      const wanted = id === 'FEASIBLE' ? bad.filter((row) => widths[row]?.[0] !== 40) : bad;
      expect(rows).toEqual(wanted);
      expect(results.flat().filter(isError)).toHaveLength(rows.length);
    },
  );

  test('are the same as ten thousand calls', () => {
    const results = call('SETUP', widths, depths, [[0.25]]);
    for (let row = 0; row < ROWS; row += 97) {
      expect([results[row]]).toEqual(callWith('SETUP', widths[row]?.[0], depths[row]?.[0], 0.25));
    }
  });
});

describe(`${RANDOM_CALLS} random calls give what the core computes`, () => {
  const next = seededNumbers(31);
  const between = (least: number, most: number): number => least + (most - least) * next();
  const coves = Array.from({ length: RANDOM_CALLS }, () => {
    const width = between(1, 8);
    return {
      cove: {
        width,
        depth: between(0.1, 1.5),
        offCenter: next() < 0.3 ? 0 : between(0, width / 2),
      },
      blade: { diameter: between(8, 12), kerf: between(0.06, 0.25) },
    };
  });

  test('for the functions about coves', () => {
    let answered = 0;
    for (const { cove, blade } of coves) {
      const given = [cove.width, cove.depth, cove.offCenter, blade.diameter, blade.kerf];
      const { setting, faults } = checkCove(cove, blade);
      const sound = faults.length === 0 && setting !== undefined;
      const passes = planPasses(cove.depth).heights;
      expect(answer('FEASIBLE', ...given)).toBe(sound);
      expect(callWith('PASSHEIGHTS', cove.depth)).toEqual(passes.map((height) => [height]));
      expect(answer('PASSES', cove.depth)).toBe(passes.length);
      if (!sound) {
        for (const id of ['APPROACH', 'TILT']) {
          expect(answer(id, ...given)).toMatchObject({ code: '#N/A' });
        }
        continue;
      }
      answered += 1;
      const approach = toDegrees(setting.approach);
      const tilt = toDegrees(setting.tilt);
      expect(answer('APPROACH', ...given)).toBe(approach);
      expect(answer('TILT', ...given)).toBe(tilt);
      expect(callWith('SETUP', ...given)[0]?.slice(0, 4)).toEqual([
        approach,
        90 - approach,
        tilt,
        passes.length,
      ]);
      const [[width, offCenter] = []] = callWith(
        'CUT',
        approach,
        tilt,
        cove.depth,
        blade.diameter,
        blade.kerf,
      );
      expect(width).toBeCloseTo(cove.width, 9);
      expect(offCenter).toBeCloseTo(cove.offCenter, 9);
      const layout = layOutRails(
        setting.approach,
        computeCut(blade, setting),
        { near: 0.5, far: 0.5 },
        { front: 15, back: 9 },
        'right',
      );
      const marks = callWith(
        'RAILMARKS',
        ...given.slice(0, 3),
        cove.width + 1,
        15,
        9,
        'right',
        '',
        blade.diameter,
        blade.kerf,
      );
      for (const [at, rail] of [layout.near, layout.far].entries()) {
        for (const [edge, { fromBlade, onTable }] of [rail.front, rail.back].entries()) {
          const cell = marks[at + 1]?.[edge + 1];
          if (onTable) expect(cell).toBeCloseTo(fromBlade, 9);
          else expect(cell).toMatchObject({ code: '#N/A' });
        }
      }
    }
    expect(answered).toBeGreaterThan(RANDOM_CALLS / 4);
  });

  test('for crown, board feet and lengths', () => {
    for (let at = 0; at < RANDOM_CALLS; at += 1) {
      const spring = between(2, 89);
      const corner = between(4, 179);
      const crown = computeCrownCut({
        spring: toRadians(degrees(spring)),
        corner: toRadians(degrees(corner)),
      });
      if (!crown.ok) throw new Error('A crown is refused.');
      expect(answer('CROWNMITER', spring, corner)).toBe(toDegrees(crown.value.miter));
      expect(answer('CROWNBEVEL', spring, corner)).toBe(toDegrees(crown.value.bevel));
      const sixteenths = Math.floor(between(17, 3_000));
      const text = `${Math.floor(sixteenths / 16)} ${sixteenths % 16}/16`;
      const length = parseLength(text, 'length');
      if (!length.ok) throw new Error(`${text} is refused.`);
      expect(answer('INCHES', text)).toBe(sixteenths / 16);
      expect(answer('INCHTEXT', text)).toBe(
        formatInches(length.value, { denominator: 16, marks: 'inch mark' }),
      );
      const feet = computeBoardFeet({ thickness: 1.25, width: 6.5, length: length.value });
      expect(answer('BOARDFEET', '1 1/4', 6.5, text)).toBe(
        feet.ok ? Number(feet.value) : undefined,
      );
    }
  });
});
