import { beforeAll, describe, expect, test } from '@jest/globals';

import { edgesAt } from '../../src/core/cove/cut.ts';
import { paintPng } from '../../src/hosts/file/paint-png.ts';
import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { checkDescription } from '../../src/sheets/grammar/check/check-description.ts';
import type { SheetDescription } from '../../src/sheets/grammar/description.ts';
import { outlineFiles } from '../../src/exports/outline-files.ts';
import { describeOutlines } from '../../src/sheets/outlines/outlines-sheet.ts';
import { columnPoints, roomOnPage } from '../../src/sheets/grammar/page-size.ts';
import { MANUAL_CAUTION, TRIAL_CAUTION } from '../../src/sheets/words/standing-cautions.ts';
import { darkStretches, levelBars } from '../hosts/page-marks.ts';
import {
  printingIsHere,
  printingMustRun,
  rasterPages,
  toPdf,
  type PageRaster,
} from '../hosts/printed-pages.ts';
import { count } from '../deep.ts';
import { planOf, type Tables } from '../planning/make-job.ts';
import { describePrintedLabels, labelsMissed, PRINTED_LABELS } from './printed-labels.ts';
import { DEMO, JOBS, textsOf } from './sheet-jobs.ts';

const POINTS_PER_MM = 72 / 25.4;
const DPI = 300;

const HEADS = 'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Off-center\n';
/** Coves by their rows of Profiles, each with sticks of its own, as thick as it needs. */
const coves = (profiles: string, paper = 'letter'): Tables => {
  const names = profiles.split('\n').map((row) => row.split(',')[0]!);
  return {
    runs: ['Room,Profile,Length', ...names.map((name) => `Hall,${name},90`)].join('\n'),
    profiles: HEADS + profiles,
    shop: `Setting,Value\nhourly rate,60\npaper,${paper}`,
    stock: [
      'For,Kind,Class,Width,Length,Price,Per,Have,Buy',
      ...names.map((name) => `${name},stick,,,12',5,foot,,`),
    ].join('\n'),
  };
};
/** A crown up 4 in 12 whose sides differ, and a rail that stands and is even. */
const SLOPED: Tables = {
  ...coves('Crown,,\nRail,,'),
  profiles:
    'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Off-center,Near flat,Spring,Slope\n' +
    'Crown,crown cove,4 1/4,1,Poplar,2 3/4,5/8,1/4,3/4,40,4 in 12\nRail,cove,2 1/2,3/4,Poplar,1 1/2,3/8,0,,,18.4',
};
const HUGE = 'Huge,cove,22,1 3/4,Poplar,6,1,3/8';

const JOBS_HERE: Readonly<Record<string, Tables>> = {
  demo: DEMO,
  'millimetres on A4': JOBS['millimetres']!,
  wider: coves('Seven,cove,7 3/4,1 3/4,Poplar,5,1,3/8\nSmall,cove,2,1,Poplar,1,3/8,0'),
  'in parts': coves(HUGE),
  sloped: SLOPED,
  'in parts on A4': coves(HUGE, 'a4'),
  thick: coves('Thick,cove,6,5 1/2,Poplar,5,3/4,3/8'),
  'a long name': coves(`${'name '.repeat(60).trim()},cove,7 3/4,2 1/2,Poplar,5,1,3/8`, 'a4'),
};

/** All of them in a deep run, else one on each paper and one in parts. */
const PRINTED =
  count(1, 0) === 1 ? Object.keys(JOBS_HERE) : ['demo', 'millimetres on A4', 'in parts', 'sloped'];

async function outlinesOf(tables: Tables): Promise<{ sheet: SheetDescription; plan: JobPlan }> {
  const plan = await planOf(tables);
  return { sheet: describeOutlines(plan)!, plan };
}

/** First and last row, from 0, of each page. */
function pagesOf({ rows, print }: SheetDescription): { first: number; last: number }[] {
  const ends = [...(print.breaksAfter ?? []), rows.length];
  return ends.map((end, index) => ({ first: ends[index - 1] ?? 0, last: end - 1 }));
}

