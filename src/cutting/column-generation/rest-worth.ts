import { creditOf, type Instance, type Slot } from './instance.ts';

/**
 * What the rest of a stick is worth in cents beside its pieces, by how many units are left of its
 * capacity. It is filled with parts of relaxed splices at their rate, or kept as an offcut for its
 * credit, or both.
 *
 * @param relaxedCentsPerUnit 0 where no splice is relaxed
 * @returns undefined where a rest is never worth anything
 *
 * Derived: units of relaxed splices each earn their rate; the credit is 0 up to the least offcut, then in
 * proportion, then level. A sum of straight lines is greatest at one of their ends.
 */
export function restWorth(
  instance: Instance,
  profile: number,
  slot: Slot,
  relaxedCentsPerUnit: number,
): ((left: number) => number) | undefined {
  const credit = creditOf(instance, profile);
  const { keepOffcutsOver, kerf } = instance.problem;
  const relaxed = (units: number): number => Math.max(0, units) * relaxedCentsPerUnit;
  if (credit === undefined) return relaxedCentsPerUnit > 0 ? relaxed : undefined;
  const { centsPerUnit } = credit;
  const mostCents = Math.min(slot.capCents, credit.mostCents);
  const level = centsPerUnit > 0 ? Math.ceil(mostCents / centsPerUnit) : 0;
  const creditFor = (offcut: number): number =>
    offcut <= 0 || offcut < keepOffcutsOver ? 0 : Math.min(mostCents, centsPerUnit * offcut);
  return (left) => {
    const offcuts = [left - kerf, keepOffcutsOver, Math.max(keepOffcutsOver, level), 0];
    return offcuts.reduce((most, offcut) => {
      if (offcut < 0 || (offcut > 0 && offcut > left - kerf)) return most;
      return Math.max(
        most,
        creditFor(offcut) + relaxed(offcut === 0 ? left : left - kerf - offcut),
      );
    }, 0);
  };
}
