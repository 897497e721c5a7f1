import { beforeAll, describe, expect, test } from '@jest/globals';

import { BAR } from '../../src/drawings/stick-view.ts';
import { plansOf, type CutStick, type JobPlan } from '../../src/planning/job-plan.ts';
import { cleanDescription } from '../../src/sheets/grammar/check/clean-text.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { SheetDescription } from '../../src/sheets/grammar/description.ts';
import { planOf, type Tables } from '../planning/make-job.ts';
import { cutPieces, cutSticks, offcutRows } from './cut-rows.ts';
import { cellAt, JOBS, rowWith, sheetOf, textsOf } from './sheet-jobs.ts';

const CROWNS: Tables = {
  profiles:
    'Profile,Make,Blank width,Blank thickness,Spring,Species,Cove width,Cove depth,Off-center,Class\n' +
    'Bed,buy,4 5/8,11/16,38,Poplar,,,,\nDeep,cove,4 1/2,1 1/4,,Poplar,3,5/8,3/8,5/4\n' +
    'Arch,crown cove,5 1/2,1 1/4,38,Poplar,3,5/8,3/8,5/4\nEven,cove,4 1/2,1 1/4,,Poplar,3,5/8,,5/4',
  runs:
    'Room,Run,Profile,Length,Left end,Right end,Right corner\n' +
    'Hall,north,Bed,90,inside miter,outside miter,135\nHall,south,Deep,80,cope,return,\n' +
    'Hall,west,Arch,70,square,inside miter,\nHall,east,Even,60,outside miter,square,',
  shop: 'Setting,Value\nhourly rate,60\nset-up spare,30\nend trim,1/2',
  stock:
    "For,Kind,Class,Width,Length,Price,Per,Have,Buy\nBed,stick,,,16',4,foot,1,\n" +
    "Poplar,board,5/4,6,14',5,board foot,2,",
};

const jobs: Readonly<Record<string, Tables>> = { ...JOBS, crowns: CROWNS };
const made = new Map<string, { plan: JobPlan; sheet: SheetDescription }>();

beforeAll(async () => {
  for (const [name, tables] of Object.entries(jobs)) {
    const plan = await planOf(tables);
    const sheet = sheetOf(cleanDescription(describePlan(plan)), 'Cutting');
    made.set(name, { plan, sheet });
  }
});

const of = (name: string): { plan: JobPlan; sheet: SheetDescription } => made.get(name)!;

/** In the order of the sheet. */
function sticksOf(plan: JobPlan): readonly CutStick[] {
  return plan.groups.flatMap((group) => plansOf(plan, group)).flatMap(({ sticks }) => sticks);
}

