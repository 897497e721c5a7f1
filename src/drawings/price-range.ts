/** Where a price may end, as bars, and what moves it, as bars from low to high. For grey print: told by place and dash. */
import { area, arrowHead, compose, line, LINE } from './compose.ts';
import type { Drawing, Shape, TextShape } from './drawing.ts';
import { lineHeight, soundWidth, textAbout, textWidth } from './lettering.ts';
import { clipTo } from './stick-bar-labels.ts';

/** What both drawings go by, in money. */
interface PriceView {
  /** The price as it stands. */
  readonly likely: number;
  readonly say: (money: number) => string;
  /** Of the drawing, in millimetres. */
  readonly width: number;
}

export interface PriceBarsView extends PriceView {
  /** Below which a tenth, a half and nine tenths of the prices drawn lie. */
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  /** Side by side, ascending; at least one. */
  readonly bars: readonly { readonly from: number; readonly to: number; readonly draws: number }[];
}

export interface PriceDriversView extends PriceView {
  /** The price with one at its low and at its high, all others likely; what moves it most first. */
  readonly drivers: readonly {
    readonly name: string;
    readonly atLow: number;
    readonly atHigh: number;
  }[];
}

/** In millimetres. */
const SIZE = 3.2;
const ROW = lineHeight(SIZE);
const MARGIN = 1;
const GAP = 1;
const TALLEST = 36;
const ARROW = 4;
const DRIVER = { row: 6.2, high: 4.2 } as const;
const NAME_SHARE = 0.28;
/** More than these are small beside the first; the table under them has all. */
const MOST_DRIVERS = 12;
const DASHED = [1.2, 0.8] as const;

/**
 * Draws how many of the prices drawn lie where: the band in the darker bars, its ends dashed, the middle in
 * one line, the price as it stands in a strong one from below.
 *
 * @returns Shapes in millimetres, with a text alternative that says the numbers.
 */
export function drawPriceBars(view: PriceBarsView): Drawing {
  const { bars, low, middle, high, likely, say } = view;
  const width = soundWidth(view.width);
  const [first, last] = [bars[0], bars.at(-1)];
  if (first === undefined || last === undefined) throw new RangeError('No bar has a price.');
  const texts = { low: `10 %: ${say(low)}`, high: `90 %: ${say(high)}` };
  const left = MARGIN + textWidth(texts.low, SIZE) + GAP;
  const right = width - MARGIN - textWidth(texts.high, SIZE) - GAP;
  const [from, to] = [Math.min(first.from, likely), Math.max(last.to, likely)];
  const place = (price: number): number => left + ((price - from) / (to - from)) * (right - left);
  const most = Math.max(...bars.map(({ draws }) => draws));
  const top = 2 * ROW;
  const base = top + GAP + TALLEST;
  const upright = (price: number, above: number, weight: number, dash?: readonly number[]): Shape =>
    line(
      [
        [place(price), above],
        [place(price), base],
      ],
      'ink',
      weight,
      dash,
    );
  const shapes: Shape[] = [
    ...bars
      .filter(({ draws }) => draws > 0)
      .map((bar) => {
        const [start, end] = [place(bar.from), place(bar.to)];
        const high_ = base - (bar.draws / most) * TALLEST;
        const half = (bar.from + bar.to) / 2;
        const isInBand = half >= low && half <= high;
        return area(
          [
            [start, base],
            [start, high_],
            [end, high_],
            [end, base],
          ],
          isInBand ? 'rail' : 'removed',
          { tone: 'ink', width: LINE.thin },
        );
      }),
    line(
      [
        [left, base],
        [right, base],
      ],
      'ink',
      LINE.usual,
    ),
    upright(middle, ROW, LINE.usual),
    upright(low, 1.5 * ROW, LINE.usual, DASHED),
    upright(high, 1.5 * ROW, LINE.usual, DASHED),
    upright(likely, top + GAP, LINE.strong),
    within(width, place(middle), ROW / 2, `50 %: ${say(middle)}`),
    textAbout([place(low) - GAP, 1.5 * ROW], texts.low, SIZE, { anchor: 'end', tone: 'ink' }),
    textAbout([place(high) + GAP, 1.5 * ROW], texts.high, SIZE, { anchor: 'start', tone: 'ink' }),
    ...marked(width, place(likely), base, say(likely)),
    textAbout([left, base + ARROW + 1.5 * ROW], say(from), SIZE, {
      anchor: 'start',
      tone: 'faint',
    }),
    textAbout([right, base + ARROW + 1.5 * ROW], say(to), SIZE, { anchor: 'end', tone: 'faint' }),
  ];
  const all = bars.reduce((sum, { draws }) => sum + draws, 0);
  const tallest = bars.find(({ draws }) => draws === most) ?? first;
  const title = `Where the price may end: ${say(low)} to ${say(high)} in eight jobs of ten`;
  const alt = `${all} prices drawn by chance, as bars from ${say(first.from)} to ${say(last.to)}, each ${say(first.to - first.from)} wide. The tallest, from ${say(tallest.from)} to ${say(tallest.to)}, has ${most} of them. A tenth lies below ${say(low)}, half below ${say(middle)}, nine tenths below ${say(high)}. The price as planned is ${say(likely)}.`;
  return compose({ title, alt, width }, shapes);
}

