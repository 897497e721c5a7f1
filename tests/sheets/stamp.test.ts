import { beforeAll, describe, expect, test } from '@jest/globals';
import { strFromU8, unzipSync } from 'fflate';

import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { describeClientCopy } from '../../src/sheets/client/client-sheet.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { checkDescription } from '../../src/sheets/grammar/check/check-description.ts';
import { cleanDescription } from '../../src/sheets/grammar/check/clean-text.ts';
import { markOf, sayStamp, type Stamp } from '../../src/sheets/stamp.ts';
import { VERSION } from '../../src/core/version.ts';
import { paintTiny } from '../hosts/tiny-drawing.ts';
import { planOf } from '../planning/make-job.ts';
import { rowNamed } from './client-copies.ts';
import { JOBS, sheetOf, textsOf } from './sheet-jobs.ts';

const STAMP: Stamp = {
  fingerprint: '7f3a2b1ce5d40c96',
  day: '2026-11-30',
  effort: { steps: 2500 },
};
const SAID = `Inputs 7f3a2b1c, planned 30 Nov 2026 by Coveledger ${VERSION}, 2500 steps of search at most.`;

let plan: JobPlan;
beforeAll(async () => {
  plan = await planOf(JOBS['demo']!);
});

describe('A stamped workbook', () => {
  test('says in its pages’ footers and on Production of which inputs it is, when, by what and how long', () => {
    const workbook = cleanDescription(describePlan(plan, { stamp: STAMP, keepsFormulas: true }));
    expect(checkDescription(workbook)).toEqual([]);
    for (const { name, print } of workbook.sheets) {
      if (name === 'Client') continue;
      expect(print.footer).toContain(SAID);
      expect(print.footer.startsWith(`${name}. `) || name.includes('ormula')).toBe(true);
    }
    expect(textsOf(sheetOf(workbook, 'Production'))).toContain(SAID);
    expect(workbook.made).toBe('2026-11-30');
    expect(workbook.properties).toEqual({
      'Inputs fingerprint': STAMP.fingerprint,
      'Planned on': '2026-11-30',
      'Planned by': `Coveledger ${VERSION}`,
      'Search at most': '2500 steps',
    });
  });

  test('tells the client the day and a number, and of no search', () => {
    for (const workbook of [
      { sheets: [sheetOf(describePlan(plan, { stamp: STAMP }), 'Client')] },
      describeClientCopy(plan, STAMP),
    ]) {
      const [sheet] = workbook.sheets;
      expect(rowNamed(sheet!, 'Number').cells[1]?.value).toBe('7f3a2b1c');
      // 30 November 2026 in Excel's days, by hand: 46,022 (31 December 2025) and 334.
      expect(rowNamed(sheet!, 'Date').cells[1]?.value).toBe(46_356);
      expect(rowNamed(sheet!, 'This price holds until').cells[1]?.value).toBe(46_386);
      expect(textsOf(sheet!).join(' ')).not.toMatch(/e5d40c96|2500|search|Inputs/u);
    }
    expect(describeClientCopy(plan, STAMP).properties).toEqual({
      Number: '7f3a2b1c',
      Date: '2026-11-30',
    });
  });

  test('has its day in the file, and the same bytes each time; without a stamp it tells of no making', async () => {
    const write = (stamp?: Stamp): Promise<Uint8Array> =>
      writeWorkbook(describePlan(plan, stamp === undefined ? {} : { stamp }), { paint: paintTiny });
    const [one, again, none] = [await write(STAMP), await write({ ...STAMP }), await write()];
    expect(Buffer.from(one).equals(Buffer.from(again))).toBe(true);
    const core = (bytes: Uint8Array): string => strFromU8(unzipSync(bytes)['docProps/core.xml']!);
    expect(core(one).match(/2026-11-30T00:00:00Z/gu)).toHaveLength(2);
    expect(core(none)).not.toContain('2026');
    expect(strFromU8(unzipSync(none)['xl/worksheets/sheet1.xml']!)).not.toContain('Inputs');
  });

  test.each([
    [{ seconds: 0 }, '.', 'the quick plan alone'],
    [{ seconds: 20 }, '.', '20 s of search at most'],
    [{ seconds: 2.5 }, ',', '2,5 s of search at most'],
  ] as const)('says %j in the shop’s own signs', (effort, sign, said) => {
    expect(sayStamp({ ...STAMP, effort }, sign)).toContain(`, ${said}.`);
    expect(markOf(STAMP)).toHaveLength(8);
  });
});
