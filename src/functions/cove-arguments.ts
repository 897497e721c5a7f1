/** Arguments that the functions about coves share, and the cove and blade that they make. */
import type { Setting } from '../core/cove/cove.ts';
import { bladeOf, COVE_SIZES, coveOf, type CoveSize } from '../core/cove/cove-sizes.ts';
import { checkCove, type Feasibility } from '../core/cove/feasibility.ts';
import type { CoveStock } from '../core/cove/stock.ts';
import type { Argument } from '../core/faults/argument.ts';
import { fault, failed, ok, type Fault, type Outcome } from '../core/faults/fault.ts';
import type { LengthArgument, Values } from './argument.ts';

/** A size as an argument, by its own name. */
export function sizeArgument<Size extends CoveSize>(
  size: Size,
): LengthArgument & Pick<Size, 'least' | 'blank' | 'most'> {
  const { key: name, least, blank, most } = size;
  return { name, kind: 'length', least, blank, most };
}

export const WIDTH = { ...sizeArgument(COVE_SIZES.width), name: 'width' } as const;
export const DEPTH = { ...sizeArgument(COVE_SIZES.depth), name: 'depth' } as const;

/** Its sign is judged by the core, which says what to do about one. */
export const OFF_CENTER = { ...sizeArgument(COVE_SIZES.offCenter), least: 'any' } as const;

export const BLADE = {
  bladeDiameter: sizeArgument(COVE_SIZES.bladeDiameter),
  kerf: { ...sizeArgument(COVE_SIZES.kerf), zero: 'left out' },
} as const;

export const COVE = { width: WIDTH, depth: DEPTH, offCenter: OFF_CENTER, ...BLADE } as const;

/** The names that a person sees where the core says it in other words. */
const NAMES: ReadonlyMap<Argument, Argument> = new Map([
  [COVE_SIZES.width.key, WIDTH.name],
  [COVE_SIZES.depth.key, DEPTH.name],
  [COVE_SIZES.blankThickness.key, 'stockThickness'],
]);

export type CoveValues = Values<typeof COVE>;

/** Can it be made? As core/cove/feasibility.ts has it, in the words of the functions' arguments. */
export function judgeCove(given: CoveValues, stock?: CoveStock): Feasibility {
  const judged = checkCove(coveOf(given), bladeOf(given), {}, stock);
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
  const name = NAMES.get(original.argument);
  if (name === undefined) return original;
  const { code, given, limit, details } = original;
  return fault(code, name, given, {
    ...(limit === undefined ? {} : { limit }),
    ...(details === undefined ? {} : { details }),
  });
}
