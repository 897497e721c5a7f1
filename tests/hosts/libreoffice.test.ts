import { expect, test } from '@jest/globals';

import { readWorkbook } from '../../src/hosts/xlsx/read-workbook.ts';
import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { differingFormulas, libreOfficeIsHere, recalculate } from './libreoffice.ts';
import { readXlsxBack } from './read-xlsx.ts';
import { HOSTILE_TEXTS, richWorkbook, workbook } from './sample-workbook.ts';

const here = libreOfficeIsHere();
const mustRun = here || process.env['CI'] !== undefined;
if (!mustRun) console.info('Skipped: LibreOffice (soffice) is not installed on this machine.');

(mustRun ? test : test.skip)(
  'LibreOffice opens what is written, counts as we do, and what it saves is read as input',
  async () => {
    // Where CI lacks it, this fails: a check that can't run there is no check.
    expect(here).toBe(true);
    const rich = richWorkbook();
    const wrong = {
      ...rich,
      sheets: rich.sheets.map((sheet) => ({
        ...sheet,
        rows: sheet.rows.map((row) => ({
          ...row,
          cells: row.cells.map((cell) =>
            cell?.formula === undefined || typeof cell.value !== 'number'
              ? cell
              : { ...cell, value: cell.value + 1 },
          ),
        })),
      })),
    };
    const texts = workbook([
      {
        name: 'Runs',
        rows: [
          { cells: [{ value: 'Room' }, { value: 'Number' }] },
          ...HOSTILE_TEXTS.map((value, index) => ({ cells: [{ value }, { value: index / 4 }] })),
        ],
      },
    ]);
    const files = {
      rich: await writeWorkbook(rich),
      wrong: await writeWorkbook(wrong),
      texts: await writeWorkbook(texts),
    };
    const saved = await recalculate(files);

    const cached = readXlsxBack(files.rich);
    const counted = differingFormulas(cached, readXlsxBack(saved['rich']!));
    expect(counted).toEqual({ compared: 66, differing: [] });
    // It did recalculate: cached values that are off come back different, all of them.
    const off = differingFormulas(readXlsxBack(files.wrong), readXlsxBack(saved['wrong']!));
    expect(off.differing).toHaveLength(63);

    const read = await readWorkbook(saved['texts']!, 'texts.xlsx', ['Runs']);
    expect(read.ok && read.value[0]?.rows.map((row) => row.cells)).toEqual(
      HOSTILE_TEXTS.map((text, index) => [text, index / 4]),
    );
  },
  120_000,
);
