import { afterAll, beforeAll, expect, test } from '@jest/globals';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { clientFile, exportFile, shopFile } from '../../src/cli/files-of-plan.ts';
import { planInput, type InputPlanning } from '../../src/cli/plan-input.ts';
import { VERSION } from '../../src/core/version.ts';
import type { KeptTexts } from '../../src/hosts/workbook/kept-text.ts';
import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { NO_TICKS } from '../../src/planning/cut/cut-already.ts';
import { cutFromPlan, markCut } from '../../src/planning/cut/cut-from-plan.ts';
import { ticksOf } from '../../src/planning/compare/compare-plans.ts';
import { keepPlan, type PlanToKeep } from '../../src/planning/kept/keep-plan.ts';
import { readKeptPlan } from '../../src/planning/kept/read-kept-plan.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { describeInput } from '../../src/sheets/describe-input.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { paintTiny } from '../hosts/tiny-drawing.ts';
import { tablesOf } from '../planning/make-job.ts';

const TABLES = tablesOf({
  runs: 'Room,Run,Profile,Length\nHall,a,Base,60 1/8\nHall,b,Base,59 7/8\nHall,c,Base,59',
  shop: 'Setting,Value\nend allowance,0\nend trim,0\ncrosscut kerf,0\nhourly rate,0',
  stock: "For,Kind,Length,Price,Per\nBase,stick,10',20,piece",
});
const folder = mkdtempSync(join(tmpdir(), 'kept-input-'));
const QUICK = { effort: { seconds: 0 }, isSilent: true } as const;
let first: { plan: JobPlan; from: PlanToKeep };

/** A workbook of the inputs, of a plan's sheets, or of both. */
async function workbook(
  name: string,
  parts: { inputs?: boolean; plan?: JobPlan },
  texts: KeptTexts = {},
  tables = TABLES,
): Promise<string> {
  const inputs = parts.inputs === true ? describeInput(tables).sheets : [];
  const sheets = parts.plan === undefined ? [] : describePlan(parts.plan).sheets;
  const described = { ...describeInput(TABLES), sheets: [...inputs, ...sheets] };
  const path = join(folder, name);
  writeFileSync(path, await writeWorkbook(described, { paint: paintTiny, texts }));
  return path;
}

function planOf(planned: InputPlanning): { plan: JobPlan; from: PlanToKeep } {
  if (planned.plan === undefined) throw new Error(planned.faults.map((one) => one.message).join());
  const { plan, from } = planned;
  return { plan, from: { day: '2026-11-30', effort: { seconds: 0 }, ...from } };
}

const codes = ({ cautions }: JobPlan): string[] => cautions.map(({ code }) => code);

