import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { describe, expect, jest, test } from '@jest/globals';
import { strFromU8, unzipSync } from 'fflate';

import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { testHost } from './host-suite.ts';
import { readXlsxBack } from './read-xlsx.ts';
import { richWorkbook, workbook } from './sample-workbook.ts';
import { paintTiny, TINY_DRAWING } from './tiny-drawing.ts';

testHost({
  name: 'file',
  write: (description) => writeWorkbook(description, { paint: paintTiny }),
  readBack: (bytes) => Promise.resolve(readXlsxBack(bytes)),
});

const REAL_TIMERS = [
  'hrtime',
  'nextTick',
  'performance',
  'queueMicrotask',
  'setImmediate',
  'clearImmediate',
  'setInterval',
  'clearInterval',
  'setTimeout',
  'clearTimeout',
] as const;

describe('A written .xlsx file', () => {
  test('is the same, byte for byte, whenever and wherever it is written', async () => {
    const zone = process.env['TZ'];
    const written: Uint8Array[] = [];
    for (const [now, place] of [
      ['1999-12-31T23:59:59Z', 'Asia/Tokyo'],
      ['2031-07-04T12:00:00Z', 'America/Denver'],
    ] as const) {
      // Only the clock is turned: the library packs with streams that need true timers.
      jest.useFakeTimers({ now: new Date(now), doNotFake: [...REAL_TIMERS] });
      process.env['TZ'] = place;
      written.push(await writeWorkbook(richWorkbook()));
      jest.useRealTimers();
    }
    if (zone === undefined) delete process.env['TZ'];
    else process.env['TZ'] = zone;
    expect(Buffer.from(written[0]!).equals(written[1]!)).toBe(true);
  });

  test('tells nothing of who wrote it, when or where', async () => {
    const parts = unzipSync(await writeWorkbook(richWorkbook()));
    const core = strFromU8(parts['docProps/core.xml']!);
    expect(core).not.toMatch(/creator|lastModifiedBy/);
    expect(core.match(/\d{4}-\d\d-\d\dT[\d:]+Z/g)).toEqual([
      '2000-01-01T00:00:00Z',
      '2000-01-01T00:00:00Z',
    ]);
    const everything = Object.values(parts).map((part) => strFromU8(part));
    expect(everything.join('\n')).not.toContain(process.cwd());
  });

  test('makes rows high enough for their wrapped text', async () => {
    const rows = [
      { cells: [{ value: 'one line', style: 'wrapped' as const }] },
      { cells: [{ value: 'first\nsecond\nthird', style: 'wrapped' as const }] },
      { cells: [{ value: 'word '.repeat(12), style: 'note' as const }] },
      { cells: [{ value: 'word '.repeat(12), style: 'plain' as const }] },
      { cells: [{ value: 'Title', style: 'title' as const }] },
    ];
    const bytes = await writeWorkbook(workbook([{ name: 'W', columns: [{ width: 20 }], rows }]));
    const { heights } = readXlsxBack(bytes).sheets[0]!;
    const linePoints = 12; // a line of 10 points needs at least that much
    expect(heights[1]).toBeUndefined();
    expect(heights[2]).toBeGreaterThanOrEqual(3 * linePoints);
    // 12 words of 5 are 60 characters: 3 lines at least in 20, no more than 4.
    expect(heights[3]).toBeGreaterThanOrEqual(3 * linePoints);
    expect(heights[3]).toBeLessThanOrEqual(4.6 * linePoints);
    expect(heights[4]).toBeUndefined();
    expect(heights[5]).toBeGreaterThanOrEqual(16 * 1.15);
  });

  const drawn = workbook([
    { name: 'Drawn', drawings: [{ at: 'B2', drawing: TINY_DRAWING }] },
    {
      name: 'Both',
      rows: [{ cells: [{ value: 'x' }] }],
      drawings: [{ at: 'C9', drawing: TINY_DRAWING }],
    },
  ]);

  test('with drawings needs a painter of PNG files', async () => {
    await expect(writeWorkbook(drawn)).rejects.toThrow(/Nothing paints the drawings of "Drawn"/);
    const paint = () => Promise.resolve(new TextEncoder().encode('<svg/>'));
    await expect(writeWorkbook(drawn, { paint })).rejects.toThrow(RangeError);
  });

  test('with drawings is the same, byte for byte, and tells nothing of when', async () => {
    const [one, other] = [
      await writeWorkbook(drawn, { paint: paintTiny }),
      await writeWorkbook(drawn, { paint: paintTiny }),
    ];
    expect(Buffer.from(one).equals(other)).toBe(true);
    // A zip's entries say when they were written: 1980-01-01, the earliest there is (APPNOTE 4.4.6).
    const entries = Buffer.from(one).toString('latin1').split('PK\u0001\u0002').slice(1);
    const dates = entries.map((entry) => entry.slice(8, 12));
    expect(dates.length).toBeGreaterThan(10);
    expect(new Set(dates)).toEqual(new Set(['\0\0!\0']));
  });

  test('without drawings is written as if there were no painter', async () => {
    const plain = await writeWorkbook(richWorkbook());
    expect(
      Buffer.from(plain).equals(await writeWorkbook(richWorkbook(), { paint: paintTiny })),
    ).toBe(true);
  });

  const checker = fileURLToPath(new URL('../../../shared/tools/check-xlsx', import.meta.url));
  const present = existsSync(checker);
  if (!present) console.info('Skipped: no checker of schemas beside the repository.');
  (present ? test : test.skip)('holds to the schemas of ECMA-376, part by part', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'coveledger-'));
    try {
      const files = await Promise.all(
        [richWorkbook(), workbook([{ name: 'Empty' }]), drawn].map(async (description, index) => {
          const file = join(folder, `${index}.xlsx`);
          writeFileSync(file, await writeWorkbook(description, { paint: paintTiny }));
          return file;
        }),
      );
      const { status, stdout } = spawnSync('bash', [checker, ...files], { encoding: 'utf8' });
      expect(stdout).toContain(' 0 invalid');
      expect(status).toBe(0);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
