import { describe, expect, test } from '@jest/globals';

import { computeCut } from '../../src/core/cove/cut.ts';
import { layOutRails } from '../../src/core/cove/rails.ts';
import { toDegrees } from '../../src/core/units/angle.ts';
import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import {
  DESCRIPTION_VERSION,
  type WorkbookDescription,
} from '../../src/sheets/grammar/description.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import {
  describeFormulas,
  describeSetUpFormulas,
  FORMULAS_SHEET,
  type FormulaCove,
} from '../../src/sheets/formulas/set-up-formulas.ts';
import { MANUAL_CAUTION, TRIAL_CAUTION } from '../../src/sheets/words/standing-cautions.ts';
import { libreOfficeIsHere, recalculate } from '../hosts/libreoffice.ts';
import { readXlsxBack } from '../hosts/read-xlsx.ts';
import { FakeExcel } from '../hosts/excel-fake/fake-excel.ts';
import { hostOf, valueOf, writtenSheets } from '../hosts/excel-workbooks.ts';
import { planOf } from '../planning/make-job.ts';
import {
  AGAINST,
  APPROACH,
  blocksOf,
  FIRM,
  recalculatedOtherwise,
  rowsDescribed,
  rowsRead,
  SAID,
  SIZE_LABELS,
  TILT,
  typeOver,
  type Block,
} from './formula-blocks.ts';
import { RANDOM_FLATS, randomCoves, TABLE, type RandomCove } from './formula-coves.ts';
import { JOBS } from './sheet-jobs.ts';
import { count } from '../deep.ts';

const here = libreOfficeIsHere();
const mustRun = here || process.env['CI'] !== undefined;
const office = mustRun ? test : test.skip;
const MM = 25.4;
const OFFICE_MS = 240_000;

type Side = 'left' | 'right';
type Unit = 'in' | 'mm';

function workbookOf(
  coves: readonly FormulaCove[],
  unit: Unit,
  tiltSide: Side = 'left',
): WorkbookDescription {
  const sheets = describeFormulas(coves, { paper: 'letter', unit, decimalSign: '.', tiltSide });
  return { version: DESCRIPTION_VERSION, title: 'Formulas', sheets };
}

function numberOf(block: Block, label: string): number {
  const value = block.get(label)?.[0];
  if (typeof value !== 'number') throw new Error(`${label}: ${String(value)}`);
  return value;
}

/** To the right of the blade line, negative to the left. */
function markOf(block: Block, label: string): number {
  const side = block.get(label)?.[2];
  const hand = /^left of the blade line/u.test(String(side)) ? -1 : 1;
  return hand * numberOf(block, label);
}

/** What differs from the core by more than 1e-6 of a degree or of an inch. */
function missesOf(
  blocks: readonly Block[],
  coves: readonly RandomCove[],
  unit: Unit,
  tiltSide: Side,
): string[] {
  const perInch = unit === 'mm' ? MM : 1;
  expect(blocks).toHaveLength(coves.length);
  return coves.flatMap(({ cove, blade, setting }, at) => {
    const block = blocks[at]!;
    const { approach, tilt } = setting;
    const cut = computeCut(blade, setting);
    const { near, far, spacing } = layOutRails(approach, cut, RANDOM_FLATS, TABLE, tiltSide);
    const lengths = {
      'Highest tooth above table, last pass': setting.height,
      'Flat by the near rail': RANDOM_FLATS.near,
      'Flat by the far rail': RANDOM_FLATS.far,
      'Between the faces of the rails': spacing,
      'What this setting cuts: width': cove.width,
      'What this setting cuts: off-center': cove.offCenter,
      'What this setting misses of them': 0,
    };
    const marks = {
      'Near rail, front edge': near.front.fromBlade,
      'Near rail, back edge': near.back.fromBlade,
      'Far rail, front edge': far.front.fromBlade,
      'Far rail, back edge': far.back.fromBlade,
    };
    const apart = [
      ['approach', numberOf(block, APPROACH) - toDegrees(approach)],
      ['edge', numberOf(block, 'Approach, degrees from the front edge') + toDegrees(approach) - 90],
      ['tilt', numberOf(block, TILT) - toDegrees(tilt)],
      ...Object.entries(lengths).map(
        ([label, inches]) =>
          [label, numberOf(block, `${label} (${unit})`) / perInch - inches] as const,
      ),
      ...Object.entries(marks).map(
        ([label, inches]) =>
          [label, markOf(block, `${label} (${unit})`) / perInch - inches] as const,
      ),
    ] as const;
    const missed = apart.filter(([, by]) => !(Math.abs(by) < 1e-6));
    return missed.map(([what, by]) => `${at} ${what} by ${by}: ${JSON.stringify(cove)}`);
  });
}

