import { describe, expect, test } from '@jest/globals';

import { describeClientCopy } from '../../src/sheets/client/client-sheet.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { checkDescription } from '../../src/sheets/grammar/check/check-description.ts';
import type { Stamp } from '../../src/sheets/stamp.ts';
import { planOf } from '../planning/make-job.ts';
import { numberIn, rowNamed } from './client-copies.ts';
import { sheetOf, textsOf } from './sheet-jobs.ts';

const STAMP: Stamp = {
  fingerprint: 'abcdef0123456789',
  day: '2026-11-30',
  moment: '2026-11-30T09:12:00.000Z',
  effort: { steps: 10 },
};
const job = (...rows: string[]) => ({ job: ['Setting,Value', ...rows].join('\n') });
const NAMED = job(
  'job,Lending desk',
  'number,L-7',
  'revision,C',
  'client,Friends of the Library',
  'address,2 Mill Lane',
  'shop,Two Elms Joinery',
  'prepared by,R. Alder',
  'terms,In thirty days.',
);

describe('The title block', () => {
  test('stands over every printed page of the shop’s workbook and of the client’s copy', async () => {
    const plan = await planOf({ ...NAMED, shop: 'Setting,Value\nlabels,letter 3 x 10' });
    const shop = describePlan(plan, { stamp: STAMP, keepsFormulas: true });
    const copy = describeClientCopy(plan, STAMP);
    const said = 'Lending desk, L-7, revision C, for Friends of the Library';
    // A page of labels has no room but for labels, each with its own words.
    const pages = [...shop.sheets, ...copy.sheets].filter(({ name }) => name !== 'Labels');
    expect(pages.map(({ print }) => print.header)).toEqual(pages.map(() => said));
    expect([...checkDescription(shop), ...checkDescription(copy)]).toEqual([]);
  });

  test('is cut short over a page where it would not fit, and stands whole on the client’s copy', async () => {
    const long = 'Trim of the long gallery '.repeat(9).trim();
    const plan = await planOf(job(`job,${long}`, `client,${long}`));
    const copy = describeClientCopy(plan, STAMP);
    const [sheet] = copy.sheets;
    expect(sheet!.print.header).toHaveLength(200);
    expect(sheet!.print.header.endsWith('…')).toBe(true);
    expect(checkDescription(copy)).toEqual([]);
    expect(textsOf(sheet!).filter((text) => text === long)).toHaveLength(2);
  });

  test('names shop, client, address and who prepared it on the client’s copy, and gives the terms', async () => {
    const texts = textsOf(describeClientCopy(await planOf(NAMED), STAMP).sheets[0]!);
    const wanted = ['Two Elms Joinery', 'Moldings and their price', 'Lending desk', 'L-7', 'C'];
    expect(texts.slice(0, 12)).toEqual(expect.arrayContaining(wanted));
    for (const text of ['Friends of the Library', '2 Mill Lane', 'R. Alder', 'In thirty days.']) {
      expect(texts).toContain(text);
    }
  });

  test('leaves out what Job doesn’t say: no label without a text, no terms, no deposit', async () => {
    const texts = textsOf(describeClientCopy(await planOf({}), STAMP).sheets[0]!);
    for (const label of ['Job', 'Client', 'Revision', 'Terms', 'Left to pay']) {
      expect(texts).not.toContain(label);
    }
    expect(texts[0]).toBe('Moldings and their price');
  });

  test('dates the client’s copy from Job, else by the day on which it was planned', async () => {
    // 1 January 1901 is 367 (ECMA-376 part 1, 18.17.4.1); 46357 days on is 2 Dec 2026.
    const dated = describeClientCopy(await planOf(job('date,2026-12-02')), STAMP).sheets[0]!;
    expect(rowNamed(dated, 'Date').cells[1]?.value).toBe(46358);
    const plain = describeClientCopy(await planOf({}), STAMP).sheets[0]!;
    expect(rowNamed(plain, 'Date').cells[1]?.value).toBe(46356);
  });

  test('asks for the deposit on price and tax, to the cent, and says what is left', async () => {
    const plan = await planOf({
      ...job('deposit %,33'),
      shop: 'Setting,Value\ntax %,8.25\nhourly rate,61',
    });
    const { priceCents, taxCents } = plan.totals;
    const sheet = sheetOf(describePlan(plan), 'Client');
    const asked = numberIn(rowNamed(sheet, 'Deposit, % of it at the order'), 'G');
    const left = numberIn(rowNamed(sheet, 'Left to pay'), 'G');
    expect(Math.abs(asked * 100 - ((priceCents + taxCents) * 33) / 100)).toBeLessThanOrEqual(0.5);
    expect(Math.round((asked + left) * 100)).toBe(priceCents + taxCents);
  });

  test('has a line to sign on, with a date', async () => {
    const sheet = describeClientCopy(await planOf({})).sheets[0]!;
    const signed = rowNamed(sheet, 'Name and signature');
    expect(signed.cells[5]?.value).toBe('Date');
  });
});

describe('A file', () => {
  test('tells when it was made to the moment, by a clock, and of a fixed day that day alone', async () => {
    const plan = await planOf(NAMED);
    expect(describePlan(plan, { stamp: STAMP }).made).toBe('2026-11-30T09:12:00.000Z');
    const fixed: Stamp = { fingerprint: STAMP.fingerprint, day: STAMP.day, effort: STAMP.effort };
    expect(describePlan(plan, { stamp: fixed }).made).toBe('2026-11-30');
    expect(describeClientCopy(plan, fixed).made).toBe('2026-11-30');
  });

  test('tells its job’s name, number and revision, and no client in the shop’s properties', async () => {
    const { properties, title } = describePlan(await planOf(NAMED), { stamp: STAMP });
    expect(title).toBe('Production workbook, Lending desk');
    expect(properties).toMatchObject({ Job: 'Lending desk', 'Job number': 'L-7', Revision: 'C' });
    expect(JSON.stringify(properties)).not.toContain('Friends');
  });
});
