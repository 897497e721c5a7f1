import { beforeAll, describe, expect, test } from '@jest/globals';

import { parseLength } from '../../src/core/units/length.ts';
import { plansOf, type JobPlan } from '../../src/planning/job-plan.ts';
import { checkDescription } from '../../src/sheets/check-description.ts';
import { cleanDescription } from '../../src/sheets/clean-text.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { WorkbookDescription } from '../../src/sheets/description.ts';
import { standingCautions } from '../../src/sheets/standing-cautions.ts';
import { planOf } from '../planning/make-job.ts';
import { cellAt, HOSTILE_NAMES, JOBS, numberAt, rowWith, sheetOf, textsOf } from './sheet-jobs.ts';

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

/** Rows of the piece list: id, text, number, mark. */
function listedPieces(workbook: WorkbookDescription) {
  const sheet = sheetOf(workbook, 'Production');
  const heads = rowWith(sheet, 'Piece');
  return sheet.rows.slice(heads + 1).flatMap(({ cells }) =>
    typeof cells[1]?.value === 'string'
      ? [
          {
            id: cells[0]?.value,
            profile: cells[1].value,
            text: String(cells[2]?.value),
            number: cells[3]?.value ?? null,
            mark: cells[10]?.value ?? null,
          },
        ]
      : [],
  );
}

// With either, a writer adds xml:space, which ECMA-376's schemas do not list.
test('No text of ours begins or ends with a space, or has a line end in it', () => {
  const texts = planned('demo').workbook.sheets.flatMap(textsOf);
  expect(texts.length).toBeGreaterThan(500);
  expect(texts.filter((text) => text !== text.trim() || text.includes('\n'))).toEqual([]);
});

