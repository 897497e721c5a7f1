import { beforeAll, describe, expect, test } from '@jest/globals';
import { parse } from 'csv-parse/sync';
import { boxAround } from '../../src/drawings/compose.ts';
import type { Shape } from '../../src/drawings/drawing.ts';
import { textBox } from '../../src/drawings/lettering.ts';
import { exportPlan } from '../../src/exports/export-plan.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { LABEL_SHEETS } from '../../src/planning/label-sheets.ts';
import type { Shop } from '../../src/planning/shop.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { checkDescription } from '../../src/sheets/grammar/check/check-description.ts';
import { cleanDescription } from '../../src/sheets/grammar/check/clean-text.ts';
import { columnPoints } from '../../src/sheets/grammar/page-size.ts';
import { describeLabels } from '../../src/sheets/labels/labels-sheet.ts';
import { listLabels } from '../../src/sheets/labels/list-labels.ts';
import { JUDGMENT_CAUTION } from '../../src/sheets/words/standing-cautions.ts';
import { count } from '../deep.ts';
import { planOf, readTables, type Tables } from '../planning/make-job.ts';
import { planCut } from './cut-plans.ts';
import { LABEL_MEASURES, withLabels } from './label-measures.ts';
import { randomPlans } from './random-jobs.ts';
import { JOBS } from './sheet-jobs.ts';

const LAYOUTS = LABEL_SHEETS.filter((one) => one !== 'none');

/** A stick of 16 ft, trimmed by 1 in at both ends; 60, 40 and 30 in and three cuts of 1/8 in leave 59 5/8 in. */
const BY_HAND: Tables = {
  runs: [
    'Room,Run,Profile,Length,Measured as,Left end,Right end',
    'Hall,north,Base,60,finished,cope,square',
    'Hall,south,Base,40,finished,inside miter,outside miter',
    'Den,east,Base,30,finished,square,square',
  ].join('\n'),
};

/** The plan as if its shop had chosen those labels. */
function choosing(plan: JobPlan, labels: Shop['labels']): JobPlan {
  return { ...plan, job: { ...plan.job, shop: { ...plan.job.shop, labels } } };
}

function textsOf(plan: JobPlan): string[] {
  return shapesOf(plan).flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
}

function shapesOf(plan: JobPlan): readonly Shape[] {
  return (describeLabels(plan)?.drawings ?? []).flatMap(({ drawing }) => drawing.shapes);
}

function listOf(plan: JobPlan): Record<string, string>[] {
  const delimiter = plan.job.shop.decimalSign === ',' ? ';' : ',';
  const file = exportPlan(plan).find(({ path }) => path === 'lists/labels.csv');
  return parse(file!.text, { bom: true, columns: true, delimiter });
}

