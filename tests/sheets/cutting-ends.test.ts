import { beforeAll, describe, expect, test } from '@jest/globals';

import type { JobPlan } from '../../src/planning/job-plan.ts';
import { cleanDescription } from '../../src/sheets/grammar/check/clean-text.ts';
import { CHOICE, PICKS } from '../../src/sheets/cutting/cutting-columns.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { SheetDescription } from '../../src/sheets/grammar/description.ts';
import { planOf, type Tables } from '../planning/make-job.ts';
import { CROWNS } from './crowns.ts';
import { cutPieces, cutSticks } from './cut-rows.ts';
import { JOBS, rowWith, sheetOf, textsOf } from './sheet-jobs.ts';

const jobs: Readonly<Record<string, Tables>> = {
  demo: JOBS['demo']!,
  millimetres: JOBS['millimetres']!,
  crowns: CROWNS,
};
const made = new Map<string, { plan: JobPlan; sheet: SheetDescription }>();

beforeAll(async () => {
  for (const [name, tables] of Object.entries(jobs)) {
    const plan = await planOf(tables);
    made.set(name, { plan, sheet: sheetOf(cleanDescription(describePlan(plan)), 'Cutting') });
  }
});

const of = (name: string): { plan: JobPlan; sheet: SheetDescription } => made.get(name)!;

describe('The cutting sheet', () => {
  test('warns of short pieces, of the saw and of its own numbers before anything is cut', () => {
    for (const { sheet } of made.values()) {
      const texts = textsOf(sheet).slice(0, 45).join(' ');
      expect(texts).toContain('Read the manual of the saw that cuts to length first.');
      expect(texts).toContain('Never hold a short piece by hand');
      expect(texts).toContain(
        "Local codes and a qualified person's judgment stand above any number here.",
      );
    }
  });

  test('says how a molding lies: face up, a crown on its back, an off-center cove as ticked', () => {
    const lies = textsOf(of('crowns').sheet).flatMap((text) => /Lay it .*$/u.exec(text) ?? []);
    const leaning = 'On its back, miter from square and bevel from upright.';
    const level = "Miters from square; a cope's angle is the corner of its walls.";
    expect(lies.sort()).toEqual([
      `Lay it face up, deep side as ticked above. ${level}`,
      `Lay it face up. ${level}`,
      `Lay it flat on its back, face up, deep side as ticked above. ${leaning}`,
      `Lay it flat on its back, face up. ${leaning}`,
    ]);
  });

  test('has two boxes for the deep side above the sticks of each off-center cove, of no other', () => {
    const { sheet } = of('crowns');
    const boxes = sheet.rows.flatMap(({ cells }, row) =>
      cells[1]?.value === 'upper edge' ? [{ cells, row: row + 1 }] : [],
    );
    expect(boxes).toHaveLength(2);
    for (const { cells, row } of boxes) {
      const at = (column: Parameters<typeof CHOICE.start>[0]) => cells[CHOICE.start(column)];
      expect([at('tickUpper')?.style, at('tickLower')?.style, at('lower')?.value]).toEqual([
        'tick',
        'tick',
        'lower edge',
      ]);
      const name = /every stick of (\w+) the same/u.exec(String(at('words')?.value))?.[1];
      const next = cutSticks(sheet).find((stick) => stick.row > row);
      expect(next?.id).toBe(`${name} #1`);
    }
  });

  test('says both angles of a crown where its end is cut, of other ends one from square', () => {
    const { sheet, plan } = of('crowns');
    const marks = new Map(plan.pieces.map(({ id, mark }) => [mark, id]));
    const ends = new Map(
      cutPieces(sheet).map(({ mark, left, right }) => [marks.get(mark) ?? mark, [left, right]]),
    );
    // By hand [D]: spring 38; inside 90: tan miter = sin 38 / tan 45, sin bevel = cos 38 cos 45; round an
    // outside corner of 135: tan miter = sin 38 / tan 67.5, sin bevel = cos 38 cos 67.5. The first two stand
    // in saw makers' charts, 31.62 and 33.86 [P].
    expect(ends.get('Hall / north / 1')).toEqual([
      '◥ miter 31.62° bevel 33.86°',
      '◣ miter 14.31° bevel 17.55°',
    ]);
    expect(ends.get('Hall / south / 1')).toEqual(['◥ cope 90°', '◣ return 45°']);
    expect(ends.get('Hall / west / 1')).toEqual(['▐ square', '◤ miter 31.62° bevel 33.86°']);
  });

  test('shows the scarf of a spliced piece at each joint, long at the face on one side alone', () => {
    const parts = cutPieces(of('millimetres').sheet).filter(({ mark }) => mark.includes(', part '));
    expect(parts.map(({ mark }) => mark).sort()).toEqual([
      'R1-2, part 1',
      'R1-2, part 2',
      'R1-2, part 3',
    ]);
    const [first, middle, last] = [1, 2, 3].map((number) =>
      parts.find(({ mark }) => mark === `R1-2, part ${number}`)!,
    );
    // The part before a joint runs long at the back there, the one after it at the face.
    expect([first!.right, middle!.left, middle!.right, last!.left]).toEqual([
      '◤ scarf 45°',
      '◢ scarf 45°',
      '◤ scarf 45°',
      '◢ scarf 45°',
    ]);
    expect([first!.left, last!.right]).toEqual(['◥ cope 90°', '◣ miter 45°']);
  });

  test('names every stick and board by a letter of its row of Stock and its number', () => {
    const { sheet } = of('demo');
    const named = cutSticks(sheet).map(({ which }) => /^([A-Z]+\d+)(?:\/\d+)?$/u.exec(which));
    expect(named.every((found) => found !== null)).toBe(true);
    const from = rowWith(sheet, 'Pull from the rack, and buy');
    const until = sheet.rows.findIndex(
      ({ cells }, row) => row > from && cells[0]?.style === 'section',
    );
    const chalked = sheet.rows
      .slice(from, until)
      .flatMap(({ cells }) =>
        cells[PICKS.start('numbers')]?.style === 'row'
          ? [String(cells[PICKS.start('numbers')]!.value)]
          : [],
      )
      .join(', ')
      .replace(/([A-Z]+)(\d+) to [A-Z]+(\d+)/gu, (_, letter: string, first, last) =>
        Array.from(
          { length: Number(last) - Number(first) + 1 },
          (__, at) => `${letter}${Number(first) + at}`,
        ).join(', '),
      );
    const listed = new Set(chalked.split(/, | and /u));
    expect([...new Set(named.map((found) => found![1]!))].sort()).toEqual([...listed].sort());
  });
});
