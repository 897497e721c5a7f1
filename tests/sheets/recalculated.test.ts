import { beforeAll, describe, expect, test } from '@jest/globals';

import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { PRICE_BASES, type PriceBasis } from '../../src/planning/settings/money-settings.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type {
  CellValue,
  SheetDescription,
  WorkbookDescription,
} from '../../src/sheets/grammar/description.ts';
import { differingFormulas, libreOfficeIsHere, recalculate } from '../hosts/libreoffice.ts';
import { readXlsxBack } from '../hosts/read-xlsx.ts';
import { paintTiny } from '../hosts/tiny-drawing.ts';
import type { WorkbookView } from '../hosts/workbook-view.ts';
import { planOf, type Tables } from '../planning/make-job.ts';
import { planCut, withLongerEnds } from './cut-plans.ts';
import { randomPlans } from './random-jobs.ts';
import { JOBS } from './sheet-jobs.ts';
import { count } from '../deep.ts';

const RANDOM_JOBS = count(50);
const here = libreOfficeIsHere();
const mustRun = here || process.env['CI'] !== undefined;
if (!mustRun) console.info('Skipped: LibreOffice (soffice) is not installed on this machine.');

/** Rates of the shop as the head of Office names them, and the same as settings of Shop. */
const OTHER_RATES: Readonly<Record<string, readonly [setting: string, value: number | string]>> = {
  'Hourly rate ($)': ['hourly rate', 71.25],
  'Overhead, % of the rest': ['overhead %', 9.5],
  'Margin, % of price': ['margin %', 22],
  'Contingency, % of cost': ['contingency %', 3.5],
  'Markup on material, %': ['material markup %', 18],
  'Markup on labor, %': ['labor markup %', 7.25],
  'Minimum charge ($)': ['minimum charge', 9000],
  'Delivery ($)': ['delivery', 84.5],
  'Price up to the next ($)': ['price rounding', 5],
  'Tax, %': ['tax %', 7.125],
  'Tax on: all, material, none': ['tax on', 'material'],
};

/** Kinds of work as Labor names them: as settings of Shop, and the minutes that these come to. */
const OTHER_MINUTES: Readonly<
  Record<string, readonly [setting: string, value: number, minutes: number]>
> = {
  'set up a cove': ['set-up minutes', 55, 55],
  'feed over the blade': ['feed', 4.5, 1 / 4.5],
  'carry round': ['handling per pass', 21, 21 / 60],
  smooth: ['smoothing minutes', 9.25, 9.25],
  crosscut: ['crosscut seconds', 61, 61 / 60],
};

/** What one takes typed over; lines take their minutes from there by formula. */
function withOtherMinutes(sheet: SheetDescription): SheetDescription {
  const rows = sheet.rows.map((row) => {
    const other = OTHER_MINUTES[String(row.cells[1]?.value)];
    if (other === undefined || row.cells[4]?.formula !== undefined) return row;
    const cells = row.cells.map((cell, at) => (at === 4 ? { ...cell, value: other[2] } : cell));
    return { ...row, cells };
  });
  return { ...sheet, rows };
}

function byBasis(tables: Tables, basis: PriceBasis): Tables {
  return { ...tables, shop: `${tables.shop?.trimEnd() ?? ''}\nprice basis,${basis},` };
}

/** The workbook with other rates typed into Office and Labor, all formulas and cached values left alone. */
function withOtherRates(workbook: WorkbookDescription): WorkbookDescription {
  const sheets = workbook.sheets.map((sheet) => {
    if (sheet.name === 'Labor') return withOtherMinutes(sheet);
    if (sheet.name !== 'Office') return sheet;
    const rows = sheet.rows.map((row) => {
      // A rate's label stands over two columns, and its value beside it.
      const cells = row.cells.map((cell, at) => {
        const rate = OTHER_RATES[String(row.cells[at - 2]?.value)];
        return rate === undefined ? cell : { ...cell, value: rate[1] };
      });
      return { ...row, cells };
    });
    return { ...sheet, rows };
  });
  return { ...workbook, sheets };
}

