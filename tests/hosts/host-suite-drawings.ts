/** The part of the hosts' suite about drawings. */
import { expect, test } from '@jest/globals';

import type { WrittenAndRead } from './host-suite.ts';
import { workbook } from './sample-workbook.ts';
import { TINY_DRAWING } from './tiny-drawing.ts';

export function testDrawings({ write, through }: WrittenAndRead): void {
  test('puts drawings at their cells as pictures, at their true size, with a text alternative', async () => {
    const columns = [{ width: 10 }, { width: 31.5 }, { width: 12 }];
    const rows = [18, 40.5, 15, 30].map((height) => ({ cells: [], height }));
    const tall = { ...TINY_DRAWING, title: 'Table', alt: 'A table.', width: 66.2, height: 181.3 };
    const view = await through(
      workbook([
        {
          name: 'Drawn',
          columns,
          rows,
          drawings: [
            { at: 'B2', drawing: TINY_DRAWING },
            { at: 'A4', drawing: tall },
          ],
        },
        { name: 'Plain', rows: [{ cells: [{ value: 1 }] }] },
        { name: 'Again', columns, rows, drawings: [{ at: 'A1', drawing: TINY_DRAWING }] },
      ]),
    );
    // Half a percent of the size is what may be lost on the way.
    const drawn = view.sheets.map(({ drawings }) =>
      drawings.map(({ widthMm, heightMm, ...rest }) => ({
        ...rest,
        sizeIsTrue: [
          Math.abs(widthMm / (rest.title === 'Table' ? 66.2 : 127) - 1) < 0.005,
          Math.abs(heightMm / (rest.title === 'Table' ? 181.3 : 63.5) - 1) < 0.005,
        ],
      })),
    );
    const { title, alt } = TINY_DRAWING;
    const good = { isPng: true, sizeIsTrue: [true, true] };
    expect(drawn).toEqual([
      [
        { at: 'B2', title, alt, ...good },
        { at: 'A4', title: 'Table', alt: 'A table.', ...good },
      ],
      [],
      [{ at: 'A1', title, alt, ...good }],
    ]);
  });

  test('refuses a drawing that can not be drawn', async () => {
    const drawing = { ...TINY_DRAWING, width: NaN, alt: ' ' };
    const bad = workbook([{ name: 'Drawn', drawings: [{ at: 'A1:B2', drawing }] }]);
    await expect(write(bad)).rejects.toThrow(/can not be at "A1:B2".*text alternative.*NaN/);
    await expect(write(bad)).rejects.toThrow(RangeError);
  });
}