describe.each(Object.keys(JOBS_HERE))('The outlines of “%s”', (name) => {
  test('have a page each, printed at 100 %, that holds words and drawing', async () => {
    const { sheet } = await outlinesOf(JOBS_HERE[name]!);
    expect(checkDescription({ version: 1, title: name, sheets: [sheet] })).toEqual([]);
    expect(sheet.print.fitWidth).toBe(false);
    const room = roomOnPage(sheet.print.paper, sheet.print.orientation);
    const wide = sheet.columns.reduce((all, { width }) => all + columnPoints(width), 0);
    expect(wide).toBeLessThan(room.width);
    const pages = pagesOf(sheet);
    expect(sheet.drawings).toHaveLength(pages.length);
    pages.forEach(({ first, last }, index) => {
      const { at, drawing } = sheet.drawings![index]!;
      const rows = sheet.rows.slice(first, last + 1);
      const high = rows.reduce((all, { height = NaN }) => all + height, 0);
      expect(high).toBeLessThanOrEqual(room.height);
      expect(drawing.width * POINTS_PER_MM).toBeLessThanOrEqual(wide);
      const start = Number(at.slice(1)) - 1;
      expect(start).toBeGreaterThan(first);
      const beside = sheet.rows.slice(start, last + 1);
      expect(beside.every(({ cells }) => cells.length === 0)).toBe(true);
      const left = beside.reduce((all, { height = NaN }) => all + height, 0);
      expect(left).toBeGreaterThanOrEqual(drawing.height * POINTS_PER_MM);
      const texts = rows.flatMap(({ cells }) => cells.map((cell) => String(cell?.value)));
      expect(texts).toContain(MANUAL_CAUTION);
      const said = texts.join(' ');
      const isRaked = said.includes('Raked profile');
      expect(said.includes(TRIAL_CAUTION)).toBe(!isRaked);
      expect(said).toContain(isRaked ? 'try the miter of both in scrap' : 'enters the blade last');
    });
  });
});

describe('The sheet Outlines', () => {
  test('lies across where fewer pages do, and upright else', async () => {
    const of = async (job: string) => (await outlinesOf(JOBS_HERE[job]!)).sheet;
    expect((await of('demo')).print.orientation).toBe('portrait');
    expect((await of('wider')).print.orientation).toBe('landscape');
    expect((await of('in parts')).print.orientation).toBe('landscape');
    // Six inches of wood leave no room for the words on a page that lies across.
    expect((await of('thick')).print.orientation).toBe('portrait');
  });

  test('comes in parts where the board is wider than the paper, and says how they are joined', async () => {
    const { sheet } = await outlinesOf(JOBS_HERE['in parts']!);
    // 22 in is 558.8 mm; a part shows less than 254 mm, of which 20 twice.
    const names = sheet.drawings!.map((one) => one.name);
    expect(names).toEqual(['Huge outline part 1', 'Huge outline part 2', 'Huge outline part 3']);
    const texts = textsOf(sheet);
    for (const part of [1, 2, 3]) {
      expect(texts.filter((text) => text.includes(`part ${part} of 3`))).toHaveLength(1);
    }
    expect(texts.filter((text) => text.includes('wider than the paper'))).toHaveLength(3);
  });

  test('has raked profiles both ways, and for each side where the sides differ', async () => {
    const { sheet, plan } = await outlinesOf(SLOPED);
    expect(sheet.drawings!.map(({ name }) => name)).toEqual([
      'Crown outline',
      'Crown raked rising, near edge down',
      'Crown raked rising, far edge down',
      'Crown raked falling, near edge down',
      'Crown raked falling, far edge down',
      'Rail outline',
      'Rail raked rising',
      'Rail raked falling',
    ]);
    const files = outlineFiles(plan, ['Mind']).map(({ path }) => path);
    expect(files).toHaveLength(8);
    expect(files[1]).toBe('outlines/Crown-raked-rising-near-edge-down.dxf');
    expect(files[7]).toBe('outlines/Rail-raked-falling.dxf');
  });

  test('has no raked profile of an edge that its back bevels would break through', async () => {
    // Spring 30°, near flat 1/4: with that edge on the wall too little wood is left, as a caution says.
    const { plan, sheet } = await outlinesOf({
      ...SLOPED,
      profiles: SLOPED.profiles!.replace('1/4,3/4,40', '1/4,1/4,30'),
    });
    const oneWay = plan.cautions.find(({ code }) => code === 'crown.bevel-one-way')!;
    const names = sheet.drawings!.map(({ name }) => name!).filter((name) => /Crown r/u.test(name));
    const { onWall } = oneWay.details as { onWall: string };
    expect(names).toEqual(
      ['rising', 'falling'].map((way) => `Crown raked ${way}, ${onWall} edge down`),
    );
  });

  test('has none that falls so steeply that its face would lie on its back', async () => {
    const steep = SLOPED.profiles!.replace('4 in 12', '12/12').replace('18.4', '');
    const { sheet } = await outlinesOf({ ...SLOPED, profiles: steep.replace(',40,', ',46,') });
    const names = sheet.drawings!.map(({ name }) => name);
    expect(names.filter((name) => /rising/u.test(name!))).toHaveLength(2);
    expect(names.filter((name) => /falling/u.test(name!))).toEqual([]);
  });

  test('says so where a blank is thicker than a page is high', async () => {
    const { sheet } = await outlinesOf(coves('Post,cove,9,9,Poplar,3,3/4,0'));
    expect(sheet.drawings).toBeUndefined();
    expect(textsOf(sheet).filter((text) => text.includes('thicker than the page'))).toHaveLength(1);
  });

  test('is not there where no cove is cut', async () => {
    expect(describeOutlines(await planOf({}))).toBeUndefined();
  });
});

