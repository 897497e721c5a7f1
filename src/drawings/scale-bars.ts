/** Bars of a known length, one for each kind of rule, to check by whether a page was printed true. */
import { MM_PER_INCH } from '../core/units/length-unit.ts';
import { area } from './compose.ts';
import type { Point, Shape } from './drawing.ts';
import { lineHeight, textAbout, textWidth } from './lettering.ts';

interface Bar {
  readonly length: number;
  readonly text: string;
  /** Between its ticks. */
  readonly step: number;
}

/** In millimetres of paper. */
const BARS: readonly Bar[] = [
  { length: 100, text: '100 mm', step: 10 },
  { length: 4 * MM_PER_INCH, text: '4 in', step: MM_PER_INCH / 2 },
];
const THICK = 0.6;
const TICK = { thick: 0.2, high: 1.4, endHigh: 2.6 } as const;
const LETTERS = 3.2;
const GAP = 1.5;
const ROW = 6.5;
const WORDS = [
  'Measure both bars before you trust the page:',
  'print at 100 %, not fitted to the page.',
];

/** Millimetres of paper that they take. */
export const SCALE_BARS_WIDTH_MM =
  Math.max(...BARS.map(({ length, text }) => length + textWidth(text, LETTERS))) + GAP;

/**
 * The bars, one under the other, and under them what to do with them.
 *
 * @param middle Of the paper that they take.
 * @param top Of their longest ticks.
 */
export function scaleBars(middle: number, top: number): Shape[] {
  const left = middle - SCALE_BARS_WIDTH_MM / 2;
  const bars = BARS.flatMap((bar, row) => drawBar(bar, left, top + TICK.endHigh + row * ROW));
  const under = top + TICK.endHigh + ROW * (BARS.length - 1) + 1.3 * LETTERS;
  const words = WORDS.map((text, row) => {
    const at: Point = [middle, under + row * lineHeight(LETTERS)];
    return textAbout(at, text, LETTERS, { anchor: 'middle', tone: 'ink' });
  });
  return [...bars, ...words];
}

/** Filled to its very ends, as a line with round ends would be longer than it says. */
function drawBar({ length, text, step }: Bar, left: number, y: number): Shape[] {
  const count = Math.round(length / step);
  const ticks = Array.from({ length: count + 1 }, (_, index) => {
    const isEnd = index === 0 || index === count;
    // Ticks at the ends lie within the bar's length.
    const middle = index * step;
    const from = isEnd && index > 0 ? length - TICK.thick : middle - (isEnd ? 0 : TICK.thick / 2);
    const high = isEnd ? TICK.endHigh : TICK.high;
    return area(box(left + from, y - high, TICK.thick, high), 'ink');
  });
  const said = textAbout([left + length + GAP, y - TICK.high / 2], text, LETTERS, {
    anchor: 'start',
    tone: 'ink',
  });
  return [area(box(left, y, length, THICK), 'ink'), ...ticks, said];
}

function box(left: number, top: number, wide: number, high: number): Point[] {
  return [
    [left, top],
    [left + wide, top],
    [left + wide, top + high],
    [left, top + high],
  ];
}
