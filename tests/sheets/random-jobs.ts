/** Small jobs by chance, the same for the same seed: every setting that a formula of the sheets goes by varies. */
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { planOf, readTables, type Tables } from '../planning/make-job.ts';
import { seededNumbers } from '../seeded-numbers.ts';
import { HOSTILE_NAMES } from './sheet-jobs.ts';

const ROOMS = ['Hall', 'HALL', 'Den', 'Stair', 'Kitchen', 'Loft'];
const BLANK_WIDTHS = [5.5, 4.75, 6, 5];
/** Coves that a blade of 10 in cuts, in inches: width, depth, off-center. */
const COVES = [
  [3, 0.5, 0],
  [2.5, 0.375, 0.25],
  [3, 0.625, 0.5],
  [2, 0.3125, 0],
  [1.5, 0.375, 0.125],
  [2.75, 0.625, 0.25],
] as const;
const ENDS = ['square', 'inside miter', 'outside miter', 'cope', 'return'];

/** Draws of one job. */
interface Chance {
  readonly below: (most: number) => number;
  readonly pick: <Item>(items: readonly Item[]) => Item;
  readonly happens: (share: number) => boolean;
}

function chanceOf(seed: number): Chance {
  const next = seededNumbers(seed * 7919 + 5);
  next();
  const below = (most: number): number => Math.floor(next() * most);
  return {
    below,
    pick: (items) => items[below(items.length)]!,
    happens: (share) => next() < share,
  };
}

const quote = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/**
 * One job of 1 to 25 runs: inches or millimetres, bought moldings and coves, some of them crowns, done
 * pieces, openings, boards to rip and sticks, a rack that runs out, runs longer than a stick.
 */
export function randomTables(seed: number): Tables {
  const tables = tablesWithoutOptions(seed);
  if (seed % 4 !== 1) return tables;
  const all = ['A,,Cove 1,,', 'B,,Casing,Cove 1,', 'C,,Cove 2,Casing,yes', 'D,Den,,,yes'];
  // Those that pick something, and leave something.
  const rows = all.filter((_, at) => (seed >> (at + 2)) % 2 === 0);
  const options = ['Option,Room,Profile,Instead,Taken', ...rows].join('\n');
  return readTables({ ...tables, options }).job === undefined ? tables : { ...tables, options };
}

function tablesWithoutOptions(seed: number): Tables {
  const chance = chanceOf(seed);
  const { below, pick, happens } = chance;
  const isMetric = happens(0.35);
  const size = (inches: number): string =>
    isMetric ? String(Math.round(inches * 25.4)) : String(Math.round(inches * 16) / 16);
  const coves = Array.from({ length: 1 + below(3) }, (_, at) => `Cove ${at + 1}`);
  const bought = [happens(0.3) ? pick(HOSTILE_NAMES.slice(0, 8)) : 'Base', 'Casing'];
  const rooms = [pick(HOSTILE_NAMES), ...ROOMS].slice(happens(0.5) ? 0 : 1, 2 + below(5));
  const shop = shopOf(chance, isMetric);
  // By a chance of its own, so that all else of a seed's job stays as it is.
  const unsure = chanceOf(seed + 100_000);
  return {
    shop: [
      shop,
      ...unsureOf(unsure, shop),
      // By the seed itself: no draw that follows is another for it.
      `price basis,${seed % 3 === 1 ? 'allowance' : 'plan'},`,
      `allowance of,${seed % 4 === 1 ? 'bought' : 'net'},`,
    ].join('\n'),
    profiles: [
      'Profile,Make,Cove width,Cove depth,Off-center,Blank width,Blank thickness,Spring,Species,Class,Offcut allowance %',
      ...coves.map((name) => {
        const [width, depth, offCenter] = pick(COVES);
        const isCrown = happens(0.25);
        const tail = [
          isCrown ? pick([38, 40, 45, 52]) : '',
          'Poplar',
          pick(['5/4', '']),
          pick(['', 0, 12.5]),
        ];
        const make = isCrown ? 'crown cove' : 'cove';
        return [
          name,
          make,
          size(width),
          size(depth),
          size(offCenter),
          size(pick(BLANK_WIDTHS)),
          size(1),
          ...tail,
        ].join(',');
      }),
      ...bought.map((name, at) =>
        [
          quote(name),
          'buy',
          '',
          '',
          '',
          ...(happens(0.8) || at === 1 ? [size(3.5 + at), size(0.6875)] : ['', size(0.6875)]),
          '',
          'Pine',
          '',
          '',
        ].join(','),
      ),
    ].join('\n'),
    runs: runsOf(chance, rooms, [...coves, ...bought], size),
    openings: [
      'Room,Wall,Kind,Width,Height,Sides cased,Casing,Quantity',
      ...(happens(0.5)
        ? [
            `${quote(rooms[0]!)},,${pick(['door', 'window', 'cased opening'])},${size(30 + below(8))},${size(60 + below(20))},${1 + below(2)},Casing,${1 + below(2)}`,
          ]
        : []),
    ].join('\n'),
    stock: stockOf(chance, bought, size),
    work: [workOf(chance), ...unsureWork(unsure, isMetric)].join('\n'),
  };
}