describe('Labels of three pieces and an offcut', () => {
  test.each(LAYOUTS)('say what was reckoned by hand, on “%s”', async (labels) => {
    const texts = textsOf(await planOf(withLabels(BY_HAND, labels)));
    const whole = ['R1-1', '60"', '1524 mm', 'R1-2', '40"', '1016 mm', 'R2-1', '30"', '762 mm'];
    const kept = ['Keep', '59 5/8"', '1514.475 mm', 'Base #1 rest', 'rest of a stick'];
    for (const text of [...whole, ...kept]) {
      expect([text, texts.filter((one) => one === text).length]).toEqual([text, 1]);
    }
    expect(texts.filter((one) => one === 'up')).toHaveLength(3);
    expect(texts.filter((one) => one === 'left' || one === 'right')).toHaveLength(6);
    for (const text of ['cope, 90° corner', 'inside miter 45°', 'outside miter 45°']) {
      expect(texts.filter((one) => one === text)).toHaveLength(1);
    }
    const said = texts.join(' ');
    expect(said).toContain(JUDGMENT_CAUTION);
    expect(said).toContain('Labels 1 to 4 of 4, page 1 of 1. Print at 100 %.');
  });

  test('stand in a list, a row each, whatever Shop says', async () => {
    const rows = listOf(await planOf(BY_HAND));
    const brief = rows.map((row) => [row['Mark'], row['Length'], row['Length (in)']]);
    expect(brief.toSorted()).toEqual([
      ['Base #1 rest', '59 5/8"', '59.625'],
      ['R1-1', '60"', '60'],
      ['R1-2', '40"', '40'],
      ['R2-1', '30"', '30'],
    ]);
    const south = rows.find((row) => row['Mark'] === 'R1-2');
    expect(south).toMatchObject({
      Room: 'Hall',
      Run: 'south',
      'Left end': 'inside miter, 45° from square',
      'Left runs long': 'behind, or at the outer edge',
      'Right runs long': 'in front',
      'Arrow points to': 'up',
      From: 'Base #1',
    });
  });

  test('say millimetres alone where the shop does', async () => {
    const shop = 'Setting,Value\nunit,mm\nlabels,a4 3 x 7';
    const runs = 'Room,Run,Profile,Length,Measured as\nStube,Nord,Base,1200,finished';
    const plan = await planOf({ runs, shop });
    const marked = shapesOf(plan).flatMap((one) => (one.kind === 'text' && one.bold ? [one] : []));
    expect(marked.map(({ text }) => text)).toContain('1200 mm');
    // No tape of such a shop has inches.
    expect(textsOf(plan).filter((text) => text.includes('"'))).toEqual([]);
  });

  test('point to the outer edge of a casing', async () => {
    const openings = 'Room,Wall,Kind,Width,Height,Casing\nHall,,door,30,80,Casing';
    const plan = await planOf({ openings, shop: 'Setting,Value\nlabels,plain' });
    const arrows = textsOf(plan).filter((text) => text === 'outer edge' || text === 'up');
    expect(arrows.toSorted()).toEqual(['outer edge', 'outer edge', 'outer edge', 'up']);
    expect(textsOf(plan).some((text) => text.endsWith(', left leg'))).toBe(true);
  });
});

describe('The choice of labels', () => {
  test('is none unless Shop says otherwise', async () => {
    const plan = await planOf(BY_HAND);
    expect(describePlan(plan).sheets.map(({ name }) => name)).not.toContain('Labels');
    const chosen = describePlan(choosing(plan, 'plain'));
    expect(chosen.sheets.map(({ name }) => name)).toContain('Labels');
    expect(checkDescription(cleanDescription(chosen))).toEqual([]);
  });

  test('is read in any case, and what is no layout is asked about', () => {
    const of = (value: string) => readTables({ shop: `Setting,Value\nlabels,${value}` });
    expect(of('A4 3 x 8').job?.shop.labels).toBe('a4 3 x 8');
    expect(of('').job?.shop.labels).toBe('none');
    for (const typed of ['a4 3x8', '3 x 10']) {
      const { faults } = of(typed);
      expect(faults.map(({ message }) => message.includes('letter 3 x 10'))).toEqual([true]);
    }
    expect(of('a4 3x8').faults[0]!.message).toContain('Did you mean a4 3 x 8 or ');
  });

  test('brings no sheet where nothing is left to be labelled', async () => {
    const plan = await planOf(JOBS['done']!);
    expect(describeLabels(choosing(plan, 'plain'))).toBeUndefined();
  });
});

