import { beforeAll, describe, expect, test } from '@jest/globals';

import type { JobPlan } from '../../src/planning/job-plan.ts';
import { hoursOf } from '../../src/planning/work/hours.ts';
import type { Piece } from '../../src/planning/piece.ts';
import { cleanDescription, cleanText } from '../../src/sheets/grammar/check/clean-text.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type {
  SheetDescription,
  WorkbookDescription,
} from '../../src/sheets/grammar/description.ts';
import { numberIn } from '../../src/sheets/words/print-length.ts';
import { planOf } from '../planning/make-job.ts';
import { cellAt, JOBS, listedPieces, numberAt, rowWith, sheetOf, textsOf } from './sheet-jobs.ts';

const plans = new Map<string, { plan: JobPlan; workbook: WorkbookDescription }>();

beforeAll(async () => {
  for (const [name, tables] of Object.entries(JOBS)) {
    const plan = await planOf(tables);
    plans.set(name, { plan, workbook: cleanDescription(describePlan(plan)) });
  }
});

function planned(name: string) {
  const { plan, workbook } = plans.get(name)!;
  return { plan, workbook, sheet: sheetOf(workbook, 'Production') };
}

/** Rows from the first whose number in column A is 1, below a heading, to the last that is numbered on. */
function numberedRows(sheet: SheetDescription, section: string): number[] {
  const rows: number[] = [];
  for (let row = rowWith(sheet, section) + 1; row < sheet.rows.length; row++) {
    const value = cellAt(sheet, row, 0)?.value;
    if (value === rows.length + 1) rows.push(row);
    else if (cellAt(sheet, row, 1)?.value === 'Together') break;
  }
  return rows;
}

