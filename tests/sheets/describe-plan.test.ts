import { beforeAll, describe, expect, test } from '@jest/globals';

import type { JobPlan } from '../../src/planning/job-plan.ts';
import { soundRange } from '../../src/core/cells/cell-range.ts';
import { checkDescription } from '../../src/sheets/grammar/check/check-description.ts';
import { cleanDescription, cleanText } from '../../src/sheets/grammar/check/clean-text.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import { numberIn } from '../../src/sheets/words/print-length.ts';
import { JUDGMENT_CAUTION, standingCautions } from '../../src/sheets/words/standing-cautions.ts';
import { planOf, readTables } from '../planning/make-job.ts';
import { cutSticks } from './cut-rows.ts';
import {
  HOSTILE_NAMES,
  JOBS,
  listedPieces,
  numberAt,
  rowWith,
  sheetOf,
  textsOf,
} from './sheet-jobs.ts';
import { planSheets, type SomeSheet } from './sheet-names.ts';

const plans = new Map<string, { plan: JobPlan; workbook: WorkbookDescription }>();

beforeAll(async () => {
  for (const [name, tables] of Object.entries(JOBS)) {
    const plan = await planOf(tables);
    plans.set(name, { plan, workbook: cleanDescription(describePlan(plan)) });
  }
});

function planned(name: string): { plan: JobPlan; workbook: WorkbookDescription } {
  return plans.get(name)!;
}

/** The number in a cell of Office, or of another sheet: `K40` or `'Client'!F9`. */
function numberOf(workbook: WorkbookDescription, reference: string): number {
  const [, sheet = 'Office', at = ''] = /^(?:'(.+)'!)?([A-Z]+[0-9]+)$/u.exec(reference) ?? [];
  const { top, left } = soundRange(at);
  return numberAt(sheetOf(workbook, sheet), top, left);
}

// With either, a writer adds xml:space, which ECMA-376's schemas do not list.
test('No text of ours begins or ends with a space, or has a line end in it', () => {
  const texts = planned('demo').workbook.sheets.flatMap(textsOf);
  expect(texts.length).toBeGreaterThan(500);
  expect(texts.filter((text) => text !== text.trim() || text.includes('\n'))).toEqual([]);
});