describe.each(Object.keys(jobs))('The cutting sheet of the job “%s”', (name) => {
  test('has every stick once, and under it its own pieces in the order of their cuts', () => {
    const { plan, sheet } = of(name);
    const printed = cutSticks(sheet);
    const wanted = sticksOf(plan);
    expect(printed.map(({ id }) => id)).toEqual(wanted.map(({ id }) => id));
    printed.forEach(({ pieces }, at) => {
      expect(pieces.map(({ id }) => id)).toEqual(wanted[at]!.pieces.map(({ id }) => id));
      expect(pieces.map(({ number }) => number)).toEqual(pieces.map((_, index) => index + 1));
    });
  });

  test('says for each piece its ends, the points of its length, and how it lies', () => {
    const { plan, sheet } = of(name);
    const cuts = sticksOf(plan).flatMap(({ pieces }) => pieces);
    cutPieces(sheet).forEach((row, at) => {
      const { piece, part } = cuts[at]!;
      if (piece === undefined) {
        expect([row.part, row.left, row.right]).toEqual(['for trial cuts', 'square', 'square']);
        return;
      }
      expect(row.part.split(', part ')).toHaveLength(part === undefined ? 1 : 2);
      expect(row.part.split(', ')[0]).toBe(piece.mark);
      expect([row.left, row.right].map((text) => text.split(/[ ,]/u)[0])).not.toContain('');
      if (part === undefined) {
        expect(row.left.startsWith(piece.left.kind)).toBe(true);
        expect(row.right.startsWith(piece.right.kind)).toBe(true);
        const points = [piece.left.point, piece.right.point];
        expect([row.leftPoint, row.rightPoint]).toEqual(
          points.map((point) => point.replaceAll('the ', '')),
        );
      }
      expect(row.lie).toMatch(/face up/u);
    });
  });

  test('draws each stick under its row as a bar, all of one group to one scale', () => {
    const { plan, sheet } = of(name);
    const drawings = sheet.drawings ?? [];
    const printed = cutSticks(sheet);
    expect(drawings.map(({ at }) => at)).toEqual(printed.map(({ row }) => `A${row + 1}`));
    expect(drawings.map((one) => one.name)).toEqual(printed.map(({ id }) => id));
    const scales = new Map<string, number[]>();
    drawings.forEach(({ drawing }, at) => {
      const { pieces } = printed[at]!;
      const wood = drawing.shapes.flatMap((shape) =>
        shape.kind === 'path' && shape.fill === 'wood' ? [shape.points.map(([x]) => x)] : [],
      );
      const group = plan.groups.findIndex(({ profiles }) =>
        profiles.some((profile) => printed[at]!.id.startsWith(`${profile.name} #`)),
      );
      const ofGroup = wood.map((xs, index) => {
        return (Math.max(...xs) - Math.min(...xs)) / pieces[index]!.length;
      });
      expect(wood).toHaveLength(pieces.length);
      scales.set(String(group), [...(scales.get(String(group)) ?? []), ...ofGroup]);
      const points = sheet.rows[printed[at]!.row]!.height!;
      expect(points).toBeGreaterThan((drawing.height / 25.4) * 72);
      expect(drawing.height).toBeGreaterThan(BAR.bottom);
    });
    for (const each of scales.values()) {
      expect(Math.max(...each) / Math.min(...each)).toBeCloseTo(1, 9);
    }
  });

  test('has sums of cuts, sticks and kept offcuts that its rows come to', () => {
    const { plan, sheet } = of(name);
    const row = rowWith(sheet, 'Together', 1);
    const printed = cutSticks(sheet);
    const sum = (values: readonly (number | null)[]): number =>
      values.reduce<number>((all, one) => all + (one ?? 0), 0);
    const value = (column: number): number => Number(cellAt(sheet, row, column)?.value);
    expect(value(3)).toBe(printed.length);
    expect(value(4)).toBeCloseTo(sum(printed.map(({ length }) => length)), 6);
    expect(value(5)).toBeCloseTo(sum(printed.map(({ kept }) => kept)), 6);
    const counted = sheet.rows.flatMap(({ cells }) =>
      cells[1]?.value === 'Cuts, with overlaps and spare' ? [cells] : [],
    );
    const cuts = sum(counted.map((cells) => Number(cells[3]?.value)));
    expect(cuts).toBe(printed.flatMap(({ pieces }) => pieces).length);
    const lengths = sum(counted.map((cells) => Number(cells[4]?.value)));
    expect(lengths).toBeCloseTo(
      sum(printed.flatMap(({ pieces }) => pieces.map((one) => one.length))),
      6,
    );
    expect(counted).toHaveLength(plan.profiles.length);
  });

  test('lists every kept offcut and whole blank once, each with a label of its own', () => {
    const { plan, sheet } = of(name);
    const listed = offcutRows(sheet);
    const kept = sticksOf(plan).filter(({ offcutKept }) => offcutKept);
    const whole = plan.groups
      .flatMap(({ boards }) => boards)
      .flatMap(({ strips }) => strips.filter(({ profile }) => profile === undefined));
    // And what is left clear of boards with defects, of which another part is used.
    const used = new Set(sticksOf(plan).map(({ item }) => item));
    const boards = new Set([...used].flatMap(({ stretch, where }) => (stretch ? where : [])));
    const clear = plan.job.stock.filter((one) => boards.has(one.where) && !used.has(one));
    expect(listed).toHaveLength(kept.length + whole.length + clear.length);
    expect(new Set(listed.map(({ label }) => label)).size).toBe(listed.length);
    expect(listed.every(({ hasBox }) => hasBox)).toBe(true);
    const unit = plan.job.shop.unit === 'mm' ? 25.4 : 1;
    for (const { id, offcut } of kept) {
      const row = listed.find(({ label }) => label === `${id} rest`);
      expect(row?.length).toBeCloseTo(Number(offcut) * unit, 9);
      const stick = cutSticks(sheet).find((one) => one.id === id);
      expect(row?.formula).toBe(`K${stick?.row}`);
    }
  });

  test('lists what is pulled from the rack and what is bought, as many as are cut up', () => {
    const { plan, sheet } = of(name);
    const uses = plan.groups.flatMap(({ stockUse }) => stockUse);
    if (uses.length === 0) {
      expect(textsOf(sheet)).not.toContain('Pull from the rack, and buy');
      return;
    }
    const from = rowWith(sheet, 'Pull from the rack, and buy');
    const to = sheet.rows.findIndex(({ cells }, row) => row > from && cells.length === 0);
    const picked = (what: string): number =>
      sheet.rows
        .slice(from, to)
        .filter(({ cells }) => cells[5]?.value === what && cells[0]?.style === 'tick')
        .reduce((all, { cells }) => all + Number(cells[4]?.value), 0);
    expect(picked('rack')).toBe(uses.reduce((all, one) => all + one.fromRack, 0));
    expect(picked('buy')).toBe(uses.reduce((all, one) => all + one.bought, 0));
  });

  test('shows inches with a fraction where a length is 64ths, else decimals', () => {
    const { plan, sheet } = of(name);
    const styles = cutPieces(sheet).map(({ row }) => cellAt(sheet, row - 1, 4)?.style);
    const lengths = sticksOf(plan).flatMap(({ pieces }) => pieces.map(({ length }) => length));
    expect(styles).toEqual(
      lengths.map(({ d }) =>
        plan.job.shop.unit === 'in' && 64 % Number(d) === 0 ? 'rowFraction' : 'rowNumber',
      ),
    );
  });
});

