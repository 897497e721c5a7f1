import { describe, expect, test } from '@jest/globals';
import { parse } from 'csv-parse/sync';
import { exportPlan } from '../../src/exports/export-plan.ts';
import { writeList } from '../../src/exports/csv-list.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { planOf } from '../planning/make-job.ts';
import { HOSTILE_NAMES, JOBS } from '../sheets/sheet-jobs.ts';

type Row = Readonly<Record<string, string>>;

/** A list read back, each row by its headings. */
function listOf(plan: JobPlan, name: string): Row[] {
  const delimiter = plan.job.shop.decimalSign === ',' ? ';' : ',';
  const file = exportPlan(plan).find(({ path }) => path === `lists/${name}.csv`);
  return parse(file!.text, { bom: true, columns: true, delimiter });
}

function sum(rows: readonly Row[], heading: string): number {
  return rows.reduce((all, row) => all + Number(row[heading]?.replace(',', '.')), 0);
}

describe.each(Object.entries(JOBS))('lists of the job %s', (_, tables) => {
  const planned = planOf(tables);

  test('hold every piece once, and their lengths make up the net length', async () => {
    const plan = await planned;
    const { unit } = plan.job.shop;
    const pieces = listOf(plan, 'pieces');
    const live = pieces.filter(({ Done }) => Done === '');
    expect(pieces).toHaveLength(plan.pieces.length);
    expect(live).toHaveLength(plan.totals.pieces);
    const net = Number(plan.totals.lengthNet) * (unit === 'mm' ? 25.4 : 1);
    expect(sum(live, `Cut length (${unit})`)).toBeCloseTo(net, 6);
  });

  test('hold as many cuts, passes and cents as the plan has', async () => {
    const plan = await planned;
    const cuts = plan.profiles.flatMap(({ sticks }) => sticks.flatMap((stick) => stick.pieces));
    expect(listOf(plan, 'cuts')).toHaveLength(cuts.length);
    const passes = plan.profiles.flatMap(({ setUp }) => setUp?.passHeights ?? []);
    expect(listOf(plan, 'passes')).toHaveLength(passes.length);
    const { currency, priceCents } = plan.totals;
    expect(sum(listOf(plan, 'rooms'), `Price (${currency})`)).toBeCloseTo(priceCents / 100, 6);
    const kept = plan.profiles.flatMap(({ sticks }) => sticks.filter((one) => one.offcutKept));
    expect(listOf(plan, 'offcuts')).toHaveLength(kept.length);
    expect(listOf(plan, 'cautions')).toHaveLength(plan.cautions.length);
  });
});

describe('lists as CSV', () => {
  test('bring every name of a person through, and none of them as a formula', async () => {
    const plan = await planOf(JOBS['hostile']!);
    const rooms = listOf(plan, 'pieces').map((row) => row['Room']!);
    for (const name of HOSTILE_NAMES) {
      const guarded = /^[=+@-]/u.test(name) ? `'${name}` : name;
      expect(rooms).toContain(guarded);
    }
    const cells = exportPlan(plan)
      .filter(({ path }) => path.endsWith('.csv'))
      .flatMap(({ text }) => parse(text, { bom: true }).flat());
    const formulas = cells.filter((cell) => /^[=+@\t\r]|^-(?!\d)/u.test(cell));
    expect(formulas).toEqual([]);
  });

  test('give a number below 0 as a number, and a text that begins with a minus guarded', () => {
    const rows = [[-7.5, '-7.5', null, 0]];
    const { text } = writeList({ name: 'x', headings: ['a', 'b', 'c', 'd'], rows }, '.');
    expect(text).toBe("\uFEFFa,b,c,d\r\n-7.5,'-7.5,,0\r\n");
  });

  test('follow a decimal comma, with semicolons between the cells', () => {
    const { text } = writeList({ name: 'x', headings: ['a', 'b'], rows: [[1.25, 'x;y']] }, ',');
    expect(text).toBe('\uFEFFa;b\r\n1,25;"x;y"\r\n');
  });
});