/**
 * Draws from which price to which each driver moves it by itself, the one that moves it most on top, with the
 * price as it stands across all.
 *
 * @returns Shapes in millimetres, with a text alternative that says the numbers.
 */
export function drawPriceDrivers(view: PriceDriversView): Drawing {
  const { likely, say } = view;
  const width = soundWidth(view.width);
  const drivers = view.drivers.slice(0, MOST_DRIVERS);
  const ends = drivers.flatMap(({ atLow, atHigh }) => [atLow, atHigh]);
  const [from, to] = [Math.min(likely, ...ends), Math.max(likely, ...ends)];
  const names = width * NAME_SHARE;
  const room = Math.max(...ends.map((price) => textWidth(say(price), SIZE))) + GAP;
  const [left, right] = [names + 2 * GAP + room, width - MARGIN - room];
  const place = (price: number): number =>
    from === to ? (left + right) / 2 : left + ((price - from) / (to - from)) * (right - left);
  const base = drivers.length * DRIVER.row;
  const shapes: Shape[] = drivers.flatMap(({ name, atLow, atHigh }, at) => {
    const y = (at + 0.5) * DRIVER.row;
    const [start, middle, end] = [place(atLow), place(likely), place(atHigh)];
    const bar = (one: number, other: number, tone: 'removed' | 'rail'): Shape =>
      area(
        [
          [one, y - DRIVER.high / 2],
          [other, y - DRIVER.high / 2],
          [other, y + DRIVER.high / 2],
          [one, y + DRIVER.high / 2],
        ],
        tone,
        { tone: 'ink', width: LINE.thin },
      );
    return [
      textAbout([MARGIN, y], clipTo(name, names - MARGIN, SIZE), SIZE, {
        anchor: 'start',
        tone: 'ink',
      }),
      bar(start, middle, 'removed'),
      bar(middle, end, 'rail'),
      textAbout([start - GAP, y], say(atLow), SIZE, { anchor: 'end', tone: 'ink' }),
      textAbout([end + GAP, y], say(atHigh), SIZE, { anchor: 'start', tone: 'ink' }),
    ];
  });
  const across = line(
    [
      [place(likely), 0],
      [place(likely), base],
    ],
    'ink',
    LINE.strong,
  );
  const more = view.drivers.length - drivers.length;
  const said = drivers.map(({ name, atLow, atHigh }) => `${name}, ${say(atLow)} to ${say(atHigh)}`);
  const title = 'What moves the price, each by itself';
  const alt = `What moves the price of ${say(likely)}, each by itself and all others likely, the most first: ${said.join('; ')}${more === 0 ? '' : `; and ${more} more that move it less`}.`;
  return compose({ title, alt, width }, [
    ...shapes,
    across,
    ...marked(width, place(likely), base, say(likely)),
  ]);
}

/** The price as it stands, from below. */
function marked(width: number, x: number, base: number, said: string): Shape[] {
  return [
    line(
      [
        [x, base + ARROW],
        [x, base + 0.5],
      ],
      'ink',
      LINE.strong,
    ),
    arrowHead([x, base + 0.3], -Math.PI / 2, 'ink', 2.2),
    within(width, x, base + ARROW + ROW / 2, `as planned: ${said}`, true),
  ];
}

/** A text about a place, moved so that it stays on the drawing. */
function within(width: number, x: number, y: number, text: string, bold = false): TextShape {
  const half = textWidth(text, SIZE) / 2;
  const at = Math.min(width - MARGIN - half, Math.max(MARGIN + half, x));
  return textAbout([at, y], text, SIZE, {
    anchor: 'middle',
    tone: 'ink',
    ...(bold ? { bold } : {}),
  });
}