describe('Labels of jobs by chance', () => {
  let plans: ReadonlyMap<string, JobPlan>;
  beforeAll(async () => {
    const cut = await planCut(JOBS['demo']!);
    plans = new Map([
      ...(await randomPlans(count(60))),
      ['cut', cut],
      ['hostile', await planOf(JOBS['hostile']!)],
    ]);
  }, 120_000);

  test('are there once and only once for each length still to cut and each offcut to keep', () => {
    for (const [name, plan] of plans) {
      const labels = listLabels(plan);
      const pieces = labels.flatMap((one) => (one.kind === 'piece' ? [one] : []));
      const keys = pieces.map(({ piece, part }) => `${piece.id} ${part}`);
      expect([name, new Set(keys).size]).toEqual([name, keys.length]);
      // Counted from the pieces: each has the length that it is cut to, or parts that are more than it.
      const all = plan.profiles.flatMap(({ sticks }) => sticks.flatMap((stick) => stick.pieces));
      const isCut = new Set(all.filter((one) => one.isCut).map(({ id }) => id));
      for (const piece of plan.pieces) {
        const own = pieces.filter((one) => one.piece.id === piece.id);
        if (piece.done) expect(own).toEqual([]);
        else if (!isCut.has(piece.id)) {
          const sum = own.reduce((total, { length }) => total + Number(length), 0);
          expect(sum).toBeGreaterThanOrEqual(Number(piece.cutLength));
          if (own.length === 1) expect(sum).toBe(Number(piece.cutLength));
        } else if (own.length > 0) expect(own.every(({ part }) => part !== '')).toBe(true);
      }
      const kept = plan.profiles
        .flatMap(({ sticks }) => sticks)
        .filter(({ offcutKept, pieces: cut }) => offcutKept && !cut.every((one) => one.isCut));
      const blanks = plan.groups.flatMap(({ stockUse }) => stockUse.map((use) => use.unusedBlanks));
      const offcuts = labels.length - pieces.length;
      const most = kept.length + blanks.reduce((total, one) => total + one, 0);
      if (name === 'cut') expect(offcuts).toBeLessThanOrEqual(most);
      else expect([name, offcuts]).toEqual([name, most]);
      expect(listOf(plan)).toHaveLength(labels.length);
    }
  });

  test.each(LAYOUTS)('lie in their places on “%s”, each text within its label', (layout) => {
    const { paper, places } = LABEL_MEASURES[layout];
    for (const [name, plan] of plans) {
      const sheet = describeLabels(choosing(plan, layout));
      if (sheet === undefined) continue;
      const own = places(plan.job.shop.paper);
      const { start } = sheet.print;
      const [left, top] = [start!.left * 25.4, start!.top * 25.4];
      const wide = sheet.columns.reduce((sum, { width }) => sum + columnPoints(width), 0);
      const [paperWide, paperHigh] = paper(plan.job.shop.paper);
      expect(left + (wide / 72) * 25.4).toBeLessThan(paperWide);
      const breaks = [...(sheet.print.breaksAfter ?? []), sheet.rows.length];
      expect(breaks).toHaveLength(sheet.drawings!.length);
      sheet.drawings!.forEach(({ drawing }, page) => {
        const rows = sheet.rows.slice(breaks[page - 1] ?? 0, breaks[page]);
        const high = rows.reduce((sum, { height }) => sum + height!, 0) / 72;
        expect(high * 25.4).toBeGreaterThanOrEqual(drawing.height);
        expect(top + high * 25.4).toBeLessThan(paperHigh);
        expect((wide / 72) * 25.4).toBeGreaterThanOrEqual(drawing.width);
        const used = new Set<number>();
        for (const shape of drawing.shapes) {
          if (shape.kind === 'circle') throw new Error('No label has a circle.');
          const box = shape.kind === 'text' ? textBox(shape) : boxAround(shape.points);
          const isLine = shape.kind === 'path' && shape.stroke?.tone === 'faint';
          const isBeside =
            shape.kind === 'text' &&
            (shape.text.startsWith('Labels ') || shape.text.includes('face the molding'));
          if (isLine || (isBeside && layout !== 'a4 3 x 8')) continue;
          const [x, y] = [left, top];
          const at = own.findIndex(
            (label) =>
              box.left + x >= label.left + 1 &&
              box.right + x <= label.right - 1 &&
              box.top + y >= label.top &&
              box.bottom + y <= label.bottom,
          );
          expect([name, shape.kind === 'text' ? shape.text : 'path', at >= 0]).toEqual([
            name,
            shape.kind === 'text' ? shape.text : 'path',
            true,
          ]);
          used.add(at);
        }
        expect(used.size).toBeGreaterThan(0);
        // What isn't to be shortened never is.
        expect(
          drawing.shapes.some((one) => one.kind === 'text' && one.bold && one.text.includes('…')),
        ).toBe(false);
      });
    }
  });

  test('shorten long names with an ellipsis, the mark and the length never', () => {
    const plan = choosing(plans.get('hostile')!, 'letter 3 x 10');
    const texts = textsOf(plan);
    expect(texts.some((text) => text.startsWith('xxxx') && text.includes('…'))).toBe(true);
    for (const piece of plan.pieces) {
      expect(texts.filter((text) => text === piece.mark)).toHaveLength(1);
    }
  });
});
