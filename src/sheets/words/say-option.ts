/** What an option is, in words that a client reads too. */
import { formatFixed } from '../../core/units/format-number.ts';
import { nameKey } from '../../planning/job.ts';
import type { JobPlan, PlannedOption } from '../../planning/job-plan.ts';
import { count, LONG_UNIT, numberIn } from './print-length.ts';

/** One molding of a room: its pieces that are to be cut. */
interface Amount {
  readonly room: string;
  readonly profile: string;
  pieces: number;
  inches: number;
}

/** `Hall: Crown, 4 pieces, 38.5 ft; Den: Oak base, 5 pieces, 41.0 ft, in place of Base`. */
export function sayOption(base: JobPlan, { option, plan }: PlannedOption): string {
  if (plan === undefined) {
    return option.changes
      .map(({ room, profile, instead }) =>
        instead === undefined
          ? `${room}: ${profile}`
          : `${room}: ${instead} in place of ${profile}`,
      )
      .join('; ');
  }
  const { unit, decimalSign } = base.job.shop;
  const [before, after] = [amountsOf(base), amountsOf(plan)];
  const made = new Set(option.changes.map((one) => nameKey(one.instead ?? one.profile)));
  const gone = new Set(
    option.changes.flatMap((one) => (one.instead === undefined ? [] : nameKey(one.profile))),
  );
  const rooms = [
    ...new Map(
      [...after.values(), ...before.values()].map(({ room }) => [nameKey(room), room]),
    ).values(),
  ];
  return rooms
    .flatMap((room): string[] => {
      const inRoom = (one: Amount): boolean => nameKey(one.room) === nameKey(room);
      const more = [...after].flatMap(([key, one]) => {
        const was = before.get(key);
        const inches = one.inches - (was?.inches ?? 0);
        if (!inRoom(one) || !made.has(nameKey(one.profile)) || inches <= 0) return [];
        const long = formatFixed(numberIn(inches, unit) / LONG_UNIT[unit].holds, 1, decimalSign);
        const pieces = one.pieces - (was?.pieces ?? 0);
        const howMany = pieces > 0 ? `${count(pieces, 'piece')}, ` : '';
        return [`${one.profile}, ${howMany}${long} ${LONG_UNIT[unit].name}`];
      });
      const less = [...before].flatMap(([key, one]) =>
        inRoom(one) && gone.has(nameKey(one.profile)) && (after.get(key)?.inches ?? 0) < one.inches
          ? [one.profile]
          : [],
      );
      const inPlace = less.length === 0 ? '' : `, in place of ${less.join(' and ')}`;
      return more.length === 0 ? [] : [`${room}: ${more.join('; ')}${inPlace}`];
    })
    .join('; ');
}

function amountsOf({ pieces }: JobPlan): ReadonlyMap<string, Amount> {
  const amounts = new Map<string, Amount>();
  for (const { room, profile, done, cutLength } of pieces) {
    if (done) continue;
    const key = JSON.stringify([nameKey(room), nameKey(profile)]);
    const amount = amounts.get(key) ?? { room, profile, pieces: 0, inches: 0 };
    amounts.set(key, amount);
    amount.pieces += 1;
    amount.inches += Number(cutLength);
  }
  return amounts;
}

/** Under every list of options: what its prices stand for. */
export const OPTIONS_ALONE =
  'Each is priced by itself, over the price as it is: minimum charge, delivery and rounding may hide a part of it or all. Several together are priced again.';