const RANDOM_COVES = count(500);
/** Of each unit. */
const HALF = RANDOM_COVES / 2;
const BY_ARITHMETIC = count(1_500);
const TYPED_OVER = count(40);

describe(`${RANDOM_COVES} random set-ups by formula`, () => {
  const jobs = [
    { name: 'inches', unit: 'in', side: 'left', coves: randomCoves(HALF, 1) },
    { name: 'metric', unit: 'mm', side: 'right', coves: randomCoves(HALF, 2, MM, 'right') },
  ] as const;

  office(
    'recalculated by LibreOffice are the solver’s to 1e-6, and to 1e-9 what we wrote',
    async () => {
      expect(here).toBe(true);
      const described: Record<string, WorkbookDescription> = {};
      const written: Record<string, Uint8Array> = {};
      for (const { name, unit, side, coves } of jobs) {
        const blocks = coves.map(({ block }) => block);
        described[name] = workbookOf(blocks, unit, side);
        written[name] = await writeWorkbook(described[name]);
      }
      const saved = await recalculate(written);
      for (const { name, unit, side, coves } of jobs) {
        const now = readXlsxBack(saved[name]!, false);
        const blocks = blocksOf(rowsRead(now));
        expect(missesOf(blocks, coves, unit, side)).toEqual([]);
        expect(new Set(blocks.map((block) => block.get(SAID)![0]))).toEqual(new Set([FIRM]));
        expect(new Set(blocks.map((block) => block.get(AGAINST)![0]))).toEqual(
          new Set(['as planned']),
        );
        const { compared, differing } = recalculatedOtherwise(described[name]!, now);
        expect(differing.slice(0, 5)).toEqual([]);
        // Thirty-two quantities of thirteen steps each, and the results.
        expect(compared).toBeGreaterThan(HALF * 400);
      }
    },
    OFFICE_MS,
  );

  office(
    'follow when the sizes of another cove are typed over them, and say that the plan is another',
    async () => {
      const planned = randomCoves(TYPED_OVER, 3, MM);
      const typed = randomCoves(TYPED_OVER, 4, MM);
      const description = typeOver(
        workbookOf(
          planned.map(({ block }) => block),
          'mm',
        ),
        typed.map(({ block }) =>
          Object.fromEntries(
            Object.entries(SIZE_LABELS).map(([key, label]) => [
              label,
              block.sizes[key as keyof typeof SIZE_LABELS] ?? null,
            ]),
          ),
        ),
      );
      const saved = await recalculate({ typed: await writeWorkbook(description) });
      const blocks = blocksOf(rowsRead(readXlsxBack(saved['typed']!, false)));
      expect(missesOf(blocks, typed, 'mm', 'left')).toEqual([]);
      for (const block of blocks) {
        expect(block.get(AGAINST)![0]).toMatch(/^differs from the plan: .* Plan again/u);
      }
    },
    OFFICE_MS,
  );
});

test.each([
  [BY_ARITHMETIC, 'deepest line'],
  [BY_ARITHMETIC / 5, 'blade middle'],
] as const)(
  'the arithmetic of the formulas finds %d more random set-ups to the %s as the solver does',
  (many, to) => {
    const coves = randomCoves(many, 5, 1, 'left', to);
    for (let first = 0; first < coves.length; first += 500) {
      const some = coves.slice(first, first + 500);
      const description = workbookOf(
        some.map(({ block }) => block),
        'in',
      );
      const blocks = blocksOf(rowsDescribed(description));
      expect(missesOf(blocks, some, 'in', 'left')).toEqual([]);
      expect(blocks.filter((block) => block.get(AGAINST)![0] !== 'as planned')).toEqual([]);
    }
  },
);

