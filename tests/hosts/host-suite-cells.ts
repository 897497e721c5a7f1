/** The part of the hosts' suite about cells: what they hold and how they look. */
import { expect, test } from '@jest/globals';
import fc from 'fast-check';

import { STYLES } from '../../src/sheets/grammar/styles.ts';
import { count } from '../deep.ts';
import type { WrittenAndRead } from './host-suite.ts';
import { HOSTILE_TEXTS, workbook } from './sample-workbook.ts';
import type { CellView } from './workbook-view.ts';

export function testCells({ onlySheet, differs }: WrittenAndRead): void {
  const held = ({ kind, value }: CellView): unknown[] => [kind, value];

  test('keeps numbers, text, truth values and blanks as what they are', async () => {
    const values = [0, -0.1, 1 / 3, 1e-300, 1e21, 123456789.125, 'oak', true, false, '', null];
    const rows = values.map((value) => ({ cells: [{ value }] }));
    const { cells } = await onlySheet(workbook([{ name: 'Values', rows }]));
    const back = values.map((_, row) => {
      const cell = cells[`A${row + 1}`];
      return cell === undefined ? ['blank', null] : held(cell);
    });
    expect(back).toEqual([
      ['number', 0],
      ['number', -0.1],
      ['number', 1 / 3],
      ['number', 1e-300],
      ['number', 1e21],
      ['number', 123456789.125],
      ['text', 'oak'],
      ['boolean', true],
      ['boolean', false],
      ['blank', null],
      ['blank', null],
    ]);
  });

  test.each(HOSTILE_TEXTS)('keeps %j as text, letter for letter', async (value) => {
    const { cells } = await onlySheet(workbook([{ name: 'T', rows: [{ cells: [{ value }] }] }]));
    expect(cells['A1']).toMatchObject({ kind: 'text', value, formula: null });
  });

  test('keeps any text at all, but for the line ends and characters XML can not hold', async () => {
    const texts = fc.array(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }), {
      minLength: 100,
      maxLength: 100,
    });
    await fc.assert(
      fc.asyncProperty(texts, async (values) => {
        const rows = values.map((value) => ({ cells: [{ value }] }));
        const { cells } = await onlySheet(workbook([{ name: 'T', rows }]));
        const back = values.map((_, row) => cells[`A${row + 1}`]?.value);
        expect(back).toEqual(values.map((value) => value.replace(/\r\n?/g, '\n')));
      }),
      { numRuns: count(30) },
    );
  });

  test('marks what XML can not hold instead of losing the workbook', async () => {
    const value = 'bell\u0007, half\ud800, none\ufffe, return\r\nand\rend';
    const { cells } = await onlySheet(workbook([{ name: 'T', rows: [{ cells: [{ value }] }] }]));
    expect(cells['A1']?.value).toBe('bell\ufffd, half\ufffd, none\ufffd, return\nand\nend');
  });

  const values = differs.values ?? '';
  test(`writes formulas with their calculated values${values && `, but ${values}`}`, async () => {
    const rows = [
      { cells: [{ value: 2.5 }, { value: 5, formula: 'A1*2' }] },
      { cells: [{ value: 'a<b', formula: 'IF(A1<3,"a<b","&")' }] },
      { cells: [{ value: '', formula: 'IF(A1>3,"x","")' }] },
      { cells: [{ value: true, formula: 'A1<3' }] },
    ];
    const { cells } = await onlySheet(workbook([{ name: 'F', rows }]));
    expect(['B1', 'A2', 'A3', 'A4'].map((at) => cells[at]?.formula)).toEqual([
      'A1*2',
      'IF(A1<3,"a<b","&")',
      'IF(A1>3,"x","")',
      'A1<3',
    ]);
    if (differs.values !== undefined) return;
    expect(cells['B1']).toMatchObject({ kind: 'number', value: 5 });
    expect(cells['A2']).toMatchObject({ value: 'a<b' });
    expect(cells['A3']).toMatchObject({ kind: 'text', value: '' });
    expect(cells['A4']).toMatchObject({ kind: 'boolean', value: true });
  });

  test('gives cells their look', async () => {
    const cells = [
      { value: 'Room', style: 'heading' },
      { value: 12.5, style: 'total' },
      { value: 34.5, style: 'degrees' },
      { value: '3 1/2', style: 'inputText' },
      { value: 'A note', style: 'note' },
      { value: null, style: 'tick' },
    ] as const;
    const view = await onlySheet(workbook([{ name: 'Looks', rows: [{ cells }] }]));
    expect(view.cells['A1']?.look).toMatchObject({
      bold: true,
      color: 'FFFFFF',
      fill: '2F4B57',
      wrap: true,
      align: 'left',
      size: 10,
    });
    expect(view.cells['B1']?.look).toMatchObject({
      bold: true,
      format: STYLES.total.format,
      align: 'right',
      border: { top: 'thin' },
      fill: null,
    });
    expect(view.cells['C1']?.look.format).toBe('0.0"°"');
    const hair = { top: 'hair', right: 'hair', bottom: 'hair', left: 'hair' };
    expect(view.cells['D1']?.look).toMatchObject({ format: '@', border: hair, fill: 'FBF7E9' });
    expect(view.cells['E1']?.look).toMatchObject({ italic: true, wrap: true });
    expect(view.cells['F1']).toMatchObject({ kind: 'blank', look: { align: 'center' } });
  });

  test('gives blank cells the style of their column, and cells of a merge that of its first', async () => {
    const view = await onlySheet(
      workbook([
        {
          name: 'Blank',
          columns: [{ width: 10, style: 'text' }, { width: 10 }, { width: 10, style: 'input' }],
          rows: [
            { cells: [{ value: 'Title', style: 'section' }] },
            { cells: [] },
            { cells: [null, { value: 1 }, { value: null }] },
          ],
          merges: ['A1:C1'],
        },
      ]),
    );
    const fills = ['A1', 'B1', 'C1', 'C2', 'C3'].map((at) => view.cells[at]?.look.fill ?? null);
    expect(fills).toEqual(['E6ECEE', 'E6ECEE', 'E6ECEE', 'FBF7E9', null]);
    expect([view.cells['A2']?.look.format, view.cells['A3']?.look.format]).toEqual(['@', '@']);
    expect(view.merges).toEqual(['A1:C1']);
  });
}
