import { beforeAll, describe, expect, test } from '@jest/globals';

import { parseRange } from '../../src/core/cells/cell-range.ts';
import { cleanDescription } from '../../src/sheets/grammar/check/clean-text.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { CellDescription, SheetDescription } from '../../src/sheets/grammar/description.ts';
import { columnPixels, STANDARD_COLUMN } from '../../src/sheets/grammar/page-size.ts';
import { rowHeights, STANDARD_POINTS } from '../../src/sheets/grammar/row-height.ts';
import {
  STANDARD_FONT,
  STYLES,
  type CellStyle,
  type StyleName,
} from '../../src/sheets/grammar/styles.ts';
import { textEms } from '../../src/sheets/grammar/text-width.ts';
import { planOf } from '../planning/make-job.ts';
import { lettersAreHere, lettersMustBeHere, measureEms } from './letters.ts';
import { randomPlans } from './random-jobs.ts';
import { JOBS } from './sheet-jobs.ts';
import { shownNumber } from './shown-number.ts';
import { count } from '../deep.ts';

/** Pixels of 96 to the inch for each point of the font. */
const PIXELS_PER_POINT = 96 / 72;
/** LibreOffice's own: 0.35 mm left and right of what stands in a cell. */
const AIR_PIXELS = 2 * 0.35 * (96 / 25.4);
/** Arial's ascent, descent and gap (its hhea table). */
const LINE_EMS = 0.905 + 0.212 + 0.033;
const RANDOM_JOBS = count(12);

const sheets = new Map<string, SheetDescription>();

if (!lettersMustBeHere) console.info('Skipped: Liberation Sans is not installed on this machine.');
const must = lettersMustBeHere ? describe : describe.skip;

beforeAll(async () => {
  const plans = new Map(await randomPlans(RANDOM_JOBS));
  for (const [name, tables] of Object.entries(JOBS)) plans.set(name, await planOf(tables));
  for (const [name, plan] of plans) {
    for (const sheet of cleanDescription(describePlan(plan)).sheets) {
      sheets.set(`${name} ${sheet.name}`, sheet);
    }
  }
});

interface Placed {
  readonly at: string;
  readonly row: number;
  readonly column: number;
  readonly cell: CellDescription;
  readonly style: CellStyle;
  /** Pixels of its column, or of those that it is merged over. */
  readonly width: number;
  readonly isMerged: boolean;
  /** Merged over rows: its lines have room in all of them. */
  readonly isTall: boolean;
}

function widthOf({ columns }: SheetDescription, from: number, to: number): number {
  let width = 0;
  for (let column = from; column <= to; column++) {
    width += columnPixels(columns[column]?.width ?? STANDARD_COLUMN);
  }
  return width;
}

function placedCells(sheet: SheetDescription): Placed[] {
  const merges = new Map(
    (sheet.merges ?? []).map((merge) => {
      const range = parseRange(merge)!;
      return [`${range.top},${range.left}`, range];
    }),
  );
  return sheet.rows.flatMap(({ cells }, row) =>
    cells.flatMap((cell, column): Placed[] => {
      if (cell === null || cell.value === null || cell.value === '') return [];
      const merge = merges.get(`${row},${column}`);
      const style: CellStyle = STYLES[cell.style ?? 'plain'];
      const isTall = merge !== undefined && merge.bottom > merge.top;
      const width = widthOf(sheet, column, merge?.right ?? column);
      const at = `${sheet.name} row ${row + 1}, column ${column + 1}: ${String(cell.value)}`;
      return [{ at, row, column, cell, style, width, isMerged: merge !== undefined, isTall }];
    }),
  );
}

function pixelsOf(text: string, { bold, size = STANDARD_FONT.size }: CellStyle): number {
  return measureEms(text, bold) * size * PIXELS_PER_POINT;
}

/** Lines into which the text breaks between words; a word too long for the width is broken anywhere. */
function linesOf(text: string, width: number, style: CellStyle): number {
  let lines = 0;
  for (const paragraph of text.split('\n')) {
    let line = '';
    lines += 1;
    for (const word of paragraph.split(/(?<= )/u)) {
      const longer = line + word;
      if (pixelsOf(longer.trimEnd(), style) <= width) line = longer;
      else {
        const pixels = pixelsOf(word.trimEnd(), style);
        lines += (line === '' ? 0 : 1) + Math.max(0, Math.ceil(pixels / width) - 1);
        line = word;
      }
    }
  }
  return lines;
}

