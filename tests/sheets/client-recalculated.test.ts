import { expect, test } from '@jest/globals';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';

import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { describeClientCopy } from '../../src/sheets/client/client-sheet.ts';
import { differingFormulas, libreOfficeIsHere, recalculate } from '../hosts/libreoffice.ts';
import { readXlsxBack } from '../hosts/read-xlsx.ts';
import { paintTiny } from '../hosts/tiny-drawing.ts';
import { planOf } from '../planning/make-job.ts';
import { numberIn, roomsOf, rowNamed } from './client-copies.ts';
import { JOBS } from './sheet-jobs.ts';

const here = libreOfficeIsHere();
const mustRun = here || process.env['CI'] !== undefined;
if (!mustRun) console.info('Skipped: LibreOffice (soffice) is not installed on this machine.');

const SHEET = 'xl/worksheets/sheet1.xml';

/** The file as a person leaves it who types a number into a cell. */
function typeInto(bytes: Uint8Array, typed: Readonly<Record<string, number>>): Uint8Array {
  const parts = unzipSync(bytes);
  let xml = strFromU8(parts[SHEET]!);
  for (const [at, value] of Object.entries(typed)) {
    const cell = new RegExp(`(<c r="${at}"[^>]*?)(?:/>|>(?:<v>[^<]*</v>)?</c>)`, 'u');
    expect([at, cell.test(xml)]).toEqual([at, true]);
    xml = xml.replace(cell, `$1><v>${value}</v></c>`);
  }
  return zipSync({ ...parts, [SHEET]: strToU8(xml) });
}

(mustRun ? test : test.skip)(
  'LibreOffice recalculates a client’s workbook to what stands in it, and prices follow quantities and dates',
  async () => {
    // Where CI lacks it, this fails: a check that can't run there is no check.
    expect(here).toBe(true);
    const files: Record<string, Uint8Array> = {};
    for (const name of Object.keys(JOBS)) {
      const copy = describeClientCopy(await planOf(JOBS[name]!));
      files[name] = await writeWorkbook(copy, { paint: paintTiny });
    }
    const names = Object.keys(files);
    // The demo's first room orders five of its first line and none of its second.
    const plan = await planOf(JOBS['demo']!);
    const [sheet] = describeClientCopy(plan).sheets;
    const [room] = roomsOf(sheet!);
    const [one, other] = room!.lines;
    const date = rowNamed(sheet!, 'Date').row;
    files['changed'] = typeInto(files['demo']!, {
      [`C${one!.row}`]: 5,
      [`C${other!.row}`]: 0,
      // 1 March 2026 in Excel's days, counted by hand: 46,022 (31 December 2025) and 31 + 28 + 1.
      [`B${date}`]: 46_082,
    });
    const saved = await recalculate(files);
    for (const name of names) {
      const now = readXlsxBack(saved[name]!, false);
      const { compared, differing } = differingFormulas(readXlsxBack(files[name]!), now);
      expect([name, differing]).toEqual([name, []]);
      expect(compared).toBeGreaterThan(4);
    }

    const cells = readXlsxBack(saved['changed']!, false).sheets[0]!.cells;
    const value = (at: string): unknown => cells[at]?.value;
    const cents = (amount: number): number => Math.round(amount * 100);
    // By hand: five at the price each, none of the other, the rest as it was.
    const priced = cents(5 * numberIn(one!, 'E'));
    const roomCents = cents(numberIn(room!.sum, 'F'));
    const moved = priced - cents(numberIn(one!, 'F')) - cents(numberIn(other!, 'F'));
    const price = plan.totals.priceCents + moved;
    const tax = Math.round((price * plan.job.shop.tax) / 100);
    const total = rowNamed(sheet!, 'All rooms').row;
    expect(moved).not.toBe(0);
    const shown = [
      `F${one!.row}`,
      `F${other!.row}`,
      `F${room!.sum.row}`,
      `F${total}`,
      `F${total + 1}`,
      `F${total + 2}`,
      `F${rowNamed(sheet!, 'To pay, all rooms and tax').row}`,
    ].map((at) => cents(Number(value(at))));
    const roomNow = roomCents + moved;
    expect(shown).toEqual([priced, 0, roomNow, price, tax, price + tax, price + tax]);
    const pieces = 5 - numberIn(one!, 'C') - numberIn(other!, 'C') + numberIn(room!.sum, 'C');
    expect(value(`C${room!.sum.row}`)).toBe(pieces);
    expect(value(`D${other!.row}`)).toBe(0);
    expect(value(`B${date + 1}`)).toBe(46_082 + plan.job.shop.priceHoldsDays);
  },
  180_000,
);
