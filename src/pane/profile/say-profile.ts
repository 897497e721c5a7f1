import type { LengthReading } from '../../core/units/length.ts';
import type { CoveProfile } from '../../planning/job.ts';
import { printBoth, printExact } from '../../sheets/words/print-length.ts';
import { sayOffCenter } from '../../sheets/words/set-up-facts.ts';

/** A cove's sizes in a sentence or two. */
export function sayProfile(
  { cove, blankWidth, blankThickness, species, note }: CoveProfile,
  reading: LengthReading,
): string {
  const center = sayOffCenter(cove, reading);
  const wood = species === '' ? '' : ` of ${species}`;
  const size = `Cove ${printBoth(cove.width, reading)} wide, ${printBoth(cove.depth, reading)} deep, ${center}.`;
  const blank = `Blank${wood} ${printExact(blankWidth, reading)} wide, ${printExact(blankThickness, reading)} thick.`;
  const said = note === '' ? '' : `Note: ${note}`;
  return [size, blank, said].filter((part) => part !== '').join(' ');
}