function shopOf({ below, pick, happens }: Chance, isMetric: boolean): string {
  const rates = happens(0.7)
    ? [
        `hourly rate,${(below(9000) / 100).toFixed(2)},`,
        `overhead %,${below(400) / 10},`,
        `margin %,${below(400) / 10},`,
        `tax %,${pick(['0', '8.875', '19'])},`,
        `feed,${pick(['4', '6.5', '9'])},`,
        `handling per pass,${below(60)},`,
        `set-up minutes,${below(90)},`,
        `smoothing minutes per square foot,${below(200) / 10},`,
        `crosscut seconds,${below(90)},`,
      ]
    : [];
  const prices = happens(0.6)
    ? [
        `contingency %,${below(100) / 10},`,
        `material markup %,${below(400) / 10},`,
        `labor markup %,${below(300) / 10},`,
        `minimum charge,${pick(['0', '150', '4000.50'])},`,
        `delivery,${pick(['0', '65', '12.345'])},`,
        `price rounding,${pick(['cent', 'dollar', '5'])},`,
        `tax on,${pick(['all', 'material', 'none'])},`,
      ]
    : [];
  return [
    'Setting,Value,Unit',
    `unit,${isMetric ? 'mm' : 'in'},`,
    // The coves below are drawn for it.
    'blade diameter,10,in',
    'kerf,1/8,in',
    `paper,${pick(['letter', 'a4'])},`,
    `currency,${pick(['$', '€', 'kr'])},`,
    `offcut credit %,${pick([0, 0, 25, 60])},`,
    `set-up spare,${pick(['0', '36'])},in`,
    `length precision,${isMetric ? pick(['1,mm', '0.5,mm']) : pick(['1/16,in', '1/8,in', '0.1,in'])}`,
    `end allowance,${pick(['0', '1/16'])},in`,
    ...rates,
    ...prices,
  ].join('\n');
}

/** Rows of Work: usual kinds, own ones, for all, a make or a molding, ours or not; none contradicts Shop. */
function workOf({ below, pick, happens }: Chance): string {
  const minutes = (): string => (below(900) / 100).toFixed(2);
  const rows = [
    `pull and check lumber,,${minutes()},,,${pick(['yes', 'no', ''])}`,
    `joint and plane,,,,cove,`,
    `rip along,foot a rip,${minutes()},,,`,
    `back bevel,,${minutes()},,,`,
    `smooth,,${minutes()},,Cove 1,${pick(['yes', 'no'])}`,
    `set up a cove,,,,,${pick(['yes', 'no'])}`,
    `miter,,,,,`,
    `compound miter,,,,,`,
    `cope,,${minutes()},,Casing,`,
    `return,,,,,`,
    `prime or finish,,,${minutes()},Cove 1,`,
    `prime or finish,,1.25,,Casing,`,
    `label and bundle,,,,,`,
    `load and deliver,,,,,`,
    `site visit,room,${minutes()},,,`,
    `hang doors,opening,,12.34,,`,
    `install,,${minutes()},,,`,
    `install,,,${minutes()},buy,`,
    `install at height,,1.3,,crown cove,`,
  ];
  const some = happens(0.6) ? rows.filter(() => happens(0.5)) : [];
  const all = ['Work,Per,Minutes,Money,For,Ours', ...some].map((row) => `${row},,`);
  return all.join('\n').replace('Ours,,', 'Ours,Low,High');
}

