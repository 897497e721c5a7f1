import { beforeAll, describe, expect, test } from '@jest/globals';
import { strFromU8, unzipSync } from 'fflate';

import { paintPng } from '../../src/hosts/file/paint-png.ts';
import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { benchHoursOf, hoursOf, machineHoursOf } from '../../src/planning/work/hours.ts';
import type { Stamp } from '../../src/sheets/stamp.ts';
import { describeClientCopy } from '../../src/sheets/client/client-sheet.ts';
import { planOf } from '../planning/make-job.ts';

/** Settings and prices that no length, count or style would come to by chance; tax and days are shown. */
const SECRETS = {
  'hourly rate': 61.37,
  'overhead %': 17.31,
  'margin %': 23.69,
  'offcut credit %': 33.13,
  'offcut allowance %': 11.73,
  'handling per pass': 31.57,
  'set-up minutes': 43.91,
} as const;
const PRICES = [2.379, 5.137] as const;

const JOB = {
  runs:
    'Room,Run,Profile,Length,Left end,Note,Done\n' +
    'Hall,north wall by Jansen,Base,100 1/16,inside miter,Jansen pays late,\n' +
    'Hall,south wall by Jansen,Cove,90 3/16,return,,\nDen,east,Base,250,,,\nDen,west,Cove,61,,,yes',
  profiles:
    'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Off-center,Class,Note\n' +
    'Base,buy,5 1/4,3/4,Poplar,,,,,from Kuiper and Sons\nCove,cove,4 1/2,1,Poplar,3,1/2,1/4,4/4,',
  shop:
    'Setting,Value\ntax %,8.875\n' +
    Object.entries(SECRETS)
      .map(([setting, value]) => `${setting},${value}`)
      .join('\n'),
  stock: `For,Kind,Class,Width,Length,Price,Per,Have,Buy\nBase,stick,,,16',${PRICES[0]},foot,2,\nPoplar,board,4/4,10,12',${PRICES[1]},board foot,1,`,
};

/** What the copy is not to tell of: more of the fingerprint than its mark, and how long was looked. */
const STAMP = {
  fingerprint: '7f3a2b1ce5d40c96',
  day: '2026-03-01',
  effort: { seconds: 417.83 },
} as const satisfies Stamp;

let plan: JobPlan;
let bytes: Uint8Array;
let parts: Record<string, Uint8Array>;

beforeAll(async () => {
  plan = await planOf(JOB);
  bytes = await writeWorkbook(describeClientCopy(plan, STAMP), { paint: paintPng });
  parts = unzipSync(bytes);
});

const xmlParts = (): (readonly [name: string, xml: string])[] =>
  Object.entries(parts).flatMap(([name, part]) =>
    name.endsWith('.png') ? [] : [[name, strFromU8(part)] as const],
  );

function numbersIn(xml: string): ReadonlySet<string> {
  const numbers = xml.match(/\d+(?:[.,]\d+)?/gu) ?? [];
  return new Set(numbers.map((one) => Number(one.replace(',', '.')).toFixed(2)));
}

