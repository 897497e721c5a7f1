/** Where files go, as a person calls it. */
import { describe, expect, test } from '@jest/globals';
import { linkSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { demoWorkbook, SMALL } from './job-folders.ts';
import { folderWith, refusalOf, run } from './program.ts';

export function filesSuite(): void {
  describe('files that are written', () => {
    const unixTest = process.platform === 'win32' ? test.skip : test;
    unixTest(
      'refuses one file by two names, links and capital letters among them, and keeps it',
      async () => {
        const folder = folderWith({ ...SMALL, 'job.xlsx': await demoWorkbook() });
        mkdirSync(join(folder, 'sub'));
        symlinkSync('sub', join(folder, 'way'));
        writeFileSync(join(folder, 'sub', 'a.xlsx'), 'mine');
        symlinkSync(join('sub', 'a.xlsx'), join(folder, 'b.xlsx'));
        linkSync(join(folder, 'sub', 'a.xlsx'), join(folder, 'c.xlsx'));
        symlinkSync('job.xlsx', join(folder, 'to-job.xlsx'));
        linkSync(join(folder, 'job.xlsx'), join(folder, 'also-job.xlsx'));
        const names = ['file.same', 'file.same-letters', 'file.is-input'];
        const [same, letters, input] = names;
        for (const [out, client, code] of [
          ['sub/a.xlsx', 'b.xlsx', same],
          ['sub/a.xlsx', 'c.xlsx', same],
          ['sub/a.xlsx', 'way/a.xlsx', same],
          ['sub/new.xlsx', 'way/new.xlsx', same],
          ['new.xlsx', 'New.xlsx', letters],
          ['to-job.xlsx', 'd.xlsx', input],
          ['also-job.xlsx', 'd.xlsx', input],
          ['JOB.xlsx', 'd.xlsx', letters],
        ]) {
          const asked = [
            'plan',
            'job.xlsx',
            '--out',
            out!,
            '--client',
            client!,
            '--force',
            '--json',
          ];
          const { exit, ...said } = await run(folder, asked);
          const { faults } = refusalOf({ exit, ...said });
          expect([out, client, exit, faults.map((one) => one.code)]).toEqual([
            out,
            client,
            2,
            [code],
          ]);
        }
        expect(readFileSync(join(folder, 'sub', 'a.xlsx'), 'utf8')).toBe('mine');
      },
    );
  });
}
