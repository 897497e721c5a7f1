/** Letters on a stick's bar: as much as a piece has room for, never past it; its length whole or not at all. */
import { area } from './compose.ts';
import type { Shape, TextShape } from './drawing.ts';
import { breakLines, lineHeight, textAbout, textWidth } from './lettering.ts';
import { BAR, type Bar, type BarPiece, type StickView, type Stretch } from './stick-view.ts';

const SIZE = BAR.letters;
/** Numbers of the shortest pieces get smaller, down to this. */
const LEAST_SIZE = 1.6;
/** Air beside letters, and between a number and its label. */
const AIR = 0.5;
/** Fewer letters than this say nothing. */
const LEAST_LETTERS = 5;
const middleOf = ({ top, bottom }: Bar): number => (top + bottom) / 2;

/** Signs of about twice a letter's width, and those that are part of the sign before them. */
const WIDE =
  /[\p{Extended_Pictographic}\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}]/u;

/** The piece's number, its label on up to two lines, its length below. */
export function labelPiece(number: number, piece: BarPiece, bar: Bar, at: Stretch): TextShape[] {
  const [from, to] = [at.from + AIR, at.to - AIR];
  const wide = to - from;
  const text = String(number);
  const room = wide - roomOf(text) - AIR;
  if (room < textWidth('x'.repeat(LEAST_LETTERS), SIZE)) return numberAlone(text, bar, at);
  const length = roomOf(piece.said) <= room ? [piece.said] : [];
  const lines = [...labelLines(piece.label, room), ...length];
  const first = middleOf(bar) - ((lines.length - 1) * lineHeight(SIZE)) / 2;
  const bold = textAbout([from, first], text, SIZE, { ...LEFT, bold: true });
  const start = from + roomOf(text) + AIR;
  const texts = lines.map((one, index) =>
    textAbout([start, first + index * lineHeight(SIZE)], one, SIZE, LEFT),
  );
  return [bold, ...texts];
}

/** `keep` or `waste` and how long; nothing where neither fits. */
export function labelOffcut({ said, kept }: StickView['offcut'], bar: Bar, at: Stretch): Shape[] {
  const word = kept ? 'keep' : 'waste';
  const wide = at.to - at.from - 2 * AIR;
  const lines = [word, said].filter((one) => roomOf(one) <= wide);
  if (lines[0] !== word) return [];
  const first = middleOf(bar) - ((lines.length - 1) * lineHeight(SIZE)) / 2;
  const middle = (at.from + at.to) / 2;
  const texts = lines.map((one, index) =>
    textAbout([middle, first + index * lineHeight(SIZE)], one, SIZE, { ...MIDST, bold: kept }),
  );
  if (kept) return texts;
  // Lines of the hatching would run through the letters.
  const midst = middleOf(bar);
  const half = Math.max(...lines.map(roomOf)) / 2 + AIR / 2;
  const high = (lines.length * lineHeight(SIZE)) / 2;
  const clear = area(
    [
      [middle - half, midst - high],
      [middle + half, midst - high],
      [middle + half, midst + high],
      [middle - half, midst + high],
    ],
    'removed',
  );
  return [clear, ...texts];
}

const LEFT = { anchor: 'start', tone: 'ink' } as const;
const MIDST = { anchor: 'middle', tone: 'ink' } as const;

/** A short piece bears its number alone; the rows under the bar say the rest. */
export function numberAlone(text: string, bar: Bar, at: Stretch): TextShape[] {
  const wide = at.to - at.from - AIR;
  const size = Math.min(bar.letters, (wide / textWidth(text, SIZE)) * SIZE);
  if (size < LEAST_SIZE) return [];
  return [textAbout([(at.from + at.to) / 2, middleOf(bar)], text, size, { ...MIDST, bold: true })];
}

/** Room above run, each shortened by itself; a label without either broken between words. */
function labelLines(label: string, room: number): string[] {
  const words = label.replace(/\s+/gu, ' ').trim();
  if (roomOf(words) <= room) return words === '' ? [] : [words];
  const [place, ...runs] = words.split(' / ');
  const lines = runs.length > 0 ? [place, runs.join(' / ')] : breakLines(words, SIZE, room);
  const [first = '', ...rest] = lines;
  return [first, rest.join(' ')].filter((line) => line !== '').map((line) => clipTo(line, room));
}

/** Room for letters, those of other scripts that take two letters' room included. */
export function roomOf(text: string, size = SIZE): number {
  const wide = Array.from(text).filter((sign) => WIDE.test(sign)).length;
  return textWidth(text, size) + textWidth('x'.repeat(wide), size);
}

/** As much of the text as has room, an ellipsis for the rest. */
export function clipTo(text: string, room: number, size = SIZE): string {
  if (roomOf(text, size) <= room) return text;
  const signs = Array.from(text);
  let [count, used] = [0, roomOf('…', size)];
  for (const sign of signs) {
    used += roomOf(sign, size);
    if (used > room) break;
    count += 1;
  }
  return `${joined(signs.slice(0, count))}…`;
}

/** At most so many signs, the last an ellipsis where some were left out; spaces are single ones. */
export function clipWords(text: string, most: number): string {
  const words = text.replace(/\s+/gu, ' ').trim();
  const signs = Array.from(words);
  return signs.length <= most ? words : `${joined(signs.slice(0, most - 1))}…`;
}

/** Without a space or a joiner left hanging at the end. */
function joined(signs: readonly string[]): string {
  return signs.join('').replace(/(?:\s|\u200D|\uFE0F)+$/u, '');
}
