/**
 * Rates learned from jobs that are done: hours as they were, against how much of each work there was, drawn
 * toward the present rates so that one odd job changes little and work that was not done keeps its rate.
 */
import { computeSpreads, solveBounded } from './solve-bounded.ts';

/** What one job, or one stage of it, took in truth. */
export interface HoursSpent {
  /** How much of each work there was, in the order of the rates; 0 or more. */
  readonly counts: readonly number[];
  readonly hours: number;
  /** By how many hours such a figure may be off, above 0. */
  readonly spread: number;
}

/** The rate that counts until now. */
export interface PresentRate {
  /** Hours for one; 0 or more. */
  readonly rate: number;
  /** By how many hours for one it may be off; 0 where it is to stay. */
  readonly spread: number;
}

export interface LearnedRate {
  readonly old: number;
  /** Hours for one. */
  readonly rate: number;
  /** Between these it lies in eight cases of ten, if the spreads are true. */
  readonly low: number;
  readonly high: number;
}

export interface RatesLearned {
  readonly rates: readonly LearnedRate[];
  /**
   * By how many of its spreads the hours of each job lie above what the learned rates give it. Beyond
   * three either way its hours are odd: of another job, or counted under another work.
   */
  readonly off: readonly number[];
}

/** Ten parts in a hundred of a bell curve lie beyond so many of its spreads. */
const ONE_IN_TEN = 1.2815515655446;

/**
 * The rates r that make Σ((h - n·r) / s)² + Σ((r - r₀) / τ)² least, none below 0: h a job's hours, n its
 * counts, s their spread; r₀ the present rates, τ theirs.
 *
 * Derived: with r = r₀ + τz this is |y - Mz|² + |z|², where a row of M is nτ / s and y is
 * (h - n·r₀) / s. Its least has (1 + MᵀM) z = Mᵀy, and as a Gaussian's the inverse of that matrix holds the
 * spreads squared of z. A rate whose z would take it below 0 stays at 0.
 * @throws RangeError for counts of another length than the rates, or numbers out of range (a bug of the caller's)
 */
export function learnRates(
  present: readonly PresentRate[],
  jobs: readonly HoursSpent[],
): RatesLearned {
  checkQuestion(present, jobs);
  const rows = jobs.map(({ counts, spread }) =>
    present.map((one, work) => ((counts[work] ?? 0) * one.spread) / spread),
  );
  const gaps = jobs.map((job) => offOf(job, present));
  const matrix = present.map((_, i) =>
    present.map((_, j) =>
      rows.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), i === j ? 1 : 0),
    ),
  );
  const pull = present.map((_, i) =>
    rows.reduce((sum, row, job) => sum + (row[i] ?? 0) * (gaps[job] ?? 0), 0),
  );
  // A rate that stays has z = 0 whatever its bound.
  const least = present.map(({ rate, spread }) => (spread === 0 ? -Infinity : -rate / spread));
  const answer = solveBounded(matrix, pull, least);
  const spreads = computeSpreads(matrix);
  const rates = present.map(({ rate: old, spread }, work): LearnedRate => {
    const rate = Math.max(0, old + spread * (answer[work] ?? 0));
    const reach = ONE_IN_TEN * spread * (spreads[work] ?? 0);
    return { old, rate, low: Math.max(0, rate - reach), high: rate + reach };
  });
  return { rates, off: jobs.map((job) => offOf(job, rates)) };
}

/** What a job took beyond what the rates give it, in its spreads. */
function offOf(
  { counts, hours, spread }: HoursSpent,
  rates: readonly { readonly rate: number }[],
): number {
  const given = rates.reduce((sum, { rate }, work) => sum + rate * (counts[work] ?? 0), 0);
  return (hours - given) / spread;
}

function checkQuestion(present: readonly PresentRate[], jobs: readonly HoursSpent[]): void {
  const isFrom0 = (one: number): boolean => one >= 0 && one < Infinity;
  if (!present.every(({ rate, spread }) => isFrom0(rate) && isFrom0(spread))) {
    throw new RangeError('A rate and its spread are numbers from 0.');
  }
  for (const { counts, hours, spread } of jobs) {
    const isSound =
      counts.length === present.length &&
      counts.every(isFrom0) &&
      isFrom0(hours) &&
      spread > 0 &&
      spread < Infinity;
    if (!isSound) throw new RangeError('Hours have a count for each rate and a spread above 0.');
  }
}
