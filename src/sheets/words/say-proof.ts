/** What a plan of sticks costs and how near that is to the least possible, in words for all who show it. */
import { formatNumber, type DecimalSign } from '../../core/units/format-number.ts';
import type { CuttingGroup } from '../../planning/job-plan.ts';
import { GAP_SLACK_TENTHS } from '../tolerance.ts';
import type { StickAnswer, StickStatus } from '../../cutting/problem/problem.ts';

export interface Proof {
  readonly status: StickStatus;
  /** Of whole boards and sticks. */
  readonly lumberCents: number;
  /** What kept offcuts are worth: comes off. */
  readonly creditCents: number;
  /** The labor that depends on which sticks are used: its trimming cuts and passes. */
  readonly laborCents: number;
  /** The least that lumber and that labor, less credit, can come to, proven. */
  readonly boundCents: number;
  /** Some is cut already, at its cost: what is proven is of the rest. */
  readonly isRest?: true;
}

export function proofOf({ plan, bound, status }: StickAnswer): Proof {
  const { costCents: lumberCents, creditCents, laborCents } = plan;
  return { status, lumberCents, creditCents, laborCents, boundCents: bound.costCents };
}

/** Of a group of a plan: what is cut already is at its cost in both figures. */
export function proofOfGroup({ answer, cut }: Pick<CuttingGroup, 'answer' | 'cut'>): Proof {
  const rest = proofOf(answer);
  if (cut === undefined) return rest;
  const { lumberCents, offcutCreditCents, laborCents } = cut;
  return {
    status: rest.status,
    lumberCents: rest.lumberCents + lumberCents,
    creditCents: rest.creditCents + offcutCreditCents,
    laborCents: rest.laborCents + laborCents,
    boundCents: rest.boundCents + lumberCents + laborCents - offcutCreditCents,
    isRest: true,
  };
}

/** Of several problems together: as good as the least good of them. */
export function sumProofs(proofs: readonly Proof[]): Proof {
  const sum = (value: (one: Proof) => number): number =>
    proofs.reduce((all, one) => all + value(one), 0);
  const has = (status: StickStatus): boolean => proofs.some((one) => one.status === status);
  return {
    status: has('unfinished') ? 'unfinished' : has('gap') ? 'gap' : 'proven',
    lumberCents: sum((one) => one.lumberCents),
    creditCents: sum((one) => one.creditCents),
    laborCents: sum((one) => one.laborCents),
    boundCents: sum((one) => one.boundCents),
    ...(proofs.some(({ isRest }) => isRest) ? { isRest: true } : {}),
  };
}

/** `$110.00`, or `$110.00 and $12.00 of labor at the sticks less $5.00 for kept offcuts`. */
export function sayCost(
  { lumberCents, creditCents, laborCents }: Proof,
  say: (cents: number) => string,
): string {
  const credit = creditCents === 0 ? '' : ` less ${say(creditCents)} for kept offcuts`;
  const labor = laborCents === 0 ? '' : ` and ${say(laborCents)} of labor at the sticks`;
  return `${say(lumberCents)}${labor}${credit}`;
}

/**
 * `proven least cost`, `within 2.3 % of the least possible (at most $4.10 more might be saved)`, or
 * the latter after `bound not finished`. The share is rounded up, so that it never says too little.
 *
 * @param say money in words
 */
export function sayProof(
  { status, lumberCents, laborCents, creditCents, boundCents, isRest }: Proof,
  say: (cents: number) => string,
  decimalSign: DecimalSign,
): string {
  if (status === 'proven') {
    return isRest === true ? 'proven least cost of what is not cut yet' : 'proven least cost';
  }
  const gap = lumberCents + laborCents - creditCents - boundCents;
  const most = `(at most ${say(gap)} more might be saved)`;
  const share = gapPercent(gap, boundCents);
  const near =
    boundCents > 0
      ? `within ${formatNumber(share, 1, decimalSign)} % of the least possible`
      : 'how near the least possible is not known';
  return `${status === 'unfinished' ? 'bound not finished: ' : ''}${near} ${most}`;
}

/** A gap as percent of the least possible cost, rounded up to a tenth so that it never says too little. */
export function gapPercent(gapCents: number, boundCents: number): number {
  return Math.ceil((gapCents / boundCents) * 1000 - GAP_SLACK_TENTHS) / 10;
}
