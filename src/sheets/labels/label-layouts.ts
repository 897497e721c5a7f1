/** Where labels lie on the paper: plain paper to be cut, and sheets of labels by their plain measures. */
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import type { Shop } from '../../planning/shop.ts';
import type { PrintDescription } from '../grammar/description.ts';
import { POINTS_PER_MM, roomOnPaper } from '../grammar/page-size.ts';

/** In millimetres. */
export interface LabelLayout {
  readonly paper: PrintDescription['paper'];
  readonly across: number;
  readonly down: number;
  readonly width: number;
  readonly height: number;
  /** From the paper's edges to the first label. */
  readonly left: number;
  readonly top: number;
  /** From one label's edge to the next one's. */
  readonly stepAcross: number;
  readonly stepDown: number;
  /** Kept free within each label, at its sides and over and under it. */
  readonly padAcross: number;
  readonly padDown: number;
  /** Lines to cut along. */
  readonly hasLines: boolean;
}

const inches = (value: number): number => value * MM_PER_INCH;
const PAD = { padAcross: 2.5, padDown: 1.6 } as const;

/** Common measures of sheets of labels. Common practice [C]. */
const SHEETS: Readonly<Record<Exclude<Shop['labels'], 'none' | 'plain'>, LabelLayout>> = {
  'letter 3 x 10': {
    ...PAD,
    paper: 'letter',
    across: 3,
    down: 10,
    width: inches(2 + 5 / 8),
    height: inches(1),
    left: inches(3 / 16),
    top: inches(1 / 2),
    stepAcross: inches(2 + 3 / 4),
    stepDown: inches(1),
    hasLines: false,
  },
  'letter 2 x 7': {
    ...PAD,
    paper: 'letter',
    across: 2,
    down: 7,
    width: inches(4),
    height: inches(1 + 1 / 3),
    left: inches(5 / 32),
    top: inches(5 / 6),
    stepAcross: inches(4 + 3 / 16),
    stepDown: inches(1 + 1 / 3),
    hasLines: false,
  },
  'a4 3 x 8': {
    // These labels reach the paper's edges, where a printer can't.
    padAcross: 5,
    padDown: 4.5,
    paper: 'a4',
    across: 3,
    down: 8,
    width: 70,
    height: 37,
    left: 0,
    top: 0.5,
    stepAcross: 70,
    stepDown: 37,
    hasLines: false,
  },
  'a4 3 x 7': {
    ...PAD,
    paper: 'a4',
    across: 3,
    down: 7,
    width: 63.5,
    height: 38.1,
    left: 7.25,
    top: 15.15,
    stepAcross: 66,
    stepDown: 38.1,
    hasLines: false,
  },
};

/** On plain paper, midway between its sides. */
const PLAIN = { ...PAD, across: 3, down: 7, width: 62, height: 34, top: 16 } as const;

/** Above and below the labels, where something is said there. */
const LEAST_MARGIN_MM = 10;

/** @returns undefined where the shop wants none. */
export function layoutOf({
  labels,
  paper,
}: Pick<Shop, 'labels' | 'paper'>): LabelLayout | undefined {
  if (labels === 'none') return undefined;
  if (labels !== 'plain') return SHEETS[labels];
  const { across, width, height } = PLAIN;
  const left = (paperOf({ paper }).width - across * width) / 2;
  return { ...PLAIN, paper, left, stepAcross: width, stepDown: height, hasLines: true };
}

/** The paper's own size, in millimetres. */
export function paperOf({ paper }: Pick<LabelLayout, 'paper'>): { width: number; height: number } {
  const { width, height } = roomOnPaper(paper);
  return { width: width / POINTS_PER_MM, height: height / POINTS_PER_MM };
}

/** Whether a line has room on the paper over the labels, and one under them. */
export function hasMargins({ top, paper, down, stepDown, ...layout }: LabelLayout): boolean {
  const foot = paperOf({ paper }).height - top - (down - 1) * stepDown - layout.height;
  return Math.min(top, foot) >= LEAST_MARGIN_MM;
}
