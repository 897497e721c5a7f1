/** How many passes a depth takes, as core/cove/passes.ts plans them in even steps. */
import { LIMIT_SLACK_OF_A_UNIT } from '../tolerance.ts';
import type { SizeTerms } from './block-sizes.ts';
import {
  choose,
  least,
  less,
  minus,
  most,
  number,
  over,
  plus,
  roundedUp,
  type Term,
} from '../grammar/term.ts';

const ZERO = number(0);
const ONE = number(1);
const SLACK = number(LIMIT_SLACK_OF_A_UNIT);

/** A first pass, even steps, a light last one where the shop makes one; one pass where it is no deeper than the first. */
export function countPasses({ depth, firstPass, step, lastPass }: SizeTerms): Term {
  const before = minus(depth, lastPass);
  const afterFirst = minus(minus(before, least(firstPass, before)), SLACK);
  const stepsNeeded = most(ZERO, roundedUp(over(afterFirst, step), ZERO));
  const light = choose(less(SLACK, lastPass), ONE, ZERO);
  const several = plus(plus(ONE, stepsNeeded), light);
  return choose(less(depth, plus(firstPass, SLACK)), ONE, several);
}