beforeAll(async () => {
  first = planOf(await planInput(await workbook('trim.xlsx', { inputs: true }), QUICK));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('The workbook that plan --out writes carries the plan: client and export are of that very plan', async () => {
  const path = join(folder, 'shop.xlsx');
  writeFileSync(path, await shopFile('--out', false).make(first.plan, first.from));
  const { plan } = planOf(await planInput(path, QUICK, true));
  expect(plan.totals).toEqual(first.plan.totals);
  expect(codes(plan)).toContain('plan.kept-used');
  // It has no inputs to be planned again.
  const again = await planInput(path, QUICK);
  expect(again).toMatchObject({ exit: 2 });
});

test('Hours that were written down since stand beside the kept plan, and their faults are told', async () => {
  const text = keepPlan(first.from, VERSION);
  const withHours = (hours: string) => [
    ...TABLES.filter(({ name }) => name !== 'Hours'),
    ...tablesOf({ hours }).filter(({ name }) => name === 'Hours'),
  ];
  const open = async (name: string, hours: string): Promise<InputPlanning> =>
    planInput(
      await workbook(name, { inputs: true }, { plan: text }, withHours(`Work,Hours\n${hours}`)),
      QUICK,
      true,
    );
  const { plan, from } = planOf(await open('hours.xlsx', 'crosscut,0:30\ncope,1'));
  expect(codes(plan)).toEqual(expect.arrayContaining(['plan.kept-used', 'job.hours-of-nothing']));
  expect(plan.job.hours.map(({ hours }) => hours)).toEqual([0.5, 1]);
  expect(plan.totals).toEqual(first.plan.totals);
  // Kept again, it is kept with them.
  const again = await readKeptPlan(keepPlan(from, VERSION), VERSION);
  expect(again.ok && again.value.plan.job.hours).toHaveLength(2);
  expect(await open('bad-hours.xlsx', 'crosscut,-1')).toMatchObject({
    exit: 2,
    faults: [{ code: 'number.not-positive', where: { sheet: 'Hours' } }],
  });
});

test('A plan of other inputs, of another version or damaged is not used: the job is planned, and it is said', async () => {
  const text = keepPlan(first.from, VERSION);
  const other = keepPlan({ ...first.from, fingerprint: 'other' }, VERSION);
  for (const [name, kept, said] of [
    ['same.xlsx', text, 'plan.kept-used'],
    ['old.xlsx', keepPlan(first.from, '0.0.1'), 'plan.kept-other-version'],
    ['torn.xlsx', text.slice(0, 99), 'plan.kept-damaged'],
    ['other.xlsx', other, 'plan.kept-damaged'],
  ] as const) {
    const path = await workbook(name, { inputs: true }, { plan: kept });
    const { plan } = planOf(await planInput(path, QUICK, true));
    expect(codes(plan)).toContain(said);
    expect(plan.totals).toEqual(first.plan.totals);
  }
});

test('What is ticked on the sheets of an input workbook stays cut', async () => {
  const text = keepPlan(first.from, VERSION);
  const ticked = markCut(first.plan, { ...NO_TICKS, sticks: new Set(['Base #1']) });
  const path = await workbook(
    'ticked.xlsx',
    { inputs: true, plan: ticked },
    { 'written-plan': text },
  );
  const { plan } = planOf(await planInput(path, QUICK));
  expect(plan.totals).toMatchObject({ sticks: 2, sticksCut: 1 });
  const [stick] = plan.profiles[0]!.sticks;
  expect(stick).toMatchObject({ id: 'Base #1', isCut: true });
});

test('Ticks stand in the last plan where it is the one that the sheets were written from', async () => {
  const text = keepPlan(first.from, VERSION);
  const ticked = markCut(first.plan, { ...NO_TICKS, sticks: new Set(['Base #1']) });
  const parts = { inputs: true, plan: ticked };
  const path = await workbook('both.xlsx', parts, { plan: text, 'written-plan': text });
  const { plan } = planOf(await planInput(path, QUICK, true));
  expect(codes(plan)).toContain('plan.kept-used');
  expect(plan.totals).toEqual({ ...first.plan.totals, sticksCut: 1 });
});

test('What was cut by a plan before is planned around, unless the input tells itself what is cut', async () => {
  const marked = markCut(first.plan, { ...NO_TICKS, sticks: new Set(['Base #2']) });
  const carried = { cut: cutFromPlan(marked, ticksOf(marked)), earlier: marked };
  const path = await workbook('changed.xlsx', { inputs: true });
  const { plan } = planOf(await planInput(path, QUICK, false, carried));
  const cutIn = ({ profiles }: JobPlan): string[] =>
    profiles.flatMap(({ sticks }) => sticks.flatMap(({ id, isCut }) => (isCut === true ? id : [])));
  expect(cutIn(plan)).toEqual(['Base #2']);
  const own = planOf(await planInput(join(folder, 'ticked.xlsx'), QUICK, false, carried));
  expect(cutIn(own.plan)).toEqual(['Base #1']);
});

test("The client's copy and the exports carry no plan, and no inputs", async () => {
  const client = unzipSync(await clientFile('--out').make(first.plan, first.from));
  const exported = unzipSync(await exportFile('--out').make(first.plan, first.from));
  for (const name of [...Object.keys(client), ...Object.keys(exported)]) {
    expect(name).not.toContain('customXml');
  }
  const shop = unzipSync(await shopFile('--out', false).make(first.plan, first.from));
  expect(Object.keys(shop)).toContain('customXml/item1.xml');
});