(mustRun ? describe : describe.skip)('LibreOffice', () => {
  const plans = new Map<string, JobPlan>();
  const written = new Map<string, WorkbookView>();
  const saved = new Map<string, WorkbookView>();
  const bases = new Map<PriceBasis, JobPlan>();

  beforeAll(async () => {
    // Where CI lacks it, this fails: a check that can't run there is no check.
    expect(here).toBe(true);
    for (const [name, tables] of Object.entries(JOBS)) plans.set(name, await planOf(tables));
    for (const [name, plan] of await randomPlans(RANDOM_JOBS)) plans.set(name, plan);
    plans.set('demo, begun', await planCut(JOBS['demo']!));
    plans.set('begun and changed', await planCut(JOBS['shared']!, withLongerEnds(JOBS['shared']!)));
    const files: Record<string, Uint8Array> = {};
    for (const [name, plan] of plans) {
      files[name] = await writeWorkbook(describePlan(plan), { paint: paintTiny });
    }
    for (const basis of PRICE_BASES) {
      const plan = await planOf(byBasis(JOBS['demo']!, basis));
      bases.set(basis, plan);
      const other = withOtherRates(describePlan(plan));
      files[`other-rates ${basis}`] = await writeWorkbook(other, { paint: paintTiny });
    }
    const recalculated = await recalculate(files);
    for (const [name, bytes] of Object.entries(files)) {
      written.set(name, readXlsxBack(bytes));
      saved.set(name, readXlsxBack(recalculated[name]!, false));
    }
  }, 240_000);

  test('recalculates every formula of named and random jobs to what stands in it', () => {
    let formulas = 0;
    for (const name of plans.keys()) {
      const { compared, differing } = differingFormulas(written.get(name)!, saved.get(name)!);
      expect([name, differing]).toEqual([name, []]);
      expect(compared).toBeGreaterThan(20);
      formulas += compared;
    }
    expect(formulas).toBeGreaterThan(5_000);
  });

  test('counts what is cut, and what of it is left over, on every sheet that tells of it', () => {
    for (const name of ['demo, begun', 'begun and changed']) {
      const { totals, profiles } = plans.get(name)!;
      const { sticks, sticksCut } = totals;
      const lengths = profiles.flatMap((one) => one.sticks.flatMap(({ pieces }) => pieces));
      const cut = lengths.filter(({ isCut }) => isCut).length;
      expect(sticksCut).toBeGreaterThan(1);
      expect(cut).toBeGreaterThan(sticksCut - 1);
      expect(lengths.some(({ unneeded }) => unneeded)).toBe(name === 'begun and changed');
      const said = `${sticksCut} of ${sticks} sticks cut or begun`;
      const textsOf = (sheet: string): unknown[] => {
        const { cells } = saved.get(name)!.sheets.find((one) => one.name === sheet)!;
        return Object.values(cells).flatMap(({ value }) => (value === null ? [] : [value]));
      };
      expect(textsOf('Cutting')).toContain(`${said}, ${cut} of ${lengths.length} lengths`);
      expect(textsOf('Client')).toContainEqual(
        expect.stringMatching(new RegExp(`pieces\\. ${said}\\.$`, 'u')),
      );
      const head = textsOf('Production');
      expect(head[head.indexOf('Sticks cut or begun') + 1]).toBe(`${sticksCut} of ${sticks}`);
      expect(head[head.indexOf('Lengths cut') + 1]).toBe(`${cut} of ${lengths.length}`);
    }
  });

  test('finds that all sheets of all of them agree', () => {
    for (const name of plans.keys()) {
      const verdictsOn = (on: string): unknown[] => {
        const { cells } = saved.get(name)!.sheets.find((sheet) => sheet.name === on)!;
        return Object.values(cells).flatMap(({ formula, value }) =>
          formula?.includes('"differs"') === true ? [value] : [],
        );
      };
      expect([name, ...verdictsOn('Production')]).toEqual([name, 'All sheets agree.']);
      const each = verdictsOn('Office');
      expect([name, ...each]).toEqual([name, ...each.map(() => 'agrees')]);
      expect([17, 18, 20, 21]).toContain(each.length);
    }
  });

  test.each(PRICE_BASES)(
    'comes to the prices of a job by other rates typed in, by the %s',
    async (basis) => {
      const { shop = '' } = byBasis(JOBS['demo']!, basis);
      const all = [...Object.values(OTHER_RATES), ...Object.values(OTHER_MINUTES)];
      const settings = all.map(([name, value]) => `${name},${value},`);
      const named = new Set(all.map(([name]) => name));
      const kept = shop.trim().split('\n');
      const others = kept.filter((line) => !named.has((line.split(',')[0] ?? '').toLowerCase()));
      expect(kept.length - others.length).toBeGreaterThan(8);
      const wanted = await planOf({ ...JOBS['demo']!, shop: [...others, ...settings].join('\n') });
      const plan = bases.get(basis)!;
      expect(wanted.totals.priceCents).not.toBe(plan.totals.priceCents);
      const { cells } = saved
        .get(`other-rates ${basis}`)!
        .sheets.find(({ name }) => name === 'Office')!;
      const beside = (label: string, column: string): CellValue | null => {
        const [at = ''] = Object.entries(cells).find(([, { value }]) => value === label) ?? [];
        return cells[`${column}${at.replace(/\D/gu, '')}`]?.value ?? null;
      };
      expect(beside('Hours', 'C')).toBeCloseTo(wanted.totals.hours, 9);
      expect(beside('Cost ($)', 'C')).toBeCloseTo(wanted.totals.costCents / 100, 9);
      expect(beside('Price ($)', 'C')).toBeCloseTo(wanted.totals.priceCents / 100, 9);
      const withTax = (wanted.totals.priceCents + wanted.totals.taxCents) / 100;
      expect(beside('Price with tax ($)', 'C')).toBeCloseTo(withTax, 9);
      // The client's price is what was offered: Office says that the two differ now.
      expect(beside('Price: here, and on Client', 'J')).toBe('differs');
      expect(beside('Price: by room, and by profile', 'J')).toBe('agrees');
      expect(beside('Hours: by room, and by profile', 'J')).toBe('agrees');
    },
  );
});
