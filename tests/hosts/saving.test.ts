/** Files of one call: all or none, whatever fails on the way; two names of one file are known as one. */
import {
  chmodSync,
  existsSync,
  linkSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import * as disk from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { afterEach, beforeEach, describe, expect, jest, test } from '@jest/globals';

/** Calls to the disk that a failing disk refuses, counted; the one at `failAt` fails. */
const calls = { count: 0, failAt: 0, code: 'ENOSPC', names: [] as string[] };

function failing(name: string): void {
  calls.count += 1;
  calls.names.push(name);
  if (calls.count !== calls.failAt) return;
  throw Object.assign(new Error(`${calls.code}: ${name}`), { code: calls.code });
}

type Task = (...args: never[]) => Promise<unknown>;
const counted =
  (name: string, task: Task): Task =>
  async (...args) => {
    failing(name);
    return task(...args);
  };

jest.unstable_mockModule('node:fs/promises', () => ({
  ...disk,
  chmod: counted('chmod', disk.chmod),
  copyFile: counted('copyFile', disk.copyFile),
  link: counted('link', disk.link),
  rename: counted('rename', disk.rename),
  realpath: counted('realpath', disk.realpath),
  stat: counted('stat', disk.stat),
  open: async (...args: Parameters<typeof disk.open>) => {
    const isRead = args[1] === 'r';
    if (!isRead) failing('open');
    const file = await disk.open(...args);
    if (isRead) return file;
    return {
      writeFile: counted('writeFile', (bytes: Uint8Array) => file.writeFile(bytes)),
      sync: counted('sync', () => file.sync()),
      close: () => file.close(),
    };
  },
}));
const { saveFile, saveFiles } = await import('../../src/hosts/file/save-files.ts');
const { compareFiles, identifyFile } = await import('../../src/hosts/file/file-place.ts');

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'coveledger-'));
  Object.assign(calls, { count: 0, failAt: 0, code: 'ENOSPC', names: [] });
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));
const at = (...names: string[]): string => join(folder, ...names);
const read = (name: string): string | null =>
  existsSync(at(name)) ? readFileSync(at(name), 'utf8') : null;
const NEW = Buffer.from('new');
const NAMES = ['a.xlsx', 'b.xlsx', 'c.zip'];
const save = (names: readonly string[], replace = true) =>
  saveFiles(
    names.map((name) => ({ path: at(name), bytes: NEW })),
    { replace },
  );
/** Windows has other permissions, and asks for rights to make links. */
const unixTest = process.platform === 'win32' ? test.skip : test;

describe('Files that belong together', () => {
  test.each([
    ['ENOSPC', 'the disk is full'],
    ['EBUSY', 'it is open in another program'],
    ['EPERM', 'permission denied'],
  ])(
    'are all as they were or all new, whichever call to the disk fails with %s',
    async (code, why) => {
      const before = { 'a.xlsx': 'old a', 'b.xlsx': 'old b', 'c.zip': null };
      let failures = 0;
      for (let failAt = 1; ; failAt++) {
        for (const [name, text] of Object.entries(before)) {
          if (text === null) rmSync(at(name), { force: true });
          else writeFileSync(at(name), text);
        }
        Object.assign(calls, { count: 0, failAt, code, names: [] });
        const saved = await save(NAMES);
        calls.failAt = 0;
        const [first = 'none'] = calls.names.slice(failAt - 1);
        const left = Object.fromEntries(NAMES.map((name) => [name, read(name)]));
        const isNew = NAMES.every((name) => left[name] === 'new');
        expect([first, saved.ok, isNew]).toEqual([first, isNew, saved.ok]);
        if (!saved.ok) {
          failures += 1;
          expect([first, left]).toEqual([first, before]);
          expect(saved.faults.map((one) => one.message).join()).toContain(why);
        }
        expect([first, readdirSync(folder).filter((name) => name.endsWith('.part'))]).toEqual([
          first,
          [],
        ]);
        if (first === 'none') break;
      }
      // Opening, writing and syncing of three, at the least, and three moves.
      expect(failures).toBeGreaterThanOrEqual(12);
    },
  );

  test('are none of them written where one may not be, and each fault is said', async () => {
    writeFileSync(at('b.xlsx'), 'mine');
    const saved = await saveFiles(
      [...NAMES.map((name) => at(name)), at('gone', 'd.xlsx')].map((path) => ({
        path,
        bytes: NEW,
      })),
      { replace: false },
    );
    expect(saved.ok ? [] : saved.faults.map(({ code }) => code)).toEqual([
      'file.exists',
      'file.missing',
    ]);
    expect(readdirSync(folder)).toEqual(['b.xlsx']);
    expect(read('b.xlsx')).toBe('mine');
  });

  test('are saved on a disk without links too', async () => {
    writeFileSync(at('a.xlsx'), 'old a');
    await save(['a.xlsx']);
    // The link that keeps the old file aside.
    const failAt = calls.names.indexOf('link') + 1;
    expect(failAt).toBeGreaterThan(0);
    writeFileSync(at('a.xlsx'), 'old a');
    Object.assign(calls, { count: 0, failAt, code: 'EPERM', names: [] });
    const saved = await save(['a.xlsx']);
    expect([saved.ok, read('a.xlsx'), calls.names.includes('copyFile')]).toEqual([
      true,
      'new',
      true,
    ]);
    expect(readdirSync(folder)).toEqual(['a.xlsx']);
  });
});

