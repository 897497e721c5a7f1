import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { blockOf, fitTogether, MOST_CELLS } from '../../src/functions/shape.ts';
import { answer, call, column, isError, said } from './calls.ts';

describe('ranges go together as in a spreadsheet’s own arithmetic', () => {
  test('rows and columns stretch to each other, and anything else is refused by name', () => {
    const side = fc.constantFrom(1, 2, 3);
    fc.assert(
      fc.property(side, side, side, side, (rows, columns, otherRows, otherColumns) => {
        const widths = Array.from({ length: rows }, (_, row) =>
          Array.from({ length: columns }, (_empty, at) => 2 + row / 8 + at / 64),
        );
        const depths = Array.from({ length: otherRows }, (_, row) =>
          Array.from({ length: otherColumns }, (_empty, at) => 0.5 + row / 16 + at / 128),
        );
        const results = call('APPROACH', widths, depths);
        const fits =
          (rows === otherRows || rows === 1 || otherRows === 1) &&
          (columns === otherColumns || columns === 1 || otherColumns === 1);
        if (!fits) {
          expect(results.map((row) => row.map(said))).toEqual([
            [expect.stringMatching(/^#VALUE! .*Give ranges of one size, or single cells\.$/u)],
          ]);
          return;
        }
        expect(results).toHaveLength(Math.max(rows, otherRows));
        results.forEach((row, at) => {
          expect(row).toHaveLength(Math.max(columns, otherColumns));
          row.forEach((cell, place) => {
            const width = widths[rows === 1 ? 0 : at]?.[columns === 1 ? 0 : place];
            const depth = depths[otherRows === 1 ? 0 : at]?.[otherColumns === 1 ? 0 : place];
            expect([[cell]]).toEqual(call('APPROACH', [[width]], [[depth]]));
          });
        });
      }),
    );
  });

  test('says which range doesn’t fit, with its size and theirs', () => {
    const [[refused] = []] = call('APPROACH', column(1, 2, 3), column(1, 2));
    expect(said(refused)).toBe(
      '#VALUE! Depth is 2 × 1 cells beside ranges of 3 × 1. Give ranges of one size, or single cells.',
    );
  });

  test('fills ragged rows with blanks and takes a bare cell for a range of one', () => {
    const block = blockOf([[1], [2, 3], []]);
    expect([block.rows, block.columns]).toEqual([3, 2]);
    expect([block.at(0, 0), block.at(0, 1), block.at(1, 1), block.at(2, 0)]).toEqual([
      1,
      undefined,
      3,
      undefined,
    ]);
    expect(blockOf(7 as never).at(0, 0)).toBe(7);
  });

  test('gives no more answers at once than a column of a sheet has cells', () => {
    const tall = { rows: 10_000, columns: 1, at: () => 1 };
    const wide = { rows: 1, columns: 10_000, at: () => 1 };
    const { faults } = fitTogether([
      ['width', tall],
      ['depth', wide],
    ]);
    expect(faults.map(({ code, limit }) => [code, limit])).toEqual([
      ['function.too-many-cells', MOST_CELLS],
    ]);
  });
});

describe('Ranges with blank rows', () => {
  test('give blanks for them, and errors for rows that are half filled', () => {
    const results = call(
      'APPROACH',
      column('3', '', null, ' ', '', '3'),
      column('3/4', null, undefined, '', '3/4', ''),
    );
    expect(results.map(([cell]) => (isError(cell) ? cell.code : typeof cell))).toEqual([
      'number',
      'string',
      'string',
      'string',
      '#VALUE!',
      '#VALUE!',
    ]);
    expect(results.slice(1, 4)).toEqual([[''], [''], ['']]);
    // One depth for all of them.
    expect(call('APPROACH', column('3', ''), [['3/4']])[1]).toEqual(['']);
    const [, blank = []] = call('SETUP', column('3', ''), [['3/4']]);
    expect(new Set(blank)).toEqual(new Set(['']));
    // A single blank cell is what is left out, and a width may not be.
    expect(isError(answer('APPROACH', '', '3/4'))).toBe(true);
  });

  test('that are whole columns give answers as far as anything is filled in', () => {
    const whole = Array.from({ length: 1_048_576 }, (_, row): unknown[] => [
      row === 2 ? '3' : null,
    ]);
    expect(call('APPROACH', whole, [['3/4']]).map(([cell]) => typeof cell)).toEqual([
      'string',
      'string',
      'number',
    ]);
    expect(
      call(
        'APPROACH',
        whole.map(() => ['']),
        [['3/4']],
      ),
    ).toEqual([['']]);
  }, 20_000);
});
