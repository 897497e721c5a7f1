import { beforeAll, describe, expect, test } from '@jest/globals';

import type { JobPlan } from '../../src/planning/job-plan.ts';
import { soundRange } from '../../src/core/cells/cell-range.ts';
import { checkDescription } from '../../src/sheets/grammar/check/check-description.ts';
import { cleanDescription } from '../../src/sheets/grammar/check/clean-text.ts';
import { describeClientCopy } from '../../src/sheets/client/client-sheet.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { CellDescription, SheetDescription } from '../../src/sheets/grammar/description.ts';
import { columnPoints, roomForRows } from '../../src/sheets/grammar/page-size.ts';
import { STYLES, type CellStyle } from '../../src/sheets/grammar/styles.ts';
import { planOf, type Tables } from '../planning/make-job.ts';
import { moldingOf, numberIn, optionCells, roomsOf, rowNamed, payAgain } from './client-copies.ts';
import { JOBS, sheetOf, textsOf } from './sheet-jobs.ts';

interface Copied {
  readonly plan: JobPlan;
  readonly sheet: SheetDescription;
}

async function copyOf(tables: Tables): Promise<Copied> {
  const plan = await planOf(tables);
  return { plan, sheet: cleanDescription(describeClientCopy(plan)).sheets[0]! };
}

const copies = new Map<string, Copied>();
beforeAll(async () => {
  for (const [name, tables] of Object.entries(JOBS)) copies.set(name, await copyOf(tables));
});

const cents = (amount: number): number => Math.round(amount * 100);
const POINTS_PER_MM = 72 / 25.4;

