/** What Excel makes of what is typed, as the fake has it. */
import { describe, expect, test } from '@jest/globals';

import { FakeExcel } from './excel-fake/fake-excel.ts';

const type = (fake: FakeExcel, range: string, values: string[][]): Promise<unknown> =>
  fake.program.excel.run({}, (context) => {
    context.workbook.worksheets.getItem('Notes').getRange(range).values = values;
    return Promise.resolve();
  });

describe('Excel', () => {
  test.each<readonly [typed: string, value: unknown, format: string]>([
    ['15%', 0.15, '0%'],
    ['7.25%', 0.0725, '0.00%'],
    ['(4.10)', -4.1, 'General'],
    ['$4.10', 4.1, '$#,##0.00_);[Red]($#,##0.00)'],
    ['-$4', -4, '$#,##0_);[Red]($#,##0)'],
    ['1,234.5', 1234.5, '#,##0.00'],
    ['0 3/4', 0.75, '# ?/?'],
    ['3 11/16', 3.6875, '# ??/??'],
    ['-3 1/2', -3.5, '# ?/?'],
    ['3/4', 46_085, 'd-mmm'],
    ['4-Mar', 46_085, 'd-mmm'],
    ['3/4/2026', 46_085, 'm/d/yyyy'],
    ['5/32', 11_810, 'mmm-yy'],
    ['3-1/2', 37_316, 'm/d/yyyy'],
    ['13/32', '13/32', 'General'],
    ['10:30', 0.4375, 'h:mm'],
    ['90 mm', '90 mm', 'General'],
    ['€4.10', '€4.10', 'General'],
  ])('stores %s as %p under %s', async (typed, value, format) => {
    const fake = new FakeExcel();
    fake.addSheet('Notes');
    await type(fake, 'D1', [[typed]]);
    const cell = fake.workbook.sheets[0]!.at(0, 3)!;
    const held = typeof cell.value === 'number' ? Number(cell.value.toFixed(9)) : cell.value;
    expect([held, cell.look.format]).toEqual([value, format]);
  });

  test('reads dates with the day first where the person does', async () => {
    const fake = new FakeExcel();
    fake.addSheet('Notes');
    fake.workbook.dayFirst = true;
    await type(fake, 'D1:D2', [['3/4'], ['13/1/2026']]);
    // 3 April and 13 January.
    expect([0, 1].map((row) => fake.workbook.sheets[0]!.at(row, 3)!.value)).toEqual([
      46_115, 46_035,
    ]);
  });
});
