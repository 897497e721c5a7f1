import { beforeAll, describe, expect, test } from '@jest/globals';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import type { RawCell } from '../../src/planning/input/raw-table.ts';
import { copyIn } from '../../src/sheets/client/copy-sheet.ts';
import type { CopyFile } from '../../src/sheets/client/copy-sheet.ts';
import { readCopy } from '../../src/sheets/client/read-copy.ts';
import { changedLines } from '../../src/planning/compare/returned-copy.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { planOf } from '../planning/make-job.ts';
import { seededNumbers } from '../seeded-numbers.ts';
import { JOBS } from './sheet-jobs.ts';
import {
  STAMP,
  cellsOf,
  copyOf,
  read,
  typed,
  withRows,
  widened,
  NONE,
  lineOf,
} from './returned-copies.ts';

const HALL = {
  runs: 'Room,Run,Profile,Length,Quantity\nHall,north,Cove,90,1\nHall,south,Base,96,2\nHall,east,Base,48,1\nDen,west,Base,60,3',
  shop: 'Setting,Value\nhourly rate,60\nend allowance,0\ntax %,8\ndelivery,40',
};

let hall: JobPlan;
let copy: CopyFile;
/** Lines of the sheet: two pieces of base, and the short one. */
let base: number;
let short: number;
beforeAll(async () => {
  hall = await planOf(HALL);
  copy = copyOf(hall);
  base = lineOf(copy, 'Base', lineOf(copy, 'Room by room'));
  short = base + 1;
});

