import { expect, test } from '@jest/globals';

import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { differingFormulas, libreOfficeIsHere, recalculate } from '../hosts/libreoffice.ts';
import { readXlsxBack } from '../hosts/read-xlsx.ts';
import { paintTiny } from '../hosts/tiny-drawing.ts';
import { planOf } from '../planning/make-job.ts';
import { JOBS } from './sheet-jobs.ts';

const here = libreOfficeIsHere();
const mustRun = here || process.env['CI'] !== undefined;
if (!mustRun) console.info('Skipped: LibreOffice (soffice) is not installed on this machine.');

(mustRun ? test : test.skip)(
  'LibreOffice recalculates every formula of a plan to what stands in it',
  async () => {
    // Where CI lacks it, this fails: a check that can't run there is no check.
    expect(here).toBe(true);
    const files: Record<string, Uint8Array> = {};
    for (const [name, tables] of Object.entries(JOBS)) {
      files[name] = await writeWorkbook(describePlan(await planOf(tables)), { paint: paintTiny });
    }
    const saved = await recalculate(files);
    for (const [name, bytes] of Object.entries(files)) {
      const { compared, differing } = differingFormulas(
        readXlsxBack(bytes),
        readXlsxBack(saved[name]!, false),
      );
      expect([name, differing]).toEqual([name, []]);
      expect(compared).toBeGreaterThan(20);
    }
  },
  120_000,
);
