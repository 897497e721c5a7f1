/** What can't be made of a job as it was typed, told before anything is planned. */
import { rewordFault, type Caution, type Fault } from '../core/faults/fault.ts';
import type { JobReading } from './input/read-job.ts';
import type { Job } from './job.ts';
import { sayOptionFaults } from './options/say-of-option.ts';
import { judgeCoves, prepareJob } from './prepare-job.ts';

export interface Judgement {
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

const NOTHING: Judgement = { faults: [], cautions: [] };

/**
 * The faults of a job that could be read; of another those of its coves alone, since what is missing
 * would spoil the rest. Where the saw's own settings are at fault, none: a usual value would be judged.
 */
export function judgeJob({ job, asRead, isShopSound }: JobReading): Judgement {
  const { faults, cautions } =
    job !== undefined ? judgeRead(job) : isShopSound ? judgeCoves(asRead) : NOTHING;
  const { unit, decimalSign } = asRead.shop;
  const reword = (one: Fault): Fault => rewordFault(one, unit, decimalSign);
  return { faults: faults.map(reword), cautions: cautions.map(reword) };
}

function judgeRead(job: Job): Judgement {
  const { faults } = prepareJob(job);
  const ofOptions = job.options.flatMap((option) =>
    option.job === undefined ? [] : sayOptionFaults(option, prepareJob(option.job).faults, faults),
  );
  return {
    faults: [...faults, ...ofOptions],
    cautions: judgeCoves(job, 'unnamed').cautions,
  };
}