must('In every cell of every sheet', () => {
  test('a number has room for all of its digits', () => {
    expect(lettersAreHere).toBe(true);
    const tooWide: string[] = [];
    let numbers = 0;
    for (const [name, sheet] of sheets) {
      for (const { at, cell, style, width } of placedCells(sheet)) {
        if (typeof cell.value !== 'number') continue;
        numbers += 1;
        const shown = shownNumber(cell.value, style.format);
        if (pixelsOf(shown, style) + AIR_PIXELS > width) tooWide.push(`${name}: ${at}`);
      }
    }
    expect(numbers).toBeGreaterThan(5_000);
    expect(tooWide).toEqual([]);
  });

  test('a text on one line has room for all of it, or spills over blank cells only', () => {
    const tooWide: string[] = [];
    let texts = 0;
    for (const [name, sheet] of sheets) {
      for (const { at, row, column, cell, style, width, isMerged } of placedCells(sheet)) {
        if (typeof cell.value !== 'string' || style.wrap === true) continue;
        texts += 1;
        let room = width;
        if (!isMerged && (style.align ?? 'left') === 'left') {
          const { cells = [] } = sheet.rows[row] ?? {};
          for (let next = column + 1; isBlank(cells[next]) && next < sheet.columns.length; next++) {
            room += widthOf(sheet, next, next);
          }
        }
        if (pixelsOf(cell.value, style) + AIR_PIXELS > room) tooWide.push(`${name}: ${at}`);
      }
    }
    expect(texts).toBeGreaterThan(500);
    expect(tooWide).toEqual([]);
  });

  test('a text on several lines has a row as high as they need', () => {
    const tooHigh: string[] = [];
    let texts = 0;
    for (const [name, sheet] of sheets) {
      const heights = rowHeights(sheet);
      for (const { at, row, cell, style, width, isTall } of placedCells(sheet)) {
        if (typeof cell.value !== 'string' || isTall) continue;
        texts += 1;
        const { size = STANDARD_FONT.size } = style;
        const lines = style.wrap === true ? linesOf(cell.value, width - AIR_PIXELS, style) : 1;
        const points = heights.get(row)?.height ?? STANDARD_POINTS;
        // Excel's highest row holds no more.
        if (lines * size * LINE_EMS > points + 0.5 && points < 409) tooHigh.push(`${name}: ${at}`);
      }
    }
    expect(texts).toBeGreaterThan(5_000);
    expect(tooHigh).toEqual([]);
  });

  test('of Production and Pieces the widest sums and lengths, of Office the widest money have room', () => {
    const widest = (isOffice: boolean): Partial<Record<StyleName, number>> => ({
      total: isOffice ? 9_999_999.99 : 99_999.99,
      money: 9_999_999.99,
      stickDecimal: isOffice ? 9_999_999.99 : 99_999.99,
      rowFraction: 99_999 + 15 / 16,
      stickFraction: 99_999 + 15 / 16,
      totalFraction: 99_999 + 15 / 16,
      fraction: 99_999 + 15 / 16,
      rowWhole: 99_999,
      totalWhole: 99_999,
    });
    // Sums of hours stand in a narrower column of Office: B.
    const HOURS_COLUMN = 1;
    for (const name of ['Production', 'Pieces', 'Office']) {
      const sheet = sheets.get(`demo ${name}`)!;
      const isOffice = name === 'Office';
      const tooNarrow = placedCells(sheet).flatMap(({ at, column, cell, style, width }) => {
        const most = widest(isOffice)[cell.style ?? 'plain'];
        if (typeof cell.value !== 'number' || most === undefined) return [];
        const isHours = isOffice && column === HOURS_COLUMN;
        // Rows are numbered to as many as a list holds.
        const least = column === 0 ? 9_999 : most;
        const shown = shownNumber(isHours ? 9_999.99 : Math.min(most, least), style.format);
        return pixelsOf(shown, style) + AIR_PIXELS > width ? [at] : [];
      });
      expect(tooNarrow).toEqual([]);
    }
  });
});

must('The width of text as the sheets reckon it', () => {
  test('is that of the font itself, letter for letter', () => {
    const letters = Array.from({ length: 95 }, (_, at) => String.fromCharCode(32 + at));
    for (const bold of [false, true]) {
      for (const letter of letters) {
        expect([letter, textEms(letter, bold)]).toEqual([
          letter,
          expect.closeTo(measureEms(letter, bold), 2),
        ]);
      }
    }
  });

  test('is never less than that of other Latin letters and signs', () => {
    for (const letter of 'ÄÖÜäöüßéèçñøÅæ€£½¼¾×·–—…“”’°') {
      expect([letter, textEms(letter) + 0.005 >= measureEms(letter)]).toEqual([letter, true]);
    }
  });
});

function isBlank(cell: CellDescription | null | undefined): boolean {
  return cell?.value === undefined || cell.value === null || cell.value === '';
}
