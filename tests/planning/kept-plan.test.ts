import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import { count } from '../deep.ts';
import { loadSolver } from '../cutting/solver.ts';
import { NO_TICKS } from '../../src/planning/cut/cut-already.ts';
import { cutFromPlan } from '../../src/planning/cut/cut-from-plan.ts';
import { fingerprint } from '../../src/planning/input/fingerprint.ts';
import { keepPlan, type KeptRecord } from '../../src/planning/kept/keep-plan.ts';
import { readKeptPlan } from '../../src/planning/kept/read-kept-plan.ts';
import type { PlanJobOptions } from '../../src/planning/job-planning.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { DEMO_FOLDER, folderTables, jobOf, tablesOf, type Tables } from './make-job.ts';
import { jobsThatShareStock } from './random-tables.ts';

const VERSION = '1.2.3';
const MADE = { day: '2026-11-30', effort: { steps: 3 } };

async function keep(tables: Tables, options: PlanJobOptions = {}) {
  const { plan } = await planJob(jobOf(tables), options);
  if (plan === undefined) return undefined;
  const raw = tablesOf(tables);
  const text = keepPlan({ plan, fingerprint: fingerprint(raw), tables: raw, ...MADE }, VERSION);
  return { plan, text };
}

async function codeOf(text: string, version = VERSION): Promise<string> {
  const read = await readKeptPlan(text, version);
  return read.ok ? 'read' : (read.faults[0]?.code ?? '');
}

test('A kept plan is the very plan again: pieces, sticks, hours and money, exact lengths and cautions', async () => {
  const tables = folderTables(DEMO_FOLDER);
  const kept = await keep(tables, { loadSolver, budget: { steps: 3 } });
  const read = await readKeptPlan(kept!.text, VERSION);
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join());
  expect(planToJson(read.value.plan)).toEqual(planToJson(kept!.plan));
  expect(read.value.plan.profiles).toEqual(kept!.plan.profiles);
  expect(read.value).toMatchObject({ fingerprint: fingerprint(tablesOf(tables)), ...MADE });
});

test('By chance: a plan and the one that follows after ticks are kept as they are', async () => {
  let kept = 0;
  await fc.assert(
    fc.asyncProperty(jobsThatShareStock, fc.boolean(), async (tables, isExact) => {
      const first = await keep(tables, isExact ? { loadSolver, budget: { steps: 8 } } : {});
      if (first === undefined) return;
      const read = await readKeptPlan(first.text, VERSION);
      expect(read).toMatchObject({ ok: true });
      if (read.ok) expect(read.value.plan.profiles).toEqual(first.plan.profiles);
      const sticks = first.plan.profiles.flatMap((one) => one.sticks.map(({ id }) => id));
      const ticked = new Set(sticks.filter((_, at) => at % 2 === 0));
      const cut = cutFromPlan(first.plan, { ...NO_TICKS, sticks: ticked });
      const next = await keep(tables, { cut, earlier: first.plan });
      const again = await readKeptPlan(next!.text, VERSION);
      expect(again).toMatchObject({ ok: true });
      if (again.ok) expect(planToJson(again.value.plan)).toEqual(planToJson(next!.plan));
      kept += 1;
    }),
    { numRuns: count(100, 20) },
  );
  expect(kept).toBeGreaterThan(5);
}, 120_000);

test('Another version, half a text, a changed figure and a forged answer are refused, each in words', async () => {
  const { text } = (await keep({}))!;
  expect(await codeOf(text)).toBe('read');
  expect(await codeOf(text, '1.2.4')).toBe('plan.kept-other-version');
  expect(await codeOf(text.slice(0, -5))).toBe('plan.kept-damaged');
  expect(await codeOf('')).toBe('plan.kept-damaged');
  expect(await codeOf('null')).toBe('plan.kept-damaged');
  expect(await codeOf(text.replace('Hall', 'Hull'))).toBe('plan.kept-damaged');
  // Whoever works the check out anew doesn't get a wrong plan past the other checks.
  const record = JSON.parse(text) as KeptRecord;
  const { hashText } = await import('../../src/core/hash-text.ts');
  const forge = (from: RegExp, to: string): string => {
    const plan = record.plan.replace(from, to);
    expect(plan).not.toBe(record.plan);
    return JSON.stringify({ ...record, plan, check: hashText(plan) });
  };
  expect(await codeOf(forge(/"costs":\[\d+/u, '"costs":[1'))).toBe('plan.kept-damaged');
  expect(await codeOf(forge(/"sticks":\[\[0,0,0/u, '"sticks":[[0,0,7'))).toBe('plan.kept-damaged');
  expect(await codeOf(forge(/"sticks":\[\[/u, '"sticks":[[9,'))).toBe('plan.kept-damaged');
  expect(await codeOf(forge(/"status":"\w+"/u, '"status":"never"'))).toBe('plan.kept-damaged');
  expect(await codeOf(forge(/"answers":.*$/u, '"answers":7}'))).toBe('plan.kept-damaged');
});

test('A plan of 10,000 pieces is kept in under 3 MB and read in seconds', async () => {
  const runs = Array.from({ length: 10_000 }, (_, at) => {
    const length = 20 + ((at * 7919) % 1300) / 8;
    return `Room ${at % 40},wall ${Math.floor(at / 40)},Base,${length}`;
  });
  const tables = { runs: ['Room,Run,Profile,Length', ...runs].join('\n') };
  const { plan, text } = (await keep(tables))!;
  expect(plan.totals.pieces).toBe(10_000);
  expect(text.length).toBeLessThan(3_000_000);
  const begun = performance.now();
  const read = await readKeptPlan(text, VERSION);
  const seconds = (performance.now() - begun) / 1000;
  expect(read.ok).toBe(true);
  expect(seconds).toBeLessThan(30);
  if (process.env['SAY_KEPT'] !== undefined) process.stdout.write(`${text.length} ${seconds}\n`);
}, 60_000);