describe('A file that is replaced', () => {
  unixTest.each([0o600, 0o640, 0o444, 0o755])('keeps its mode: %i', async (mode) => {
    writeFileSync(at('a.xlsx'), 'old');
    chmodSync(at('a.xlsx'), mode);
    await save(['a.xlsx']);
    expect(statSync(at('a.xlsx')).mode & 0o777).toBe(mode);
    expect(read('a.xlsx')).toBe('new');
  });

  unixTest('is read by nobody else on the way where it is private', async () => {
    writeFileSync(at('a.xlsx'), 'old');
    chmodSync(at('a.xlsx'), 0o644);
    chmodSync(at('a.xlsx'), 0o600);
    const modes: number[] = [];
    const spied = { ...calls };
    Object.defineProperty(calls, 'names', {
      configurable: true,
      value: {
        push: () => {
          for (const name of readdirSync(folder).filter((one) => one.endsWith('.part')))
            modes.push(lstatSync(at(name)).mode & 0o077);
        },
      },
    });
    await save(['a.xlsx']);
    Object.defineProperty(calls, 'names', {
      configurable: true,
      writable: true,
      value: spied.names,
    });
    expect(modes.length).toBeGreaterThan(0);
    expect(modes.filter((mode) => mode !== 0)).toEqual([]);
  });

  unixTest('leaves what its other names hold', async () => {
    writeFileSync(at('a.xlsx'), 'old');
    linkSync(at('a.xlsx'), at('kept.xlsx'));
    await save(['a.xlsx']);
    expect([read('a.xlsx'), read('kept.xlsx')]).toEqual(['new', 'old']);
  });

  unixTest.each([true, false])(
    'is written where a link leads, though nothing is there yet (replacing: %p)',
    async (replace) => {
      mkdirSync(at('elsewhere'));
      symlinkSync(join('elsewhere', 'true.xlsx'), at('second.xlsx'));
      symlinkSync('second.xlsx', at('link.xlsx'));
      expect((await save(['link.xlsx'], replace)).ok).toBe(true);
      expect(read(join('elsewhere', 'true.xlsx'))).toBe('new');
      expect(lstatSync(at('link.xlsx')).isSymbolicLink()).toBe(true);
      expect(lstatSync(at('second.xlsx')).isSymbolicLink()).toBe(true);
      expect(readdirSync(at('elsewhere'))).toEqual(['true.xlsx']);
      expect((await save(['link.xlsx'], false)).ok).toBe(false);
    },
  );

  unixTest('is refused in words where a link leads to itself, or into no folder', async () => {
    symlinkSync('loop.xlsx', at('loop.xlsx'));
    symlinkSync(at('none', 'x.xlsx'), at('astray.xlsx'));
    const messages = await Promise.all(
      ['loop.xlsx', 'astray.xlsx'].map(async (name) => {
        const saved = await save([name]);
        return saved.ok ? '' : saved.faults[0]!.message;
      }),
    );
    expect(messages[0]).toContain('a link leads back to itself');
    expect(messages[1]).toContain(`“${at('none')}” is not there`);
    expect(readdirSync(folder).sort()).toEqual(['astray.xlsx', 'loop.xlsx']);
  });
});

