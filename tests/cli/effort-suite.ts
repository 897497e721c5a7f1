import { describe, expect, test } from '@jest/globals';
import { spawn } from 'node:child_process';
import { folderWith, jsonOf, linesOf, MAIN, run, runAlone, type Ran } from './program.ts';

interface Answer {
  readonly cost: number;
  readonly bound: number;
  readonly status: string;
  readonly sticks: readonly unknown[];
}

/** 173 pieces that the rules of thumb don't cut for the least. */
const FILES = {
  'pieces.csv': 'Length,Quantity\n50,70\n31,90\n77,13\n',
  'sticks.csv': 'Length,Price,Count\n100,3.50,20\n144,5.25,\n',
};
const CUT = ['cut', 'pieces.csv', 'sticks.csv'];

type Runs = (folder: string, args: readonly string[]) => Promise<Ran>;
const answerOf = async (options: readonly string[], runs: Runs = run): Promise<Answer> =>
  jsonOf(await runs(folderWith(FILES), [...CUT, '--json', ...options])) as Answer;

/** 300 lengths, each of its own, made by a rule: long in the planning. */
const MANY = Array.from({ length: 300 }, (_, at) => `${120 + ((at * 7919) % 1280)}/16,1`);
const LONG = {
  'pieces.csv': `Length,Quantity\n${MANY.map((one) => `${one}\n`).join('')}`,
  'sticks.csv': 'Length,Price\n96,€9.50\n120,12.70\n144,15.10\n168,19\n192,21.30\n',
};

export function effortSuite(): void {
  describe('how long a plan is looked for', () => {
    test('without limits of one’s own: a cheaper plan than the quick one, and the proof', async () => {
      const [quick, usual] = [await answerOf(['--seconds', '0']), await answerOf([])];
      expect([quick.status, usual.status]).toEqual(['gap', 'proven']);
      expect(usual.cost).toBeLessThan(quick.cost);
      expect(usual.cost).toBe(usual.bound);
      expect(quick.bound).toBeLessThanOrEqual(usual.cost);
    });

    test('the same number of steps gives the same plan in any process', async () => {
      const options = ['--steps', '40'];
      expect(await answerOf(options)).toEqual(await answerOf(options, runAlone));
    });

    test.each([
      [['--seconds', 'long'], /^--seconds: “long” is not a number/],
      [['--seconds', '-1'], /^--seconds is -1; it must be 0 or more/],
      [['--seconds', '1e9'], /^--seconds: “1e9” is not a number/],
      [['--seconds', '999999'], /^--seconds is 999,999; at most 86,400/],
      [['--steps', '0'], /^--steps is 0; at least 1/],
      [['--steps', '1.5'], /^--steps is 1\.5; it must be a whole number/],
      [['--steps', '5', '--seconds', '5'], /^--seconds and --steps can't both be given/],
    ])('%j is refused with one line and 2, by cut and by plan', async (options, says) => {
      const folder = folderWith({ ...FILES, 'runs.csv': 'Room,Profile,Length\n' });
      for (const command of [CUT, ['plan', '.']]) {
        const { exit, out, err } = await run(folder, [...command, ...options]);
        expect([exit, out, linesOf(err).length]).toEqual([2, '', 1]);
        expect(err).toMatch(says);
      }
    });

    test('Ctrl-C stops it, says so, and keeps the best plan so far', async () => {
      const { code, out, err } = await interrupted(folderWith(LONG), CUT);
      expect(code).toBe(0);
      expect(out).toMatch(/^300 pieces from \d+ sticks for €/m);
      expect(err).toContain('Stopping; the best plan so far is kept.');
      // The line of progress counts as the answer does.
      expect(err).toMatch(/€[\d,.]+ so far, €[\d,.]+ at least/u);
    });
  });
}

/** Makes the program take its error output for a terminal, and interrupts it as soon as that tells of a plan. */
function interrupted(
  folder: string,
  args: readonly string[],
): Promise<{ readonly code: number | null; readonly out: string; readonly err: string }> {
  const terminal = 'data:text/javascript,process.stderr.isTTY=true';
  const program = spawn(process.execPath, ['--import', terminal, MAIN, ...args], { cwd: folder });
  let [out, err] = ['', ''];
  let isSent = false;
  program.stdout.setEncoding('utf8').on('data', (text: string) => (out += text));
  program.stderr.setEncoding('utf8').on('data', (text: string) => {
    err += text;
    if (isSent || !err.includes('at least')) return;
    isSent = program.kill('SIGINT');
  });
  return new Promise((resolve, reject) => {
    program.on('error', reject);
    program.on('close', (code) => resolve({ code, out, err }));
  });
}
