import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';

import { rectanglesOf } from '../../src/hosts/excel/cell-grid.ts';
import { isDateFormat } from '../../src/hosts/tables/date-format.ts';
import { formulaParts, renameIn } from '../../src/hosts/formulas/formula-parts.ts';
import { needsTextFormat, typedValue } from '../../src/hosts/excel/typed-value.ts';

describe('A number format', () => {
  // ECMA-376 part 1, 18.8.30: built-in formats 14 to 22 and 45 to 47, and those of other kinds.
  test.each([
    'mm-dd-yy',
    'd-mmm-yy',
    'd-mmm',
    'mmm-yy',
    'h:mm AM/PM',
    'h:mm:ss',
    'm/d/yy h:mm',
    'mm:ss',
    '[h]:mm:ss',
    '[mm]:ss.0',
    '[$-409]d-mmm-yy;@',
    '[$-F800]dddd\\,\\ mmmm\\ dd\\,\\ yyyy',
    'yyyy"-"mm',
    '[Red]d/m/yy',
    'General;d-mmm',
  ])('%s shows a date or time', (format) => expect(isDateFormat(format)).toBe(true));

  test.each([
    'General',
    'GENERAL',
    '@',
    '0',
    '#,##0.00_);[Red](#,##0.00)',
    '0.00E+00',
    '##0.0e-0',
    '# ?/?',
    '0.0"°"',
    '0 "days"',
    '0" h"',
    '0\\d',
    '0\\ \\m\\m',
    '[Red]0.0',
    '[$€-407] 0.00',
    '[$USD] 0',
    '[>=100]0;[<0]"minus";0',
    '_-* #,##0_-',
    '_(* #,##0_)',
    '_d0*m',
    '0.0###_)',
    '',
  ])('%s shows a number', (format) => expect(isDateFormat(format)).toBe(false));
});

describe('The names in a formula', () => {
  const renamed = {
    sheets: new Map([
      ["joe's cuts", "It's new"],
      ['production', 'Coveledger ~1'],
    ]),
    tables: new Map([['cuts', 'Cuts_new']]),
    names: new Map([['rooms', 'Rooms_2']]),
  };

  test.each([
    ["'Joe''s cuts'!A1*2", "'It''s new'!A1*2"],
    ['production!$A$1:B2', "'Coveledger ~1'!$A$1:B2"],
    [
      'SUM(Cuts[Quantity],CUTS[[#This Row],[Cuts]])',
      'SUM(Cuts_new[Quantity],Cuts_new[[#This Row],[Cuts]])',
    ],
    ["Cuts[it''s ']odd]&Cuts[n]", "Cuts_new[it''s ']odd]&Cuts_new[n]"],
    ['"Production!A1 Rooms ""Cuts[n]"""&Rooms', '"Production!A1 Rooms ""Cuts[n]"""&Rooms_2'],
    ['Rooms(1)+Rooms.2+MyRooms', 'Rooms(1)+Rooms.2+MyRooms'],
    ['[Book.xlsx]Production!A1', '[Book.xlsx]Production!A1'],
    ["'[Book.xlsx]Production'!A1", "'[Book.xlsx]Production'!A1"],
    ['IF(#REF!=1,1E5,{1,2;3,4})', 'IF(#REF!=1,1E5,{1,2;3,4})'],
    ['SUM(Other!A1:Production!A2)', "SUM(Other!A1:'Coveledger ~1'!A2)"],
  ])('%s become %s', (formula, expected) => expect(renameIn(formula, renamed)).toBe(expected));

  test('are found without losing a letter of any formula', () => {
    const piece = fc.constantFrom(
      ..."'Joe''s cuts'! Cuts[ ] Rooms \" \"\" ' [ # 1E5 A1 ! ( ) , ; é".split(' '),
      ' ',
    );
    const text = fc.array(fc.oneof(piece, fc.string({ maxLength: 4 })), { maxLength: 12 });
    fc.assert(
      fc.property(text, (pieces) => {
        const formula = pieces.join('');
        expect(
          formulaParts(formula)
            .map((part) => part.text)
            .join(''),
        ).toBe(formula);
      }),
    );
  });
});

describe('A value typed into a cell', () => {
  test.each([
    ['oak', 'oak'],
    ['Hall & stair', 'Hall & stair'],
    ['Halle\u0301 №', 'Halle\u0301 №'],
    ['', ''],
    [5, 5],
    [true, true],
    ['May 5', "'May 5"],
    ['Wahr', "'Wahr"],
    ['true', "'true"],
    [' oak', "' oak"],
    ["'oak", "''oak"],
    ['=A1', "'=A1"],
    ['½ oak', "'½ oak"],
    ['oak ½', "'oak ½"],
    ['₂', "'₂"],
  ])('%j is typed as %j', (value, typed) => expect(typedValue(value)).toBe(typed));

  test('stands behind an apostrophe unless it is letters first and no digit', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1 }), (text) => {
        const typed = typedValue(text);
        expect(typed === text || typed === `'${text}`).toBe(true);
        if (typed === text) expect(text).toMatch(/^\p{L}/u);
      }),
    );
  });

  test('takes the text format only where the apostrophe has no room', () => {
    expect(needsTextFormat('1'.repeat(32_767))).toBe(true);
    expect(needsTextFormat('1'.repeat(32_766))).toBe(false);
    expect(needsTextFormat('x'.repeat(32_767))).toBe(false);
  });
});

describe('Rectangles of like cells', () => {
  const grids = fc
    .tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }))
    .chain(([rows, columns]) =>
      fc.array(
        fc.array(fc.constantFrom('a', 'b', null), { minLength: columns, maxLength: columns }),
        {
          minLength: rows,
          maxLength: rows,
        },
      ),
    );

  test('cover each cell of their key once, and no other', () => {
    fc.assert(
      fc.property(grids, fc.constantFrom(1, 2, Infinity), (grid, mostRows) => {
        const covered = grid.map((row) => row.map((): string | null => null));
        for (const [key, ranges] of rectanglesOf(grid, mostRows)) {
          for (const { top, left, bottom, right } of ranges) {
            expect(bottom - top).toBeLessThan(mostRows);
            for (let row = top; row <= bottom; row++) {
              for (let column = left; column <= right; column++) {
                expect(covered[row]?.[column]).toBeNull();
                covered[row]![column] = key;
              }
            }
          }
        }
        expect(covered).toEqual(grid);
      }),
    );
  });

  test('are as few as runs along rows allow', () => {
    const grid = [
      ['a', 'a', 'b'],
      ['a', 'a', 'b'],
      ['b', 'a', 'b'],
    ];
    expect(rectanglesOf(grid).get('a')).toEqual([
      { top: 0, left: 0, bottom: 1, right: 1 },
      { top: 2, left: 1, bottom: 2, right: 1 },
    ]);
    expect(rectanglesOf(grid).get('b')).toHaveLength(2);
  });
});
