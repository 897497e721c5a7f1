import { fault, type Fault } from '../../core/faults/fault.ts';
import { MOST_PRICE_CENTS, MOST_STICKS, MOST_STRIPS } from './limits.ts';
import { lengthFaults, wholeFaults, type SayLength } from './number-faults.ts';
import type { Rip, StickSupply } from './problem.ts';

/**
 * What keeps a kind of stick or board from being planned with. A part of `validateProblem`.
 *
 * @param blanks those that the problem's profiles are made from
 */
export function supplyFaults(
  supply: StickSupply,
  endTrim: number,
  blanks: ReadonlySet<string>,
  say: SayLength,
): readonly Fault[] {
  const { id, length, buyMost, rips } = supply;
  const ofLength = lengthFaults(`Stick ${id}`, length, 1, say);
  const usedUp = ofLength.length === 0 && Number.isFinite(endTrim) && length <= 2 * endTrim;
  return [
    ...ofLength,
    ...(usedUp
      ? [
          fault('cutting.stick-shorter-than-trim', `Stick ${id}`, say(length), {
            limit: say(2 * endTrim),
          }),
        ]
      : []),
    ...wholeFaults(`Price of stick ${id}`, supply.priceCents, 0, MOST_PRICE_CENTS),
    ...(supply.stripWorthCents === undefined
      ? []
      : wholeFaults(`Worth of a strip of ${id}`, supply.stripWorthCents, 0, MOST_PRICE_CENTS)),
    ...(rips === undefined
      ? wholeFaults(`Strips of stick ${id}`, supply.strips, 1, MOST_STRIPS)
      : ripsFaults(id, rips, blanks)),
    ...wholeFaults(`Sticks ${id} on the rack`, supply.have, 0, MOST_STICKS),
    ...(buyMost === null ? [] : wholeFaults(`Sticks ${id} to buy`, buyMost, 0, MOST_STICKS)),
  ];
}

function ripsFaults(
  id: string,
  rips: readonly Rip[],
  blanks: ReadonlySet<string>,
): readonly Fault[] {
  if (rips.length === 0) return [fault('cutting.rip-empty', `Stick ${id}`, 0)];
  return rips.flatMap((rip, at) => {
    const name = `Rip ${at + 1} of stick ${id}`;
    if (rip.length === 0) return [fault('cutting.rip-empty', name, 0)];
    const seen = new Set<string>();
    return rip.flatMap(({ blank, count }) => {
      const isTwice = seen.has(blank);
      seen.add(blank);
      return [
        ...(blanks.has(blank) ? [] : [fault('cutting.blank-unknown', name, blank)]),
        ...(isTwice ? [fault('cutting.blank-twice', name, blank)] : []),
        ...wholeFaults(`${name}, strips of ${blank}`, count, 1, MOST_STRIPS),
      ];
    });
  });
}