describe.each(Object.keys(JOBS))('The production sheet of the job “%s”', (name) => {
  test('comes to the totals of the plan, by formulas over what stands in its rows', () => {
    const { plan, workbook, sheet } = planned(name);
    const numbers = listedPieces(workbook).flatMap(({ length }) =>
      typeof length === 'number' ? [length] : [],
    );
    const head = (label: string): number => {
      const row = rowWith(sheet, label);
      expect(cellAt(sheet, row, 2)?.formula).toMatch(/^[A-Z]+\d+$|^'?Cutting'?!/u);
      return numberAt(sheet, row, 2);
    };
    const { unit } = plan.job.shop;
    expect(head('Pieces to cut')).toBe(numbers.length);
    expect(head(`Net length (${unit})`)).toBeCloseTo(
      numbers.reduce((all, one) => all + one, 0),
      8,
    );
    expect(head('Sticks and blanks')).toBe(plan.totals.sticks);
    expect(head('Hours')).toBe(plan.totals.hours);
    expect(numberAt(sheet, rowWith(sheet, 'Pieces done already'), 2)).toBe(plan.totals.done);
  });

  test('says by formula that all sheets agree, in one line, and marks what would differ on Office', () => {
    const { plan, workbook, sheet } = planned(name);
    const office = sheetOf(workbook, 'Office');
    const verdicts = office.rows.flatMap(({ cells }) => {
      const verdict = cells[9];
      return verdict?.value === 'agrees' ? [{ verdict, one: cells[5]!, other: cells[7]! }] : [];
    });
    const isKnown = plan.totals.boardFeetBought !== undefined;
    const isCut = plan.profiles.length > 0;
    expect(verdicts).toHaveLength(17 + (isKnown ? 1 : 0) + (isCut ? 3 : 0));
    for (const { verdict, one, other } of verdicts) {
      expect(verdict.formula).toMatch(
        /^IFERROR\(IF\(ABS\(F\d+-H\d+\)<[\d.]+,"agrees","differs"\),"differs"\)$/u,
      );
      // Two different cells or sums, or a sum and what was planned, or it could never differ.
      expect(other.formula).toBeDefined();
      expect(one.formula).not.toBe(other.formula);
      expect(one.value).toBeCloseTo(Number(other.value), 9);
    }
    expect(sheet.rows[1]?.cells[0]?.value).toBe('All sheets agree.');
    expect([sheet, office].map(({ highlights = [] }) => highlights.length)).toEqual([1, 2]);
  });

  test('has what is to make by profile: pieces, sticks, lengths, board feet', () => {
    const { plan, sheet } = planned(name);
    const { unit } = plan.job.shop;
    const rows = numberedRows(sheet, 'By profile');
    expect(rows).toHaveLength(plan.profiles.length);
    plan.profiles.forEach(({ profile, tally }, at) => {
      const value = (column: number) => cellAt(sheet, rows[at]!, column)?.value;
      expect(value(1)).toBe(profile.name);
      expect([value(3), value(4)]).toEqual([tally.pieces, tally.sticks]);
      expect(value(9)).toBe(profile.make === 'buy' ? null : tally.passes);
      expect(value(10)).toBeCloseTo(hoursOf(tally.hours), 9);
      // What sums go by stands beside the printed columns.
      expect(value(11)).toBe(numberIn(tally.lengthNet, unit));
      if (profile.make === 'buy') {
        const { offcutAllowancePercent } = tally;
        expect([6, 7, 8, 15].map(value)).toEqual(['by length', null, null, offcutAllowancePercent]);
        return;
      }
      // A board foot is 144 cubic inches, each 0.0254 m long: a metric shop counts m³.
      const volume = (boardFeet: number | undefined): number | undefined =>
        boardFeet === undefined || plan.job.shop.unit === 'in'
          ? boardFeet
          : boardFeet * 144 * 0.0254 ** 3;
      const near = (wanted: number | undefined) =>
        wanted === undefined ? 'not known' : expect.closeTo(wanted, 9);
      expect(value(6)).toEqual(near(volume(tally.boardFeetNet)));
      expect(value(7)).toEqual(near(volume(tally.boardFeetWithAllowance)));
      expect(value(8)).toEqual(near(volume(tally.boardFeetBought)));
    });
  });

  test('has a line for each room and profile, and each room’s own sum above its lines', () => {
    const { plan, sheet } = planned(name);
    const { unit } = plan.job.shop;
    const rows = numberedRows(sheet, 'By room');
    expect(rows).toHaveLength(plan.rooms.length);
    plan.rooms.forEach((line, at) => {
      const row = rows[at]!;
      const value = (column: number) => cellAt(sheet, row, column)?.value;
      expect([value(1), value(2)]).toEqual([cleanText(line.room), line.profile]);
      expect(value(3)).toBe(line.pieces);
      expect(value(11)).toBe(numberIn(line.lengthNet, unit));
      expect(cellAt(sheet, row, 3)?.formula).toMatch(
        /^COUNTIF\('Pieces'!\$M\$\d+(?::\$M\$\d+)?,A\d+\)$/u,
      );
    });
    const rooms = [...new Set(plan.rooms.map(({ room }) => room))];
    for (const room of rooms) {
      const at = rows[plan.rooms.findIndex((line) => line.room === room)]! - 1;
      const lines = plan.rooms.filter((line) => line.room === room);
      expect(cellAt(sheet, at, 1)?.value).toBe(cleanText(room));
      expect(numberAt(sheet, at, 11)).toBeCloseTo(
        lines.reduce((all, { lengthNet }) => all + numberIn(lengthNet, unit), 0),
        8,
      );
    }
  });

  test('orders the work: lumber, then coves by tilt and approach, smoothing, crosscuts', () => {
    const { plan, sheet } = planned(name);
    const steps = numberedRows(sheet, 'Order of work').map((row) => ({
      work: String(cellAt(sheet, row, 1)?.value),
      count: cellAt(sheet, row, 6)?.value,
      cuts: cellAt(sheet, row, 8)?.value,
      see: cellAt(sheet, row, 11)?.value,
      tick: cellAt(sheet, row, 10)?.style,
    }));
    expect(steps.filter(({ tick }) => tick !== 'tick')).toEqual([]);
    const coves = plan.profiles.filter(({ setUp }) => setUp !== undefined);
    const angles = ({ setUp }: (typeof coves)[number]) => setUp!.setting;
    const byChange = [...coves].sort(
      (one, other) =>
        angles(one).tilt - angles(other).tilt || angles(one).approach - angles(other).approach,
    );
    const cut = steps.filter(({ work }) => work.endsWith(', on the whole blanks'));
    expect(cut.map(({ work, count, cuts, see }) => [work, count, cuts, see])).toEqual(
      byChange.map((one) => [
        `Cut ${one.profile.name}, on the whole blanks`,
        one.tally.sticks,
        one.tally.passes,
        'Set-ups',
      ]),
    );
    // Each has a page of its own there, under its name.
    const setUps = sheetOf(plans.get(name)!.workbook, 'Set-ups');
    const breaks = setUps.print.breaksAfter ?? [];
    coves.forEach(({ profile }, at) => {
      const row = rowWith(setUps, profile.name) + 1;
      const before = textsOf(setUps).slice(0, textsOf(setUps).indexOf(profile.name));
      const corners = before.filter((text) => text.endsWith(', its corners')).length;
      expect(breaks.filter((after) => after < row)).toHaveLength(at + corners);
    });
    const kinds = steps.map(({ work }) =>
      [
        'Pull',
        'Buy',
        'Rip',
        'Crosscut the set-up',
        'Cut',
        'Scrape',
        'First',
        'Crosscut',
        'Join',
        'cope|install',
        'Keep',
      ].findIndex((start) => new RegExp(`^(?:${start})`, 'u').test(work)),
    );
    expect(kinds).toEqual([...kinds].sort((one, other) => one - other));
    const crosscuts = steps.filter(({ work }) => /^Crosscut (?!the set-up spares)/u.test(work));
    expect(crosscuts.map(({ count }) => count)).toEqual(
      plan.profiles.map(({ tally }) => tally.pieces),
    );
  });

  test('says the saw’s own caution above angles, where coves are cut', () => {
    const { plan, sheet } = planned(name);
    const coves = plan.profiles.some(({ setUp }) => setUp !== undefined);
    const said = textsOf(sheet).some((text) => text.startsWith("Read your saw's manual first."));
    expect(said).toBe(coves);
  });
});

