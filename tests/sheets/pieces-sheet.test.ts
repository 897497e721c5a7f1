import { beforeAll, describe, expect, test } from '@jest/globals';

import { parseLength } from '../../src/core/units/length.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { cleanDescription, cleanText } from '../../src/sheets/grammar/check/clean-text.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import { planOf } from '../planning/make-job.ts';
import { JOBS, listedPieces, PIECES_AT, rowWith, sheetOf } from './sheet-jobs.ts';

const plans = new Map<string, { plan: JobPlan; workbook: WorkbookDescription }>();

beforeAll(async () => {
  for (const [name, tables] of Object.entries(JOBS)) {
    const plan = await planOf(tables);
    plans.set(name, { plan, workbook: cleanDescription(describePlan(plan)) });
  }
});

describe.each(Object.keys(JOBS))('The pieces of the job “%s”', (name) => {
  test('are listed once each, numbered, with the length as planned: a number, or words where it is done', () => {
    const { plan, workbook } = plans.get(name)!;
    const { unit } = plan.job.shop;
    const rows = listedPieces(workbook);
    const key = (...words: unknown[]): string => JSON.stringify(words);
    const byName = new Map(rows.map((row) => [key(row.room, row.run, row.piece), row]));
    expect(rows).toHaveLength(plan.pieces.length);
    expect(byName.size).toBe(rows.length);
    for (const piece of plan.pieces) {
      // A return piece's id ends with its side: `1 return left`.
      const number = piece.kind === 'run' ? piece.number : piece.id.split(' / ').at(-1);
      const row = byName.get(key(cleanText(piece.room), cleanText(piece.run), number));
      expect(row?.profile).toBe(piece.profile);
      const inUnit = unit === 'mm' ? piece.cutLength.mul(127, 5) : piece.cutLength;
      const read = parseLength(row?.length, 'length', plan.job.shop);
      if (piece.done) expect(read.ok && read.value.equals(piece.cutLength)).toBe(true);
      else expect(row?.length).toBe(Number(inUnit));
      expect(row?.off).toBe(piece.done ? null : 0);
      expect(row?.mark).toBe(piece.done ? 'done' : null);
    }
    expect(rows.map(({ no }) => no)).toEqual(rows.map((_, at) => at + 1));
  });

  test('count each in the line of its room and profile, done ones in none', () => {
    const { plan, workbook } = plans.get(name)!;
    for (const { line, room, profile, mark } of listedPieces(workbook)) {
      const counted = typeof line === 'number' ? plan.rooms[line - 1] : undefined;
      if (mark === 'done') expect(line).toBeNull();
      else expect([cleanText(counted!.room), counted!.profile]).toEqual([room, profile]);
    }
  });

  test('stand by room and profile, in a table with its headings in sight and on every page', () => {
    const { plan, workbook } = plans.get(name)!;
    const sheet = sheetOf(workbook, 'Pieces');
    const heads = rowWith(sheet, 'No.') + 1;
    const last = heads + plan.pieces.length;
    expect(sheet.tables).toEqual([{ name: 'Pieces', range: `A${heads}:N${last}` }]);
    expect(sheet.rows).toHaveLength(last);
    expect(sheet.freeze).toEqual({ rows: heads, columns: 0 });
    expect(sheet.print.titleRows).toEqual([heads, heads]);
    const lines = listedPieces(workbook).flatMap(({ line }) =>
      typeof line === 'number' ? [line] : [],
    );
    expect(lines).toEqual([...lines].sort((one, other) => one - other));
  });
});

test('A number is shown as a fraction only where that is exact', () => {
  const styleOf = (workbook: WorkbookDescription) =>
    sheetOf(workbook, 'Pieces').rows.at(-1)?.cells[PIECES_AT.length]?.style;
  expect(styleOf(plans.get('demo')!.workbook)).toBe('rowFraction');
  expect(styleOf(plans.get('decimals')!.workbook)).toBe('rowNumber');
  expect(styleOf(plans.get('millimetres')!.workbook)).toBe('rowNumber');
});