describe.each(Object.keys(JOBS))("The client's copy of the job “%s”", (name) => {
  test('agrees with the plan to the cent: lines, rooms, price, tax and what is to be paid', () => {
    const { plan, sheet } = copies.get(name)!;
    const planned = new Map<string, number>();
    for (const { room, profile, priceCents } of plan.rooms) {
      const key = JSON.stringify([room.replace(/\s+/gu, ' '), profile]);
      planned.set(key, (planned.get(key) ?? 0) + priceCents);
    }
    const shown = new Map<string, number>();
    for (const room of roomsOf(sheet)) {
      for (const line of room.lines) {
        const molding = moldingOf(line);
        const key = JSON.stringify([room.name.replace(/\s+/gu, ' '), molding]);
        shown.set(key, (shown.get(key) ?? 0) + cents(numberIn(line, 'G')));
      }
    }
    expect(shown).toEqual(planned);
    const { priceCents, taxCents, pieces } = plan.totals;
    expect(cents(numberIn(rowNamed(sheet, 'All rooms'), 'G'))).toBe(plan.totals.linesCents);
    expect(numberIn(rowNamed(sheet, 'All rooms'), 'F')).toBe(pieces);
    expect(cents(numberIn(rowNamed(sheet, 'Tax, %'), 'G'))).toBe(taxCents);
    for (const label of ['To pay', payAgain(plan)]) {
      expect(cents(numberIn(rowNamed(sheet, label), 'G'))).toBe(priceCents + taxCents);
    }
  });

  test('follows its quantities by plain formulas over ranges, and by no name', () => {
    const { plan, sheet } = copies.get(name)!;
    const rooms = roomsOf(sheet);
    for (const { lines, sum } of rooms) {
      const [first, last] = [lines[0]!.row, lines.at(-1)!.row];
      for (const line of lines) {
        const { row } = line;
        expect(line.cells[2]?.formula).toBeUndefined();
        // What was quoted stands beside it, and stays.
        expect(line.cells[3]).toEqual({ value: line.cells[2]!.value, style: 'rowWhole' });
        expect(line.cells[6]?.formula).toBe(`ROUND(C${row}*F${row},2)`);
        // The unit price is kept exactly: ROUND has nothing to decide.
        const worth = numberIn(line, 'C') * numberIn(line, 'F');
        expect(Math.abs(worth - numberIn(line, 'G'))).toBeLessThan(1e-9);
        const each = Number(/^C\d+\*(.+)\/(?:12|1000)$/u.exec(line.cells[4]!.formula!)![1]);
        const holds = plan.job.shop.unit === 'in' ? 12 : 1000;
        expect(numberIn(line, 'E')).toBeCloseTo((numberIn(line, 'C') * each) / holds, 9);
      }
      for (const column of ['C', 'E', 'G']) {
        const at = 'ABCDEFG'.indexOf(column);
        const range = `SUM(${column}${first}:${column}${last})`;
        expect(sum.cells[at]?.formula).toBe(column === 'G' ? `ROUND(${range},2)` : range);
        const total = lines.reduce((all, line) => all + numberIn(line, column), 0);
        expect(numberIn(sum, column)).toBeCloseTo(total, 9);
      }
    }
    const formulas = sheet.rows.flatMap(({ cells }) => cells.flatMap((one) => one?.formula ?? []));
    expect(formulas.filter((one) => !/^[A-Z0-9$.,:()*/+"<>=& a-z-]+$/u.test(one))).toEqual([]);
    const used = formulas.flatMap((one) => one.match(/[A-Z]+(?=\()/gu) ?? []);
    const known = /^(?:SUM|SUMPRODUCT|ROUND|IF|ISNUMBER)$/u;
    expect([...new Set(used)].filter((one) => !known.test(one))).toEqual([]);
  });

  test('is a workbook of one sheet, sound and without names, and the same in the shop’s workbook', () => {
    const { plan, sheet } = copies.get(name)!;
    const copy = describeClientCopy(plan);
    expect(checkDescription(cleanDescription(copy))).toEqual([]);
    expect([copy.sheets.length, copy.names]).toEqual([1, undefined]);
    expect([sheet.print.titleRows, sheet.tables]).toEqual([undefined, undefined]);
    const { highlights, ...inShop } = sheetOf(cleanDescription(describePlan(plan)), 'Client');
    // The row above the price, blank in the copy, is the one that tells of other figures in the shop's sheets.
    const [title, job, behind, ...below] = inShop.rows;
    // Nothing is cut: the sentence is that of the copy, and tells of the sticks when they are ticked.
    const [{ formula = '', ...said }] = job!.cells as [CellDescription];
    expect(formula).toMatch(/>0,.*" cut or begun".*,""\)$/u);
    expect(behind!.cells.flatMap((cell) => (cell === null ? [] : [cell.value]))).toEqual([
      '',
      null,
      '',
    ]);
    expect(highlights!.slice(1)).toEqual(sheet.highlights);
    const rows = [
      title,
      { ...job, cells: [said] },
      { cells: [], height: behind!.height! },
      ...below,
    ];
    const merges = inShop.merges!.filter((one) => one !== 'A3:E3');
    const shop = { ...inShop, name: sheet.name, rows, merges, highlights: sheet.highlights };
    const { isProtected, ...unprotected } = sheet;
    expect(isProtected).toBe(true);
    expect(shop).toEqual(unprotected);
  });

  test('leaves quantities, its date and the line to sign open, and nothing else; the shop’s sheet is not protected', () => {
    const { plan, sheet } = copies.get(name)!;
    const open = sheet.rows.flatMap(({ cells }, at) =>
      cells.flatMap((one, column) => {
        const { open: isOpen }: CellStyle = STYLES[one?.style ?? 'plain'];
        return isOpen === true ? [`${'ABCDEFG'[column]}${at + 1}`] : [];
      }),
    );
    const quantities = roomsOf(sheet).flatMap(({ lines }) => lines.map(({ row }) => `C${row}`));
    const signed = rowNamed(sheet, 'Name and signature').row;
    const asked = [`B${rowNamed(sheet, 'Date').row}`, `B${signed}`, `G${signed}`, ...quantities];
    asked.push(...optionCells(sheet, plan));
    expect(open).toEqual(asked);
    expect(sheet.isProtected).toBe(true);
    expect(describePlan(plan).sheets.filter((one) => one.isProtected === true)).toEqual([]);
  });

  test('takes whole quantities from 0 in every cell of a quantity, warning only', () => {
    const { sheet } = copies.get(name)!;
    const rows = roomsOf(sheet).flatMap(({ lines }) => lines.map(({ row }) => row));
    const [one] = sheet.validations ?? [];
    if (rows.length === 0) {
      expect(one).toBeUndefined();
      return;
    }
    expect(one).toMatchObject({ allow: { kind: 'whole', least: 0, most: 9999 }, strict: false });
    const { left, right, top, bottom } = soundRange(one!.range);
    expect([left, right]).toEqual([2, 2]);
    expect(rows.filter((row) => row - 1 < top || row - 1 > bottom)).toEqual([]);
  });

  test('draws each molding of known sizes beside its like, and tears none over two pages', () => {
    const { plan, sheet } = copies.get(name)!;
    const sized = plan.profiles.filter(
      ({ profile, setUp }) => setUp !== undefined || profile.blankThickness !== undefined,
    );
    const drawings = sheet.drawings ?? [];
    expect(drawings.map((one) => one.name)).toEqual(
      sized.map(({ profile }) => `${profile.name} molding`),
    );
    const texts = drawings.flatMap(({ drawing }) => [drawing.title, drawing.alt]);
    expect(texts.filter((text) => /rail|saw|blade|tilt|feed/iu.test(text))).toEqual([]);
    const half = [0, 1].reduce((all, at) => all + columnPoints(sheet.columns[at]!.width), 0);
    for (const { at, drawing } of drawings) {
      const { top, left } = soundRange(at);
      expect([0, 2]).toContain(left);
      expect(drawing.width * POINTS_PER_MM).toBeLessThan(half);
      expect(drawing.height * POINTS_PER_MM).toBeLessThan(sheet.rows[top]!.height!);
    }
    // Each page's rows have room on it, so no program breaks it anywhere else.
    const room = roomForRows(sheet.print.paper, sheet.columns);
    const breaks = [0, ...(sheet.print.breaksAfter ?? []), sheet.rows.length];
    breaks.slice(1).forEach((end, at) => {
      const page = sheet.rows.slice(breaks[at], end);
      expect(page.reduce((all, { height = 0 }) => all + height, 0)).toBeLessThanOrEqual(room);
    });
  });
});

describe("The client's copy", () => {
  test('lists what is done in words, without a price', async () => {
    const { sheet } = await copyOf({
      runs: 'Room,Profile,Length,Quantity,Done\nHall,Base,90,2,\nHall,Base,80,3,yes\nHall,Cove,70,1,yes\nDen,Cove,60,1,yes',
    });
    const texts = textsOf(sheet);
    expect(texts).toContain('1 room, 1 molding, 2 pieces.');
    expect(texts).toContain('Done already, not in this price: Base, 3 pieces; Cove, 1 piece.');
    expect(texts).toContain('Done already, not in this price: Cove, 1 piece.');
    expect(roomsOf(sheet).map(({ name }) => name)).toEqual(['Hall']);
    expect(rowNamed(sheet, 'Den').cells).toHaveLength(1);
  });

  test('keeps rooms apart that differ in case alone', () => {
    const { sheet } = copies.get('hostile')!;
    const names = roomsOf(sheet).map(({ name }) => name);
    for (const name of ['Hall', 'HALL', 'hall']) expect(names).toContain(name);
    expect(new Set(names).size).toBe(names.length);
  });

  test('gathers pieces of one length into one line, longest first, returns on lines of their own', async () => {
    const { sheet } = await copyOf({
      runs: 'Room,Profile,Length,Quantity,Left end\nHall,Base,80,1,\nHall,Base,90 1/2,2,\nHall,Base,80,3,\nHall,Base,70,1,return',
    });
    const [room] = roomsOf(sheet);
    const lines = room!.lines.map(({ cells }) => cells.slice(0, 3).map((one) => one?.value));
    expect(lines.slice(0, 2)).toEqual([
      ['Base', '90 1/2"', 2],
      ['Base', '80"', 4],
    ]);
    expect(lines.map(([molding]) => molding)).toContain('Base, return to the wall');
  });

  test('names the doors and windows that a line goes around, as its room sees their walls, and counts a room’s', async () => {
    const { plan, sheet } = await copyOf({
      runs: 'Room,Run,Profile,Length\nHall,north,Base,90\nHall,spare,Base,80',
      openings:
        'Room,Wall,Kind,Width,Height,Casing,Other room,Other wall,Sides cased,Quantity\n' +
        'Hall,south,door,32,80,Base,Den,west,2,1\n' +
        'Hall,north,window,36,48,Base,,,1,2\n' +
        'Hall,east,window,36,60,Base,,,1,1\n' +
        'Hall,,window,36,60,Base,,,1,1',
    });
    const [hall, den] = roomsOf(sheet);
    const said = (room: typeof hall): unknown[] =>
      room!.lines.map(({ cells }) => [cells[0]?.value, cells[2]?.value]);
    // A window's casing goes all round: two legs, a head and a foot; a door's lacks the foot.
    const around = 'Base: 4 windows (north, east)';
    expect(said(hall)).toEqual(
      expect.arrayContaining([
        ['Base', 1],
        ['Base: 1 door (south)', 2],
        ['Base: 2 windows (north)', 4],
        ['Base: 2 windows (east)', 4],
        [around, 8],
        ['Base: 1 door (south)', 1],
      ]),
    );
    expect(said(den)).toEqual([
      ['Base: 1 door (west)', 2],
      ['Base: 1 door (west)', 1],
    ]);
    const texts = textsOf(sheet);
    expect(texts).toContain('Trim here goes around 1 door, 4 windows.');
    expect(texts).toContain('Trim here goes around 1 door.');
    expect(hall!.sum.cells[2]?.value).toBe(
      plan.pieces.filter(({ room }) => room === 'Hall').length,
    );
  });

  test('prices the pieces of a molding in a room by their length, to a cent a line', () => {
    const { sheet } = copies.get('demo')!;
    for (const { lines } of roomsOf(sheet)) {
      const byMolding = new Map<string, (typeof lines)[number][]>();
      for (const line of lines) {
        const molding = moldingOf(line);
        byMolding.set(molding, [...(byMolding.get(molding) ?? []), line]);
      }
      for (const some of byMolding.values()) {
        const all = (column: string): number =>
          some.reduce((sum, line) => sum + numberIn(line, column), 0);
        for (const line of some) {
          const share = (all('G') * numberIn(line, 'E')) / all('E');
          expect(Math.abs(numberIn(line, 'G') - share)).toBeLessThan(0.01);
        }
      }
    }
  });

  test('goes on under headings of its own where a room has many lines, and still sums them all', async () => {
    const runs = Array.from({ length: 80 }, (_, at) => `Hall,Base,${30 + at / 2}`);
    const { plan, sheet } = await copyOf({ runs: ['Room,Profile,Length', ...runs].join('\n') });
    const headings = sheet.rows.filter(({ cells }) => cells[2]?.value === 'Quantity');
    expect(headings.map(({ cells }) => cells[0]?.value)).toEqual([
      'Hall',
      'Hall, continued',
      'Hall, continued',
    ]);
    const [room, ...others] = roomsOf(sheet);
    expect([room!.lines.length, others]).toEqual([80, []]);
    expect(cents(numberIn(room!.sum, 'G'))).toBe(plan.totals.priceCents);
  });

  test('holds as many days as the shop says from a date that a person writes', async () => {
    const { sheet } = await copyOf({ shop: 'Setting,Value\nprice holds days,45' });
    const date = rowNamed(sheet, 'Date');
    const until = rowNamed(sheet, 'This price holds until');
    expect(date.cells[1]).toEqual({ value: null, style: 'inputDate' });
    const formula = `IF(ISNUMBER(B${date.row}),B${date.row}+45,"fill in the date")`;
    expect(until.cells[1]).toEqual({ formula, value: 'fill in the date', style: 'date' });
    for (const style of ['inputDate', 'date'] as const) {
      expect((STYLES[style] as CellStyle).format).toBe('d mmm yyyy');
    }
    expect(textsOf(sheet).join(' ')).toContain('45 days from its date');
    const usual = await copyOf({});
    expect(textsOf(usual.sheet).join(' ')).toContain('30 days from its date');
  });

  test('says allowances in words: precision, what is left at the wall, pieces made of parts', async () => {
    const plain = textsOf((await copyOf({ shop: 'Setting,Value\nend allowance,0' })).sheet);
    expect(plain.join(' ')).toContain('rounded up to the next 1/16".');
    expect(plain.join(' ')).not.toMatch(/to trim where it meets the wall|made of parts/u);
    const allowed = await copyOf({
      shop: 'Setting,Value\nend allowance,3/8\nlength precision,1/8',
      runs: 'Room,Profile,Length\nHall,Base,300\nHall,Base,20',
    });
    const words = textsOf(allowed.sheet).join(' ');
    expect(words).toContain('rounded up to the next 1/8".');
    expect(words).toContain('each end has 3/8" more, to trim where it meets the wall.');
    expect(words).toContain('1 piece is longer than the wood to be had, and made of parts');
    expect(words).toContain("Local codes and a qualified person's judgment stand above");
  });

  test('says where a molding has no sizes, and shows its wood', async () => {
    const { sheet } = await copyOf({
      profiles: 'Profile,Make,Species\nBase,buy,Oak',
      runs: 'Room,Profile,Length\nHall,Base,90',
      stock: "For,Kind,Length,Price,Per\nBase,stick,16',2,foot",
    });
    expect(sheet.drawings).toBeUndefined();
    expect(textsOf(sheet)).toContain('Oak; no sizes are given: shape as bought');
  });
});
