import { describe, expect, test } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { SMALL } from './job-folders.ts';
import { filesIn, folderWith, jsonOf, run, runAlone } from './program.ts';
import { partsOf } from './workbook-parts.ts';

export function stampSuite(): void {
  describe('the day, the inputs and the search', () => {
    const FILES = ['p.xlsx', 'c.xlsx', 'e.zip'];
    const WRITE = ['--out', 'p.xlsx', '--client', 'c.xlsx', '--export', 'e.zip', '--force'];

    test('are told by sheets, terminal and JSON alike; with steps and a date the bytes repeat in any process', async () => {
      const folder = folderWith(SMALL);
      const args = ['plan', '.', '--steps', '7', '--date', '2026-11-30', ...WRITE];
      const { exit, out } = await run(folder, args);
      const bytes = FILES.map((name) => readFileSync(join(folder, name)));
      const [, mark = ''] = /Inputs ([0-9a-f]{8}), planned 30 Nov 2026 by/u.exec(out) ?? [];
      expect([exit, mark.length]).toEqual([0, 8]);
      expect(out).toContain('7 steps of search at most.');
      const said = [...partsOf(join(folder, 'p.xlsx')).texts].filter((text) => text.includes(mark));
      expect(said.some((text) => out.includes(text))).toBe(true);
      expect([...partsOf(join(folder, 'c.xlsx')).texts]).toContain(mark);
      const { made } = jsonOf(await runAlone(folder, [...args, '--json'])) as {
        made: Record<string, unknown>;
      };
      expect(made).toEqual({
        inputs: expect.stringMatching(new RegExp(`^${mark}[0-9a-f]{8}$`, 'u')),
        mark,
        date: '2026-11-30',
        version: expect.stringMatching(/^\d+\.\d+\.\d+$/u),
        steps: 7,
      });
      FILES.forEach((name, at) =>
        expect([name, readFileSync(join(folder, name)).equals(bytes[at]!)]).toEqual([name, true]),
      );
    });

    test('another date is in the files; another cell of the inputs is another mark', async () => {
      const markOf = async (files: typeof SMALL): Promise<unknown> => {
        const ran = await run(folderWith(files), ['plan', '.', '--json', '--steps', '3']);
        return (jsonOf(ran) as { made: { mark: string } }).made.mark;
      };
      const changed = { ...SMALL, 'shop.csv': SMALL['shop.csv']!.replace('60', '61') };
      const mark = await markOf(SMALL);
      expect(await markOf({ ...SMALL })).toBe(mark);
      expect(await markOf(changed)).not.toBe(mark);
      const folder = folderWith(SMALL);
      const core: string[] = [];
      for (const date of ['2026-11-30', '2026-12-01']) {
        await run(folder, [
          'plan',
          '.',
          '--steps',
          '3',
          '--date',
          date,
          '--out',
          'p.xlsx',
          '--force',
        ]);
        const parts = unzipSync(readFileSync(join(folder, 'p.xlsx')));
        core.push(strFromU8(parts['docProps/core.xml']!));
      }
      expect(core[0]).toContain('2026-11-30T00:00:00Z');
      expect(core[1]).toBe(core[0]!.replaceAll('2026-11-30', '2026-12-01'));
    });

    test.each([
      ['plan', '.'],
      ['client', '.', '--out', 'c.xlsx'],
      ['export', '.', '--out', 'e.zip'],
      ['new', 'n.xlsx'],
      ['demo'],
    ])('%s refuses a day that is none, and writes nothing', async (...command) => {
      const folder = folderWith(SMALL);
      const before = filesIn(folder);
      const ran = await run(folder, [...command, '--date', '2026-02-30']);
      expect([ran.exit, ran.out]).toEqual([2, '']);
      expect(ran.err).toMatch(/^--date: “2026-02-30” is no day of the calendar\./u);
      expect(filesIn(folder)).toEqual(before);
    });
  });
}
