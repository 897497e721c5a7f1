/** What the grid answers, where its engine had it wrong before it was mended. */
import { describe, expect, test } from '@jest/globals';

import type { GridPage } from '../../browser/grid-host-page.ts';
import { inGrid } from './persons-in-grid.ts';
import { savedValue } from './saved-cells.ts';

/** With A1 first 5, then 0, 6 and an error, as any spreadsheet answers. */
const ANSWERS: readonly (readonly [string, ...(boolean | number | string)[]])[] = [
  ['=2>1E-9', true, true, true, true],
  ['=2*1.50+1.0', 4, 4, 4, 4],
  ['=A1>0.50', true, false, true, '#DIV/0!'],
  ['=IF(A1>0.0000001,"some","none")', 'some', 'none', 'some', '#DIV/0!'],
  ['="0.50"&1.50', '0.501.5', '0.501.5', '0.501.5', '0.501.5'],
  ['=A1=5', true, false, false, '#DIV/0!'],
  ['=A1=0', false, true, false, '#DIV/0!'],
  ['=NOT(A1=0)', true, false, true, '#DIV/0!'],
  ['=NOT(A1=5)', false, true, true, '#DIV/0!'],
  ['=IF(NOT(A1=0),1/A1,"none")', 0.2, 'none', 1 / 6, '#DIV/0!'],
  ['=AND(A1>1,NOT(A1=5))', false, false, true, '#DIV/0!'],
  ['=OR(A1>5.50,A1=0)', false, true, true, '#DIV/0!'],
  ['=SUMPRODUCT((A1:A3=0)*1)', 0, 1, 0, '#DIV/0!'],
];
const SET = ['0', '6', '=1/0'];

export function testGridAnswers({ page, open, saved, settle }: GridPage): void {
  describe('A formula in the grid', () => {
    test('answers by what its cells hold now, however its numbers are spelled', async () => {
      const rows = ANSWERS.map(([formula], index) => [
        [5, 7, 8][index] ?? '',
        { formula, value: 0 },
      ]);
      await open(inGrid([{ name: 'Sums', rows }]));
      await page().evaluate(() => gridTest.blankAnswers());
      const answers = async (): Promise<unknown[]> => {
        await settle();
        const book = await saved();
        return ANSWERS.map((_, index) => savedValue(book, 'Sums', `B${index + 1}`));
      };
      const got = [await answers()];
      for (const given of SET) {
        await page().evaluate((value) => {
          const cell = gridTest.grid.book().getSheetByName('Sums')!.getRange('A1');
          cell.setValue(value.startsWith('=') ? { f: value } : Number(value));
        }, given);
        got.push(await answers());
      }
      expect(ANSWERS.map(([formula], index) => [formula, ...got.map((all) => all[index])])).toEqual(
        ANSWERS,
      );
    });
  });
}
