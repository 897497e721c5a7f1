/** Runs the real program: most calls in one process, where they are the point in processes of their own. */
import { execFile, execFileSync, fork, type ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));
export const MAIN = join(ROOT, 'build', 'cli', 'main.js');

let driver: ChildProcess | undefined;
/** The driver answers one call at a time. */
let before: Promise<unknown> = Promise.resolve();
const folders: string[] = [];

export interface Ran {
  readonly exit: number | string | null | undefined;
  readonly out: string;
  readonly err: string;
}

/** Builds the program, and starts the process that runs most of its calls. */
export function startProgram(): void {
  execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-b'], { cwd: ROOT });
  // Silent: what it writes is no terminal's, wherever the tests run.
  driver = fork(join(ROOT, 'tests', 'cli', 'driver.mjs'), {
    execArgv: [],
    silent: true,
    serialization: 'advanced',
  });
}

export function stopProgram(): void {
  driver?.kill();
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
}

/**
 * One call of the program, as main.ts makes it, in a process that has made others before.
 *
 * @param input What comes on its standard input.
 */
export function run(
  folder: string,
  args: readonly string[],
  input: string | Uint8Array = '',
): Promise<Ran> {
  const ran = before.then(
    () =>
      new Promise<Ran>((resolve, reject) => {
        if (driver === undefined) throw new Error('The program is not started.');
        driver.once('message', (answer) => {
          driver?.off('exit', reject);
          resolve(answer as Ran);
        });
        driver.once('exit', reject);
        driver.send({ folder, args, input });
      }),
  );
  before = ran.catch(() => undefined);
  return ran;
}

/**
 * One call in a process of its own, as a person makes it.
 *
 * @param nodeArgs For Node itself.
 * @param input What comes on its standard input.
 */
export function runAlone(
  folder: string,
  args: readonly string[],
  nodeArgs: readonly string[] = [],
  input?: string | Uint8Array,
): Promise<Ran> {
  return new Promise((resolve) => {
    const options = { cwd: folder, maxBuffer: 2 ** 28, encoding: 'utf8' } as const;
    const all = [...nodeArgs, MAIN, ...args];
    const child = execFile(process.execPath, all, options, (error, out, err) => {
      resolve({ exit: error === null ? 0 : error.code, out, err });
    });
    // A program that doesn't want it may close it first.
    child.stdin?.on('error', () => undefined).end(input ?? '');
  });
}

/** The answer as JSON, once it is sure that nothing else was said. */
export function jsonOf({ out, err }: Ran): unknown {
  if (err !== '') throw new Error(`--json should leave the error output empty: ${err}`);
  return JSON.parse(out);
}

export function linesOf(text: string): string[] {
  return text.split('\n').filter((line) => line !== '');
}

/** The answer to a call or an input at fault. */
export function refusalOf(ran: Ran): Refusal {
  return jsonOf(ran) as Refusal;
}

/** A new folder with these files in it (text, bytes, or a number for as many bytes of nothing). */
export function folderWith(files: Readonly<Record<string, string | Uint8Array | number>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'coveledger-cli-'));
  folders.push(folder);
  for (const [name, content] of Object.entries(files)) {
    const path = join(folder, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, typeof content === 'number' ? '' : content);
    if (typeof content === 'number') truncateSync(path, content);
  }
  return folder;
}

/** What `make` makes, made when it is first asked for. */
export function once<Made>(make: () => Made): () => Made {
  let made: { readonly value: Made } | undefined;
  return () => (made ??= { value: make() }).value;
}

/** Every file under a folder, temporary and hidden ones too. */
export function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort();
}

/** The parts of a fault that a person or a program goes by. */
export interface SaidFault {
  readonly code: string;
  readonly argument: string;
  readonly given: unknown;
  readonly message: string;
  readonly where?: {
    readonly file?: string;
    readonly cell?: string;
    readonly line?: number;
    readonly column?: number;
  };
}

export interface Refusal {
  readonly faults: readonly SaidFault[];
  readonly cautions: readonly SaidFault[];
}
