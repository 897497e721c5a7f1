/** From raw tables to a job, with every fault of the input found at once. */
import type { Argument } from '../../core/faults/argument.ts';
import {
  fault,
  placeFault,
  rewordFault,
  type Caution,
  type Fault,
  type Where,
} from '../../core/faults/fault.ts';
import { findSpecies } from '../../core/lumber/species.ts';
import { nameKey, sameName, type Job, type Opening, type Run } from '../job.ts';
import { checkUnknowns } from '../price-unknowns.ts';
import { sayUsual, settingOf, type SettingKey } from '../shop.ts';
import { checkAllowances } from './check-allowances.ts';
import { cautionAssumedHeights } from './assumed-heights.ts';
import { checkHours, readHours } from './read-hours.ts';
import { readOpenings } from './read-openings.ts';
import { readOptionRows, type OptionRow } from './read-options.ts';
import { readOptional } from './read-optional.ts';
import { readProfiles, type ProfileRow } from './read-profiles.ts';
import { makesRuns, readRooms } from './read-rooms.ts';
import { readRuns } from './read-runs.ts';
import { readingOf } from './find-setting.ts';
import { readShop } from './read-shop.ts';
import { readStock } from './read-stock.ts';
import { readTitleBlock } from './read-title-block.ts';
import { tableArgument, type RawTable } from './raw-table.ts';
import { readWork } from './read-work.ts';
import type { Findings } from './row-reader.ts';
import { checkFaces } from '../work/check-faces.ts';

/**
 * The tables of a job by name, and whether it can do without. Shop has usual values for all; Runs can be
 * left out where Walls and Trim make runs, see `isNeeded`.
 */
export const JOB_TABLES = [
  { name: 'Runs', required: true },
  { name: 'Walls', required: false },
  { name: 'Trim', required: false },
  { name: 'Openings', required: false },
  { name: 'Profiles', required: true },
  { name: 'Shop', required: false },
  { name: 'Stock', required: true },
  { name: 'Work', required: false },
  { name: 'Options', required: false },
  { name: 'Job', required: false },
  { name: 'Hours', required: false },
] as const;
export type JobTableName = (typeof JOB_TABLES)[number]['name'];

/**
 * A list of walls, of what goes where, of work, of options or of hours, looks like many another list, and Job like
 * Shop: only what stands on a sheet of that name, or is chosen, is taken for it. All others are found by their
 * headings too.
 */
export const BY_NAME_ALONE: ReadonlySet<JobTableName> = new Set([
  'Walls',
  'Trim',
  'Work',
  'Options',
  'Job',
  'Hours',
]);

/** Whether the job can't do without this table. @param isThere whether the job has a table of that name */
export function isNeeded(
  { name, required }: { readonly name: string; readonly required: boolean },
  isThere: (name: JobTableName) => boolean,
): boolean {
  return required && !(name === 'Runs' && isThere('Walls') && isThere('Trim'));
}

