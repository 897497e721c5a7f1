import { describe, expect, test } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesIn, folderWith, linesOf, once, refusalOf, ROOT, run } from './program.ts';

const COMMANDS = ['new', 'runs', 'plan', 'export', 'setups', 'cut', 'demo', 'serve'];

export function callSuite(): void {
  describe('calls', () => {
    test('no command shows the help of the program and exits with 2', async () => {
      const { exit, out, err } = await run(ROOT, []);
      expect([exit, err]).toEqual([2, '']);
      for (const name of COMMANDS) expect(out).toMatch(new RegExp(`^ {2}${name} `, 'm'));
    });

    test('help of the program is the same three ways', async () => {
      const calls = [['--help'], ['-h'], ['help']];
      const ran = await Promise.all(calls.map((args) => run(ROOT, args)));
      for (const one of ran) expect(one).toEqual({ ...ran[0], exit: 0, err: '' });
      expect(ran[0]!.out).toContain('Usage: coveledger COMMAND');
    });

    test.each(COMMANDS)(
      'help of %s has usage, options, an example and exit codes',
      async (name) => {
        const calls = [
          ['help', name],
          [name, '--help'],
          [name, '-h', '--nonsense', 'x', 'y', 'z'],
        ];
        const ran = await Promise.all(calls.map((args) => run(ROOT, args)));
        for (const one of ran) expect(one).toEqual({ ...ran[0], exit: 0, err: '' });
        const { out } = ran[0]!;
        expect(out).toContain(`Usage: coveledger ${name}`);
        expect(out).toMatch(/^Options:\n(.*\n)*? {2}--help/m);
        expect(out).toMatch(new RegExp(`^Examples?:\n {2}coveledger ${name}`, 'm'));
        expect(out).toMatch(/^Exit codes:\n {2}0 {2}\w(.*\n)*? {2}2 {2}\w(.*\n)*? {2}3 {2}\w/m);
        for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(90);
      },
    );

    test('the version is that of the package', async () => {
      const text = readFileSync(join(ROOT, 'package.json'), 'utf8');
      const { version } = JSON.parse(text) as { version: string };
      const out = `coveledger ${version}\n`;
      expect(await run(ROOT, ['--version'])).toEqual({ exit: 0, out, err: '' });
    });

    const WRONG = [
      { args: ['frobnicate'], says: /“frobnicate” is no command\. Commands: new, plan, / },
      { args: ['--json', 'setups'], says: /“--json” is no command/ },
      { args: ['help', 'frobnicate'], says: /“frobnicate” is no command/ },
      { args: ['help', 'cut', 'x'], says: /“x” is one argument too many/ },
      {
        args: ['setups'],
        says: /^coveledger setups needs FILE\.csv\. See coveledger setups --help/,
      },
      { args: ['plan', '--force=yes', 'x'], says: /“--force” takes no value; yes/ },
      {
        args: ['export', 'job.xlsx'],
        says: /^coveledger export needs --out FILE\.zip\. See coveledger export --help/,
      },
      { args: ['new'], says: /^coveledger new needs FILE\.xlsx/ },
      { args: ['new', 'a.xlsx', '--json'], says: /“--json” is no option of new\. .* new --help/ },
      { args: ['setups', 'a', '-json'], says: /“-json” is no option of setups\. .* setups --help/ },
      { args: ['setups', 'a', '--kerf', '3'], says: /“--kerf” is no option of setups/ },
      { args: ['setups', 'a', 'b'], says: /“b” is one argument too many/ },
      { args: ['cut', 'a', 'b', '--kerf'], says: /“--kerf” needs a value after it \(LENGTH\)/ },
      { args: ['cut', 'a', 'b', '--kerf='], says: /“--kerf” needs a value/ },
      { args: ['cut', 'a', 'b', '--end-trim', '--kerf'], says: /“--end-trim” needs a value/ },
      { args: ['plan', 'a', '--force', '--force'], says: /“--force” is given twice/ },
      { args: ['demo', 'x'], says: /“x” is one argument too many/ },
    ];
    const folder = once(() => folderWith({}));
    test.each(WRONG)('$args is refused in one line, with 2', async (one) => {
      const { exit, out, err } = await run(folder(), one.args);
      expect(linesOf(err)).toHaveLength(1);
      expect(err).toMatch(one.says);
      expect([exit, out, filesIn(folder())]).toEqual([2, '', []]);
    });

    test('every mistake of a call gets its own line', async () => {
      const args = ['cut', '--kref', '1/8', '--speed=9', '--end-trim='];
      const { exit, err } = await run(ROOT, args);
      expect(exit).toBe(2);
      expect(linesOf(err)).toEqual([
        expect.stringMatching(/^“--end-trim” needs a value/),
        expect.stringMatching(/^“--kref” is no option of cut/),
        expect.stringMatching(/^“--speed” is no option of cut/),
        expect.stringMatching(/^coveledger cut needs STICKS\.csv/),
      ]);
    });

    test('with --json a wrong call is answered as JSON too', async () => {
      const ran = await run(ROOT, ['cut', 'a.csv', '--json']);
      const { faults } = refusalOf(ran);
      expect(ran.exit).toBe(2);
      expect(faults.map(({ code }) => code)).toEqual(['call.argument-missing']);
    });
  });
}
