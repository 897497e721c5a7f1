/** Jobs for tests, written as the CSV text that a person would keep. */
import { readFileSync, existsSync } from 'node:fs';
import { join } from 'node:path';
import type { RawTable } from '../../src/planning/input/raw-table.ts';
import { readJob, type JobReading } from '../../src/planning/input/read-job.ts';
import type { Job } from '../../src/planning/job.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import type { PlanJobOptions } from '../../src/planning/job-planning.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { readCsvTable } from '../../src/hosts/file/read-csv.ts';

export interface Tables {
  readonly runs?: string;
  readonly walls?: string;
  readonly trim?: string;
  readonly openings?: string;
  readonly profiles?: string;
  readonly shop?: string;
  readonly stock?: string;
  readonly work?: string;
  readonly job?: string;
  readonly hours?: string;
  readonly options?: string;
}

const root = join(import.meta.dirname, '..', '..');
export const DEMO_FOLDER = join(root, 'assets', 'demo');
/** A published house, beside the project where it is present. */
export const HOUSE_FOLDER = join(root, '..', 'shared', 'data', 'house-duplex');
export const houseIsHere = existsSync(HOUSE_FOLDER);

export const PLAIN: Required<Tables> = {
  runs: 'Room,Run,Profile,Length\nHall,north,Base,100',
  walls: 'Room,Wall,Length,Corner,Turn,Corner by tape,Height,Note',
  trim: 'Room,Profile,Where,Height,Walls,Inside corners,Starts,Note',
  openings: 'Room,Wall,Kind,Width,Height,Casing,Position',
  profiles:
    'Profile,Make,Blank width,Blank thickness,Spring,Species,Cove width,Cove depth,Class\n' +
    'Base,buy,5 1/4,3/4,,Poplar,,,\nCasing,buy,3 1/2,11/16,,Poplar,,,\n' +
    'Crown,buy,4 5/8,11/16,38,Poplar,,,\nCove,cove,4 1/2,1,,Poplar,3,1/2,4/4',
  job: 'Setting,Value',
  shop: 'Setting,Value\nhourly rate,60\nend allowance,0',
  stock:
    "For,Kind,Class,Width,Length,Price,Per,Have,Buy\nBase,stick,,,16',2,foot,,\n" +
    "Casing,stick,,,16',3,foot,,\nCrown,stick,,,16',4,foot,,\nPoplar,board,4/4,10,12',5,board foot,,",
  work: 'Work,Per,Minutes,Money,For,Ours',
  hours: 'Date,Work,Profile,Hours,Note',
  options: 'Option,Room,Profile,Species,Instead,Taken,Note',
};

export function tablesOf(tables: Tables): RawTable[] {
  const names = {
    runs: 'Runs',
    walls: 'Walls',
    trim: 'Trim',
    openings: 'Openings',
    profiles: 'Profiles',
    shop: 'Shop',
    stock: 'Stock',
    work: 'Work',
    options: 'Options',
    job: 'Job',
    hours: 'Hours',
  };
  return (Object.keys(names) as (keyof Tables)[]).map((key) => {
    const text = tables[key] ?? PLAIN[key];
    const read = readCsvTable(text, `${key}.csv`, names[key]);
    if (!read.ok) throw new Error(read.faults.map((one) => one.message).join('\n'));
    return read.value;
  });
}

export function readTables(tables: Tables): JobReading {
  return readJob(tablesOf(tables), 'job');
}

export function jobOf(tables: Tables): Job {
  const { job, faults } = readTables(tables);
  if (job === undefined) throw new Error(faults.map((one) => one.message).join('\n'));
  return job;
}

export async function planOf(tables: Tables, options: PlanJobOptions = {}): Promise<JobPlan> {
  const { plan, faults } = await planJob(jobOf(tables), options);
  if (plan === undefined) throw new Error(faults.map((one) => one.message).join('\n'));
  return plan;
}

export function folderTables(folder: string): Tables {
  const read = (name: string): string => {
    const path = join(folder, `${name}.csv`);
    return existsSync(path) ? readFileSync(path, 'utf8') : '';
  };
  const openings = read('openings');
  const [walls, trim, work] = [read('walls'), read('trim'), read('work')];
  const options = read('options');
  return {
    runs: read('runs'),
    ...(walls === '' ? {} : { walls }),
    ...(trim === '' ? {} : { trim }),
    ...(work === '' ? {} : { work }),
    ...(options === '' ? {} : { options }),
    profiles: read('profiles'),
    shop: read('shop'),
    stock: read('stock'),
    openings: openings === '' ? PLAIN.openings : openings,
  };
}
