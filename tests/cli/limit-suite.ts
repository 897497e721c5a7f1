import { describe, expect, test } from '@jest/globals';
import { MOST_PIECES } from '../../src/planning/pieces/list-pieces.ts';
import { count } from '../deep.ts';
import { largeJob } from '../sheets/large-job.ts';
import { folderWith, refusalOf, run, runAlone } from './program.ts';

/** Says, on the error output, what a process took. */
const SAY_USE = `data:text/javascript,${encodeURIComponent(
  "process.on('exit', () => process.stderr.write(`took ${JSON.stringify(process.resourceUsage())}`));",
)}`;

/** All pieces that a job may have (a twentieth of them in a short run); megabytes for them. */
const PIECES = count(MOST_PIECES, MOST_PIECES / 20);
const MEGABYTES = PIECES === MOST_PIECES ? 1_000 : 350;
/** Of a processor, twice what an idle one takes: on a busy machine, its cores share what they have. */
const SECONDS = PIECES === MOST_PIECES ? 60 : 12;

interface Use {
  /** In kilobytes. */
  readonly maxRSS: number;
  /** In microseconds. */
  readonly userCPUTime: number;
  readonly systemCPUTime: number;
}

function filesOf(pieces: number): Record<string, string> {
  const tables = Object.entries(largeJob(pieces));
  return Object.fromEntries(tables.map(([name, text = '']) => [`job/${name}.csv`, text]));
}

export function limitSuite(): void {
  describe('a job as large as is planned', () => {
    test(
      `${PIECES} pieces are planned and written within ${MEGABYTES} MB and ${SECONDS} s of a processor`,
      async () => {
        const folder = folderWith(filesOf(PIECES));
        const { exit, err } = await runAlone(
          folder,
          ['plan', 'job', '--out', 'plan.xlsx', '--seconds', '0'],
          ['--import', SAY_USE],
        );
        expect({ exit, err }).toEqual({ exit: 0, err: expect.stringContaining('took {') });
        const took = JSON.parse(err.slice(err.lastIndexOf('took {') + 'took '.length)) as Use;
        expect(took.maxRSS / 1024).toBeLessThan(MEGABYTES);
        expect((took.userCPUTime + took.systemCPUTime) / 1e6).toBeLessThan(SECONDS);
      },
      10 * SECONDS * 1000,
    );

    test('one piece more is refused, with the number that there are and the number that there may be', async () => {
      const folder = folderWith({
        ...filesOf(3),
        'job/runs.csv': `Room,Profile,Length,Quantity\nHall,Base,60,${MOST_PIECES / 2}\nHall,Casing,60,${MOST_PIECES / 2}\nHall,Base,50,1`,
      });
      const { faults } = refusalOf(
        await run(folder, ['plan', 'job', '--json', '--out', 'plan.xlsx', '--seconds', '0']),
      );
      expect(faults.map(({ code, given }) => [code, given])).toEqual([
        ['job.quantity-too-large', MOST_PIECES + 1],
      ]);
    });
  });
}
