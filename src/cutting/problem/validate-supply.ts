import { own, phrase } from '../../core/faults/argument.ts';
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
  const named = { id: own(id) };
  const ofLength = lengthFaults(phrase('stickOf', named), length, 1, say);
  const usedUp = ofLength.length === 0 && Number.isFinite(endTrim) && length <= 2 * endTrim;
  return [
    ...ofLength,
    ...(usedUp
      ? [
          fault('cutting.stick-shorter-than-trim', phrase('stickOf', named), say(length), {
            limit: say(2 * endTrim),
          }),
        ]
      : []),
    ...wholeFaults(phrase('stickPrice', named), supply.priceCents, 0, MOST_PRICE_CENTS),
    ...(supply.stripWorthCents === undefined
      ? []
      : wholeFaults(phrase('stripWorth', named), supply.stripWorthCents, 0, MOST_PRICE_CENTS)),
    ...(rips === undefined
      ? wholeFaults(phrase('stickStrips', named), supply.strips, 1, MOST_STRIPS)
      : ripsFaults(id, rips, blanks)),
    ...wholeFaults(phrase('sticksOnRack', named), supply.have, 0, MOST_STICKS),
    ...(buyMost === null ? [] : wholeFaults(phrase('sticksToBuy', named), buyMost, 0, MOST_STICKS)),
  ];
}

function ripsFaults(
  id: string,
  rips: readonly Rip[],
  blanks: ReadonlySet<string>,
): readonly Fault[] {
  if (rips.length === 0) return [fault('cutting.rip-empty', phrase('stickOf', { id: own(id) }), 0)];
  return rips.flatMap((rip, at) => {
    const ofRip = { number: at + 1, id: own(id) };
    const name = phrase('ripOf', ofRip);
    if (rip.length === 0) return [fault('cutting.rip-empty', name, 0)];
    const seen = new Set<string>();
    return rip.flatMap(({ blank, count }) => {
      const isTwice = seen.has(blank);
      seen.add(blank);
      return [
        ...(blanks.has(blank) ? [] : [fault('cutting.blank-unknown', name, blank)]),
        ...(isTwice ? [fault('cutting.blank-twice', name, blank)] : []),
        ...wholeFaults(phrase('ripStrips', { ...ofRip, blank: own(blank) }), count, 1, MOST_STRIPS),
      ];
    });
  });
}
