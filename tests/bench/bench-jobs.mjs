/**
 * Whole jobs: runs read, planned, checked, described and written as a workbook, at two sizes in one
 * run. The ratio of the times against the ratio of the sizes tells how far from linear it is.
 */
import { paintPng } from '../../build/hosts/file/paint-png.js';
import { writeWorkbook } from '../../build/hosts/xlsx/write-workbook.js';
import { readCsvTable } from '../../build/hosts/file/read-csv.js';
import { checkJobPlan } from '../../build/planning/check-job-plan.js';
import { readJob } from '../../build/planning/input/read-job.js';
import { planJob } from '../../build/planning/plan-job.js';
import { describePlan } from '../../build/sheets/describe-plan.js';
import { seededNumbers } from './seeded.mjs';

const SIZES = [1_000, 10_000];
const AIM_SECONDS = [2, 20];

export const PROFILES = `Profile,Make,Cove width,Cove depth,Off-center,Blank width,Blank thickness,Species,Class
Base,buy,,,,5 1/4,9/16,Poplar,
Casing,buy,,,,3 1/2,11/16,Poplar,
Cove,cove,3,5/8,1/4,4 1/2,1 1/8,Poplar,5/4`;
export const STOCK = `For,Kind,Class,Width,Length,Price,Per
Base,stick,,,8',2.35,foot
Base,stick,,,12',2.45,foot
Base,stick,,,16',2.60,foot
Casing,stick,,,7',1.55,foot
Casing,stick,,,16',1.75,foot
Poplar,board,5/4,5,8',4.10,board foot
Poplar,board,5/4,10,12',4.85,board foot`;

function runs(count) {
  const next = seededNumbers(11);
  const pick = (words) => words[Math.floor(next() * words.length)];
  const lines = ['Room,Run,Profile,Length,Left end,Right end'];
  for (let run = 0; run < count; run++) {
    const profile = pick(['Base', 'Casing', 'Cove']);
    const sixteenths = Math.floor(next() * 16 * 150) + 32;
    const room = `Room ${Math.floor(run / 20) + 1}`;
    const ends = ['square', 'inside miter', 'outside miter', 'cope'];
    lines.push(
      `${room},wall ${(run % 20) + 1},${profile},${Math.floor(sixteenths / 16)} ${sixteenths % 16}/16,${pick(ends)},${pick(ends)}`,
    );
  }
  return lines.join('\n');
}

export function jobTables(size) {
  return { Runs: runs(size), Profiles: PROFILES, Stock: STOCK };
}

export async function time(work) {
  const start = performance.now();
  const result = await work();
  return [result, performance.now() - start];
}

export async function bench() {
  const rows = [];
  for (const [index, size] of SIZES.entries()) {
    const text = jobTables(size);
    const [job, reading] = await time(() => {
      const tables = Object.entries(text).map(
        ([name, csv]) => readCsvTable(csv, `${name}.csv`, name).value,
      );
      return readJob(tables, 'bench').job;
    });
    const [planning, planned] = await time(() => planJob(job));
    const [wrong, checking] = await time(() => checkJobPlan(planning.plan));
    if (wrong.length > 0) throw new Error(wrong[0]);
    const [bytes, writing] = await time(() =>
      writeWorkbook(describePlan(planning.plan), { paint: paintPng }),
    );
    const seconds = (reading + planned + checking + writing) / 1000;
    rows.push({
      runs: size,
      'read s': +(reading / 1000).toFixed(2),
      'plan s': +(planned / 1000).toFixed(2),
      'check s': +(checking / 1000).toFixed(2),
      'write s': +(writing / 1000).toFixed(2),
      'all s': +seconds.toFixed(2),
      'MB written': +(bytes.length / 1e6).toFixed(2),
      'peak MB': Math.round(process.memoryUsage().rss / 1e6),
      aim: `${AIM_SECONDS[index]} s: ${seconds <= AIM_SECONDS[index] ? 'met' : 'missed'}`,
    });
  }
  const [small, large] = rows;
  large['times the small one'] = +(large['all s'] / small['all s']).toFixed(1);
  return rows;
}