describe("A client's copy that comes back", () => {
  test.each(Object.keys(JOBS).filter((name) => name !== 'house'))(
    'as it was handed over says nothing new: %s',
    async (name) => {
      const plan = await planOf(JOBS[name]!);
      const { lines, price, accepted, findings } = read(plan, copyOf(plan));
      expect(findings.map(({ message }) => message)).toEqual([]);
      expect(changedLines({ lines })).toEqual([]);
      const { priceCents, taxCents, linesCents, pieces } = plan.totals;
      const toPayCents = priceCents + taxCents;
      expect(price.quoted).toEqual({ pieces, linesCents, priceCents, taxCents, toPayCents });
      expect(price.now).toEqual(price.quoted);
      expect(accepted).toEqual({ name: '', date: '' });
    },
  );

  test('tells each other quantity, what it comes to, and the rows that its pieces come from', () => {
    const { lines, price, findings } = read(
      hall,
      typed(copy, { [`C${base}`]: 3, [`C${short}`]: 0 }),
    );
    // Here nothing works formulas out: that is said once, not at each of them.
    expect(findings.map(({ code }) => code)).toEqual(['copy.not-worked-out']);
    const changed = changedLines({ lines });
    expect(changed.map(({ quantity, now }) => [quantity, now])).toEqual([
      [2, 3],
      [1, 0],
    ]);
    expect(changed.map(({ pieces }) => pieces.map(({ run }) => run))).toEqual([
      ['south', 'south'],
      ['east'],
    ]);
    expect(price.now.pieces).toBe(price.quoted.pieces);
    const [more, none] = changed;
    expect(none!.nowCents).toBe(0);
    expect(more!.nowCents).toBe(Math.round((3 * more!.priceCents) / 2));
  });

  test.each(['hostile', 'millimetres'])(
    'comes to what its own formulas would, whatever quantities come back, and more never costs less: %s',
    async (name) => {
      const plan = await planOf(JOBS[name]!);
      const returned = read(plan, copyOf(plan));
      const next = seededNumbers(7);
      const file = copyOf(plan);
      let before = 0;
      for (let round = 0; round < 3; round++) {
        const most = round * 3;
        const values = returned.lines.map(() => Math.floor(next() * 2) + most);
        const cells = returned.lines.map(({ where }, at) => [
          where !== undefined && 'cell' in where ? where.cell : '',
          values[at]!,
        ]);
        const edited = typed(file, Object.fromEntries(cells) as Record<string, number>);
        const { lines, price } = read(plan, edited);
        expect(lines.map(({ now }) => now)).toEqual(values);
        // As the copy's cells work it out: each line to the cent, their sum, and tax on the price.
        const sum = lines.reduce((all, { priceCents, quantity }, at) => {
          const each = priceCents / 100 / quantity;
          return all + Math.round(values[at]! * each * 100 + 1e-7);
        }, 0);
        expect(price.now.linesCents).toBe(sum);
        expect(price.now.toPayCents).toBe(price.now.priceCents + price.now.taxCents);
        expect(price.now.priceCents).toBeGreaterThanOrEqual(sum);
        if (round > 1) expect(price.now.toPayCents).toBeGreaterThanOrEqual(before);
        before = price.now.toPayCents;
      }
    },
  );

  test.each<readonly [what: string, cell: RawCell, code: string]>([
    ['a word', 'three', 'copy.quantity-text'],
    ['a number as text', '3', 'copy.quantity-text'],
    ['nothing', null, 'copy.quantity-blank'],
    ['a space', ' ', 'copy.quantity-blank'],
    ['less than nothing', -1, 'number.negative'],
    ['a part of a piece', 2.5, 'number.not-whole'],
    ['more than a line takes', 10_000, 'number.too-large'],
    ['an error', { kind: 'error', text: '#REF!' }, 'table.error-cell'],
    ['a day', { kind: 'date', day: '2026-12-03' }, 'copy.quantity-text'],
    ['yes', true, 'copy.quantity-text'],
    [
      'a percent',
      { kind: 'shown', value: 300, text: '300%', unit: { kind: 'percent' } },
      'copy.quantity-text',
    ],
    ['a number out of sight', { kind: 'veiled', held: 3, text: '' }, 'table.veiled-number'],
    ['a formula never worked out', { kind: 'uncalculated' }, 'copy.quantity-formula'],
  ])('a quantity that is %s is refused at its cell', (_, cell, code) => {
    const outcome = readCopy(hall, STAMP, typed(copy, { [`C${base}`]: cell }), 'copy.xlsx');
    expect(outcome.ok).toBe(false);
    expect(outcome.ok ? [] : outcome.faults).toMatchObject([
      { code, where: { sheet: 'Moldings', cell: `C${base}` } },
    ]);
  });

  test('a quantity that is a formula is refused whatever it comes to', () => {
    const formulas = new Set([...copy.sheet.formulas, `C${base}`]);
    const of = { ...copy, sheet: { ...copy.sheet, formulas } };
    const outcome = readCopy(hall, STAMP, of, 'copy.xlsx');
    expect(outcome).toMatchObject({ ok: false, faults: [{ code: 'copy.quantity-formula' }] });
  });

  const told = (of: CopyFile): unknown[] => {
    const returned = read(hall, of);
    // Whatever else is typed, no price is taken over.
    expect(returned.price.now).toEqual(returned.price.quoted);
    return returned.findings.map(({ code, where }) => [
      code,
      where !== undefined && 'cell' in where ? where.cell : null,
    ]);
  };

  test('a price, a quoted quantity, a word, a name, a tax and a total typed over are each told at their cell', () => {
    const room = lineOf(copy, 'Hall', lineOf(copy, 'Room by room'));
    const tax = lineOf(copy, 'Tax, %');
    const toPay = lineOf(copy, 'To pay');
    const covers = lineOf(copy, /^It does not cover/u);
    const at = { [`F${base}`]: 1, [`D${base}`]: 9, [`A${short}`]: 'Oak base', [`F${tax}`]: 0 };
    const words = { [`A${covers}`]: 'It covers everything.', [`A${room}`]: 'Hallway' };
    expect(told(typed(copy, { ...at, ...words, [`G${toPay}`]: 5 }))).toEqual([
      ['copy.cell-changed', `F${tax}`],
      ['copy.figure-otherwise', `G${toPay}`],
      ['copy.cell-changed', `A${covers}`],
      ['copy.cell-changed', `A${room}`],
      ['copy.cell-changed', `D${base}`],
      ['copy.cell-changed', `F${base}`],
      ['copy.cell-changed', `A${short}`],
    ]);
    expect(told(typed(copy, { [`G${base}`]: null, [`F${base}`]: null }))).toEqual([
      ['copy.cell-changed', `F${base}`],
      ['copy.figure-otherwise', `G${base}`],
    ]);
  });

  test('a line taken out holds as quoted, and one put in is not priced', () => {
    const without = copy.sheet.rows.filter(({ line }) => line !== short);
    expect(told(withRows(copy, without))).toEqual([['copy.line-gone', null]]);
    const put = { line: short, cells: ['Base', '36"', 4, 4, 12, 7, 28] };
    const moved = widened(copy, short, NONE);
    const more = [...moved.sheet.rows, put].sort((one, other) => one.line - other.line);
    expect(told(withRows(moved, more))).toEqual([['copy.line-added', `A${short}`]]);
  });

  test('a column put in between, a column before all and rows put in move nothing', () => {
    for (const at of [0, 2, 3]) expect([at, told(widened(copy, NONE, at))]).toEqual([at, []]);
    const { sheet } = widened(copy, lineOf(copy, 'Room'), NONE);
    const moved = { ...copy, sheet };
    expect(told(moved)).toEqual([]);
    const rows = sheet.rows;
    const noted = [
      ...rows,
      { line: 900, cells: [null, null, null, null, null, null, null, null, 'please ring'] },
    ];
    expect(told(withRows(moved, noted))).toEqual([['copy.row-added', 'I900']]);
    expect(read(hall, withRows(moved, noted)).findings[0]!.message).toContain('please ring');
  });

  test('lines in another order are still each other’s, with their quantities', () => {
    const [one, other] = [base, short].map((at) =>
      copy.sheet.rows.find(({ line }) => line === at)!,
    );
    const rows = copy.sheet.rows.map((row) => {
      if (row.line === base) return { line: base, cells: [...other!.cells] };
      return row.line === short ? { line: short, cells: [...one!.cells] } : row;
    });
    const sorted = typed(withRows(copy, rows), { [`C${short}`]: 5 });
    expect(changedLines(read(hall, sorted)).map(({ quantity, now }) => [quantity, now])).toEqual([
      [2, 5],
    ]);
  });

  test('a note beside a line, a name and a day to sign with are told as typed', () => {
    const sign = lineOf(copy, 'Name and signature');
    const note = typed(copy, {
      [`H${base}`]: 'in oak?',
      [`B${sign}`]: 'A. Client',
      [`G${sign}`]: { kind: 'date', day: '2026-12-04' },
    });
    const { accepted, findings } = read(hall, note);
    expect(accepted).toEqual({ name: 'A. Client', date: '4 Dec 2026' });
    expect(findings.map(({ code, message }) => [code, message.includes('in oak?')])).toEqual([
      ['copy.note', true],
    ]);
  });

  test('headings that are gone in every room are asked for', () => {
    const rows = copy.sheet.rows.map(({ line, cells }) => ({
      line,
      cells: cells.map((cell) => (cell === 'As quoted' ? 'Before' : cell)),
    }));
    const outcome = readCopy(hall, STAMP, withRows(copy, rows), 'copy.xlsx');
    expect(outcome).toMatchObject({ ok: false, faults: [{ code: 'copy.headings-gone' }] });
  });
});

describe('A workbook', () => {
  test('is known for a copy by its headings or its number, whatever its sheet is called', () => {
    const sheet = copy.sheet;
    expect(copyIn([{ ...sheet, name: 'Sheet1' }], {})).toMatchObject({
      number: '0a1b2c3d',
      sheet: { name: 'Sheet1' },
    });
    expect(copyIn([sheet], {})?.day).toBeUndefined();
    // A program that takes the number for one drops its zeros.
    expect(copyIn([sheet], { Number: 12_345 })?.number).toBe('00012345');
    const bare = { ...sheet, rows: sheet.rows.filter(({ cells }) => cells[0] !== 'Number') };
    expect(copyIn([bare], { Number: 'A-17' })).not.toHaveProperty('number');
    expect(copyIn([{ ...sheet, rows: [] }], {})).toBeUndefined();
  });

  test('of the shop is none, though its sheet Client has the same headings', () => {
    const sheets = describePlan(hall, { keepsFormulas: false, stamp: STAMP }).sheets.map(cellsOf);
    expect(copyIn(sheets, {})).toBeUndefined();
  });
});
