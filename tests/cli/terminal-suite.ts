/** What stands in anybody's file never steers the terminal that it is said on. */
import { describe, expect, test } from '@jest/globals';
import { spawn } from 'node:child_process';
import { mkdirSync, openSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { folderWith, MAIN, ROOT, run, runAlone, type Ran } from './program.ts';

/**
 * A window's title, a wiped screen and colors (ECMA-48), the same by C1, a line begun anew, a line end,
 * letters turned round (UAX #9: overrides, embeddings, isolates, marks), and letters without a width.
 */
const HOSTILE =
  '\u001b]0;owned\u0007\u001b[2J\u001b[31m\u009b31m\u0085\rWritten: x\nCaution: y\u202e\u2066\u200f\u061c\u200b\u2028\ufeff\u007f';
/** All but our own line ends. */
const STEERS = /(?!\n)[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]|\p{Surrogate}/u;

const cell = (text: string): string => `"${text.replaceAll('"', '""')}"`;
const h = (text: string): string => cell(`${text}${HOSTILE}`);

/** Every text that a job can hold, with all of that in it. */
const JOB = {
  'runs.csv': `Room,Run,Profile,Length,Match,Note,${h('Color')}\n${h('Hall')},${h('N')},${h('Cove')},90 1/2,${h('m')},${h('n')},x\n${h('Hall')},${h('S')},${h('Base')},88,,${h('n')},x\n${h('Hall')},${h('W')},${h('Base')},180,,,\n`,
  'openings.csv': `Room,Wall,Kind,Width,Height,Casing\n${h('Hall')},${h('S')},door,32,80,${h('Base')}\n`,
  'profiles.csv': `Profile,Make,Cove width,Cove depth,Blank width,Blank thickness,Species,Where,Note\n${h('Cove')},cove,2,1/2,3,1,${h('Poplar')},,${h('n')}\n${h('Base')},buy,,,3,1/2,${h('Pine')},floor,${h('n')}\n`,
  'stock.csv': `For,Length,Price\n${h('Cove')},12',20\n${h('Base')},16',24.50\n`,
  'shop.csv': `Setting,Value,Note\nhourly rate,60,${h('n')}\n`,
};
const COVES = `Profile,Cove width,Cove depth,${h('Color')}\n${h('A')},3 1/2,3/4,x\n${h('B')},${h('3')},3/4,x\n`;
const PIECES = `Length,Quantity,Label,${h('Color')}\n40,2,${h('leg')},x\n400,1,${h('beam')},x\n`;
const STICKS = `Length,Price,${h('Color')}\n96,5,x\n`;

/** A name of a file that holds as much of it as a file system takes. */
const NAME = `job\u001b[31m\u009b\u202e\u200b\r\n`;

function filesOfJob(folder: string, files: Readonly<Record<string, string>>): string {
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}

/** How many of the calls below are sound. */
const DONE = 4;
/** Which of them are made in processes of their own too: one that is done, and one that is refused. */
const ALONE = new Set([0, 4]);

/** Windows takes no such names. */
const unixTest = process.platform === 'win32' ? test.skip : test;

export function terminalSuite(): void {
  describe('what steers a terminal', () => {
    unixTest(
      'never reaches it, whatever field, file name or argument of any command it stands in',
      async () => {
        const folder = folderWith({
          'coves.csv': COVES,
          'pieces.csv': PIECES,
          'sticks.csv': STICKS,
        });
        const job = filesOfJob(join(folder, NAME), JOB);
        const faulty = filesOfJob(join(folder, 'faulty'), {
          ...JOB,
          'runs.csv': `Room,Profile,Length\n${h('Hall')},${h('No such')},${h('9')}\n`,
        });
        const inJob = (name: string): string => join(job, name);
        const calls: (readonly string[])[] = [
          // The first are done, the others refused.
          ['plan', job, '--seconds', '0'],
          [
            ...['plan', job, '--seconds', '0', '--out', inJob(`${NAME}.xlsx`)],
            ...['--client', inJob(`${NAME}-c.xlsx`), '--export', inJob(`${NAME}.zip`)],
          ],
          ['client', job, '--seconds', '0', '--out', inJob(`${NAME}-d.xlsx`)],
          ['export', job, '--seconds', '0', '--out', inJob(`${NAME}-e.zip`)],
          ['plan', faulty],
          ['plan', job, '--seconds', '0', '--out', inJob(`${NAME}/${NAME}.xlsx`)],
          ['new', inJob(`${NAME}-n.xlsx`)],
          ['setups', 'coves.csv'],
          ['setups', HOSTILE],
          ['cut', 'pieces.csv', 'sticks.csv', '--seconds', '0'],
          ['cut', 'pieces.csv', 'sticks.csv', '--kerf', HOSTILE],
          ['serve', '--folder', HOSTILE],
          ['demo', HOSTILE],
          ['plan', `--${HOSTILE}`, job],
          [HOSTILE],
          ['help', HOSTILE],
          ['compare', job, job, '--seconds', '0', '--out', inJob(`${NAME}-f.xlsx`)],
          ['compare', faulty, HOSTILE],
        ];
        for (const [at, args] of calls.entries()) {
          const { exit, out, err } = await run(folder, args);
          if (ALONE.has(at)) expect(await runAlone(folder, args)).toEqual({ exit, out, err });
          if (at < DONE) expect([args, exit]).toEqual([args, 0]);
          expect([args[0], exit]).not.toEqual([args[0], 3]);
          expect(out + err).not.toBe('');
          expect([args, STEERS.exec(out)?.[0], STEERS.exec(err)?.[0]]).toEqual([
            args,
            undefined,
            undefined,
          ]);
          // Nobody's text begins a line of ours.
          expect([args, /^\s*(?:Written: x|Caution: y)/m.exec(out + err)?.[0]]).toEqual([
            args,
            undefined,
          ]);
        }
      },
    );

    test('stays in JSON, escaped', async () => {
      const folder = folderWith({ 'coves.csv': COVES, 'pieces.csv': PIECES, 'sticks.csv': STICKS });
      const job = filesOfJob(join(folder, 'job'), JOB);
      const calls = [
        ['plan', job, '--seconds', '0', '--json'],
        ['client', job, '--seconds', '0', '--json', '--out', 'c.xlsx'],
        ['compare', job, job, '--seconds', '0', '--json'],
        ['setups', 'coves.csv', '--json'],
        ['cut', 'pieces.csv', 'sticks.csv', '--seconds', '0', '--json'],
        ['plan', HOSTILE.replace('\r', '\n'), '--json'],
      ];
      const ran: Ran[] = [];
      for (const args of calls) ran.push(await run(folder, args));
      for (const { out, err } of ran) {
        expect(err).toBe('');
        expect(STEERS.exec(out)?.[0]).toBeUndefined();
        expect(JSON.stringify(JSON.parse(out))).toContain(
          // A line ends in a newline alone once a CSV file is read.
          JSON.stringify(HOSTILE.replace('\r', '\n')).slice(1, -1),
        );
      }
    });

    test('is written in one place alone', () => {
      const cli = join(ROOT, 'src', 'cli');
      const files = readdirSync(cli).filter((name) => name.endsWith('.ts'));
      const writers = files.filter((name) =>
        /process\.(?:stdout|stderr)|console\./u.test(readFileSync(join(cli, name), 'utf8')),
      );
      expect(writers).toEqual(['terminal.ts']);
    });
  });

  describe('an output that cannot be written', () => {
    const full = '/dev/full';
    const fullTest = process.platform === 'linux' ? test : test.skip;
    fullTest('ends with 2 and one line, and a reader who stops early with neither', async () => {
      const folder = folderWith({ 'coves.csv': 'Profile,Cove width,Cove depth\nA,2,1/2\n' });
      for (const args of [['--help'], ['setups', 'coves.csv', '--json']]) {
        expect(await runInto(folder, args, full)).toEqual({
          exit: 2,
          err: "The output can't be written: the disk is full. Send it elsewhere, or make room.\n",
        });
      }
      expect(await runInto(folder, ['setups', 'gone.csv'], '/dev/null', full)).toEqual({
        exit: 2,
        err: '',
      });
    });
  });
}

/** A call whose output goes into a file of the system's, its errors too where one is given. */
function runInto(
  folder: string,
  args: readonly string[],
  output: string,
  errors?: string,
): Promise<{ readonly exit: number | null; readonly err: string }> {
  const open = (path: string): number => openSync(path, 'w');
  const child = spawn(process.execPath, [MAIN, ...args], {
    cwd: folder,
    stdio: ['ignore', open(output), errors === undefined ? 'pipe' : open(errors)],
  });
  return new Promise((resolve) => {
    let err = '';
    child.stderr?.setEncoding('utf8').on('data', (part) => (err += String(part)));
    child.once('close', (exit) => resolve({ exit, err }));
  });
}
