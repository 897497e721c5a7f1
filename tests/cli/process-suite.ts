import { describe, expect, test } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { demoWorkbook } from './job-folders.ts';
import { filesIn, folderWith, run, runAlone } from './program.ts';

const FILES = {
  'coves.csv': 'Profile,Cove width,Cove depth\nA,2,1/2\n',
  'bad.csv': 'Profile,Cove width,Cove depth\nA,20,1/2\nB,2,3/0\n',
  'pieces.csv': 'Length,Quantity\n40,5\n',
  'sticks.csv': 'Length,Price\n96,10\n',
};

export function processSuite(): void {
  describe('a process of its own', () => {
    test.each([
      { args: [], exit: 2 },
      { args: ['setups', 'bad.csv'], exit: 1 },
      { args: ['cut', 'pieces.csv', 'sticks.csv', '--json'], exit: 0 },
      { args: ['plan', 'nowhere', '--json'], exit: 2 },
    ])('says and exits as any other: $args, $exit', async ({ args, exit }) => {
      const folder = folderWith(FILES);
      const [alone, driven] = await Promise.all([runAlone(folder, args), run(folder, args)]);
      expect(alone).toEqual({ ...driven, exit });
    });

    // That a plan's files repeat in any process: stamp-suite.ts.
    test('makes an input workbook with the same bytes as any other', async () => {
      const folder = folderWith({ 'driven.xlsx': await demoWorkbook() });
      const alone = await runAlone(folder, ['new', 'alone.xlsx', '--demo']);
      expect([alone.exit, alone.err]).toEqual([0, '']);
      const bytes = (name: string): Buffer => readFileSync(join(folder, name));
      expect(bytes('alone.xlsx').equals(bytes('driven.xlsx'))).toBe(true);
      expect(filesIn(folder)).toHaveLength(2);
    });

    test('a bug of ours is one line and exits with 3', async () => {
      const breaking = 'JSON.stringify = () => { throw new Error("broken\\non purpose"); };';
      const nodeArgs = ['--import', `data:text/javascript,${encodeURIComponent(breaking)}`];
      const ran = await runAlone(folderWith(FILES), ['setups', 'coves.csv', '--json'], nodeArgs);
      const err = 'This is a bug in coveledger: broken on purpose\n';
      expect(ran).toEqual({ exit: 3, out: '', err });
    });
  });
}
