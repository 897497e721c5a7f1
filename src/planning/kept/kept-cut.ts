/** Sticks that are cut already as plain JSON: exact lengths as fractions of an inch. */
import Fraction from 'fraction.js';
import { hashText } from '../../core/hash-text.ts';
import type { ExactInches } from '../../core/units/length.ts';
import type { CutAlready, PieceThen } from '../cut/cut-already.ts';

type AsText<Value> = Value extends ExactInches
  ? string
  : Value extends readonly (infer One)[]
    ? readonly AsText<One>[]
    : Value extends object
      ? { readonly [Key in keyof Value]: AsText<Value[Key]> }
      : Value;

export type KeptCut = AsText<CutAlready>;
type KeptPiece = AsText<PieceThen>;

export function writeCut({ row, blankWidths, pieces, offcut, ...rest }: CutAlready): KeptCut {
  const { width, length, ...others } = row;
  return {
    ...rest,
    row: {
      ...others,
      ...(width === undefined ? {} : { width: width.toFraction() }),
      length: length.toFraction(),
    },
    blankWidths: blankWidths.map((one) => one.toFraction()),
    pieces: pieces.map(({ length: long, whole, parts, ...piece }): KeptPiece => ({
      ...piece,
      length: long.toFraction(),
      whole: whole.toFraction(),
      ...(parts === undefined ? {} : { parts: parts.map((part) => part.toFraction()) }),
    })),
    offcut: offcut.toFraction(),
  };
}

/** A short text that is the same for the same cut sticks alone. */
export function keyOfCut(cut: readonly CutAlready[]): string {
  return hashText(JSON.stringify(cut.map(writeCut)));
}

/** @throws Error for a length that is none */
export function readCut({ row, blankWidths, pieces, offcut, ...rest }: KeptCut): CutAlready {
  const { width, length, ...others } = row;
  return {
    ...rest,
    row: {
      ...others,
      ...(width === undefined ? {} : { width: new Fraction(width) }),
      length: new Fraction(length),
    },
    blankWidths: blankWidths.map((one) => new Fraction(one)),
    pieces: pieces.map(({ length: long, whole, parts, ...piece }): PieceThen => ({
      ...piece,
      length: new Fraction(long),
      whole: new Fraction(whole),
      ...(parts === undefined ? {} : { parts: parts.map((part) => new Fraction(part)) }),
    })),
    offcut: new Fraction(offcut),
  };
}