export interface JobReading {
  /** Present when nothing is at fault. */
  readonly job?: Job;
  /** What could be read, usual values in place of settings that are at fault. */
  readonly asRead: Job;
  /** No setting of the shop is at fault. */
  readonly isShopSound: boolean;
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/** `source` names the workbook or folder, for faults about a table as a whole. */
export function readJob(tables: readonly RawTable[], source: string): JobReading {
  const faults: Fault[] = [];
  const cautions: Caution[] = [];
  const findings = { faults, cautions };
  const find = (name: string): RawTable | undefined => {
    const found = tables.filter((table) => sameName(table.name, name));
    if (found.length > 1) faults.push(fault('table.twice', tableArgument(name), source));
    return found[0];
  };
  const found = JOB_TABLES.map(({ name }) => find(name));
  const [runTable, walls, trim, openingTable, profileTable, shopTable, stockTable, ...more] = found;
  const [workTable, optionTable, titleTable, hoursTable] = more;
  const rooms = { walls, trim };
  for (const [at, { name, required }] of JOB_TABLES.entries()) {
    if (!required || (name === 'Runs' && makesRuns(rooms))) continue;
    const table = found[at];
    if (table === undefined) faults.push(fault('table.missing', tableArgument(name), source));
    if (table?.rows.length === 0) faults.push(fault('table.empty', tableArgument(name), null));
  }
  cautions.push(...cautionsOfTables(tables));
  const reading = readingOf(shopTable);
  const faultsBefore = faults.length;
  const { shop, left, cells: shopCells } = readShop(shopTable, reading, findings);
  const isRateRead = !faults.some(({ argument }) => argument === settingOf('hourlyRate').key);
  faults.push(...checkUnknowns(shop, shopCells, isRateRead));
  const isShopSound = faults.length === faultsBefore;
  const inOpenings: Findings = { faults: [], cautions: [] };
  const openings =
    openingTable === undefined ? [] : readOpenings(openingTable, reading, inOpenings);
  const inOptions: Findings = { faults: [], cautions: [] };
  const optionRows = readOptionRows(optionTable, reading, inOptions);
  const profileRows =
    profileTable === undefined
      ? []
      : readProfiles(profileTable, reading, findings, namesIn(openings, optionRows));
  const profiles = profileRows.flatMap(({ profile }) => profile ?? []);
  const typed = runTable === undefined ? [] : readRuns(runTable, reading, findings);
  const titleBlock = readTitleBlock(titleTable, reading, findings);
  const { makeRuns, ...ofRooms } = readRooms(rooms, reading, findings, source);
  const afterRuns: Findings = { faults: [], cautions: [] };
  const work = readWork(
    workTable,
    { shop, shopCells, left, profiles: profileRows },
    reading,
    afterRuns,
  );
  const parts = {
    ...{ titleBlock, shop, shopCells, profiles, ...ofRooms, work },
    stock: stockTable === undefined ? [] : readStock(stockTable, shop, reading, afterRuns),
    hours: readHours(hoursTable, { work, profiles: profileRows }, reading, afterRuns),
  };
  const isComplete = faults.length + inOpenings.faults.length === 0;
  const { job, ...ofRuns } = readOptional(
    { rows: optionRows, profiles: profileRows, isComplete },
    { parts, typed, openings, makeRuns },
    inOptions,
  );
  for (const found of [ofRuns, afterRuns, inOpenings]) {
    faults.push(...found.faults);
    cautions.push(...found.cautions);
  }
  if (profileTable !== undefined) {
    faults.push(...checkNames({ typed, openings, trim: ofRooms.trim }, profileRows));
  }
  faults.push(...checkFaces(job), ...checkHours(job), ...checkAllowances(job), ...inOptions.faults);
  cautions.push(...inOptions.cautions);
  cautions.push(...cautionsOf(job, profileRows, left, faults));
  cautions.push(...cautionAssumedHeights(shop, job.profiles, shopTable));
  const reworded = faults.map((one) => rewordFault(one, shop.unit, shop.decimalSign));
  return {
    ...(faults.length === 0 ? { job } : {}),
    asRead: job,
    isShopSound,
    faults: reworded,
    cautions: cautions.map((one) => rewordFault(one, shop.unit, shop.decimalSign)),
  };
}

/** What hosts say of the tables; what holds for all of them, once. */
function cautionsOfTables(tables: readonly RawTable[]): readonly Caution[] {
  const all = tables.flatMap((table) => table.cautions ?? []);
  return [...new Map(all.map((one) => [`${one.code} ${one.message}`, one])).values()];
}

/** What stands round openings, and what options put in its place. */
function namesIn(openings: readonly Opening[], options: readonly OptionRow[]): ReadonlySet<string> {
  const names = openings.flatMap(({ casing, apron, stool }) => [casing, apron, stool]);
  const keys = new Set(names.flatMap((name) => (name === undefined ? [] : nameKey(name))));
  const others = options.flatMap(({ profile = '', instead }) =>
    instead !== undefined && keys.has(nameKey(profile)) ? nameKey(instead) : [],
  );
  return new Set([...keys, ...others]);
}

/** Every profile that a run, an opening or a row of Trim names must stand in Profiles. */
function checkNames(
  { typed, trim, openings }: Pick<Job, 'trim' | 'openings'> & { readonly typed: readonly Run[] },
  profiles: readonly ProfileRow[],
): Fault[] {
  const known = new Set(profiles.map(({ name }) => nameKey(name)));
  const faults: Fault[] = [];
  const check = (argument: Argument, name: string | undefined, where: Where): void => {
    if (name === undefined || known.has(nameKey(name))) return;
    faults.push(placeFault(fault('job.profile-unknown', argument, name), where));
  };
  for (const { profile, cells } of [...typed, ...trim]) check('profile', profile, cells.profile);
  for (const opening of openings) {
    check('casing', opening.casing, opening.cells.casing);
    check('apron', opening.apron, opening.cells.apron);
    check('stool', opening.stool, opening.cells.stool);
  }
  return faults;
}

const SAID_ELSEWHERE: ReadonlySet<SettingKey> = new Set(['lengthPrecision', 'hourlyRate']);
/** What says nothing of a job without Trim. */
const OF_WALLS: ReadonlySet<SettingKey> = new Set(['studSpacing', 'springIn']);

function cautionsOf(
  job: Job,
  profiles: readonly ProfileRow[],
  left: readonly SettingKey[],
  faults: readonly Fault[],
): Caution[] {
  const cautions: Caution[] = [];
  const { shop, trim } = job;
  const worth = left.filter(
    (key) => !SAID_ELSEWHERE.has(key) && (trim.length > 0 || !OF_WALLS.has(key)),
  );
  if (worth.length > 0) {
    const list = worth
      .map((key) => `${settingOf(key).name} ${sayUsual(key, shop.unit, shop.decimalSign)}`)
      .join('; ');
    cautions.push(fault('job.usual-values', 'sheet.Shop', worth.length, { details: { list } }));
  }
  // A rate that can't be read has its fault; that it is missing would be one word too many.
  const rateAtFault = faults.some((one) => one.argument === settingOf('hourlyRate').key);
  if (shop.hourlyRate === 0 && !rateAtFault)
    cautions.push(fault('job.no-hourly-rate', 'sheet.Shop', 0));
  const species = new Set(profiles.map((one) => one.species).filter((name) => name !== ''));
  for (const name of species) {
    if (!findSpecies(name).ok) cautions.push(fault('job.weight-unknown', 'species', name));
  }
  // A row with defects stands there once for each of its clear stretches.
  const rows = new Map(job.stock.map((item) => [item.where, item]));
  for (const item of rows.values()) {
    const used = profiles.some(
      (one) =>
        sameName(one.name, item.for) || (one.species !== '' && sameName(one.species, item.for)),
    );
    if (!used)
      cautions.push(placeFault(fault('job.stock-unused', 'sheet.Stock', item.for), item.where));
  }
  return cautions;
}
