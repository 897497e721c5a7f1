/** Arguments that the functions about coves share, and the cove and blade that they make. */
import { USUAL_BLADE, type Blade, type Cove } from '../core/cove/cove.ts';
import { checkCove, type Feasibility } from '../core/cove/feasibility.ts';
import type { CoveStock } from '../core/cove/stock.ts';
import { fault, failed, ok, type Fault, type Outcome } from '../core/faults/fault.ts';
import type { Setting } from '../core/cove/cove.ts';
import type { LengthArgument, Values } from './argument.ts';

export const WIDTH = { name: 'Width', kind: 'length', least: 'above 0', blank: 'refused' } as const;
export const DEPTH = { name: 'Depth', kind: 'length', least: 'above 0', blank: 'refused' } as const;

/** Its sign is judged by the core, which says what to do about one. */
export const OFF_CENTER = { name: 'Off-center', kind: 'length', least: 'any', blank: 0 } as const;

export const BLADE = {
  bladeDiameter: {
    name: 'Blade diameter',
    kind: 'length',
    least: 'above 0',
    blank: USUAL_BLADE.diameter,
  },
  kerf: { name: 'Kerf', kind: 'length', least: 'from 0', blank: USUAL_BLADE.kerf },
} as const satisfies Readonly<Record<string, LengthArgument>>;

export const COVE = { width: WIDTH, depth: DEPTH, offCenter: OFF_CENTER, ...BLADE } as const;

/** The names that a person sees where the core says it in other words. */
const NAMES: Readonly<Record<string, string>> = {
  'Cove width': WIDTH.name,
  'Cove depth': DEPTH.name,
  'Blank thickness': 'Stock thickness',
};

export type CoveValues = Values<typeof COVE>;

/** Can it be made? As core/cove/feasibility.ts has it, in the words of the functions' arguments. */
export function judgeCove(given: CoveValues, stock?: CoveStock): Feasibility {
  const { width, depth, offCenter, bladeDiameter, kerf } = given;
  const cove: Cove = { width, depth, offCenter };
  const blade: Blade = { diameter: bladeDiameter, kerf };
  const judged = checkCove(cove, blade, {}, stock);
  return { ...judged, faults: judged.faults.map(nameAsHere) };
}

/** The setting that cuts a cove, or every fault that stands against it. */
export function settingOf(given: CoveValues, stock?: CoveStock): Outcome<Setting> {
  const { setting, faults } = judgeCove(given, stock);
  if (faults.length > 0) return failed(...faults);
  if (setting === undefined) throw new RangeError('A cove is refused without a fault.');
  return ok(setting);
}

/** A fault of the core by the name that the argument has here. */
export function nameAsHere(original: Fault): Fault {
  const name = NAMES[original.argument];
  if (name === undefined) return original;
  const { code, given, limit, details } = original;
  return fault(code, name, given, {
    ...(limit === undefined ? {} : { limit }),
    ...(details === undefined ? {} : { details }),
  });
}