const here = printingIsHere();
if (!printingMustRun()) console.info('Skipped: LibreOffice or pdftoppm is not installed here.');

(printingMustRun() ? describe : describe.skip)('On paper, printed at 100 %', () => {
  const jobs: Record<string, { sheet: SheetDescription; plan: JobPlan }> = {};
  let labels: Readonly<Record<string, SheetDescription>> = {};
  let printed: Readonly<Record<string, Uint8Array>> = {};
  let slopedPages: Promise<PageRaster[]> | undefined;
  /** The sloped job's are looked at twice, and kept. */
  const pagesOnPaper = (key: string): Promise<PageRaster[]> =>
    key === 'sloped'
      ? (slopedPages ??= rasterPages(printed[key]!, DPI))
      : rasterPages(printed[key]!, DPI);

  beforeAll(async () => {
    expect(here).toBe(true);
    for (const name of PRINTED) {
      jobs[name.replaceAll(' ', '-')] = await outlinesOf(JOBS_HERE[name]!);
    }
    labels = await describePrintedLabels();
    const sheets = Object.entries(jobs).map(([key, { sheet }]) => [key, sheet] as const);
    const files: Record<string, Uint8Array> = {};
    for (const [key, sheet] of [...sheets, ...Object.entries(labels)]) {
      const described = { version: 1 as const, title: key, sheets: [sheet] };
      files[key] = await writeWorkbook(described, { paint: paintPng });
    }
    printed = await toPdf(files);
  }, 240_000);

  test('outlines are true: both bars, and the cove just over its face, to half a percent', async () => {
    for (const [key, { sheet, plan }] of Object.entries(jobs)) {
      const pages = await pagesOnPaper(key);
      expect([key, pages.length]).toEqual([key, sheet.drawings!.length]);
      const made = plan.profiles.filter(({ setUp }) => setUp !== undefined);
      pages.forEach((page, index) => {
        const bars = levelBars(page, 1000).filter(({ thick }) => thick >= 5);
        expect(bars).toHaveLength(2);
        expect(Math.abs((bars[0]!.long / DPI) * 25.4 - 100)).toBeLessThan(0.5);
        expect(Math.abs(bars[1]!.long / DPI - 4)).toBeLessThan(0.02);
        // A cove in parts has no page with all of it; raked profiles are measured below.
        if (key === 'in-parts' || key === 'in-parts-on-A4') return;
        const name = sheet.drawings![index]!.name!;
        const cove = made.find(({ profile }) => name === `${profile.name} outline`);
        if (cove === undefined) {
          expect(name).toContain('raked');
          return;
        }
        const { blade, setting } = cove.setUp!;
        const [inches, level] = coveJustOverFace(page, bars[0]!.top);
        const edges = edgesAt(blade, setting, level);
        expect(Math.abs(inches / (edges.far - edges.near) - 1)).toBeLessThan(0.005);
      });
    }
  }, 120_000);

  test('raked profiles are as high on the wall as by hand, to half a percent', async () => {
    const { sheet } = jobs['sloped']!;
    const pages = await pagesOnPaper('sloped');
    // Along the wall a blank 1 in thick at spring 40° has 1 / sin 40°, a rail 2 1/2 its width; times cos of the slope.
    const onWall = {
      Crown: Math.cos(Math.atan(4 / 12)) / Math.sin((40 * Math.PI) / 180),
      Rail: 2.5 * Math.cos((18.4 * Math.PI) / 180),
    };
    sheet.drawings!.forEach(({ name = '' }, index) => {
      const [which, isRaked] = name.split(' ');
      if (isRaked !== 'raked') return;
      const page = pages[index]!;
      const bars = levelBars(page, 1000).filter(({ thick }) => thick >= 5);
      const { long, x, middle } = longestUpright(page, bars[0]!.top);
      const wanted = onWall[which as keyof typeof onWall];
      expect([name, Math.abs(long / DPI / wanted - 1) < 0.005]).toEqual([name, true]);
      if (which !== 'Rail') return;
      // Right of the wall, out to the flat of its face above the middle: 3/4 in.
      const high = middle - Math.round(long * (name.includes('rising') ? 0.42 : 0.3));
      const across = darkStretches(page, high).map(({ from, to }) => (from + to) / 2);
      expect(across).toHaveLength(2);
      expect(Math.abs(across[0]! - x)).toBeLessThan(3);
      expect(Math.abs((across[1]! - across[0]!) / DPI / 0.75 - 1)).toBeLessThan(0.005);
    });
  }, 60_000);

  test.each(PRINTED_LABELS)(
    'labels of “%s” lie within 1 mm of their places, a page each',
    async (key) => {
      const sheet = labels[key]!;
      const pages = await rasterPages(printed[key]!, 150);
      expect(pages).toHaveLength(sheet.drawings!.length);
      expect(pages.length).toBeGreaterThan(1);
      pages.forEach((page, at) => {
        expect(labelsMissed(sheet, at, page, 150)).toEqual([]);
      });
    },
    120_000,
  );
});

