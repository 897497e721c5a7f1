/** How far a planning has come, in words and as a share. */
import { formatNumber, type DecimalSign } from '../../core/units/format-number.ts';
import { sayMoney } from '../../core/units/say-money.ts';
import { gapPercent } from '../../sheets/words/say-proof.ts';
import type { Shop } from '../../planning/shop.ts';
import type { PlanningState, PlanProgress } from '../state/pane-state.ts';

export interface ProgressWords {
  /** From 0 to 1. */
  readonly share: number;
  readonly phase: string;
  /** Lumber of the profiles that are being planned, so far, and the least that it can cost. */
  readonly cost: string | undefined;
}

export function sayProgress(
  progress: PlanProgress,
  { currency, decimalSign }: Pick<Shop, 'currency' | 'decimalSign'>,
): ProgressWords {
  const { done, of, profile, phase, costCents, boundCents, stopping } = progress;
  const share = of === 0 ? 0 : Math.min(1, done / of);
  const money = (cents: number): string => sayMoney(cents, currency, decimalSign);
  const where = profile === '' ? 'Beginning' : `${profile} (${Math.min(done + 1, of)} of ${of})`;
  return {
    share,
    phase: stopping ? 'Stopping' : phase === '' ? where : `${where}: ${phase}`,
    cost:
      costCents === undefined || boundCents === undefined
        ? undefined
        : `Lumber and its labor so far ${money(costCents)}; ${sayLeast(costCents, boundCents, money, decimalSign)}.`,
  };
}

function sayLeast(
  costCents: number,
  boundCents: number,
  money: (cents: number) => string,
  decimalSign: DecimalSign,
): string {
  if (boundCents >= costCents) return 'it can’t be less';
  if (boundCents <= 0) return 'how much less it can be is not known yet';
  const share = gapPercent(costCents - boundCents, boundCents);
  return `it can’t be less than ${money(boundCents)} (a gap of ${formatNumber(share, 1, decimalSign)} %)`;
}

/** What a stop leaves that came before there was a better plan. */
export function sayStopped({ result }: Pick<PlanningState, 'result'>): string {
  return result === undefined
    ? 'Stopped; nothing was planned.'
    : 'Stopped; the earlier plan stands.';
}
