import { test } from '@jest/globals';
import { writeFileSync } from 'node:fs';
import { paintPng } from '../../../src/hosts/file/paint-png.ts';
import { writeWorkbook } from '../../../src/hosts/xlsx/write-workbook.ts';
import { describeLabels } from '../../../src/sheets/labels/labels-sheet.ts';
import { planOf } from '../../planning/make-job.ts';
import { DEMO, JOBS } from '../sheet-jobs.ts';
import { toPdf } from '../../hosts/printed-pages.ts';
import { LABEL_SHEETS } from '../../../src/planning/shop.ts';
test('look', async () => {
  const files: Record<string, Uint8Array> = {};
  const bases = { demo: DEMO, mm: JOBS['millimetres']!, comma: JOBS['comma']!, hostile: JOBS['hostile']!, sprung: JOBS['sprung']! };
  for (const labels of LABEL_SHEETS.slice(1)) for (const [name, tables] of Object.entries(bases)) {
    if (name !== 'demo' && name !== 'hostile' && labels !== 'a4 3 x 8' && labels !== 'letter 3 x 10') continue;
    const t0 = Date.now();
    const plan = await planOf({ ...tables, shop: `${(tables.shop ?? 'Setting,Value').trim()}\nlabels,${labels},,` });
    const t1 = Date.now();
    const sheet = describeLabels(plan)!;
    const key = `${name}-${labels.replaceAll(' ', '')}`;
    files[key] = await writeWorkbook({ version: 1, title: 'x', sheets: [sheet] }, { paint: paintPng });
    console.log(key, sheet.drawings!.length, files[key]!.length, t1 - t0, Date.now() - t1);
  }
  const pdfs = await toPdf(files);
  for (const [k, v] of Object.entries(pdfs)) writeFileSync(`/tmp/lab/${k}.pdf`, v);
}, 300000);