/** The longest upright line of ink above a row, in pixels: how long it is between its ends' middles, and where. */
function longestUpright(page: PageRaster, above: number) {
  // Of each column of pixels the row in which its ink begins, -1 where it has none.
  const starts = new Int32Array(page.width).fill(-1);
  let best = { long: 0, x: 0, middle: 0 };
  for (let row = 0; row < above; row++) {
    let bare = 0;
    for (const { from, to } of darkStretches(page, row)) {
      starts.fill(-1, bare, from);
      bare = to;
      for (let x = from; x < to; x++) {
        if (starts[x]! < 0) starts[x] = row;
        const start = starts[x]!;
        // A line 0.2 mm wide reaches half of it beyond both ends.
        const long = row + 1 - start - (0.2 / 25.4) * DPI;
        if (long > best.long) best = { long, x, middle: (start + row) / 2 };
      }
    }
    starts.fill(-1, bare);
  }
  return best;
}

/** Between the lines of the cove, and how far over the face that is; in inches of paper. */
function coveJustOverFace(page: PageRaster, below: number): [inches: number, level: number] {
  // From the bars up, the first line of ink that isn't letters is the face: both its flats.
  for (let row = below - 1; row > 0; row--) {
    const flats = darkStretches(page, row).filter(({ from, to }) => to - from > DPI / 8);
    if (flats.length !== 2) continue;
    const over = row - 10;
    const lines = darkStretches(page, over).map(({ from, to }) => (from + to) / 2);
    const [far, near] = lines.slice(1, -1);
    // A line through the deepest place stands between them.
    const last = lines.at(-2);
    if (far === undefined || near === undefined || last === undefined) continue;
    return [(last - far) / DPI, 9 / DPI];
  }
  throw new Error('no face was found on the page');
}
