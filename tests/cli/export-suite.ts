import { describe, expect, test } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { DEMO } from './job-folders.ts';
import { filesIn, folderWith, run } from './program.ts';

const QUICK = ['--steps', '3'];

export function exportSuite(): void {
  describe('export', () => {
    test('saves drawings, outlines and lists of a planned job in one zip, the same each time', async () => {
      const folder = folderWith({});
      const ran = await run(folder, ['export', DEMO, '--out', 'files.zip', ...QUICK]);
      expect([ran.exit, ran.out.includes('Written: files.zip')]).toEqual([0, true]);
      expect(filesIn(folder)).toEqual(['files.zip']);
      const bytes = readFileSync(join(folder, 'files.zip'));
      const files = unzipSync(bytes);
      const paths = Object.keys(files);
      expect(paths[0]).toBe('READ FIRST.txt');
      for (const ending of ['.svg', '.csv', '.dxf']) {
        expect(paths.some((path) => path.endsWith(ending))).toBe(true);
      }
      expect(strFromU8(files['lists/pieces.csv']!)).toContain('Reading room');
      await run(folder, ['export', DEMO, '--out', 'again.zip', ...QUICK]);
      expect(readFileSync(join(folder, 'again.zip')).equals(bytes)).toBe(true);
    });

    test('writes nothing for a job at fault, over a file that is there, or under another ending', async () => {
      const folder = folderWith({ 'there.zip': 'kept', 'job/runs.csv': 'Room\n' });
      const calls = [
        { args: ['export', 'job', '--out', 'new.zip'], says: /profiles|Profile/ },
        { args: ['export', DEMO, '--out', 'there.zip', ...QUICK], says: /there\.zip/ },
        { args: ['export', DEMO, '--out', 'new.xlsx', ...QUICK], says: /must end in “\.zip”/ },
        { args: ['export', DEMO, '--out', 'none/new.zip', ...QUICK], says: /none/ },
      ];
      for (const { args, says } of calls) {
        const ran = await run(folder, args);
        expect([args[3], ran.exit, ran.out]).toEqual([args[3], 2, '']);
        expect(ran.err).toMatch(says);
      }
      expect(filesIn(folder)).toEqual(['job', 'job/runs.csv', 'there.zip']);
      expect(readFileSync(join(folder, 'there.zip'), 'utf8')).toBe('kept');
    });
  });
}
