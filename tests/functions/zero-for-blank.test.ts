/** Older Excel hands a blank cell over as 0: it counts as left out wherever a 0 can't be meant. */
import { describe, expect, test } from '@jest/globals';

import { CATALOGUE } from '../../src/functions/catalogue.ts';
import type { Range } from '../../src/functions/cell.ts';
import { call, callWith, one } from './calls.ts';

/** Sound cells for what each function needs. */
const NEEDED: Readonly<Record<string, readonly unknown[]>> = {
  APPROACH: ['3 5/8', '7/8'],
  TILT: ['3 5/8', '7/8'],
  SETUP: ['3 5/8', '7/8'],
  FEASIBLE: ['3 5/8', '7/8'],
  REASON: ['3 5/8', '7/8'],
  OUTLINE: ['3 5/8', '7/8'],
  RAILMARKS: ['3 5/8', '7/8', '3/8', '4 1/2', '16 1/2', '10 1/2'],
  CUT: [33, 27, '7/8'],
  PASSES: ['3/4'],
  PASSHEIGHTS: ['3/4'],
  CROWNMITER: [38],
  CROWNBEVEL: [38],
  CROWNSLOPEMITER: [38, 12],
  CROWNSLOPEBEVEL: [38, 12],
  CROWNNESTEDMITER: [90],
  RAKED: ['2 5/8', '3 1/2', 20],
  BOARDFEET: [1, 6, 96],
  STICKS: [84, 192],
  EXACT: ['3 5/8', '7/8'],
  WINDOW: ['3 5/8', '7/8'],
  NEAREST: ['6', '5/8'],
  REACH: ['3/4'],
  TRIAL: ['3 5/8', '7/8', '3/8', '3 11/16', '57/64'],
  INCHES: [90],
  INCHTEXT: [3.54],
  MATCH: [
    Array.from({ length: 12 }, (_, at) => [at / 4, Math.max(0, 0.7 - ((at - 5.5) / 6) ** 2)]),
  ],
};
/** Where a 0 is one: none of them, none left for the last pass, a cove at the blank's very edge. */
const MEANT = new Set(['quantity', 'quantities', 'lastPass', 'nearFlat']);

describe('A 0 in the place of a blank', () => {
  const places = CATALOGUE.flatMap(({ id, parameters }) =>
    parameters.flatMap(({ name, optional }, at) => (optional ? [[id, name, at] as const] : [])),
  );

  test.each(places.filter(([, name]) => !MEANT.has(name)))(
    'of COVE.%s, %s, counts as left out',
    (id, _, at) => {
      const needed = NEEDED[id]!;
      const upTo = [...needed, ...Array.from({ length: at - needed.length }, () => null)];
      const ranges = (cells: readonly unknown[]): Range[] =>
        cells.map((cell) => (Array.isArray(cell) ? (cell as unknown[][]) : one(cell)));
      expect(call(id, ...ranges([...upTo, 0]))).toEqual(call(id, ...ranges(needed)));
    },
  );

  test('of a quantity is none', () => {
    expect(callWith('BOARDFEET', 1, 6, 96, 0)).toEqual([[0]]);
    expect(callWith('STICKS', 84, 192, 0)).toEqual([[0]]);
  });

  test('is said in the help of each of them, but of those that are 0 anyway, or a word', () => {
    const silent = places.filter(([, name]) => {
      const usual = [
        'offCenter',
        'measuredOffCenter',
        'endTrim',
        'measuredFrom',
        'tiltSide',
        'meets',
        'painted',
      ];
      return !MEANT.has(name) && !usual.includes(name);
    });
    for (const [id, , at] of silent) {
      const entry = CATALOGUE.find((one) => one.id === id);
      expect(entry?.parameters[at]?.description).toMatch(/when left out or 0/u);
    }
  });
});

test.each(['INCHES', 'INCHTEXT', 'BOARDFEET', 'STICKS', 'APPROACH', 'CUT', 'PASSES', 'RAILMARKS'])(
  'the number of a date is no length for COVE.%s',
  (id) => {
    const needed = NEEDED[id]!;
    const last = id === 'CUT' ? 2 : 0;
    const cells = needed.map((cell, at) => (at === last ? 46_085 : cell));
    expect(JSON.stringify(callWith(id, ...cells))).toContain('2026-03-04');
  },
);