describe('The production sheet', () => {
  test('names sticks of matched pieces and of runs in one piece before all other crosscuts', () => {
    const { plan, sheet } = planned('demo');
    const row = rowWith(sheet, 'First, matched pieces and runs in one piece', 1);
    // As the demo's Runs ask for them: two in one piece, and the chart rails, which are matched.
    const asked = ['south', 'east crown', 'chart rail left', 'chart rail right'];
    const isAsked = (piece: Piece | undefined): boolean =>
      asked.includes(piece?.run ?? '') && (piece?.onePiece === true || piece?.match !== '');
    const sticks = plan.profiles.flatMap((one) =>
      one.sticks.filter(({ pieces }) => pieces.some(({ piece }) => isAsked(piece))),
    );
    expect(sticks).toHaveLength(3);
    const named = sticks.map(({ id }) => id).join(', ');
    expect(cellAt(sheet, row, 3)?.value).toBe(`${named}: while there is stock for a second try`);
    expect(numberAt(sheet, row, 6)).toBe(3);
  });

  test('keeps each of its tables on one page while that has room', () => {
    const { sheet } = planned('demo');
    const breaks = sheet.print.breaksAfter ?? [];
    const sections = sheet.rows.flatMap(({ cells }, row) =>
      cells[0]?.style === 'section' && row > 12 ? [row + 1] : [],
    );
    expect(sections.length).toBeGreaterThan(4);
    expect(breaks.length).toBeLessThanOrEqual(4);
    // A page begins with a section, or with a room of the last table.
    const rooms = sheet.rows.flatMap(({ cells }, row) =>
      cells[1]?.style === 'stick' ? [row + 1] : [],
    );
    for (const row of breaks) expect([...sections, ...rooms]).toContain(row + 1);
  });
});
