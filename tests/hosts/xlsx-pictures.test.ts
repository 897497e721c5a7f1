import { describe, expect, test } from '@jest/globals';

import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { workbook } from './sample-workbook.ts';
import { paintTiny, TINY_DRAWING } from './tiny-drawing.ts';
import { readXlsxBack } from './read-xlsx.ts';

const many = (count: number, more = '') =>
  Array.from({ length: count }, (_, at) => ({
    at: `A${at + 1}`,
    drawing: { ...TINY_DRAWING, title: `Drawing ${at + 1}${more}` },
  }));
const rows = (count: number) => Array.from({ length: count }, () => ({ cells: [], height: 190 }));

describe('The pictures of a workbook', () => {
  test('are painted a few at a time, whatever sheets they stand on, and stay in their order', async () => {
    let [now, most] = [0, 0];
    const paint = async (): Promise<Uint8Array> => {
      now += 1;
      most = Math.max(most, now);
      // Later ones are done first.
      await new Promise((done) => setTimeout(done, 30 - (most + now)));
      now -= 1;
      return paintTiny();
    };
    const bytes = await writeWorkbook(
      workbook([
        { name: 'One', rows: rows(21), drawings: many(21) },
        { name: 'Other', rows: rows(17), drawings: many(17, ' again') },
      ]),
      { paint },
    );
    expect(most).toBe(4);
    const [one, other] = readXlsxBack(bytes).sheets;
    expect(one!.drawings.map(({ title }) => title)).toEqual(many(21).map((d) => d.drawing.title));
    expect(one!.drawings.map(({ at }) => at)).toEqual(many(21).map(({ at }) => at));
    expect(other!.drawings).toHaveLength(17);
  });

  test('are refused where one is painted as no PNG', async () => {
    let count = 0;
    const paint = (): Promise<Uint8Array> => {
      count += 1;
      return count === 9 ? Promise.resolve(new Uint8Array([1, 2, 3])) : paintTiny();
    };
    const one = workbook([{ name: 'One', rows: rows(21), drawings: many(21) }]);
    await expect(writeWorkbook(one, { paint })).rejects.toThrow(/painted as no PNG/u);
  });
});
