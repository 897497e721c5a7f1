import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';

import { INCHES_AND_POINT } from '../../src/core/units/length.ts';
import { drawTable } from '../../src/drawings/table.ts';
import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { cellName, soundRange } from '../../src/core/cells/cell-range.ts';
import type { SheetDescription } from '../../src/sheets/grammar/description.ts';
import { columnPoints, MARGIN_INCHES } from '../../src/sheets/grammar/page-size.ts';
import { describeSetUps } from '../../src/sheets/set-ups/set-ups-sheet.ts';
import { MANUAL_CAUTION, standingCautions } from '../../src/sheets/words/standing-cautions.ts';
import { libreOfficeIsHere, printedPages } from '../hosts/libreoffice.ts';
import { paintTiny } from '../hosts/tiny-drawing.ts';
import { planOf, type Tables } from '../planning/make-job.ts';
import { FORTY, FULL, OVERLEAF, withSetting } from './set-up-jobs.ts';
import { DEMO, JOBS, textsOf } from './sheet-jobs.ts';
import { count } from '../deep.ts';

const POINTS_PER_MM = 72 / 25.4;
/** In points of 1/72 in: 8 1/2 × 11 in; 210 × 297 mm (ISO 216). */
const PAPERS = { letter: [612, 792], a4: [595.28, 841.89] } as const;

const PAGES: Readonly<Record<string, Tables>> = {
  demo: DEMO,
  'demo on A4': withSetting(DEMO, 'paper', 'a4'),
  'demo on a right-tilt saw': withSetting(DEMO, 'tilt side', 'right'),
  millimetres: JOBS['millimetres']!,
  hostile: JOBS['hostile']!,
  full: FULL,
  'full on A4': withSetting(FULL, 'paper', 'a4'),
  'forty passes': FORTY,
  'forty passes on A4': withSetting(FORTY, 'paper', 'a4'),
  'forty passes on a right-tilt saw': withSetting(FORTY, 'tilt side', 'right'),
};

async function setUpsOf(tables: Tables): Promise<SheetDescription> {
  return describeSetUps(await planOf(tables));
}

/** First and last row, from 0, of each page, and what stands first on it. */
function pagesOf({ rows, print }: SheetDescription) {
  const ends = [...(print.breaksAfter ?? []), rows.length];
  return ends.map((end, index) => {
    const first = ends[index - 1] ?? 0;
    return { first, last: end - 1, title: String(rows[first]?.cells[0]?.value) };
  });
}

function pointsOf(sheet: SheetDescription, first: number, last: number): number {
  return sheet.rows.slice(first, last + 1).reduce((all, { height = NaN }) => all + height, 0);
}

/** Points of rows that a page has room for: it is shrunk, never stretched, to its width. */
function roomOf({ columns, print }: SheetDescription): number {
  const [width, height] = PAPERS[print.paper];
  const { left, right, top, bottom } = MARGIN_INCHES;
  const wide = columns.reduce((all, column) => all + columnPoints(column.width), 0);
  const scale = Math.min(1, (width - 72 * (left + right)) / wide);
  return (height - 72 * (top + bottom)) / scale;
}

/** Each drawing's box on the sheet, in points. */
function boxesOf(sheet: SheetDescription) {
  return (sheet.drawings ?? []).map(({ at, drawing }) => {
    const { top: row, left: column } = soundRange(at);
    const top = row === 0 ? 0 : pointsOf(sheet, 0, row - 1);
    const left = sheet.columns
      .slice(0, column)
      .reduce((sum, one) => sum + columnPoints(one.width), 0);
    const bottom = top + drawing.height * POINTS_PER_MM;
    return { row, column, top, left, bottom, right: left + drawing.width * POINTS_PER_MM };
  });
}

/** Rows whose height, from one to the next, holds no part of the box. */
function rowsBeside(sheet: SheetDescription, { top, bottom }: { top: number; bottom: number }) {
  let edge = 0;
  return sheet.rows.flatMap(({ height = NaN }, row) => {
    const [from, to] = [edge, (edge += height)];
    return from < bottom && to > top ? [row] : [];
  });
}