/** Settings of the price's range, some of them, none out of order. */
function unsureOf({ below, happens }: Chance, shop: string): string[] {
  const rate = Number(/^hourly rate,([\d.]+)/mu.exec(shop)?.[1] ?? 0);
  const rows = [
    `whole job low %,${-below(30)},`,
    `whole job high %,${below(60)},`,
    `lumber price low %,-${below(200) / 10},`,
    `lumber price high %,${below(400) / 10},`,
    `waste high %,${below(40)},`,
    ...(rate > 0 ? [`hourly rate low,${rate / 2},`, `hourly rate high,${rate + below(40)},`] : []),
  ];
  return happens(0.5) ? rows.filter(() => happens(0.5)) : [];
}

/** Rows with a Low or a High, by the foot or by the metre. */
function unsureWork({ below, happens }: Chance, isMetric: boolean): string[] {
  const rows = [
    `sand by hand,${isMetric ? 'metre' : 'foot'},${2 + below(3)},,,,1,${5 + below(9)}`,
    `fill nail holes,${isMetric ? 'square metre a coat' : 'square foot a coat'},3,0.5,Casing,yes,,${3 + below(9)}`,
    `hang drop cloths,room,20,,,,${below(20)},`,
  ];
  return happens(0.5) ? rows.filter(() => happens(0.6)) : [];
}

function runsOf(
  { below, pick, happens }: Chance,
  rooms: readonly string[],
  profiles: readonly string[],
  size: (inches: number) => string,
): string {
  const rows = Array.from({ length: 1 + below(25) }, (_, at) => {
    const inches = happens(0.06) ? 200 + below(60) : 18 + below(130) + below(16) / 16;
    const matched = happens(0.1) ? `pair ${at}` : '';
    const words = [
      quote(pick(rooms)),
      quote(`wall ${happens(0.2) ? pick(HOSTILE_NAMES.slice(0, 14)) : at + 1}`),
      quote(pick(profiles)),
      size(inches),
      1 + below(2),
      pick(ENDS),
      pick(ENDS),
      inches < 150 && happens(0.15) ? 'yes' : '',
      matched !== '' && inches < 40 ? matched : '',
      at > 0 && happens(0.12) ? 'yes' : '',
      happens(0.1) ? quote(pick(HOSTILE_NAMES)) : '',
    ];
    return words.join(',');
  });
  return [
    'Room,Run,Profile,Length,Quantity,Left end,Right end,One piece,Match,Done,Note',
    ...rows,
  ].join('\n');
}

function stockOf(
  { below, pick, happens }: Chance,
  bought: readonly string[],
  size: (inches: number) => string,
): string {
  const price = (): string => (1 + below(900) / 100).toFixed(2);
  const row = (
    name: string,
    kind: string,
    width: string,
    feet: number,
    per: string,
    have: number,
    buy: string,
  ): string =>
    [
      quote(name),
      kind,
      kind === 'board' ? '5/4' : '',
      width,
      size(feet * 12),
      price(),
      per,
      have,
      buy,
    ].join(',');
  return [
    'For,Kind,Class,Width,Length,Price,Per,Have,Buy',
    ...bought.flatMap((name) => [
      row(name, 'stick', '', 16, 'foot', below(3), 'yes'),
      ...(happens(0.5)
        ? [
            row(
              name,
              'stick',
              '',
              pick([8, 10, 12]),
              'piece',
              1 + below(3),
              pick(['no', 'yes', '2']),
            ),
          ]
        : []),
    ]),
    row('Poplar', 'board', size(pick([6.25, 12.5])), 16, 'board foot', below(2), 'yes'),
    ...(happens(0.6)
      ? [row('Poplar', 'board', size(13), pick([10, 14]), 'board foot', 1 + below(2), 'no')]
      : []),
  ].join('\n');
}

/** Plans of the random jobs of the seeds 1 to `count`, by a name for each, searched only a little. */
export async function randomPlans(count: number): Promise<ReadonlyMap<string, JobPlan>> {
  const plans = new Map<string, JobPlan>();
  for (let seed = 1; seed <= count; seed++) {
    plans.set(`random${seed}`, await planOf(randomTables(seed), { budget: { steps: 20 } }));
  }
  return plans;
}