describe("The client's workbook as a file", () => {
  test('has no part but those of one sheet with drawings', () => {
    expect(Object.keys(parts).sort()).toEqual(
      [
        '[Content_Types].xml',
        '_rels/.rels',
        'docProps/app.xml',
        'docProps/core.xml',
        'docProps/custom.xml',
        'xl/_rels/workbook.xml.rels',
        'xl/drawings/_rels/drawing1.xml.rels',
        'xl/drawings/drawing1.xml',
        'xl/media/image1.png',
        'xl/media/image2.png',
        'xl/sharedStrings.xml',
        'xl/styles.xml',
        'xl/theme/theme1.xml',
        'xl/workbook.xml',
        'xl/worksheets/_rels/sheet1.xml.rels',
        'xl/worksheets/sheet1.xml',
      ].sort(),
    );
  });

  test('tells of no author, firm, template or path, and of nothing but its title, version, number and date', () => {
    const elements = (name: string): string[] =>
      [...strFromU8(parts[name]!).matchAll(/<([\w:]+)[^>]*>([^<]+)</gu)].map(
        ([, element = '', text = '']) => `${element} ${text}`,
      );
    expect(elements('docProps/core.xml')).toEqual([
      'dc:title Moldings and their price',
      'dcterms:created 2026-03-01T00:00:00Z',
      'dcterms:modified 2026-03-01T00:00:00Z',
    ]);
    expect(
      elements('docProps/app.xml').filter(
        (one) => !/^(?:Application Coveledger|DocSecurity .*)$/u.test(one),
      ),
    ).toEqual([]);
    expect(elements('docProps/custom.xml')).toEqual([
      'vt:i4 1',
      'vt:lpwstr 7f3a2b1c',
      'vt:lpwstr 2026-03-01',
    ]);
    const custom = [...strFromU8(parts['docProps/custom.xml']!).matchAll(/ name="([^"]*)"/gu)];
    expect(custom.map(([, name]) => name)).toEqual(['Description version', 'Number', 'Date']);
    for (const [name, xml] of xmlParts()) {
      expect([
        name,
        /creator|lastModifiedBy|Company|Manager|absPath|file:|[A-Z]:\\|\/(?:home|tmp|Users|work)\//u.exec(
          xml,
        ),
      ]).toEqual([name, null]);
    }
  });

  test('hides no sheet, row or column, has no names, no links, and no function of ours', () => {
    const workbook = strFromU8(parts['xl/workbook.xml']!);
    expect(workbook.match(/<sheet [^>]*>/gu)).toHaveLength(1);
    expect(workbook).not.toMatch(/definedName|externalReference|state=/u);
    const sheet = strFromU8(parts['xl/worksheets/sheet1.xml']!);
    expect(sheet).not.toMatch(/hidden|legacyDrawing|_xludf|_xlfn/iu);
    const formulas = [...sheet.matchAll(/<f>([^<]*)<\/f>/gu)].map(([, formula = '']) => formula);
    expect(formulas.length).toBeGreaterThan(10);
    expect(formulas.filter((one) => /COVE\.|[![]/u.test(one))).toEqual([]);
    for (const [name, xml] of xmlParts()) {
      if (name.endsWith('.rels')) expect([name, xml.includes('External')]).toEqual([name, false]);
    }
  });

  test('has no figure of the shop’s own in any part', () => {
    const money = plan.profiles.flatMap(({ money: lines }) => [
      lines.lumberCents,
      lines.offcutCreditCents,
      lines.laborCents,
      lines.overheadCents,
      lines.costCents,
    ]);
    const hours = plan.profiles.flatMap(({ tally }) => [
      tally.boardFeetNet ?? 0,
      tally.boardFeetWithAllowance ?? 0,
      hoursOf(tally.hours),
      machineHoursOf(tally.hours),
      benchHoursOf(tally.hours),
    ]);
    const { costCents, hours: allHours, boardFeetNet } = plan.totals;
    const secrets = [
      ...Object.values(SECRETS),
      ...PRICES,
      STAMP.effort.seconds,
      ...[...money, costCents].map((cents) => cents / 100),
      ...[...hours, allHours, boardFeetNet],
    ].filter((value) => value !== 0);
    // A number of a part is found to the cent, whatever hair it has from arithmetic.
    const found = xmlParts().flatMap(([name, xml]) =>
      secrets
        .filter((secret) => numbersIn(xml).has(secret.toFixed(2)))
        .map((secret) => `${name}: ${secret}`),
    );
    expect(secrets.length).toBeGreaterThan(20);
    expect(found).toEqual([]);
    // The search finds what is there: the price is.
    const shown = numbersIn(strFromU8(parts['xl/worksheets/sheet1.xml']!));
    expect(shown.has((plan.totals.priceCents / 100).toFixed(2))).toBe(true);
  });

  test('has no word of cost, margin, labor, stock, hours or notes in any part', () => {
    const words =
      /costs?\b|margin|overhead|labor|\bstock|supplier|offcut|\bhours?\b|\brack\b|waste|hourly|Jansen|Kuiper|\bsticks?\b/giu;
    for (const [name, xml] of xmlParts()) {
      // What the file format itself calls so.
      const said = xml.replace(/<pageMargins [^>]*>/gu, '');
      expect([name, said.match(words)]).toEqual([name, null]);
    }
  });

  test('bears its day and the mark by which the shop finds its plan, and nothing else of its making', () => {
    const all = xmlParts().map(([, xml]) => xml);
    expect(all.filter((xml) => xml.includes('7f3a2b1c')).length).toBeGreaterThan(0);
    expect(all.filter((xml) => /e5d40c96|search|second|417/iu.test(xml))).toEqual([]);
    const sheet = strFromU8(parts['xl/worksheets/sheet1.xml']!);
    // 1 March 2026 in Excel's days, counted by hand: 46,022 (31 December 2025) and 31 + 28 + 1.
    expect(sheet).toContain('<v>46082</v>');
  });

  test('has pictures that hold nothing but the picture', () => {
    for (const [name, png] of Object.entries(parts)) {
      if (!name.endsWith('.png')) continue;
      const chunks: string[] = [];
      // PNG (W3C, third edition, 5.3): length, type, data and check, one chunk after the other.
      const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
      for (let at = 8; at < png.length; at += view.getUint32(at) + 12) {
        chunks.push(strFromU8(png.subarray(at + 4, at + 8)));
      }
      expect(
        chunks.filter((type) => !/^(?:IHDR|PLTE|tRNS|pHYs|sRGB|gAMA|sBIT|IDAT|IEND)$/u.test(type)),
      ).toEqual([]);
      expect(chunks).toContain('IDAT');
    }
  });

  test('is the same to the byte each time', async () => {
    const again = await writeWorkbook(describeClientCopy(await planOf(JOB), STAMP), {
      paint: paintPng,
    });
    expect(Buffer.from(again).equals(Buffer.from(bytes))).toBe(true);
  });
});
