/** A comparison for machines: lengths in inches, money in the shop's currency. */
import type {
  Comparison,
  Figures,
  LineState,
  Pair,
  RunPair,
  RunState,
  TotalFigures,
} from './comparison.ts';

/** Grows when a field changes its meaning or goes; new fields alone don't change it. */
export const COMPARISON_JSON_VERSION = 1;

/** As one object of plain data, every number finite; null stands where a plan lacks something. */
export function comparisonToJson(comparison: Comparison, currency: string) {
  const { added, gone, changed, same, lines, profiles, totals, cut, sticksBegun } = comparison;
  const { before, after } = totals;
  const openCents = comparison.openCents;
  return {
    version: COMPARISON_JSON_VERSION,
    currency,
    added: added.map((one) => ({ ...namesOf(one), ...stateOf(one.after) })),
    gone: gone.map((one) => ({ ...namesOf(one), ...stateOf(one.before) })),
    changed: changed.map((one) => ({
      ...namesOf(one),
      differs: one.differs,
      ...pairOf(one, stateOf),
    })),
    same,
    lines: lines.map((one) => ({
      room: one.room,
      profile: one.profile,
      ...pairOf(one, lineOf),
      difference: differenceOf(one),
    })),
    profiles: profiles.map((one) => ({
      profile: one.profile,
      madeOtherwise: one.isMadeOtherwise,
      ...pairOf(one, figuresOf),
      difference: differenceOf(one),
    })),
    totals: {
      before: totalsOf(before),
      after: totalsOf(after),
      difference: {
        pieces: after.pieces - before.pieces,
        length: Number(after.length.sub(before.length)),
        hours: after.hours - before.hours,
        cost: money(after.costCents - before.costCents),
        price: money(after.priceCents - before.priceCents),
        tax: money(after.taxCents - before.taxCents),
        toPay: money(toPayCents(after) - toPayCents(before)),
      },
    },
    cut: {
      sticks: sticksBegun,
      pieces: cut.map(({ stick, length, ...one }) => ({
        ...one,
        length: Number(length),
        stick: stick ?? null,
      })),
    },
    open: { before: money(openCents.before), after: money(openCents.after) },
  };
}

export function toPayCents({ priceCents, taxCents }: TotalFigures): number {
  return priceCents + taxCents;
}

function money(cents: number): number {
  return cents / 100;
}

function namesOf({ room, run, profile }: RunPair) {
  return { room, run, profile };
}

function pairOf<State, Said>(
  { before, after }: Pair<State>,
  say: (state: State) => Said,
): { readonly before: Said | null; readonly after: Said | null } {
  return {
    before: before === undefined ? null : say(before),
    after: after === undefined ? null : say(after),
  };
}

function stateOf(state: RunState | undefined) {
  return {
    pieces: state?.pieces ?? 0,
    done: state?.done ?? 0,
    length: Number(state?.length ?? 0),
  };
}

function lineOf({ pieces, length, priceCents }: LineState) {
  return { pieces, length: Number(length), price: money(priceCents) };
}

/** Of the price. */
function differenceOf({ before, after }: Pair<{ readonly priceCents: number }>): number {
  return money((after?.priceCents ?? 0) - (before?.priceCents ?? 0));
}

function figuresOf(figures: Figures) {
  const { pieces, sticks, length, boardFeet, passes, hours, costCents, priceCents } = figures;
  return {
    ...{ pieces, sticks },
    length: Number(length),
    boardFeet: boardFeet ?? null,
    ...{ passes, hours },
    cost: money(costCents),
    price: money(priceCents),
  };
}

function totalsOf(totals: TotalFigures) {
  return {
    ...figuresOf(totals),
    done: totals.done,
    tax: money(totals.taxCents),
    toPay: money(toPayCents(totals)),
  };
}
