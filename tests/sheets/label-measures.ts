/** Where labels lie on the paper, typed by hand from the measures of the sheets alone. Common practice [C]. */
import type { Shop } from '../../src/planning/shop.ts';
import type { Tables } from '../planning/make-job.ts';

export interface Place {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

type Paper = Shop['paper'];

interface Measures {
  readonly paper: (own: Paper) => readonly [width: number, height: number];
  /** In millimetres, row by row. */
  readonly places: (own: Paper) => Place[];
}

const LETTER = [215.9, 279.4] as const;
const A4 = [210, 297] as const;

function placesOf(
  lefts: readonly number[],
  tops: readonly number[],
  wide: number,
  high: number,
): Place[] {
  return tops.flatMap((top) =>
    lefts.map((left) => ({ left, top, right: left + wide, bottom: top + high })),
  );
}

/** So many numbers from the first on. */
function steps(first: number, step: number, many: number): number[] {
  return Array.from({ length: many }, (_, at) => first + at * step);
}

export const LABEL_MEASURES: Readonly<Record<Exclude<Shop['labels'], 'none'>, Measures>> = {
  plain: {
    paper: (own) => (own === 'a4' ? A4 : LETTER),
    // Three of 62 mm midway on the paper, seven of 34 mm from 16 mm on.
    places: (own) => placesOf(steps(own === 'a4' ? 12 : 14.95, 62, 3), steps(16, 34, 7), 62, 34),
  },
  'letter 3 x 10': {
    paper: () => LETTER,
    // 3/16 and 2 3/4 in; 1/2 and 1 in.
    places: () => placesOf([4.7625, 74.6125, 144.4625], steps(12.7, 25.4, 10), 66.675, 25.4),
  },
  'letter 2 x 7': {
    paper: () => LETTER,
    // 5/32 and 4 3/16 in; 5/6 and 1 1/3 in.
    places: () => placesOf([3.96875, 110.33125], steps(21.1667, 33.8667, 7), 101.6, 33.8667),
  },
  'a4 3 x 8': {
    paper: () => A4,
    places: () => placesOf([0, 70, 140], steps(0.5, 37, 8), 70, 37),
  },
  'a4 3 x 7': {
    paper: () => A4,
    places: () => placesOf([7.25, 73.25, 139.25], steps(15.15, 38.1, 7), 63.5, 38.1),
  },
};

export function withLabels(tables: Tables, labels: Shop['labels']): Tables {
  return { ...tables, shop: `${(tables.shop ?? 'Setting,Value').trim()}\nlabels,${labels}` };
}
