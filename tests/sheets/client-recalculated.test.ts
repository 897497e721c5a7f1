import { expect, test } from '@jest/globals';
import { strFromU8, unzipSync } from 'fflate';

import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { copyInFile } from '../../src/hosts/xlsx/read-copy-file.ts';
import { readCopy } from '../../src/sheets/client/read-copy.ts';
import { changedLines } from '../../src/planning/compare/returned-copy.ts';
import { describeClientCopy } from '../../src/sheets/client/client-sheet.ts';
import { differingFormulas, libreOfficeIsHere, recalculate } from '../hosts/libreoffice.ts';
import { readXlsxBack } from '../hosts/read-xlsx.ts';
import { paintTiny } from '../hosts/tiny-drawing.ts';
import { planOf } from '../planning/make-job.ts';
import { COPY_PART, numberIn, roomsOf, rowNamed, typeInto, payAgain } from './client-copies.ts';
import { JOBS } from './sheet-jobs.ts';

const here = libreOfficeIsHere();
const mustRun = here || process.env['CI'] !== undefined;
if (!mustRun) console.info('Skipped: LibreOffice (soffice) is not installed on this machine.');

/** Whether a protected sheet takes nothing in a cell: ECMA-376 part 1, 18.8.33, locked unless it says 0. */
function isLocked(bytes: Uint8Array, at: string): boolean {
  const parts = unzipSync(bytes);
  const sheet = strFromU8(parts[COPY_PART]!);
  const [, style = ''] = new RegExp(`<c r="${at}"[^>]*? s="(\\d+)"`, 'u').exec(sheet) ?? [];
  const [, formats = ''] =
    /<cellXfs[^>]*>(.*?)<\/cellXfs>/su.exec(strFromU8(parts['xl/styles.xml']!)) ?? [];
  const xfs = formats.match(/<xf [^>]*?(?:\/>|>.*?<\/xf>)/gsu) ?? [];
  expect([at, xfs[Number(style)]]).toEqual([at, expect.any(String)]);
  return !/locked="(?:0|false)"/u.test(xfs[Number(style)]!);
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
    // The same, as it goes out: its number is told by its sheet and its file.
    const stamp = { fingerprint: '0a1b2c3d4e5f6071', day: '2026-11-30', effort: { steps: 20 } };
    const out = describeClientCopy(plan, stamp);
    const [more, none] = roomsOf(out.sheets[0]!)[0]!.lines;
    files['returned'] = typeInto(await writeWorkbook(out, { paint: paintTiny }), {
      [`C${more!.row}`]: 5,
      [`C${none!.row}`]: 0,
    });
    // Of the metric job the first option is taken up: tax on material, prices rounded up to 5.
    const optional = await planOf(JOBS['millimetres']!);
    const [offering] = describeClientCopy(optional).sheets;
    const offered = rowNamed(offering!, 'Option').row + 1;
    files['taken'] = typeInto(files['millimetres']!, { [`C${offered}`]: 1 });
    const saved = await recalculate(files);
    for (const name of names) {
      const now = readXlsxBack(saved[name]!, false);
      const { compared, differing } = differingFormulas(readXlsxBack(files[name]!), now);
      expect([name, differing]).toEqual([name, []]);
      expect(compared).toBeGreaterThan(4);
    }

    // As LibreOffice has understood it: quantities and the date stay open, what they lead to doesn't.
    for (const file of [files['demo']!, saved['demo']!]) {
      const xml = strFromU8(unzipSync(file)[COPY_PART]!);
      const [protection = ''] = /<sheetProtection[^>]*>/u.exec(xml) ?? [];
      expect(protection).toMatch(/ sheet="(?:1|true)"/u);
      expect(protection).not.toMatch(/password|hash/iu);
      const tax = rowNamed(sheet!, 'Tax, %').row;
      const open = [`C${one!.row}`, `C${other!.row}`, `B${date}`];
      const shut = [`D${one!.row}`, `F${one!.row}`, `G${one!.row}`, `F${tax}`, `G${tax}`, 'A1'];
      expect([...open, ...shut].filter((at) => !isLocked(file, at))).toEqual(open);
    }

    const taken = readXlsxBack(saved['taken']!, false).sheets[0]!.cells;
    const { totals: withIt } = optional.options[0]!.plan!;
    const paid = ['Price', 'Tax, %', 'To pay', 'To pay, all rooms, options taken up and tax'].map(
      (label) => Math.round(Number(taken[`G${rowNamed(offering!, label).row}`]?.value) * 100),
    );
    const { priceCents, taxCents } = withIt;
    expect(priceCents).toBeGreaterThan(optional.totals.priceCents);
    expect(paid).toEqual([
      ...[priceCents, taxCents],
      ...[priceCents + taxCents, priceCents + taxCents],
    ]);
    const asQuoted = taken[`A${rowNamed(offering!, 'Date').row - 1}`]?.value;
    expect(asQuoted).toBe('To pay as quoted. Quantities changed since: 1');

    const cells = readXlsxBack(saved['changed']!, false).sheets[0]!.cells;
    const value = (at: string): unknown => cells[at]?.value;
    const cents = (amount: number): number => Math.round(amount * 100);
    // By hand: five at the price each, none of the other, the rest as it was.
    const priced = cents(5 * numberIn(one!, 'F'));
    const roomCents = cents(numberIn(room!.sum, 'G'));
    const moved = priced - cents(numberIn(one!, 'G')) - cents(numberIn(other!, 'G'));
    const price = plan.totals.priceCents + moved;
    const tax = Math.round((price * plan.job.shop.tax) / 100);
    const total = rowNamed(sheet!, 'All rooms').row;
    expect(moved).not.toBe(0);
    const shown = [
      `G${one!.row}`,
      `G${other!.row}`,
      `G${room!.sum.row}`,
      `G${total}`,
      `G${rowNamed(sheet!, 'Tax, %').row}`,
      `G${rowNamed(sheet!, 'To pay').row}`,
      `G${rowNamed(sheet!, payAgain(plan)).row}`,
    ].map((at) => cents(Number(value(at))));
    const roomNow = roomCents + moved;
    expect(shown).toEqual([priced, 0, roomNow, price, tax, price + tax, price + tax]);
    const pieces = 5 - numberIn(one!, 'C') - numberIn(other!, 'C') + numberIn(room!.sum, 'C');
    expect(value(`C${room!.sum.row}`)).toBe(pieces);
    expect(value(`E${other!.row}`)).toBe(0);
    // Two lines are not as quoted: both are marked, and what was quoted in all stands near the price.
    const quoted = date - 1;
    expect(['A', 'F', 'G'].map((column) => value(`${column}${quoted}`))).toEqual([
      'To pay as quoted. Quantities changed since: 2',
      plan.totals.pieces,
      (plan.totals.priceCents + plan.totals.taxCents) / 100,
    ]);
    expect(value(`D${one!.row}`)).toBe(numberIn(one!, 'C'));
    // Saved by another program it still reads back: the same quantities, the same total, and nothing else.
    const copy = await copyInFile(saved['returned']!, 'returned.xlsx');
    expect(copy?.number).toBe('0a1b2c3d');
    const read = readCopy(plan, stamp, copy!, 'returned.xlsx');
    expect(read).toMatchObject({ ok: true, value: { findings: [] } });
    if (!read.ok) return;
    expect(changedLines(read.value).map(({ now }) => now)).toEqual([5, 0]);
    expect(read.value.price.now).toMatchObject({ priceCents: price, toPayCents: price + tax });
    const unchanged = readXlsxBack(saved['demo']!, false).sheets[0]!.cells;
    expect(unchanged[`A${quoted}`]?.value ?? '').toBe('');
    expect(value(`B${date + 1}`)).toBe(46_082 + plan.job.shop.priceHoldsDays);
  },
  180_000,
);
