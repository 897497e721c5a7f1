/** Which headings of a table one that isn't its own may be meant for, and what its numbers may be. */
import { holdsOther, isSlipOf, wordsOf } from '../../../core/words/near-words.ts';
import { headingKey } from '../row-reader.ts';
import type { Heading } from './heading.ts';
import { unitOfHeading } from './unit-of-heading.ts';

/** A heading with these words says that its column is for the person alone. */
const NOT_USED = 'not used';

/** `Total (not used)`: how a person, or the choice of columns, says that a column is not ours. */
export function headNotUsed(heading: string): string {
  return `${heading} (${NOT_USED})`;
}

export function saysNotUsed(heading: string): boolean {
  return wordsOf(heading).join(' ').includes(NOT_USED);
}

/** The heading that `name` is, by its own word or one that is read as it. */
export function findHeading<One extends Heading>(
  name: string,
  headings: readonly One[],
): One | undefined {
  const key = headingKey(name);
  return (
    headings.find(({ heading }) => headingKey(heading) === key) ??
    headings.find(({ also = [] }: Heading) => also.some((word) => headingKey(word) === key))
  );
}

export interface Meant {
  readonly headings: readonly Heading[];
  /** The name is one of ours, or one but for a slip; else it only may stand for one. */
  readonly isSure: boolean;
}

/** What a heading may be meant for: one of ours with a slip, a word often used for one, or one that holds the other. */
export function findMeant(name: string, headings: readonly Heading[]): Meant {
  const exact = findHeading(name, headings);
  if (exact !== undefined) return { headings: [exact], isSure: true };
  const key = headingKey(name);
  const slips = headings.filter(({ heading }) => isSlipOf(key, headingKey(heading)));
  if (slips.length > 0) return { headings: slips, isSure: true };
  const held = headings.filter(({ heading }) => holdsOther(name, heading));
  // A name that holds two of ours is merged out of both, or of neither.
  const isLonger = held.some(({ heading }) => wordsOf(heading).length < wordsOf(name).length);
  const near = held.length > 1 && isLonger ? [] : held;
  const isWordFor = ({ also = [], often = [] }: Heading): boolean =>
    also.some((word) => isSlipOf(key, headingKey(word))) ||
    often.some((word) => headingKey(word) === key);
  return {
    headings: headings.filter((one) => near.includes(one) || isWordFor(one)),
    isSure: false,
  };
}

/** What a column of numbers may count or measure, as a person is asked about it. */
export type NumberMeaning = 'quantity' | 'length' | 'price' | 'angle' | 'kerf' | 'end trim';

const WORDS: Readonly<Record<NumberMeaning, readonly string[]>> = {
  quantity: [
    ...['qty', 'quantity', 'quantities', 'count', 'counts', 'pcs', 'pc', 'pieces', 'available'],
    ...['amount', 'units', 'ea', 'many', 'number', 'no', 'nr', 'nos', 'hand', 'stock', 'total'],
  ],
  length: [
    ...['length', 'lengths', 'len', 'long', 'size', 'width', 'wide', 'height', 'high', 'tall'],
    ...['depth', 'deep', 'thickness', 'thick', 'lineal', 'linear', 'dimension', 'reveal'],
    ...['projection', 'drop', 'diameter', 'dia'],
  ],
  price: ['price', 'prices', 'cost', 'costs', 'rate', 'each', 'money'],
  angle: [
    'angle',
    'angles',
    'degrees',
    'corner',
    'spring',
    'bevel',
    'miter',
    'mitre',
    'slope',
    'pitch',
  ],
  kerf: ['kerf', 'blade', 'saw'],
  'end trim': ['trim', 'trims'],
};
/** Of these, what only counts rows is no quantity. */
const ROW_COUNTERS: ReadonlySet<string> = new Set(['number', 'no', 'nr', 'nos']);

/** What numbers under a heading may mean; undefined where it says nothing of the kind. */
export function meaningOfNumbers(name: string, isRowCount: boolean): NumberMeaning | undefined {
  const words = wordsOf(name).filter((word) => !(isRowCount && ROW_COUNTERS.has(word)));
  const found = (Object.keys(WORDS) as NumberMeaning[]).find((meaning) =>
    words.some((word) => WORDS[meaning].some((known) => word === known || isSlipOf(word, known))),
  );
  return found ?? (unitOfHeading(name) === undefined ? undefined : 'length');
}