describe.each(Object.keys(JOBS))('The plan workbook of the job “%s”', (name) => {
  test('has the four sheets and nothing that a workbook can not hold', () => {
    const { workbook } = planned(name);
    const names = workbook.sheets.map((sheet) => sheet.name);
    expect(names).toEqual(['Production', 'Set-ups', 'Cutting', 'Client']);
    expect(checkDescription(workbook)).toEqual([]);
  });

  test('says nowhere NaN, undefined, null or infinity', () => {
    const { workbook } = planned(name);
    const texts = workbook.sheets.flatMap(textsOf);
    expect(texts.length).toBeGreaterThan(50);
    expect(texts.filter((text) => /NaN|undefined|null|Infinity|\[object/u.test(text))).toEqual([]);
  });

  test('prints on the paper of the shop, no wider than a page', () => {
    const { plan, workbook } = planned(name);
    for (const { print } of workbook.sheets) {
      expect(print).toMatchObject({ paper: plan.job.shop.paper, fitWidth: true });
    }
  });

  test('lists every piece once, its length in words and as a number as planned', () => {
    const { plan, workbook } = planned(name);
    const { unit } = plan.job.shop;
    const rows = listedPieces(workbook);
    const byId = new Map(rows.map((row) => [row.id, row]));
    expect(rows).toHaveLength(plan.pieces.length);
    for (const piece of plan.pieces) {
      const row = byId.get(piece.id);
      expect(row?.profile).toBe(piece.profile);
      const read = parseLength(row?.text, 'printed', { unit, decimalSign: '.' });
      expect(read.ok && read.value.equals(piece.cutLength)).toBe(true);
      const inUnit = unit === 'mm' ? piece.cutLength.mul(127, 5) : piece.cutLength;
      expect(row?.number).toBe(piece.done ? null : Number(inUnit));
      expect(row?.mark).toBe(piece.done ? 'done' : null);
    }
  });

  test('cuts every piece, or all of its parts, on the cutting sheet as planned', () => {
    const { plan, workbook } = planned(name);
    const { unit } = plan.job.shop;
    const sheet = sheetOf(workbook, 'Cutting');
    const printed = sheet.rows.flatMap(({ cells }) =>
      cells[9]?.style === 'tick' ? [`${cells[1]?.value}: ${cells[2]?.value}`] : [],
    );
    const wanted = plan.groups
      .flatMap((group) => plansOf(plan, group))
      .flatMap(({ sticks }) => sticks)
      .flatMap((stick) => stick.pieces.map(({ id, length }) => ({ id, length })));
    expect(printed).toHaveLength(wanted.length);
    wanted.forEach(({ id, length }, index) => {
      const text = printed[index]!.slice(id.length + 2);
      expect(printed[index]!.startsWith(`${id}: `)).toBe(true);
      const read = parseLength(text, 'printed', { unit, decimalSign: '.' });
      expect(read.ok && read.value.equals(length)).toBe(true);
    });
  });

  test('comes to the totals of the plan, by formulas over what stands in its rows', () => {
    const { plan, workbook } = planned(name);
    const sheet = sheetOf(workbook, 'Production');
    const numbers = listedPieces(workbook).flatMap(({ number }) =>
      typeof number === 'number' ? [number] : [],
    );
    const head = (label: string): number => {
      const row = rowWith(sheet, label);
      expect(cellAt(sheet, row, 1)?.formula).toMatch(/^[A-Z]+\d+$|^'Cutting'!/u);
      return numberAt(sheet, row, 1);
    };
    const { unit, currency } = plan.job.shop;
    expect(head('Pieces to cut')).toBe(numbers.length);
    expect(head(`Net length (${unit})`)).toBeCloseTo(
      numbers.reduce((all, one) => all + one, 0),
      8,
    );
    expect(head('Sticks and blanks')).toBe(plan.totals.sticks);
    expect(head('Hours')).toBe(plan.totals.hours);
    expect(head(`Cost (${currency})`)).toBeCloseTo(plan.totals.costCents / 100, 9);
    expect(head(`Price (${currency})`)).toBeCloseTo(plan.totals.priceCents / 100, 9);
    expect(head(`Price with tax (${currency})`)).toBeCloseTo(
      (plan.totals.priceCents + plan.totals.taxCents) / 100,
      9,
    );
    expect(numberAt(sheet, rowWith(sheet, 'Pieces done already'), 1)).toBe(plan.totals.done);
  });

  test('has sheets that agree with each other', () => {
    const { plan, workbook } = planned(name);
    const production = sheetOf(workbook, 'Production');
    const cutting = sheetOf(workbook, 'Cutting');
    const client = sheetOf(workbook, 'Client');
    const stock = rowWith(production, 'What to pull from the rack, and what to buy');
    const lumber = numberAt(production, rowWith(production, 'Together', 0, stock), 7);
    const onCutting = rowWith(cutting, 'Together', 1);
    expect(numberAt(cutting, onCutting, 3)).toBeCloseTo(lumber, 9);
    expect(numberAt(cutting, onCutting, 2)).toBe(plan.totals.sticks);
    const price = numberAt(client, rowWith(client, 'Together'), 5);
    expect(price).toBeCloseTo(plan.totals.priceCents / 100, 9);
    for (const label of ['Lumber here and on Cutting', 'Price here and on Client']) {
      const row = rowWith(production, label, 3);
      expect(cellAt(production, row, 5)).toMatchObject({ value: 'agrees' });
    }
  });

  test('uses the plainest functions alone, none of them ours, and no other file', () => {
    const { workbook } = planned(name);
    const formulas = workbook.sheets.flatMap((sheet) =>
      sheet.rows.flatMap(({ cells }) => cells.flatMap((cell) => cell?.formula ?? [])),
    );
    const functions = formulas.flatMap((formula) => formula.match(/[A-Z]+(?=\()/gu) ?? []);
    const plain = ['SUM', 'COUNT', 'ROUND', 'IF', 'ABS', 'SUMPRODUCT', 'EXACT', 'ISNUMBER'];
    expect(formulas.length).toBeGreaterThan(20);
    expect([...new Set(functions)].filter((one) => !plain.includes(one))).toEqual([]);
    expect(formulas.filter((formula) => /[[\]]|_x/u.test(formula))).toEqual([]);
  });

  test('shows the client rooms, pieces and prices, and nothing of cost, labor or stock', () => {
    const { plan, workbook } = planned(name);
    const client = sheetOf(workbook, 'Client');
    const cells = client.rows.flatMap((row) => row.cells.filter((cell) => cell !== null));
    const numbers = cells.flatMap(({ value }) => (typeof value === 'number' ? [value] : []));
    const shown = new Set(numbers.map((number) => Math.round(number * 100)));
    for (const { money, profile } of plan.profiles) {
      for (const key of ['lumberCents', 'laborCents', 'overheadCents', 'costCents'] as const) {
        const priced = plan.rooms.some((line) => line.priceCents === money[key]);
        if (money[key] > 0 && money[key] !== money.priceCents && !priced) {
          expect([profile.name, key, shown.has(money[key])]).toEqual([profile.name, key, false]);
        }
      }
    }
    const ours = new Set(plan.rooms.flatMap((line) => [line.room, line.profile]));
    const words = textsOf(client).filter((text) => !ours.has(text));
    expect(
      words.filter((text) => /cost|margin|labor|stock|stick|hour|\.csv|\//iu.test(text)),
    ).toEqual(words.filter((text) => /^\d.*\/\d/u.test(text)));
    expect(cells.filter(({ formula = '' }) => formula.includes('!'))).toEqual([]);
    expect(
      cells.filter(
        ({ value }) =>
          value === "Local codes and a qualified person's judgment stand above any number here.",
      ),
    ).toHaveLength(1);
  });

  test('gives each cove a page of its own with every standing caution', () => {
    const { plan, workbook } = planned(name);
    const sheet = sheetOf(workbook, 'Set-ups');
    const coves = plan.profiles.filter((one) => one.setUp !== undefined);
    const sprung = plan.profiles.filter((one) => !one.setUp && one.profile.spring !== undefined);
    const pages = Math.max(1, coves.length) + sprung.length;
    expect(sheet.print.breaksAfter).toHaveLength(pages - 1);
    const texts = textsOf(sheet).map((text) => text.replace(/^\d+\. /u, ''));
    for (const caution of standingCautions('36"').filter((one) => !one.includes('36"'))) {
      const times = texts.filter((text) => text === caution).length;
      expect([caution, times]).toEqual([caution, Math.max(1, coves.length)]);
    }
    if (coves.length === 0) {
      expect(texts).toContain('No cove is to be cut for this job, so there is nothing to set up.');
    }
  });
});

describe('The plan workbook', () => {
  test('keeps names that look like formulas, errors or criteria, each in its own room', () => {
    const { plan, workbook } = planned('hostile');
    const ids = new Set(listedPieces(workbook).map(({ id }) => id));
    for (const name of HOSTILE_NAMES) {
      const pieces = plan.pieces.filter((piece) => piece.room === name);
      expect(pieces.length).toBeGreaterThan(0);
      for (const piece of pieces) expect(ids.has(piece.id)).toBe(true);
    }
    const client = sheetOf(workbook, 'Client');
    const rooms = ['Hall', 'HALL', 'hall'].map((room) => rowWith(client, room));
    expect(new Set(rooms).size).toBe(3);
  });

  test('says that nothing is left where every piece is done', () => {
    const { workbook } = planned('done');
    expect(textsOf(sheetOf(workbook, 'Production'))).toContain('Nothing is left to make.');
    expect(textsOf(sheetOf(workbook, 'Cutting'))).toContain('Nothing is left to cut.');
    expect(textsOf(sheetOf(workbook, 'Client'))).toContain('Everything listed is done already.');
  });

  test('says what profiles bear of lumber in common, the last what the others leave', () => {
    const { workbook, plan } = planned('shared');
    const sheet = sheetOf(workbook, 'Production');
    expect(plan.groups.map(({ name }) => name)).toEqual(['Wide, Flat, Narrow', 'Base']);
    const at = rowWith(sheet, 'Shares of the lumber that profiles have in common');
    const names = ['Wide', 'Flat', 'Narrow'];
    const rows = names.map((name) => rowWith(sheet, name, 0, at));
    const shares = rows.map((row) => numberAt(sheet, row, 7));
    names.forEach((name, index) => {
      const own = plan.profiles.find(({ profile }) => profile.name === name);
      expect(shares[index]).toBe(own!.money.lumberCents / 100);
    });
    expect(rows.map((row) => cellAt(sheet, row, 7)?.formula)).toEqual([
      undefined,
      undefined,
      expect.stringMatching(/^SUM\(H\d+:H\d+\)-SUM\(H\d+:H\d+\)$/u),
    ]);
    const [first, second, last] = shares;
    expect(first! + second! + last!).toBeCloseTo(plan.groups[0]!.lumberCents / 100, 9);
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
