import { entryAt } from '../entry-at.ts';
import { stripsOf } from '../problem/supplies.ts';
import type { WholeStick } from '../whole-stick.ts';
import { layoutColumn, type Column } from './column.ts';
import type { Instance } from './instance.ts';

/** The layouts of a plan as columns, each once: the program begins with them. */
export function startColumns(instance: Instance, sticks: readonly WholeStick[]): Column[] {
  const itemOf = new Map(
    instance.items.map(({ profile, weight }, item) => [`${profile} ${weight}`, item]),
  );
  const profiles = new Map(instance.profiles.map(({ id }, at) => [id, at]));
  const columns = new Map<string, Column>();
  for (const { profile, supply, rip, blocks } of sticks) {
    const place = profiles.get(profile) ?? 0;
    const items = blocks.flatMap(({ weight }) => itemOf.get(`${place} ${weight}`) ?? []);
    const slot = slotOf(instance, place, supply.id, rip);
    if (items.length === 0 || slot === undefined) continue;
    const key = `${slot} ${[...items].sort((a, b) => a - b).join()}`;
    if (!columns.has(key)) columns.set(key, layoutColumn(instance, slot, place, items));
  }
  return [...columns.values()];
}

function slotOf(
  instance: Instance,
  profile: number,
  supplyId: string,
  rip: number,
): number | undefined {
  const supply = instance.supplies.findIndex((one) => one.supply.id === supplyId);
  const own = instance.supplies[supply];
  if (own === undefined) return undefined;
  const slots = entryAt(instance.slotsOf, profile);
  const single = slots.find((slot) => instance.slots[slot]?.supply === supply);
  const blank = entryAt(instance.profiles, profile).blank;
  if (single !== undefined && stripsOf(own.supply, rip, blank) === 1) return single;
  const { strips = [] } =
    own.rips.find(
      (one) => one.rip === rip && one.strips.some(({ slot }) => slots.includes(slot)),
    ) ?? {};
  return strips.find(({ slot }) => slots.includes(slot))?.slot ?? single;
}
