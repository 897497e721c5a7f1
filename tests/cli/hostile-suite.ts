import { describe, expect, test } from '@jest/globals';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { SMALL } from './job-folders.ts';
import { filesIn, folderWith, jsonOf, linesOf, once, run } from './program.ts';

/** A byte more than is read of a file; most of it is never stored. */
const TOO_LARGE = 50_000_001;
const COVES = 'Profile,Cove width,Cove depth\nReading,3 1/2,3/4\n"Map\nroom",2,1/2\n';

export function hostileSuite(): void {
  describe('files that are not what they should be', () => {
    const files = {
      'vast.xlsx': TOO_LARGE,
      'vast.csv': TOO_LARGE,
      'vast/runs.csv': TOO_LARGE,
      'vast/profiles.csv': SMALL['profiles.csv']!,
      'vast/stock.csv': SMALL['stock.csv']!,
      'text.xlsx': 'Room,Profile,Length\n',
      'torn.xlsx': Uint8Array.from([0x50, 0x4b, 3, 4, 20, 0, 0, 0, 8, 0, 1, 2, 3]),
      'old.xls': Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, 0, 0]),
      'zip.csv': Uint8Array.from([0x50, 0x4b, 3, 4, 20, 0, 0, 0, 8, 0, 1, 2, 3]),
      'binary.csv': Uint8Array.from([1, 0, 2, 0, 255, 0]),
      'open.csv': 'Profile,Cove width,Cove depth\n"A,3,1/2\nB,2,1/2\n',
      'good.csv': COVES,
      'pieces.csv': 'Length\n40\n',
      'sticks.csv': 'Length,Price\n96,1\n',
    };
    interface Wrong {
      readonly args: readonly string[];
      readonly says: RegExp;
      /** One where nothing is said. */
      readonly lines?: number;
    }
    const WRONG: readonly Wrong[] = [
      { args: ['plan', 'vast.xlsx'], says: /^vast\.xlsx is 50\.1 MB; at most 50 MB/ },
      { args: ['plan', 'vast'], says: /runs\.csv is 50\.1 MB; at most 50 MB/ },
      { args: ['setups', 'vast.csv'], says: /^vast\.csv is 50\.1 MB/ },
      { args: ['cut', 'vast.csv', 'sticks.csv'], says: /^vast\.csv is 50\.1 MB/ },
      { args: ['plan', 'text.xlsx'], says: /“text\.xlsx” is no \.xlsx workbook/ },
      { args: ['plan', 'torn.xlsx'], says: /“torn\.xlsx” is no \.xlsx workbook/ },
      { args: ['plan', 'old.xls'], says: /old \.xls kind/ },
      { args: ['plan', 'good.csv'], says: /neither an \.xlsx workbook nor a folder/ },
      { args: ['plan', 'nothing.xlsx'], says: /“nothing\.xlsx” is not there/ },
      {
        args: ['plan', 'empty'],
        says: /There is no (runs|profiles|stock)\.csv in “empty”/,
        lines: 3,
      },
      { args: ['setups', 'empty'], says: /“empty” is a folder, not a file\. Name a CSV file/ },
      { args: ['setups', 'nothing.csv'], says: /“nothing\.csv” is not there/ },
      { args: ['setups', 'zip.csv'], says: /“zip\.csv” is not a text file/ },
      { args: ['setups', 'binary.csv'], says: /“binary\.csv” is not a text file/ },
      { args: ['setups', 'open.csv'], says: /quote opened on line 2 is never closed/ },
      {
        args: ['setups', join('good.csv', 'x.csv')],
        says: /is not there|a part of the path is a file/,
      },
      { args: ['cut', 'pieces.csv', 'empty'], says: /“empty” is a folder/ },
    ];
    const folder = once(() => {
      const path = folderWith(files);
      mkdirSync(join(path, 'empty'));
      return path;
    });
    test.each(WRONG)('$args is refused in a clear line, with 2', async (one) => {
      const target = one.args[0] === 'plan' ? ['--out', 'plan.xlsx'] : [];
      const { exit, out, err } = await run(folder(), [...one.args, ...target]);
      expect([exit, out, linesOf(err).length]).toEqual([2, '', one.lines ?? 1]);
      expect(err).toMatch(one.says);
      const names = [...Object.keys(files), 'vast', 'empty'].map((name) => join(name));
      expect(filesIn(folder())).toEqual(names.sort());
    });
  });

  describe('CSV as spreadsheets save it', () => {
    const variants = {
      'plain.csv': COVES,
      'bom.csv': `\uFEFF${COVES}`,
      'crlf.csv': COVES.replaceAll('\n', '\r\n'),
      'semicolons.csv': COVES.replaceAll(',', ';'),
      'tabs.csv': COVES.replaceAll(',', '\t'),
      'all.csv': `\uFEFF${COVES.replaceAll(',', ';').replaceAll('\n', '\r\n')}\r\n\r\n`,
      'wide.csv': Buffer.from(`\uFEFF${COVES}`, 'utf16le'),
    };
    test('a mark at the start, CRLF, semicolons, tabs and quoted line ends change no answer', async () => {
      const folder = folderWith(variants);
      const ran = await Promise.all(
        Object.keys(variants).map((name) => run(folder, ['setups', name, '--json'])),
      );
      for (const one of ran) expect(one).toEqual(ran[0]);
      const names = (jsonOf(ran[0]!) as { profile: string }[]).map((one) => one.profile);
      expect(names).toEqual(['Reading', 'Map\nroom']);
    });

    test('a line end within a name stays out of tables and of faults', async () => {
      const folder = folderWith({ 'a.csv': `${COVES}"two\nlines",x\u001b[31m,1/2\n` });
      const { out, err } = await run(folder, ['setups', 'a.csv']);
      expect(out).toMatch(/^Map room +\d/m);
      expect(linesOf(err)).toEqual([expect.stringMatching(/^a\.csv, line 5, column 2: /)]);
      expect((out + err).replaceAll('\n', '')).not.toMatch(/\p{Cc}/u);
    });

    test('a decimal comma is refused by name where no shop says so, and read where one does', async () => {
      const folder = folderWith({
        'comma.csv': 'Profile;Cove width;Cove depth\nA;3,5;0,75\n',
        ...folderOf('point', {}),
        ...folderOf('comma', {
          'runs.csv': SMALL['runs.csv']!.replaceAll(',', ';').replace('90 1/2', '90,5'),
          'stock.csv': SMALL['stock.csv']!.replaceAll(',', ';').replace('24.50', '24,50'),
          'shop.csv': 'Setting;Value\nhourly rate;60\ndecimal sign;","\n',
        }),
      });
      const refused = await run(folder, ['setups', 'comma.csv', '--json']);
      const [row] = jsonOf(refused) as { faults: { code: string; given: unknown }[] }[];
      expect(refused.exit).toBe(1);
      expect(row!.faults.map(({ code, given }) => `${code} ${String(given)}`)).toEqual([
        'number.other-sign 3,5',
        'number.other-sign 0,75',
      ]);
      const [point, comma] = await Promise.all(
        ['point', 'comma'].map((name) => run(folder, ['plan', name, '--json'])),
      );
      const totals = (jsonOf(comma!) as { totals: unknown }).totals;
      expect(totals).toEqual((jsonOf(point!) as { totals: unknown }).totals);
      const words = await run(folder, ['plan', 'comma']);
      expect(words.out).toMatch(/Base \$24,50 and \$0,75 of labor at the sticks, proven/);
    });
  });
}

/** The small job in a folder of its own, with changes. */
function folderOf(name: string, changes: Readonly<Record<string, string>>): Record<string, string> {
  const files = Object.entries({ ...SMALL, ...changes });
  return Object.fromEntries(files.map(([file, text]) => [`${name}/${file}`, text]));
}
