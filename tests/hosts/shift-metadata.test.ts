import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';

import { shiftMetadata, shiftLines } from '../../src/hosts/grid/shift-metadata.ts';
import type { SheetMetadata } from '../../src/hosts/grid/sheet-metadata.ts';

const KEPT: SheetMetadata = {
  owner: 'person',
  name: 'Runs',
  print: {
    paper: 'a4',
    orientation: 'portrait',
    titleRows: [3, 3],
    breaksAfter: [5, 8],
    fitWidth: true,
    header: '',
    footer: '',
  },
  tables: [{ name: 'Runs', range: 'B3:D9' }],
  validations: [
    {
      range: 'C4:C9',
      allow: { kind: 'whole', least: 1, most: 9 },
      strict: true,
      title: '',
      message: '',
    },
  ],
  highlights: [{ range: 'B4:D9', formula: '$B4="x"', style: 'rowDone' }],
  file: {
    dataValidations: [{ type: 'whole', range: 'C4:C9 E4', formula1: '1', formula2: '9' }],
    rowBreaks: [4],
    colBreaks: [2],
    pageSetup: { paperSize: 'a4', printTitlesRow: '$3:$3' },
  },
};

describe('What is kept with a sheet', () => {
  test('covers the same lines after others have come or gone, counted line by line', () => {
    fc.assert(
      fc.property(
        fc.nat(20),
        fc.nat(10),
        fc.constantFrom('come' as const, 'go' as const),
        fc.nat(30),
        fc.integer({ min: 1, max: 12 }),
        (first, length, kind, at, count) => {
          const last = first + length;
          const sheet = Array.from({ length: 60 }, (_, line) => line >= first && line <= last);
          if (kind === 'go') sheet.splice(at, count);
          else {
            const within = at > first && at <= last;
            sheet.splice(at, 0, ...Array.from({ length: count }, () => within));
          }
          const covered = sheet.indexOf(true);
          expect(shiftLines(first, last, { kind, at, count })).toEqual(
            covered < 0 ? null : [covered, sheet.lastIndexOf(true)],
          );
        },
      ),
    );
  });

  test('goes down with its rows: tables, rules, highlights, titles and breaks', () => {
    const moved = shiftMetadata(KEPT, { lines: 'rows', kind: 'come', at: 1, count: 2 });
    expect(moved.tables).toEqual([{ name: 'Runs', range: 'B5:D11' }]);
    expect(moved.validations[0]?.range).toBe('C6:C11');
    expect(moved.highlights?.[0]?.range).toBe('B6:D11');
    expect(moved.print).toMatchObject({ titleRows: [5, 5], breaksAfter: [7, 10] });
    expect(moved.file?.dataValidations?.[0]?.range).toBe('C6:C11 E6');
    expect(moved.file?.rowBreaks).toEqual([6]);
    expect(moved.file?.colBreaks).toEqual([2]);
    expect(moved.file?.pageSetup).toEqual({ paperSize: 'a4', printTitlesRow: '$5:$5' });
  });

  test('goes to the right with its columns', () => {
    const moved = shiftMetadata(KEPT, { lines: 'columns', kind: 'come', at: 0, count: 1 });
    expect(moved.tables[0]?.range).toBe('C3:E9');
    expect(moved.file?.dataValidations?.[0]?.range).toBe('D4:D9 F4');
    expect([moved.file?.rowBreaks, moved.file?.colBreaks]).toEqual([[4], [3]]);
    expect(moved.print).toEqual(KEPT.print);
  });

  test('prints what it printed, with a column that comes between', () => {
    const printed = {
      ...KEPT,
      print: { ...KEPT.print, printedColumns: 4 },
      file: { pageSetup: { printArea: '$A:$D' } },
    };
    const after = (at: number, kind: 'come' | 'go', count: number): unknown[] => {
      const { print, file } = shiftMetadata(printed, { lines: 'columns', kind, at, count });
      return [print.printedColumns, file?.pageSetup?.printArea];
    };
    expect(after(2, 'come', 2)).toEqual([6, '$A:$F']);
    expect(after(4, 'come', 1)).toEqual([4, '$A:$D']);
    expect(after(1, 'go', 1)).toEqual([3, '$A:$C']);
    expect(after(0, 'go', 4)).toEqual([undefined, undefined]);
    const cells = { ...printed, file: { pageSetup: { printArea: '$B$2:$D$9' } } };
    const rows = shiftMetadata(cells, { lines: 'rows', kind: 'come', at: 4, count: 3 });
    expect(rows.file?.pageSetup).toEqual({ printArea: '$B$2:$D$12' });
  });

  test('is no longer kept where its headings or all of its cells go', () => {
    const headless = shiftMetadata(KEPT, { lines: 'rows', kind: 'go', at: 2, count: 1 });
    expect(headless.tables).toEqual([]);
    expect(headless.print).not.toHaveProperty('titleRows');
    expect(headless.file?.pageSetup).toEqual({ paperSize: 'a4' });
    expect(headless.validations[0]?.range).toBe('C3:C8');
    const gone = shiftMetadata(KEPT, { lines: 'rows', kind: 'go', at: 3, count: 6 });
    expect([gone.tables[0]?.range, gone.validations, gone.highlights]).toEqual(['B3:D3', [], []]);
    expect(gone.print.breaksAfter).toEqual([]);
  });
});