describe('In a plan’s workbook', () => {
  test('the sheets come last, and only where they are asked for and coves are cut', async () => {
    const plan = await planOf(JOBS['demo']!);
    const names = (keepsFormulas: boolean): string[] =>
      describePlan(plan, { keepsFormulas }).sheets.map(({ name }) => name);
    expect(names(false)).not.toContain(FORMULAS_SHEET);
    expect(names(true)).toEqual([...names(false), FORMULAS_SHEET, 'Formula steps']);
    const bought = await planOf(JOBS['tiny']!);
    const described = describePlan(bought, { keepsFormulas: true });
    expect(described.sheets.map(({ name }) => name)).not.toContain(FORMULAS_SHEET);
  });

  test('each cove has a page of its own, with the saw’s manual and a trial cut named on it', async () => {
    const plan = await planOf(JOBS['demo']!);
    const [sheet] = describeSetUpFormulas(plan);
    const coves = plan.profiles.filter(({ setUp }) => setUp !== undefined);
    const ends = [...sheet!.print.breaksAfter!, sheet!.rows.length];
    expect(ends).toHaveLength(coves.length);
    coves.forEach(({ profile }, at) => {
      const rows = sheet!.rows.slice(ends[at - 1] ?? 0, ends[at]);
      const words = rows.map(({ cells }) => cells[0]?.value);
      expect(words).toEqual(expect.arrayContaining([profile.name, MANUAL_CAUTION, TRIAL_CAUTION]));
    });
  });

  test('an upright blade is not said to lean, and a centered cove has no deep side', async () => {
    const plan = await planOf(JOBS['demo']!);
    const [sheet] = describeSetUpFormulas(plan);
    const coves = plan.profiles.flatMap(({ setUp }) => (setUp === undefined ? [] : [setUp]));
    expect(new Set(coves.map(({ setting }) => setting.tilt > 0))).toEqual(new Set([true, false]));
    const ends = [0, ...sheet!.print.breaksAfter!, sheet!.rows.length];
    coves.forEach(({ setting }, at) => {
      const rows = sheet!.rows.slice(ends[at], ends[at + 1]);
      const words = rows.map(({ cells }) => String(cells[4]?.value ?? '')).join('\n');
      const leans = setting.tilt > 0;
      expect(words.includes('blade leans left, feed left to right')).toBe(leans);
      expect(words.includes('blade upright, feed left to right')).toBe(!leans);
      expect(words.includes('the deep side lies toward the far rail')).toBe(leans);
    });
  });

  test('Excel gets the same formulas as a file does', async () => {
    const sheets = describeSetUpFormulas(await planOf(JOBS['demo']!));
    const description = { version: DESCRIPTION_VERSION, title: 'Formulas', sheets } as const;
    const fake = new FakeExcel();
    fake.addSheet('Notes');
    const written = await hostOf(fake).write(description, { owner: 'tool', replace: [] });
    const inExcel = writtenSheets(fake, valueOf(written).sheets);
    const inFile = readXlsxBack(await writeWorkbook(description));
    for (const name of [FORMULAS_SHEET, 'Formula steps']) {
      const [one, other] = [inExcel, inFile].map(({ sheets }) =>
        Object.entries(sheets.find((sheet) => sheet.name === name)!.cells).flatMap(
          ([at, { formula }]) => (formula === null ? [] : [[at, formula] as const]),
        ),
      );
      expect(one!.length).toBeGreaterThan(50);
      expect(new Map(one)).toEqual(new Map(other));
    }
  });

  test('each cove that is cut has a block, whose numbers are as planned', async () => {
    let coves = 0;
    for (const [name, job] of Object.entries(JOBS)) {
      const plan = await planOf(job);
      const cut = plan.profiles.filter(({ setUp }) => setUp !== undefined);
      const blocks = blocksOf(
        cut.length === 0 ? [] : rowsDescribed(describePlan(plan, { keepsFormulas: true })),
      );
      expect([name, blocks.map((block) => block.get(AGAINST)![0])]).toEqual([
        name,
        cut.map(() => 'as planned'),
      ]);
      cut.forEach(({ setUp }, at) => {
        const approach = toDegrees(setUp!.setting.approach);
        expect(numberOf(blocks[at]!, APPROACH)).toBeCloseTo(approach, 9);
        expect(numberOf(blocks[at]!, 'Passes')).toBe(setUp!.passHeights.length);
      });
      coves += cut.length;
    }
    expect(coves).toBeGreaterThan(5);
  });
});
