import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { CATALOGUE } from '../../src/functions/catalogue.ts';
import type { Range, Results } from '../../src/functions/cell.ts';

/** A spreadsheet's cells at their worst: blanks, errors, rich values, numbers beyond any saw. */
const plainCell = fc.oneof(
  fc.constantFrom<unknown>(null, undefined, '', ' ', 0, -0, 1, '3/4', '90 mm', 'front', 'right'),
  fc.constantFrom<unknown>('#N/A', '#REF!', { code: '#DIV/0!' }, true, false, Number.NaN, Infinity),
  fc.constantFrom<unknown>(-Infinity, 1e308, 5e-324, 1e-9, 45, 90, 180, '7\' 4 3/8"', '1/0'),
  fc.constantFrom<unknown>(
    { type: 'Error', basicType: 'Error', basicValue: '#VALUE!' },
    { type: 'FormattedNumber', basicType: 'Double', basicValue: 2.5, numberFormat: '0.0' },
    { type: 'Entity', text: 'x' },
    new Date(Number.NaN),
    new Error('x'),
  ),
  fc.double(),
  fc.double({ min: 0, max: 12, noNaN: true }),
  fc.string(),
  fc.anything({ withDate: true, withNullPrototype: true, withBigInt: true, withSparseArray: true }),
);
const ragged = fc.array(fc.array(plainCell, { maxLength: 3 }), { maxLength: 3 });
const even = fc
  .tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 }))
  .chain(([rows, columns]) => {
    const row = fc.array(plainCell, { minLength: columns, maxLength: columns });
    return fc.array(row, { minLength: rows, maxLength: rows });
  });
const anyRange = fc.oneof(
  { arbitrary: plainCell.map((cell) => [[cell]]), weight: 4 },
  { arbitrary: even, weight: 2 },
  { arbitrary: ragged, weight: 1 },
  { arbitrary: fc.constantFrom(null, undefined), weight: 1 },
  { arbitrary: fc.anything(), weight: 1 },
) as fc.Arbitrary<Range>;

function whatIsWrong(results: Results): readonly string[] {
  const columns = results[0]?.length ?? 0;
  const wrong = results.some((row) => row.length !== columns) ? ['ragged'] : [];
  if (columns === 0) return ['empty'];
  for (const cell of results.flat()) {
    if (typeof cell === 'number' && !Number.isFinite(cell)) wrong.push(String(cell));
    if (typeof cell === 'object') {
      const sound = ['#VALUE!', '#N/A'].includes(cell.code) && cell.message.length > 0;
      if (!sound || /NaN|undefined|\[object/u.test(cell.message.replace(/“[^”]*”/gu, ''))) {
        wrong.push(cell.message);
      }
    } else if (!['number', 'string', 'boolean'].includes(typeof cell)) wrong.push(typeof cell);
  }
  return wrong;
}

describe('whatever the arguments', () => {
  test.each(CATALOGUE.map((entry) => [entry.name, entry] as const))(
    '%s gives a matrix of sound cells and never throws',
    (_, entry) => {
      const given = fc.tuple(...entry.parameters.map(() => anyRange));
      fc.assert(
        fc.property(given, (ranges) => {
          expect(whatIsWrong(entry.call(...ranges))).toEqual([]);
        }),
        { numRuns: 400 },
      );
    },
  );

  test.each(CATALOGUE.map((entry) => [entry.name, entry] as const))(
    '%s gives the same for an argument left out, null, blank or a blank cell',
    (_, entry) => {
      const count = entry.parameters.length;
      const blanks: Range[] = [
        undefined,
        null,
        [],
        [[]],
        [[null]],
        [['']],
        [[undefined]],
        [['  ']],
      ];
      const wanted = entry.call();
      for (const blank of blanks) {
        expect(entry.call(...Array.from({ length: count }, () => blank))).toEqual(wanted);
      }
      for (const [at, { optional }] of entry.parameters.entries()) {
        if (!optional) continue;
        const before: Range[] = entry.parameters.slice(0, at).map(() => [[1]]);
        const left = entry.call(...before);
        for (const blank of blanks) expect(entry.call(...before, blank)).toEqual(left);
      }
    },
  );
});
