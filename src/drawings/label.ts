/** A label of a piece or an offcut: its mark, its length, where it belongs, its ends, which edge is up. */
import { area, arrowHead, line, LINE } from './compose.ts';
import type { Point, Shape, TextShape } from './drawing.ts';
import { clipTo, roomOf } from './stick-bar-labels.ts';
import { textAbout } from './lettering.ts';
import type { EndShape } from './stick-view.ts';

/** What stands on it; whatever is told to stand whole is made smaller where it must, never cut. */
export interface LabelView {
  /** Whole, at the left of the first line. */
  readonly mark: string;
  /** Its length, whole, at the right of the first line. */
  readonly said: string;
  /** The same in the other unit, whole, in the bar; empty for none. */
  readonly other: string;
  /** Names from above, each shortened to the label's width; `whole` follows the name in full. */
  readonly lines: readonly { readonly name: string; readonly whole?: string }[];
  /** Beside an arrow that points up the label, at the right of the last line; absent: no arrow. */
  readonly arrow?: string;
  readonly bar: LabelBar;
}

export interface LabelBar {
  readonly fill: 'wood' | 'rail';
  readonly left: EndShape;
  readonly right: EndShape;
  /** In the bar, at either end. */
  readonly names: readonly [left: string, right: string];
  /** Under it, whole, at either end. */
  readonly words: readonly [left: string, right: string];
}

/** In millimetres. */
export interface LabelBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Heights of the rows and of their letters in millimetres, on a label of the least size. */
const MARK = { row: 6, size: 5.2 } as const;
const NAME = { row: 3.8, size: 3.1 } as const;
const BAR = { row: 5.4, high: 4.2, size: 2.6 } as const;
const WORDS = { row: 3, size: 2.4 } as const;
/** What a label of the least size has room for, and how much larger all of it grows. */
const LEAST_WIDTH = 57;
const GROWS = 1.3;
const GAP = 1.5;
/** Under the bar. */
const BAR_GAP = 0.4;
const SLANT = 2;

/** Rows of names that a label so high has room for, at the size of the least one. */
export function namesWithin(height: number): number {
  return Math.floor((height - MARK.row - BAR.row - WORDS.row) / NAME.row);
}

/** @returns Shapes within the box. */
export function drawLabel(view: LabelView, box: LabelBox): Shape[] {
  const { mark, said, bar, lines, arrow } = view;
  const high = MARK.row + lines.length * NAME.row + BAR.row + WORDS.row;
  const scale = Math.min(GROWS, box.width / LEAST_WIDTH, box.height / high);
  const [left, right] = [box.left, box.left + box.width];
  const bottom = box.top + box.height;
  const markRoom = roomOf(mark, MARK.size * scale);
  const first = box.top + (MARK.row * scale) / 2;
  const words = endWords(bar.words, { left, right, bottom }, box.height - high * scale, scale);
  const names = lines.flatMap((one, at) => {
    const y = box.top + (MARK.row + (at + 0.5) * NAME.row) * scale;
    const isLast = at === lines.length - 1;
    const pointed = isLast && arrow !== undefined ? drawArrow(arrow, right, y, scale) : NO_ARROW;
    return [...pointed.shapes, nameLine(one, [left, y], box.width - pointed.width, scale)];
  });
  return [
    whole(mark, [left, first], box.width * 0.6, MARK.size * scale, 'start', true),
    whole(
      said,
      [right, first],
      box.width - Math.min(markRoom, box.width * 0.6) - GAP,
      MARK.size * scale,
      'end',
      true,
    ),
    ...names,
    ...drawBar(view, { left, right, bottom: words.top - BAR_GAP * scale }, scale),
    ...words.texts,
  ];
}

/** What stands over both sides of the label, and over a height of it. */
interface Stand {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
}

/** A text that is never cut: smaller where it has less room. */
function whole(
  text: string,
  at: Point,
  room: number,
  size: number,
  anchor: TextShape['anchor'],
  bold = false,
): TextShape {
  const fits = size * Math.min(1, room / Math.max(roomOf(text, size), 1));
  return textAbout(at, text, fits, { anchor, tone: 'ink', ...(bold ? { bold } : {}) });
}