describe.each(Object.keys(PAGES))('The set-up pages of “%s”', (name) => {
  test('hold two drawings each, with the numbers in words, on that page alone', async () => {
    const sheet = await setUpsOf(PAGES[name]!);
    const plan = await planOf(PAGES[name]!);
    const made = plan.profiles.filter(({ setUp }) => setUp !== undefined);
    // Corners of a crown, and passes past those that a page holds, have pages of their own.
    const pages = pagesOf(sheet).filter(({ title }) => !/, (?:its corners|overleaf)$/u.test(title));
    const drawings = sheet.drawings ?? [];
    expect(pages).toHaveLength(made.length);
    expect(drawings.map(({ drawing }) => drawing.title.split(/[ ,]/u)[0])).toEqual(
      made.flatMap(() => [expect.not.stringMatching(/^Saw$/u), 'Saw']),
    );
    for (const [index, { first, last }] of pages.entries()) {
      const own = boxesOf(sheet).filter(({ row }) => row >= first && row <= last);
      expect(own).toHaveLength(2);
      expect(Math.max(...own.flatMap((box) => rowsBeside(sheet, box)))).toBeLessThanOrEqual(last);
      const approach = ((made[index]?.setUp?.setting.approach ?? NaN) * 180) / Math.PI;
      expect(drawings[2 * index + 1]?.drawing.alt).toContain(`${Number(approach.toFixed(2))}°`);
    }
  });

  test('keep drawings apart, within the columns, and clear of every cell with words', async () => {
    const sheet = await setUpsOf(PAGES[name]!);
    const boxes = boxesOf(sheet);
    const wide = sheet.columns.reduce((all, { width }) => all + columnPoints(width), 0);
    for (const [index, box] of boxes.entries()) {
      expect(box.right).toBeLessThanOrEqual(wide);
      const next = boxes[index + 1];
      const isClear = (other: typeof box): boolean =>
        other.top >= box.bottom || other.left >= box.right;
      if (next !== undefined) expect(isClear(next)).toBe(true);
      for (const row of rowsBeside(sheet, box)) {
        const under = (sheet.merges ?? [])
          .map(soundRange)
          .filter((one) => one.top === row && one.right >= box.column);
        expect(under).toEqual([]);
        const said = sheet.rows[row]?.cells.slice(box.column) ?? [];
        expect([cellName(row, box.column), said.filter((cell) => cell !== null)]).toEqual([
          cellName(row, box.column),
          [],
        ]);
      }
    }
  });

  test('fit on one page of the paper each', async () => {
    const sheet = await setUpsOf(PAGES[name]!);
    for (const { first, last } of pagesOf(sheet)) {
      expect(pointsOf(sheet, first, last)).toBeLessThanOrEqual(roomOf(sheet));
    }
  });
});