describe.each(Object.keys(JOBS))('The plan workbook of the job “%s”', (name) => {
  test('has its sheets, outlines where coves are cut, and nothing that no workbook can hold', () => {
    const { plan, workbook } = planned(name);
    const names = workbook.sheets.map((sheet) => sheet.name);
    const isBought = ({ bought }: { bought: number }): boolean => bought > 0;
    const has: Readonly<Record<SomeSheet, boolean>> = {
      Outlines: plan.profiles.some(({ setUp }) => setUp !== undefined),
      Rooms: plan.job.walls.length > 0,
      Yard: plan.groups.some(({ stockUse }) => stockUse.some(isBought)),
    };
    const missing = (['Outlines', 'Rooms', 'Yard'] as const).filter((sheet) => !has[sheet]);
    expect(names).toEqual(planSheets(missing));
    expect(checkDescription(workbook)).toEqual([]);
  });

  test('says nowhere NaN, undefined, null or infinity', () => {
    const { workbook } = planned(name);
    const texts = workbook.sheets.flatMap(textsOf);
    expect(texts.length).toBeGreaterThan(50);
    expect(texts.filter((text) => /NaN|undefined|null|Infinity|\[object/u.test(text))).toEqual([]);
  });

  test('prints on the paper of the shop, no wider than a page, outlines at their true size', () => {
    const { plan, workbook } = planned(name);
    for (const { name: sheet, print } of workbook.sheets) {
      const fitWidth = sheet !== 'Outlines';
      expect([sheet, print]).toMatchObject([sheet, { paper: plan.job.shop.paper, fitWidth }]);
    }
  });

  test('cuts every piece, or all of its parts, on the cutting sheet as planned', () => {
    const { plan, workbook } = planned(name);
    const sheet = sheetOf(workbook, 'Cutting');
    const printed = new Map(cutSticks(sheet).map(({ id, pieces }) => [id, pieces]));
    const wanted = plan.profiles.flatMap(({ sticks }) => sticks);
    expect(printed.size).toBe(wanted.length);
    for (const { id, pieces } of wanted) {
      expect([
        id,
        printed.get(cleanText(id))?.map(({ mark, length }) => [mark.split(',')[0], length]),
      ]).toEqual([
        id,
        pieces.map(({ piece, length }) => [
          piece?.mark ?? 'spare',
          numberIn(length, plan.job.shop.unit),
        ]),
      ]);
    }
  });

  test('has sheets that agree with each other where Office compares them', () => {
    const { plan, workbook } = planned(name);
    const office = sheetOf(workbook, 'Office');
    const compared = (label: string): number[] => {
      const { cells } = office.rows[rowWith(office, label)]!;
      return [5, 7].map((column) => numberOf(workbook, cells[column]?.formula ?? ''));
    };
    const price = plan.totals.priceCents / 100;
    for (const value of compared('Price: here, and on Client')) expect(value).toBeCloseTo(price, 9);
    const { lengthBought } = plan.totals;
    const bought = numberIn(lengthBought, plan.job.shop.unit);
    const { unit } = plan.job.shop;
    const lengths = compared(
      `Stick lengths (${unit}): by profile on Production, and together on Cutting`,
    );
    for (const value of lengths) expect(value).toBeCloseTo(bought, 8);
  });

  test('uses the plainest functions alone, none of them ours, and no other file', () => {
    const { workbook } = planned(name);
    const formulas = workbook.sheets.flatMap((sheet) =>
      sheet.rows.flatMap(({ cells }) => cells.flatMap((cell) => cell?.formula ?? [])),
    );
    const functions = formulas.flatMap((formula) => formula.match(/[A-Z]+(?=\()/gu) ?? []);
    const plain =
      'SUM COUNT COUNTA ROUND INT MOD MAX IF IFERROR ABS SUMPRODUCT EXACT ISNUMBER SUMIF COUNTIF COUNTIFS INDEX MATCH'.split(
        ' ',
      );
    expect(formulas.length).toBeGreaterThan(20);
    expect([...new Set(functions)].filter((one) => !plain.includes(one))).toEqual([]);
    expect(formulas.filter((formula) => /[[\]]|_x/u.test(formula))).toEqual([]);
  });

  test('gives each cove a page of its own with every standing caution', () => {
    const { plan, workbook } = planned(name);
    const sheet = sheetOf(workbook, 'Set-ups');
    const coves = plan.profiles.filter((one) => one.setUp !== undefined);
    const sprung = plan.profiles.filter((one) => !one.setUp && one.profile.spring !== undefined);
    const texts = textsOf(sheet);
    // Corners of a crown may have a page of their own, under its name.
    const corners = texts.filter((text) => text.endsWith(', its corners'));
    expect(corners.length).toBeLessThanOrEqual(
      coves.filter(({ profile: { spring, slope } }) => spring !== undefined || slope !== undefined)
        .length,
    );
    const pages = Math.max(1, coves.length) + sprung.length + corners.length;
    expect(sheet.print.breaksAfter).toHaveLength(pages - 1);
    for (const caution of standingCautions('36"').filter((one) => !one.includes('36"'))) {
      const times = texts.filter((text) => text.includes(caution)).length;
      const more = caution === JUDGMENT_CAUTION ? corners.length : 0;
      expect([caution, times]).toEqual([caution, Math.max(1, coves.length) + more]);
    }
    if (coves.length === 0) {
      expect(texts).toContain('No cove is to be cut for this job, so there is nothing to set up.');
    }
  });
});

describe('The plan workbook', () => {
  test('keeps names that look like formulas, errors or criteria, each in its own room', () => {
    const { plan, workbook } = planned('hostile');
    const listed = listedPieces(workbook);
    for (const name of HOSTILE_NAMES) {
      const pieces = plan.pieces.filter((piece) => piece.room === name);
      expect(pieces.length).toBeGreaterThan(0);
      expect(listed.filter(({ room }) => room === name)).toHaveLength(pieces.length);
    }
    const client = sheetOf(workbook, 'Client');
    const rooms = ['Hall', 'HALL', 'hall'].map((room) => rowWith(client, room));
    expect(new Set(rooms).size).toBe(3);
  });

  test('names a profile that nobody uses once, as not used, and nothing else of it', () => {
    const { workbook } = planned('unused');
    const texts = workbook.sheets.flatMap(textsOf).filter((text) => text.includes('Ghost'));
    expect(texts).toEqual(['Not used: Crown, Ghost.']);
    expect(textsOf(sheetOf(workbook, 'Production'))).toContain('Done already: Casing.');
  });

  test('of no run is never made: the lack is a fault', () => {
    const { job, faults } = readTables({ runs: 'Room,Run,Profile,Length' });
    expect(job).toBeUndefined();
    expect(faults.map(({ message }) => message)).toEqual([
      'Runs has no rows. Fill in at least one.',
    ]);
  });

  test('says that nothing is left where every piece is done', () => {
    const { workbook } = planned('done');
    expect(textsOf(sheetOf(workbook, 'Production'))).toContain('Nothing is left to make.');
    expect(textsOf(sheetOf(workbook, 'Cutting'))).toContain('Nothing is left to cut.');
    expect(textsOf(sheetOf(workbook, 'Client'))).toContain('Everything listed is done already.');
  });

  test('says of no kept offcuts that there are none', () => {
    const { workbook, plan } = planned('tiny');
    const kept = plan.profiles.flatMap((one) => one.sticks.filter((stick) => stick.offcutKept));
    const texts = textsOf(sheetOf(workbook, 'Cutting'));
    expect(texts.filter((text) => text === 'none')).toHaveLength(kept.length === 0 ? 1 : 0);
  });

  test('is the same for the same plan', async () => {
    const again = describePlan(await planOf(JOBS['demo']!));
    expect(cleanDescription(again)).toEqual(planned('demo').workbook);
  });
});
