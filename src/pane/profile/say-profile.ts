import type { LengthUnit } from '../../core/faults/quantity.ts';
import type { Profile } from '../../planning/job.ts';
import { printBoth, printExact } from '../../sheets/print-length.ts';

/** A profile's sizes in a sentence or two. */
export function sayProfile(
  { cove, blankWidth, blankThickness, species, note }: Profile,
  unit: LengthUnit,
): string {
  if (cove === undefined || blankWidth === undefined || blankThickness === undefined) return note;
  const center =
    cove.offCenter === 0 ? 'centered' : `${printBoth(cove.offCenter, unit)} off center`;
  const wood = species === '' ? '' : ` of ${species}`;
  const size = `Cove ${printBoth(cove.width, unit)} wide, ${printBoth(cove.depth, unit)} deep, ${center}.`;
  const blank = `Blank${wood} ${printExact(blankWidth, unit)} wide, ${printExact(blankThickness, unit)} thick.`;
  const said = note === '' ? '' : `Note: ${note}`;
  return [size, blank, said].filter((part) => part !== '').join(' ');
}