describe('A set-up page', () => {
  test('of forty passes has all of them, three cautions of its own and every standing one', async () => {
    const plan = await planOf(FORTY);
    const { setUp, profile } = plan.profiles[0]!;
    expect(setUp!.passHeights).toHaveLength(40);
    const own = plan.cautions.filter(({ code }) => !code.startsWith('rails.'));
    expect(own).toHaveLength(3);
    const texts = textsOf(describeSetUps(plan));
    for (const { message } of own) expect(texts).toContain(message);
    for (const line of standingCautions('36"')) {
      const pages = line === MANUAL_CAUTION ? pagesOf(describeSetUps(plan)).length : 1;
      expect(texts.filter((text) => text.includes(line))).toHaveLength(pages);
    }
    for (const said of [profile.name, profile.note]) expect(texts).toContain(said);
    const sheet = describeSetUps(plan);
    const ticks = sheet.rows.flatMap(({ cells }) => cells.filter((one) => one?.style === 'tick'));
    expect(ticks).toHaveLength(40);
  });

  test('goes on overleaf, and says so, where a page can not hold it', async () => {
    for (const tables of [OVERLEAF, withSetting(OVERLEAF, 'paper', 'a4')]) {
      const plan = await planOf(tables);
      const sheet = describeSetUps(plan);
      const pages = pagesOf(sheet);
      expect(pages.length).toBeGreaterThan(2);
      for (const { first, last } of pages) {
        expect(pointsOf(sheet, first, last)).toBeLessThanOrEqual(roomOf(sheet));
      }
      const texts = textsOf(sheet);
      expect(texts.filter((text) => text.includes('more than one page'))).toHaveLength(1);
      const last = pages.at(-1)!;
      const ticked = sheet.rows.map(({ cells }) => cells.filter((one) => one?.style === 'tick'));
      expect(ticked.flat()).toHaveLength(plan.profiles[0]!.setUp!.passHeights.length);
      expect(ticked.slice(last.first).flat()).toEqual([]);
      // Every page says whose it is and begins with the manual's word; passes have their headings.
      const first = (row: number): string => String(sheet.rows[row]?.cells[0]?.value);
      for (const page of pages.slice(1)) {
        expect(first(page.first)).toBe('Crown, overleaf');
        expect(first(page.first + 1)).toBe(MANUAL_CAUTION);
      }
      for (const page of pages.slice(1, -1)) {
        const [title, , head] = [2, 3, 4].map((row) => sheet.rows[page.first + row]?.cells);
        expect(title?.[6]?.value).toBe('Passes, continued, to tick');
        expect(head?.[7]?.value).toBe('in in');
      }
      // Closer than 64ths tell apart: in decimals, none of them twice.
      const heights = sheet.rows.flatMap(({ cells }) =>
        [7, 10].flatMap((column) => {
          const text = String(cells[column]?.value ?? '');
          return /^\d\.\d{4}$/u.test(text) ? [text] : [];
        }),
      );
      expect(new Set(heights).size).toBe(plan.profiles[0]!.setUp!.passHeights.length);
      expect(texts.filter((text) => text === MANUAL_CAUTION)).toHaveLength(pages.length);
      for (const line of standingCautions('36"').filter((one) => one !== MANUAL_CAUTION)) {
        expect(texts.filter((text) => text.includes(line))).toHaveLength(1);
      }
    }
  });

  test('is one page for any cove of up to 24 passes without cautions of its own, on any saw', async () => {
    const sixteenths = (least: number, most: number) =>
      fc.integer({ min: least * 16, max: most * 16 }).map((count) => count / 16);
    const job = fc.record({
      width: sixteenths(2, 6),
      depth: sixteenths(0.125, 1.5),
      offCenter: fc.constantFrom(0, 0.125, 0.375),
      flats: sixteenths(0.25, 2),
      front: sixteenths(9, 16),
      back: sixteenths(9, 20),
      tableWidth: fc.option(sixteenths(24, 70), { nil: undefined }),
      slot: fc.option(sixteenths(4, 7), { nil: undefined }),
      tilt: fc.constantFrom('left', 'right'),
      paper: fc.constantFrom('letter', 'a4'),
    });
    let [made, plain] = [0, 0];
    await fc.assert(
      fc.asyncProperty(job, async (one) => {
        fc.pre(one.depth <= one.width / 2);
        const shop = [
          FULL.shop?.split('\ntable')[0],
          `table front,${one.front}`,
          `table back,${one.back}`,
          ...(one.tableWidth === undefined ? [] : [`table width,${one.tableWidth}`]),
          ...(one.slot === undefined ? [] : [`slot to blade,${one.slot}`]),
          `tilt side,${one.tilt}`,
          `paper,${one.paper}`,
        ].join('\n');
        const blank = one.width + 2 * one.flats;
        const profiles =
          'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Off-center,Class\n' +
          `Cove,cove,${blank},${one.depth + 0.5},Poplar,${one.width},${one.depth},${one.offCenter},12/4`;
        const stock =
          "For,Kind,Class,Width,Length,Price,Per,Have,Buy\nPoplar,board,12/4,12,12',5,board foot,,";
        const runs = 'Room,Run,Profile,Length\nHall,north,Cove,90';
        const tables = { runs, profiles, stock, shop };
        const plan = await planOf(tables).catch(() => undefined);
        // Not every cove can be made with every blade; that is told, and no page of ours.
        if (plan === undefined) return;
        made += 1;
        const sheet = describeSetUps(plan);
        // Cautions of its own, and rails that leave the table, may take more.
        if (plan.cautions.length === 0) expect(pagesOf(sheet)).toHaveLength(1);
        if (plan.cautions.length === 0) plain += 1;
        for (const { first, last } of pagesOf(sheet)) {
          expect(pointsOf(sheet, first, last)).toBeLessThanOrEqual(roomOf(sheet));
        }
      }),
      { numRuns: count(60) },
    );
    expect(made).toBeGreaterThan(count(20));
    expect(plain).toBeGreaterThan(count(5));
  });

  test('has the corners of a crown on a page of their own where one has no room for them', async () => {
    const tables: Tables = {
      runs: [
        'Room,Run,Profile,Length,Right end,Right corner',
        ...[80, 95, 100, 110, 120, 135].map(
          (corner) => `Hall,wall ${corner},Cove,90,outside miter,${corner}`,
        ),
      ].join('\n'),
      profiles:
        'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Off-center,Off-center to,Spring,Class\n' +
        'Cove,crown cove,2 3/8,1 1/4,Poplar,1,7/16,3/8,blade middle,38,6/4',
      shop: 'Setting,Value\nhourly rate,60\ntable front,9\ntable back,9\nslot to blade,4',
      stock:
        "For,Kind,Class,Width,Length,Price,Per,Have,Buy\nPoplar,board,6/4,6,12',5,board foot,,",
    };
    const sheet = await setUpsOf(tables);
    expect(pagesOf(sheet).length).toBe(2);
    for (const { first, last } of pagesOf(sheet)) {
      expect(pointsOf(sheet, first, last)).toBeLessThanOrEqual(roomOf(sheet));
    }
    // Six measures of corners: the miter of a nested crown as a rule, in one line.
    const nested = textsOf(sheet).find((text) => text.startsWith('Nested'));
    expect(nested).toMatch(/miter 90° less half of the corner$/u);
  });

  test('shows the table that the shop gives, and says so where it gives none', async () => {
    const plan = await planOf(FULL);
    const setUp = plan.profiles[0]!.setUp!;
    const [, onTable] = describeSetUps(plan).drawings!;
    const wanted = drawTable({
      blade: setUp.blade,
      setting: setUp.setting,
      flats: setUp.flats,
      table: { front: 12, back: 15, width: 40, slotToBlade: 5.375 },
      tiltSide: 'left',
      ...INCHES_AND_POINT,
      width: onTable!.drawing.width,
    });
    expect(onTable!.drawing).toEqual(wanted);
    const bare = await setUpsOf({ ...FULL, shop: 'Setting,Value\nhourly rate,60' });
    expect(bare.drawings?.[1]?.drawing.alt).toContain('without marks');
    expect(textsOf(bare).filter((text) => text.startsWith('No marks: Shop'))).toHaveLength(1);
  });
});

const here = libreOfficeIsHere();
const mustRun = here || process.env['CI'] !== undefined;
if (!mustRun) console.info('Skipped: LibreOffice (soffice) is not installed on this machine.');

(mustRun ? test : test.skip)(
  'LibreOffice prints each set-up on a page of its own, and breaks only where it is told',
  async () => {
    const files: Record<string, Uint8Array> = {};
    const wanted: Record<string, number> = {};
    for (const [name, tables] of Object.entries({ ...PAGES, overleaf: OVERLEAF })) {
      const sheet = describeSetUps(await planOf(tables));
      const key = name.replaceAll(' ', '-');
      files[key] = await writeWorkbook(
        { version: 1, title: name, sheets: [sheet] },
        { paint: paintTiny },
      );
      wanted[key] = pagesOf(sheet).length;
    }
    expect(await printedPages(files)).toEqual(wanted);
  },
  120_000,
);
