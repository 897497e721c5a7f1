/**
 * A cove, its blank and the blade as a person gives them, wherever that is: a row of Profiles, the
 * arguments of a function, the fields of the pane, a file. What each size is called, which sign it may
 * have and what a blank stands for is said here alone; how a cell is read is the caller's.
 */
import Fraction from 'fraction.js';
import { NAMES } from '../faults/argument-words.ts';
import type { HeadingKey } from '../faults/argument.ts';
import type { ExactInches } from '../units/length.ts';
import { THICKEST_INCHES, WIDEST_INCHES } from '../units/plausible-length.ts';
import { USUAL_BLADE, type Blade, type Cove } from './cove.ts';

export interface CoveSize {
  /** As faults, and the code that reads it, have it. */
  readonly key: HeadingKey;
  /** As headings and fields have it. */
  readonly label: string;
  readonly least: 'above 0' | 'from 0';
  /** Of a blank: it is asked for, it stays absent, or it stands for so many inches. */
  readonly blank: 'refused' | 'absent' | number;
  /** More than any shop has; inches. */
  readonly most: number;
}

const labelled = <Key extends HeadingKey>(key: Key) => ({ key, label: NAMES[key] });

export const COVE_SIZES = {
  width: { ...labelled('coveWidth'), least: 'above 0', blank: 'refused', most: WIDEST_INCHES },
  depth: { ...labelled('coveDepth'), least: 'above 0', blank: 'refused', most: THICKEST_INCHES },
  offCenter: { ...labelled('offCenter'), least: 'from 0', blank: 0, most: WIDEST_INCHES },
  blankWidth: {
    ...labelled('blankWidth'),
    least: 'above 0',
    blank: 'refused',
    most: WIDEST_INCHES,
  },
  blankThickness: {
    ...labelled('blankThickness'),
    least: 'above 0',
    blank: 'refused',
    most: THICKEST_INCHES,
  },
  nearFlat: { ...labelled('nearFlat'), least: 'from 0', blank: 'absent', most: WIDEST_INCHES },
  bladeDiameter: {
    ...labelled('bladeDiameter'),
    least: 'above 0',
    blank: USUAL_BLADE.diameter,
    most: WIDEST_INCHES,
  },
  kerf: { ...labelled('kerf'), least: 'from 0', blank: USUAL_BLADE.kerf, most: THICKEST_INCHES },
} as const satisfies Readonly<Record<string, CoveSize>>;

export type SizeKey = keyof typeof COVE_SIZES;

type BlankOf<Key extends SizeKey> = (typeof COVE_SIZES)[Key]['blank'];

/** Undefined: blank where nothing stands in for it, or at fault. */
export type ReadSizes<Key extends SizeKey> = {
  readonly [One in Key]: ExactInches | (BlankOf<One> extends number ? never : undefined);
};

/** Every size is there that is asked for. */
export type CompleteSizes<Key extends SizeKey> = {
  readonly [One in Key]: ExactInches | (BlankOf<One> extends 'absent' ? undefined : never);
};

/**
 * Reads sizes in the order of `keys`, so that every fault of every one is found.
 *
 * @param read keeps the faults of a cell to itself and gives undefined for it, as for a blank one
 */
export function readSizes<Key extends SizeKey>(
  keys: readonly Key[],
  read: (size: CoveSize, key: Key) => ExactInches | undefined,
): ReadSizes<Key> {
  const entries = keys.map((key) => {
    const size: CoveSize = COVE_SIZES[key];
    const usual = typeof size.blank === 'number' ? new Fraction(size.blank) : undefined;
    return [key, read(size, key) ?? usual];
  });
  return Object.fromEntries(entries) as ReadSizes<Key>;
}

export function isComplete<Key extends SizeKey>(
  sizes: ReadSizes<Key>,
): sizes is ReadSizes<Key> & CompleteSizes<Key> {
  return (Object.keys(sizes) as Key[]).every(
    (key) => sizes[key] !== undefined || COVE_SIZES[key].blank === 'absent',
  );
}

/** Sizes in inches, exact or not. */
type Sizes<Key extends SizeKey> = Readonly<Record<Key, number | ExactInches>>;

export function coveOf(sizes: Sizes<'width' | 'depth' | 'offCenter'>): Cove {
  return {
    width: Number(sizes.width),
    depth: Number(sizes.depth),
    offCenter: Number(sizes.offCenter),
  };
}

export function bladeOf(sizes: Sizes<'bladeDiameter' | 'kerf'>): Blade {
  return { diameter: Number(sizes.bladeDiameter), kerf: Number(sizes.kerf) };
}
