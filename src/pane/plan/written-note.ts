/** What is noted with a workbook when sheets are written: from which inputs, and when. */
import type { JobFound } from '../job/job-found.ts';

type Written = Pick<JobFound, 'writtenFrom' | 'writtenAt'>;

/** `0123456789abcdef 2026-11-30T09:12:00.000Z` */
export function writeNote(fingerprint: string, moment: Date): string {
  return `${fingerprint} ${moment.toISOString()}`;
}

/** Notes of earlier versions tell no time. */
export function readNote(note: string | undefined): Written {
  const [writtenFrom, at] = note?.split(' ') ?? [];
  const moment = new Date(at ?? '');
  return {
    writtenFrom,
    ...(Number.isNaN(moment.getTime()) ? {} : { writtenAt: moment }),
  };
}