describe('The cutting sheet', () => {
  test('warns of short pieces, of the saw and of its own numbers before anything is cut', () => {
    for (const { sheet } of made.values()) {
      const texts = textsOf(sheet).slice(0, 19).join(' ');
      expect(texts).toContain('Read the manual of the saw that cuts to length first.');
      expect(texts).toContain('Never hold a short piece by hand');
      expect(texts).toContain(
        "Local codes and a qualified person's judgment stand above any number here.",
      );
    }
  });

  test('says how a piece lies: face up, a crown on its back, an off-center cove as ticked', () => {
    const lies = new Map(cutPieces(of('crowns').sheet).map(({ id, lie }) => [id, lie]));
    expect(Object.fromEntries(lies)).toEqual({
      'Deep / set-up spare': '',
      'Arch / set-up spare': '',
      'Even / set-up spare': '',
      'Hall / north / 1': 'flat on its back, face up',
      'Hall / south / 1': 'face up, deep side as ticked above',
      'Hall / south / 1 return right': 'face up, deep side as ticked above',
      'Hall / west / 1': 'flat on its back, face up, deep side as ticked above',
      'Hall / east / 1': 'face up',
    });
  });

  test('has two boxes for the deep side above the sticks of each off-center cove, of no other', () => {
    const { sheet } = of('crowns');
    const boxes = sheet.rows.flatMap(({ cells }, row) =>
      cells[1]?.value === 'upper edge' ? [{ cells, row: row + 1 }] : [],
    );
    expect(boxes).toHaveLength(2);
    for (const { cells, row } of boxes) {
      expect([cells[0]?.style, cells[3]?.style, cells[4]?.value]).toEqual([
        'tick',
        'tick',
        'lower edge',
      ]);
      const name = /every stick of (\w+) the same/u.exec(String(cells[5]?.value))?.[1];
      const next = cutSticks(sheet).find((stick) => stick.row > row);
      expect(next?.id).toBe(`${name} #1`);
    }
  });

  test('says angles from square as its headings do, a corner where there is no one angle', () => {
    const ends = new Map(
      cutPieces(of('crowns').sheet).map(({ id, left, right }) => [id, [left, right]]),
    );
    expect(ends.get('Hall / north / 1')).toEqual([
      'inside miter, 90° corner: see Set-ups',
      'outside miter, 135° corner: see Set-ups',
    ]);
    expect(ends.get('Hall / south / 1')).toEqual(['cope, 90° corner', 'return 45°']);
    const heads = textsOf(of('crowns').sheet);
    expect(heads).toContain('Left end, angle from square');
    expect(heads).toContain('Right end, angle from square');
  });

  test('shows the scarf of a spliced piece at each joint, long at the face on one side alone', () => {
    const parts = cutPieces(of('millimetres').sheet).filter(({ part }) => part !== '');
    const spliced = parts.filter(({ part }) => part.includes(', part '));
    expect(spliced.map(({ part }) => part).sort()).toEqual([
      'R1-2, part 1 of 3',
      'R1-2, part 2 of 3',
      'R1-2, part 3 of 3',
    ]);
    const [first, middle, last] = ['1', '2', '3'].map((number) =>
      spliced.find(({ part }) => part === `R1-2, part ${number} of 3`)!,
    );
    expect([first!.right, middle!.left, middle!.right, last!.left]).toEqual(
      Array(4).fill('scarf 45°'),
    );
    expect(first!.rightPoint).toBe('long point of scarf at back');
    expect(last!.leftPoint).toBe('long point of scarf at face');
    expect([first!.left, last!.right]).toEqual(['cope, 90° corner', 'outside miter 45°']);
  });

  test('names every stick and board by a letter of its row of Stock and its number', () => {
    const { sheet } = of('demo');
    const named = cutSticks(sheet).map(({ which }) => /^(?:stick|board) ([A-Z]+\d+)/u.exec(which));
    expect(named.every((found) => found !== null)).toBe(true);
    const from = rowWith(sheet, 'Pull from the rack, and buy');
    const until = sheet.rows.findIndex(
      ({ cells }, row) => row > from && cells[0]?.style === 'section',
    );
    const chalked = sheet.rows
      .slice(from, until)
      .flatMap(({ cells }) => (cells[6]?.style === 'row' ? [String(cells[6].value)] : []))
      .join(', ')
      .replace(/([A-Z]+)(\d+) to [A-Z]+(\d+)/gu, (_, letter: string, first, last) =>
        Array.from(
          { length: Number(last) - Number(first) + 1 },
          (__, at) => `${letter}${Number(first) + at}`,
        ).join(', '),
      );
    const listed = new Set(chalked.split(/, | and /u));
    expect([...new Set(named.map((found) => found![1]!))].sort()).toEqual([...listed].sort());
  });
});
