/** COVE.MATCH, COVE.NEAREST, COVE.REACH and COVE.TRIAL: what their core answers, as cells. */
import { describe, expect, test } from '@jest/globals';
import { call, callWith, column, one, said } from '../calls.ts';

const TRACE = [
  [0, 0],
  ['1/2', 0],
  ['13/16', '23/64'],
  ['1 3/16', '39/64'],
  ['', ''],
  ['1 11/16', '47/64'],
  ['2 3/16', '47/64'],
  ['2 11/16', '39/64'],
  ['3 1/16', '23/64'],
  ['3 3/8', 0],
  ['3 7/8', 0],
];

describe('COVE.MATCH', () => {
  test('spills a row: approach, tilt, height, the cove it cuts, its farthest miss, and words', () => {
    const [row = []] = call('MATCH', TRACE);
    const [approach, tilt, height, width, depth, offCenter, miss, words] = row;
    expect(Number(approach)).toBeGreaterThan(25);
    expect(tilt).toBe(0);
    expect(Number(width)).toBeCloseTo(2.9, 1);
    expect(depth).toBe(height);
    expect(offCenter).toBe(0);
    expect(Number(miss)).toBeLessThan(1 / 16);
    expect(words).toMatch(/Approach: from [\d.]+° to [\d.]+° by this trace/u);
    // Millimetres alike.
    const inMm = TRACE.map((cells) => cells.map((cell) => (cell === '' ? '' : cell)));
    expect(call('MATCH', inMm)).toEqual(call('MATCH', TRACE));
  });

  test('blank rows at its end, 0 in older Excel, are no points', () => {
    expect(call('MATCH', [...TRACE, [0, 0], [0, 0]])).toEqual(call('MATCH', TRACE));
  });

  test('says what is wrong with the points in the first cell', () => {
    const first = (points: unknown[][]): string => said(call('MATCH', points)[0]?.[0]);
    expect(first([[1], [2]])).toMatch(/^#VALUE! Points is a range of 1 column/u);
    expect(
      first([
        [0, 0],
        [1, ''],
      ]),
    ).toMatch(/Point 2 has one of its two numbers alone/u);
    expect(
      first([
        [0, 0],
        [1, 'x'],
      ]),
    ).toMatch(/Point 2: “x”/u);
    expect(first(TRACE.slice(0, 5))).toMatch(/at least 8 are needed/u);
  });
});

test('COVE.REACH gives the derived widths of a 10 in blade up to 60 and 45 degrees', () => {
  // [D] 2 sqrt(h(2R - h)) sin a + t cos a, by hand.
  const rows = call('REACH', column('1/2', '3/4', 1));
  const wanted = [
    [3.837, 3.171],
    [4.625, 3.813],
    [5.259, 4.331],
  ];
  wanted.forEach(([at60 = 0, at45 = 0], row) => {
    expect(Number(rows[row]?.[1])).toBeCloseTo(at60, 3);
    expect(Number(rows[row]?.[2])).toBeCloseTo(at45, 3);
    expect(Number(rows[row]?.[0])).toBeGreaterThan(at60);
  });
  const off = call('REACH', column('3/4', 1), one('1/2'));
  for (const row of off) {
    const width = Number(row[0]);
    expect(callWith('FEASIBLE', width - 1e-4, row === off[0] ? '3/4' : 1, '1/2')).toEqual([[true]]);
    expect(callWith('FEASIBLE', width + 0.02, row === off[0] ? '3/4' : 1, '1/2')).toEqual([
      [false],
    ]);
  }
  expect(said(callWith('REACH', 4)[0]?.[0])).toMatch(/^#N\/A The blade must rise 4 in/u);
});

test('COVE.NEAREST lists the least change of each size, and each of them can be made', () => {
  expect(callWith('NEAREST', 3, '5/8')).toEqual([['as asked', '']]);
  const rows = callWith('NEAREST', 6, '5/8');
  const to = Object.fromEntries(rows) as Record<string, number | string>;
  expect(callWith('FEASIBLE', to['Cove width, narrower'], '5/8')).toEqual([[true]]);
  expect(callWith('FEASIBLE', 6, to['Cove depth, deeper'])).toEqual([[true]]);
  expect(to['Cove width, wider']).toBe('none this way');
  const web = callWith('NEAREST', 3, '3/4', null, null, null, '7/8');
  expect(web).toContainEqual(['Blank thickness, more', 1]);
  expect(web.map(([name]) => name)).not.toContain('Blank width, more');
});

test('COVE.TRIAL says what to move, and what was likely wrong', () => {
  const [row = []] = callWith('TRIAL', '3 5/8', '7/8', '3/8', '3 11/16', '57/64', '3/8');
  expect(Number(row[0])).toBeLessThan(0);
  expect(row[2]).toBeCloseTo(-1 / 64, 9);
  expect(row[3]).toMatch(/the height was 1\/32 in more than was thought/u);
  expect(said(callWith('TRIAL', '3 5/8', '7/8', '3/8', 2, '7/8')[0]?.[0])).toMatch(
    /^#N\/A The measured trial cut: this is another cove/u,
  );
  expect(said(callWith('TRIAL', 9, '1/2', 0, 3, '1/2')[0]?.[0])).toMatch(/^#N\/A/u);
});

test('COVE.EXACT and COVE.WINDOW say how exactly a cove must be set', () => {
  const rows = callWith('EXACT', 3, '3/4');
  expect(rows.map(([what, by]) => [what, by])).toEqual([
    ['approach', 0.5],
    ['tilt', 0.5],
    ['height', 1 / 64],
    ['blade diameter', -1 / 8],
    ['kerf', -1 / 32],
  ]);
  // [D] by a second program, for a centered cove: .038 for half a degree of approach.
  expect(rows[0]?.[2]).toBeCloseTo(0.038, 3);
  const [[fine], [coarse]] = call(
    'WINDOW',
    one('3 5/8'),
    one('7/8'),
    one('3/8'),
    null,
    null,
    column('1/64', '1/32'),
  ) as [[number], [number]];
  expect(coarse).toBeGreaterThan(1.9 * fine);
  expect(said(callWith('WINDOW', 9, '1/2')[0]?.[0])).toMatch(/^#N\/A/u);
});
