import { beforeAll, describe, expect, test } from '@jest/globals';

import { cellName } from '../../src/core/cells/cell-range.ts';
import { LOW_BAR } from '../../src/drawings/stick-view.ts';
import { listJoints } from '../../src/planning/joints.ts';
import type { PieceEnd } from '../../src/planning/piece.ts';
import { PICKS, STOPS, STOPS_ACROSS, SUMMARY } from '../../src/sheets/cutting/cutting-columns.ts';
import {
  plansOf,
  type CutPiece,
  type CutStick,
  type JobPlan,
} from '../../src/planning/job-plan.ts';
import { cleanDescription, cleanText } from '../../src/sheets/grammar/check/clean-text.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { SheetDescription } from '../../src/sheets/grammar/description.ts';
import { planOf, type Tables } from '../planning/make-job.ts';
import { CROWNS } from './crowns.ts';
import { cutSticks, layOutsOf, offcutRows } from './cut-rows.ts';
import { cellAt, JOBS, rowWith, sheetOf, textsOf } from './sheet-jobs.ts';

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

/** What must stand on a piece. */
function sayMark({ piece, part }: CutPiece): string {
  if (piece === undefined) return 'spare';
  return part === undefined ? piece.mark : `${piece.mark}, part ${part}`;
}

describe.each(Object.keys(jobs))('The cutting sheet of the job “%s”', (name) => {
  test('has every stick once, with the marks of its own pieces in the order of their cuts', () => {
    const { plan, sheet } = of(name);
    const printed = new Map(cutSticks(sheet).map((stick) => [stick.id, stick]));
    const wanted = sticksOf(plan);
    expect(printed.size).toBe(wanted.length);
    expect(cutSticks(sheet)).toHaveLength(wanted.length);
    for (const { id, pieces } of wanted) {
      const own = printed.get(id)!;
      expect([id, own.pieces.map(({ mark }) => mark)]).toEqual([id, pieces.map(sayMark)]);
      expect(own.pieces.map(({ number }) => number)).toEqual(pieces.map((_, index) => index + 1));
    }
  });

  test('has each way of cutting once: of one row of Stock, the same lengths and ends in one order', () => {
    const { plan, sheet } = of(name);
    const printed = new Map(cutSticks(sheet).map(({ id, layOut }) => [id, layOut]));
    const keys = new Map<string, Set<unknown>>();
    const joints = listJoints(plan);
    const byLayOut = new Map<unknown, Set<string>>();
    for (const { profile, sticks } of plan.profiles) {
      for (const stick of sticks) {
        const cuts = stick.pieces.map(({ id, length, piece, part, unneeded }) => {
          const end = (at: PieceEnd | undefined): unknown => [at?.kind, at?.cornerDeg, at?.point];
          const fronts = part === undefined ? [] : joints.get(id)!.map(({ front }) => front);
          // At a joint a part's end is the scarf's, whatever the piece's own is.
          const left = part !== undefined && part > 1 ? fronts[part - 2] : end(piece?.left);
          const right =
            part !== undefined && part <= fronts.length ? fronts[part - 1] : end(piece?.right);
          return [length.toFraction(), left, right, piece === undefined, unneeded !== undefined];
        });
        const key = JSON.stringify([profile.name, stick.item.where, cuts]);
        const own = printed.get(stick.id)!;
        keys.set(key, (keys.get(key) ?? new Set()).add(own));
        byLayOut.set(own, (byLayOut.get(own) ?? new Set()).add(key));
      }
    }
    expect([...byLayOut.values()].filter((all) => all.size > 1)).toEqual([]);
    expect([...keys.values()].filter((all) => all.size > 1)).toEqual([]);
    for (const layOut of layOutsOf(sheet)) {
      const own = sticksOf(plan).filter(({ id }) => printed.get(id) === layOut);
      expect(layOut.sticks).toBe(own.length);
      const said =
        own.length === 1 ? /^Cut one: / : new RegExp(`^Cut ${own.length} like this: `, 'u');
      expect(layOut.text).toMatch(said);
    }
  });

  test('says for each piece its two ends, by a glyph and its angle', () => {
    const { plan, sheet } = of(name);
    const sticks = new Map(sticksOf(plan).map((stick) => [stick.id, stick]));
    for (const { id, pieces } of cutSticks(sheet)) {
      pieces.forEach((row, at) => {
        const { piece, part } = sticks.get(id)!.pieces[at]!;
        if (piece === undefined) {
          expect([row.left, row.right]).toEqual(['▐ square', '▌ square']);
          return;
        }
        const isSquare = (end: PieceEnd): boolean => end.kind === 'square';
        if (part === undefined || part === 1) {
          expect(row.left.endsWith('square')).toBe(isSquare(piece.left));
        }
        if (part === undefined) expect(row.right.endsWith('square')).toBe(isSquare(piece.right));
        for (const end of [row.left, row.right]) expect(end).toMatch(/^[▐▌◥◤◢◣] (?:square|.*°$)/su);
      });
    }
  });

  test('draws each lay-out under its row as a bar, all of one group to one scale', () => {
    const { plan, sheet } = of(name);
    const drawings = sheet.drawings ?? [];
    const layOuts = layOutsOf(sheet);
    const printed = cutSticks(sheet);
    const places = layOuts.map(({ row, half }) => cellName(row, half.first));
    expect(drawings.map(({ at }) => at)).toEqual(places);
    const scales = new Map<string, number[]>();
    drawings.forEach(({ drawing, name: id }, at) => {
      const { pieces, layOut } = printed.find((stick) => stick.layOut === layOuts[at])!;
      expect(printed.find((stick) => stick.id === id)?.layOut).toBe(layOut);
      const wood = drawing.shapes.flatMap((shape) =>
        shape.kind === 'path' && shape.fill === 'wood' ? [shape.points.map(([x]) => x)] : [],
      );
      const group = plan.groups.findIndex(({ profiles }) =>
        profiles.some((profile) => id?.startsWith(`${profile.name} #`)),
      );
      const ofGroup = wood.map((xs, index) => {
        return (Math.max(...xs) - Math.min(...xs)) / pieces[index]!.length;
      });
      expect(wood).toHaveLength(pieces.length);
      scales.set(String(group), [...(scales.get(String(group)) ?? []), ...ofGroup]);
      const points = sheet.rows[layOut.row]!.height!;
      expect(points).toBeGreaterThan((drawing.height / 25.4) * 72);
      expect(drawing.height).toBeGreaterThan(LOW_BAR.bottom);
    });
    for (const each of scales.values()) {
      expect(Math.max(...each) / Math.min(...each)).toBeCloseTo(1, 9);
    }
  });

  test('has sums of cuts, sticks and kept offcuts that its rows come to', () => {
    const { plan, sheet } = of(name);
    const row = rowWith(sheet, 'Together', 0);
    const printed = cutSticks(sheet);
    const sum = (values: readonly (number | null)[]): number =>
      values.reduce<number>((all, one) => all + (one ?? 0), 0);
    const value = (column: Parameters<typeof SUMMARY.start>[0]): number =>
      Number(cellAt(sheet, row, SUMMARY.start(column))?.value);
    expect(value('sticks')).toBe(printed.length);
    expect(value('stickLength')).toBeCloseTo(sum(printed.map(({ layOut }) => layOut.length)), 6);
    expect(value('keptLength')).toBeCloseTo(sum(printed.map(({ layOut }) => layOut.kept)), 6);
    const pieces = printed.flatMap((stick) => stick.pieces);
    expect(value('cuts')).toBe(pieces.length);
    expect(value('pieceLength')).toBeCloseTo(sum(pieces.map(({ length }) => length)), 6);
    const profiles = plan.profiles.map(({ profile }) => cleanText(profile.name));
    const listed = sheet.rows.slice(row - profiles.length, row).map(({ cells }) => cells[0]?.value);
    expect(listed).toEqual(profiles);
  });

  test('lists each length to stop at once, with how often it is still to be cut', () => {
    const { plan, sheet } = of(name);
    const unit = plan.job.shop.unit === 'mm' ? 25.4 : 1;
    const wanted = plan.profiles.map(({ sticks }) => {
      const left = sticks.flatMap(({ pieces }) => pieces).filter(({ isCut }) => isCut !== true);
      const times = new Map<string, number>();
      for (const { length } of left) {
        const said = (Number(length) * unit).toFixed(6);
        times.set(said, (times.get(said) ?? 0) + 1);
      }
      return [...times].sort(([one], [other]) => Number(other) - Number(one));
    });
    const at = sheet.rows.findIndex(({ cells }) =>
      String(cells[0]?.value ?? '').startsWith('Stops: '),
    );
    const rows = at < 0 ? [] : sheet.rows.slice(at + 1);
    const end = rows.findIndex(({ cells }) =>
      cells.every((cell) => (cell?.value ?? null) === null),
    );
    const stops = rows.slice(0, end).flatMap(({ cells }) =>
      STOPS_ACROSS.flatMap(([length, times]) => {
        const stop = cells[STOPS.start(length)]?.value;
        return typeof stop === 'number'
          ? [[stop.toFixed(6), cells[STOPS.start(times)]?.value]]
          : [];
      }),
    );
    expect(stops).toEqual(wanted.flat());
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
      const { layOut } = cutSticks(sheet).find((one) => one.id === id)!;
      expect(row?.formula).toBe(layOut.half.table.at('kept', layOut.row));
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
        .filter(
          ({ cells }) => cells[PICKS.start('from')]?.value === what && cells[0]?.style === 'tick',
        )
        .reduce((all, { cells }) => all + Number(cells[PICKS.start('count')]?.value), 0);
    expect(picked('rack')).toBe(uses.reduce((all, one) => all + one.fromRack, 0));
    expect(picked('buy')).toBe(uses.reduce((all, one) => all + one.bought, 0));
  });

  test('shows inches with a fraction where a length is 64ths, else decimals', () => {
    const { plan, sheet } = of(name);
    const unit = plan.job.shop.unit;
    const sticks = new Map(sticksOf(plan).map((stick) => [stick.id, stick]));
    for (const { id, pieces } of cutSticks(sheet)) {
      pieces.forEach(({ lengthAt: [row, column] }, at) => {
        const { d } = sticks.get(id)!.pieces[at]!.length;
        expect(cellAt(sheet, row - 1, column)?.style).toBe(
          unit === 'in' && 64 % Number(d) === 0 ? 'cutFraction' : 'cutNumber',
        );
      });
    }
  });
});