function nameLine(
  { name, whole: after = '' }: LabelView['lines'][number],
  at: Point,
  room: number,
  scale: number,
): TextShape {
  const size = NAME.size * scale;
  const text = `${clipTo(name, room - roomOf(after, size), size)}${after}`;
  return textAbout(at, text, size, { anchor: 'start', tone: 'ink' });
}

const NO_ARROW = { shapes: [] as Shape[], width: 0 } as const;

/** A word with an arrow that points up, from the right. */
function drawArrow(
  word: string,
  right: number,
  y: number,
  scale: number,
): { readonly shapes: Shape[]; readonly width: number } {
  const [head, half, size] = [2 * scale, 1.4 * scale, WORDS.size * scale];
  const x = right - head * 0.3;
  const stem = line(
    [
      [x, y + half],
      [x, y - half + head / 2],
    ],
    'ink',
    LINE.strong,
  );
  const words = textAbout([x - head * 0.3 - GAP / 2, y], word, size, {
    anchor: 'end',
    tone: 'ink',
    bold: true,
  });
  return {
    shapes: [stem, arrowHead([x, y - half], -Math.PI / 2, 'ink', head), words],
    width: head * 0.6 + GAP * 1.5 + roomOf(word, size),
  };
}

/** The piece as its stick's bar on Cutting shows it: its slants aren't to scale. */
function drawBar(
  { bar, other }: LabelView,
  { left, right, bottom }: Stand,
  scale: number,
): Shape[] {
  const top = bottom - BAR.high * scale;
  const middle = (top + bottom) / 2;
  const size = BAR.size * scale;
  const slant = SLANT * scale;
  const upper = (end: EndShape): number => (end === 'long in front' ? slant : 0);
  const lower = (end: EndShape): number => (end === 'long behind' ? slant : 0);
  const corners: Point[] = [
    [left + upper(bar.left), top],
    [right - upper(bar.right), top],
    [right - lower(bar.right), bottom],
    [left + lower(bar.left), bottom],
  ];
  const [atLeft, atRight] = bar.names;
  const [start, end] = [left + slant + GAP / 2, right - slant - GAP / 2];
  const names = Math.max(roomOf(atLeft, size), roomOf(atRight, size));
  return [
    area(corners, bar.fill, { tone: 'ink', width: LINE.usual }),
    textAbout([start, middle], atLeft, size, { anchor: 'start', tone: 'ink' }),
    textAbout([end, middle], atRight, size, { anchor: 'end', tone: 'ink' }),
    ...(other === ''
      ? []
      : [
          whole(
            other,
            [(left + right) / 2, middle],
            end - start - 2 * (names + GAP),
            size,
            'middle',
          ),
        ]),
  ];
}

/** Both whole and of one size; one over the other where they would be small and there is `spare` height. */
function endWords(
  [atLeft, atRight]: LabelBar['words'],
  { left, right, bottom }: Stand,
  spare: number,
  scale: number,
): { readonly texts: readonly TextShape[]; readonly top: number } {
  const [size, row] = [WORDS.size * scale, WORDS.row * scale];
  const fit = (room: number): number => size * Math.min(1, (right - left) / room);
  const beside = fit(roomOf(atLeft, size) + GAP + roomOf(atRight, size));
  const isStacked = beside < size && spare >= row;
  const fits = isStacked ? fit(Math.max(roomOf(atLeft, size), roomOf(atRight, size))) : beside;
  const look = { tone: 'ink' } as const;
  const last = bottom - row / 2;
  const texts = [
    textAbout([left, isStacked ? last - row : last], atLeft, fits, { ...look, anchor: 'start' }),
    textAbout([right, last], atRight, fits, { ...look, anchor: 'end' }),
  ];
  return {
    texts: texts.filter(({ text }) => text !== ''),
    top: bottom - (isStacked ? 2 : 1) * row,
  };
}