describe('What a killed program left', () => {
  test('goes with the next file written into the folder: ours alone, and after a day', async () => {
    const uuid = '0f8fad5b-d9cb-469f-a165-70867728950e';
    const old = `.${uuid}.part`;
    const others = [
      `.${uuid.replace('0', '1')}.part.txt`,
      `${uuid}.part`,
      `.${uuid.toUpperCase()}.part`,
      '.notes.part',
      '.0f8fad5b-d9cb-169f-a165-70867728950e.part',
    ];
    mkdirSync(at('sub'));
    mkdirSync(at(`.${uuid.replace('0', '2')}.part`));
    for (const name of [old, ...others, join('sub', old)]) writeFileSync(at(name), '');
    const kept = new Set(readdirSync(folder));
    // A file's times can't be set back on the disk itself, so the clock goes on.
    const now = Date.now();
    const clock = jest.spyOn(Date, 'now').mockReturnValue(now + 23 * 60 * 60 * 1000);
    await saveFile(at('a.xlsx'), NEW, { replace: true });
    expect(new Set(readdirSync(folder))).toEqual(new Set([...kept, 'a.xlsx']));
    clock.mockReturnValue(now + 25 * 60 * 60 * 1000);
    await saveFile(at('a.xlsx'), NEW, { replace: true });
    clock.mockRestore();
    kept.delete(old);
    expect(new Set(readdirSync(folder))).toEqual(new Set([...kept, 'a.xlsx']));
    expect(readdirSync(at('sub'))).toEqual([old]);
  });

  test('stays where it was touched a moment ago, however old its text', async () => {
    const name = '.0f8fad5b-d9cb-469f-a165-70867728950e.part';
    writeFileSync(at(name), '');
    utimesSync(at(name), 0, 0);
    await saveFile(at('a.xlsx'), NEW, { replace: true });
    expect(readdirSync(folder).sort()).toEqual([name, 'a.xlsx']);
  });
});

describe('Two names', () => {
  const compared = async (one: string, other: string): Promise<unknown> => {
    const [a, b] = await Promise.all([identifyFile(at(one)), identifyFile(at(other))]);
    return a === null || b === null ? 'no folder' : compareFiles(a, b);
  };

  test('are told apart, or known as one, there or not', async () => {
    mkdirSync(at('sub'));
    writeFileSync(at('a.xlsx'), '');
    expect(await compared('a.xlsx', join('sub', '..', 'a.xlsx'))).toBe('same');
    expect(await compared('new.xlsx', './new.xlsx')).toBe('same');
    expect(await compared('a.xlsx', 'A.XLSX')).toMatch(/same|letters/);
    expect(await compared('Caf\u00e9.xlsx', 'cafe\u0301.xlsx')).toMatch(/same|letters/);
    expect(await compared('a.xlsx', 'b.xlsx')).toBeNull();
    expect(await compared('a.xlsx', join('sub', 'a.xlsx'))).toBeNull();
    expect(await compared('a.xlsx', join('none', 'a.xlsx'))).toBe('no folder');
  });

  unixTest('are known as one by links of the file, of its folder, and by hard links', async () => {
    mkdirSync(at('sub'));
    symlinkSync('sub', at('way'));
    writeFileSync(at('sub', 'a.xlsx'), '');
    symlinkSync(at('sub', 'a.xlsx'), at('link.xlsx'));
    linkSync(at('sub', 'a.xlsx'), at('hard.xlsx'));
    for (const name of [join('way', 'a.xlsx'), 'link.xlsx', 'hard.xlsx']) {
      expect([name, await compared(join('sub', 'a.xlsx'), name)]).toEqual([name, 'same']);
    }
    symlinkSync(at('sub', 'later.xlsx'), at('dangling.xlsx'));
    expect(await compared(join('way', 'later.xlsx'), 'dangling.xlsx')).toBe('same');
    expect(await compared(join('way', 'Later.xlsx'), 'dangling.xlsx')).toMatch(/same|letters/);
  });
});
