/** Addresses as Excel takes them, read here on their own. */
import { invalid } from './office-error.ts';

export interface Box {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export const LAST_ROW = 1_048_575;
export const LAST_COLUMN = 16_383;
const LONGEST_ADDRESS = 8_192;

/** One area: A1, A1:B2, 3:5 or A:C, with dollar signs or without. */
export function readBox(address: string): Box {
  const [first = '', last = first] = address.replaceAll('$', '').split(':');
  const [one, other] = [readCorner(first), readCorner(last)];
  const box = {
    top: one.row ?? 0,
    left: one.column ?? 0,
    bottom: other.row ?? LAST_ROW,
    right: other.column ?? LAST_COLUMN,
  };
  const sound = box.top <= box.bottom && box.left <= box.right;
  const inside = box.bottom <= LAST_ROW && box.right <= LAST_COLUMN && box.top >= 0;
  if (!sound || !inside) throw invalid(`no range "${address}"`);
  return box;
}

/** Several, with commas between them. */
export function readBoxes(address: string): Box[] {
  if (address.length > LONGEST_ADDRESS) throw invalid('an address that is too long');
  return address.split(',').map(readBox);
}

export function overlap(one: Box, other: Box): boolean {
  return !(
    one.bottom < other.top ||
    other.bottom < one.top ||
    one.right < other.left ||
    other.right < one.left
  );
}

export function writeBox({ top, left, bottom, right }: Box): string {
  const first = `${letters(left)}${top + 1}`;
  const last = `${letters(right)}${bottom + 1}`;
  return first === last ? first : `${first}:${last}`;
}

/** Base 26 without a zero. */
export function letters(column: number): string {
  let text = '';
  for (let left = column + 1; left > 0; left = Math.floor((left - 1) / 26)) {
    text = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'.charAt((left - 1) % 26) + text;
  }
  return text;
}

function readCorner(text: string): { row?: number; column?: number } {
  const [, column = '', row = ''] = /^([A-Za-z]{0,3})(\d*)$/u.exec(text) ?? [];
  if (column === '' && row === '') throw invalid(`no range "${text}"`);
  let number = 0;
  for (const letter of column.toUpperCase()) number = number * 26 + letter.charCodeAt(0) - 64;
  return {
    ...(row === '' ? {} : { row: Number(row) - 1 }),
    ...(column === '' ? {} : { column: number - 1 }),
  };
}
