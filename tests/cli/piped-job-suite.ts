/** A job through a pipe: a workbook by its bytes, since what comes has no name. */
import { describe, expect, test } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { DEMO, demoWorkbook, demoWorkbookPlan, QUICK, SMALL } from './job-folders.ts';
import { filesIn, folderWith, jsonOf, refusalOf, run, runAlone } from './program.ts';

interface Planned {
  readonly totals: unknown;
  readonly made: { readonly inputs: string };
}
interface Priced {
  readonly price: number;
  readonly cautions: readonly { readonly code: string; readonly argument: string }[];
}

export function pipedJobSuite(): void {
  describe('a job through a pipe', () => {
    test('is planned as its file is', async () => {
      const job = await demoWorkbook();
      const [named, piped] = [
        await demoWorkbookPlan(),
        await runAlone(folderWith({}), ['plan', '-', '--json', ...QUICK], [], job),
      ].map((ran) => jsonOf(ran) as Planned);
      expect(piped!.totals).toEqual(named!.totals);
      expect(piped!.made.inputs).toBe(named!.made.inputs);
    });

    test('brings the plan along that the workbook carries', async () => {
      const folder = folderWith(SMALL);
      await run(folder, ['plan', '.', '--out', 'plan.xlsx', ...QUICK]);
      const bytes = readFileSync(join(folder, 'plan.xlsx'));
      const args = ['--out', 'copy.xlsx', '--force', '--json'];
      const named = jsonOf(await run(folder, ['client', 'plan.xlsx', ...args])) as Priced;
      const answer = jsonOf(await run(folder, ['client', '-', ...args], bytes)) as Priced;
      expect(answer.price).toBe(named.price);
      expect(answer.cautions).toContainEqual(
        expect.objectContaining({ code: 'plan.kept-used', argument: 'the standard input' }),
      );
    });

    test.each([
      {
        name: 'nothing',
        input: '',
        says: 'INPUT: the standard input holds nothing, and no workbook.',
      },
      {
        name: 'a list',
        input: readFileSync(join(DEMO, 'runs.csv')),
        says: 'A list by itself goes to cut or setups.',
      },
      {
        name: 'no text and no workbook',
        input: Uint8Array.from([1, 0, 2, 0, 255, 0]),
        says: '“the standard input” is no .xlsx workbook that can be opened.',
      },
      {
        name: 'a workbook of another kind',
        input: Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, 0, 0]),
        says: '“the standard input” is a workbook of the old .xls kind.',
      },
    ])('that is $name is refused by every command that plans, with 2', async ({ input, says }) => {
      const empty = folderWith({});
      for (const args of [
        ['plan', '-', '--out', 'a.xlsx', '--client', 'b.xlsx'],
        ['client', '-', '--out', 'a.xlsx'],
        ['export', '-', '--out', 'a.zip'],
      ]) {
        const { faults } = refusalOf(await run(empty, [...args, '--json'], input));
        expect(faults.map(({ message }) => message)).toEqual([expect.stringContaining(says)]);
        const { exit, out } = await run(empty, args, input);
        expect([exit, out, filesIn(empty)]).toEqual([2, '', []]);
      }
    });
  });
}
