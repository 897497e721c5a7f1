/** The job as the options that are taken up have it, and as each of the others would have it. */
import {
  fault,
  placeFault,
  rewordFault,
  type Caution,
  type Fault,
} from '../../core/faults/fault.ts';
import type { Job, JobOption, Opening, Run } from '../job.ts';
import {
  asWritten,
  chooseBy,
  chooseOpenings,
  chooseRuns,
  moldingKey,
  OPENING_PARTS,
  type Choose,
  type Molding,
} from '../options/choose.ts';
import { sayOptionFaults, sayOptionCautions } from '../options/say-of-option.ts';
import type { MadeRuns } from '../rooms/make-runs.ts';
import { checkFaces } from '../work/check-faces.ts';
import { readOptions, type OptionFacts, type OptionRow } from './read-options.ts';
import type { RoomsReading } from './read-rooms.ts';
import type { Findings } from './row-reader.ts';

/** What runs are made from, as the tables have it. */
interface Written {
  readonly parts: Omit<Job, 'runs' | 'openings' | 'options'>;
  readonly typed: readonly Run[];
  readonly openings: readonly Opening[];
  readonly makeRuns: RoomsReading['makeRuns'];
}

type Options = Omit<OptionFacts, 'moldings'> & { readonly rows: readonly OptionRow[] };

/**
 * @param inOptions takes up what is found of Options
 * @returns the job, and what is found of the runs that are in it
 */
export function readOptional(
  { rows, ...facts }: Options,
  written: Written,
  inOptions: Findings,
): { readonly job: Job } & Omit<MadeRuns, 'runs'> {
  const all = jobBy(asWritten, written);
  if (rows.length === 0) return all;
  const moldings = listMoldings(all.job);
  const options = readOptions(rows, { ...facts, moldings }, inOptions);
  const taken = options.filter(({ isTaken }) => isTaken);
  const base = jobBy(chooseBy(options, taken), written);
  const [first] = options;
  if (first !== undefined && moldings.length > 0 && listMoldings(base.job).length === 0) {
    const none = fault('job.options-all', 'option', first.name);
    inOptions.faults.push(placeFault(none, first.where));
  }
  const known = { faults: base.faults, cautions: base.cautions };
  const jobOptions = options.map((option): JobOption => {
    const { name, note, changes, where } = option;
    if (option.isTaken) return { name, note, changes, where };
    const { job, ...found } = jobBy(chooseBy(options, [option, ...taken]), written);
    const checked = { faults: [...found.faults, ...checkFaces(job)], cautions: found.cautions };
    const { unit, decimalSign } = written.parts.shop;
    const reword = (one: Fault): Fault => rewordFault(one, unit, decimalSign);
    const told = { faults: checked.faults.map(reword), cautions: checked.cautions.map(reword) };
    const faultsKnown = [...known.faults, ...checkFaces(base.job)].map(reword);
    inOptions.faults.push(...sayOptionFaults(option, told.faults, faultsKnown));
    const cautionsKnown = known.cautions.map(reword);
    inOptions.cautions.push(...sayOptionCautions(option, told.cautions, cautionsKnown));
    return { name, note, changes, where, job };
  });
  return { ...base, job: { ...base.job, options: jobOptions } };
}

function jobBy(
  choose: Choose,
  { parts, typed, openings: all, makeRuns }: Written,
): { readonly job: Job; readonly faults: readonly Fault[]; readonly cautions: readonly Caution[] } {
  const openings = chooseOpenings(all, choose);
  const made = { typed: chooseRuns(typed, choose), openings, profiles: parts.profiles, choose };
  const { runs, faults, cautions } = makeRuns(made);
  return { job: { ...parts, runs, openings, options: [] }, faults, cautions };
}

/** All that is still to be made, each molding of a room once. */
function listMoldings({ runs, openings }: Job): Molding[] {
  const ofOpenings = openings.flatMap((opening) =>
    OPENING_PARTS.flatMap((part): Molding[] => {
      const profile = opening[part];
      return profile === undefined ? [] : [{ room: opening.room, profile }];
    }),
  );
  const all = [...runs.filter(({ done }) => !done), ...ofOpenings];
  const byKey = new Map<string, Molding>();
  for (const { room, profile } of all) {
    const key = moldingKey({ room, profile });
    if (!byKey.has(key)) byKey.set(key, { room, profile });
  }
  return [...byKey.values()];
}
