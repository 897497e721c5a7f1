/** Answers of several cells, whatever is typed, taken back and done again among them. */
import { describe, expect, test } from '@jest/globals';
import { columnLetters } from '../../../src/core/cells/cell-range.ts';
import type { GridPage } from '../../browser/grid-host-page.ts';
import { count } from '../../deep.ts';
import { seededNumbers } from '../../seeded-numbers.ts';
import { inGrid } from './persons-in-grid.ts';

/** A small sheet, so that answers often meet what stands there. */
const [ROWS, COLUMNS] = [16, 9];
/** Of the sheet that is looked at: whatever spills over the small one. */
const [SEEN_ROWS, SEEN_COLUMNS] = [60, 40];
const FORMULAS = [
  '=COVE.PASSHEIGHTS("3/8")',
  '=COVE.PASSHEIGHTS("3/4")',
  '=COVE.PASSHEIGHTS(A4)',
  '=COVE.SETUP("3","3/4")',
  '=COVE.SETUP(A1:A3,"3/8")',
  '=COVE.APPROACH(A1:A3,"1/2")',
] as const;
const INPUTS = ['3/4', '2', 1, ''] as const;
const TYPED = ['x', 3, '5/8', ''] as const;

type Shown = Readonly<Record<string, string | number>>;
type Step = readonly ['type', at: string, what: string | number] | readonly ['undo' | 'redo'];

export function testGridSpills({ page, open, settle }: GridPage): void {
  /** What every cell shows, those that hold no formula of their own too. */
  const shown = (): Promise<Shown> =>
    page().evaluate(
      ([rows, columns]) => {
        const { grid } = gridTest;
        const book = grid.book();
        const id = book.getActiveSheet().getSheetId();
        const cells: Record<string, string | number> = {};
        for (let r = 0; r < rows; r++) {
          for (let c = 0; c < columns; c++) {
            const { v } = grid.readCell(book, id, r, c) ?? {};
            if (v !== undefined && v !== null && v !== '')
              cells[`${r},${c}`] = v as string | number;
          }
        }
        return cells;
      },
      [SEEN_ROWS, SEEN_COLUMNS] as const,
    );
  const take = async (step: Step): Promise<void> => {
    await page().evaluate(async (given) => {
      const { grid } = gridTest;
      const [kind, at = '', what = ''] = given;
      if (kind === 'undo') await grid.api.undo();
      else if (kind === 'redo') await grid.api.redo();
      else {
        const cell = grid.book().getActiveSheet().getRange(at);
        if (what === '') cell.clearContent();
        else cell.setValue(typeof what === 'string' && what.startsWith('=') ? { f: what } : what);
      }
    }, step);
    await settle();
  };
  const start = (): Promise<void> =>
    open(inGrid([{ name: 'Sums', rows: [['3'], ['3 1/2'], ['5'], ['1/2']] }]));

  /** What is typed in the cells: formulas and all else, by row and column. */
  const typed = (): Promise<Record<string, { f?: string; v: string | number }>> =>
    page().evaluate(() => {
      const cells: Record<string, { f?: string; v: string | number }> = {};
      gridTest.grid
        .book()
        .getActiveSheet()
        .getSheet()
        .getCellMatrix()
        .forValue((row, column, cell) => {
          const v = (cell?.v ?? '') as string | number;
          if (cell?.f !== undefined && cell.f !== null)
            cells[`${row},${column}`] = { f: cell.f, v };
          else if (v !== '') cells[`${row},${column}`] = { v };
        });
      return cells;
    });

  /** Each formula's answers in a workbook of its own, with the same inputs. */
  async function answersOf(
    formulas: readonly string[],
    inputs: readonly (string | number | null)[],
  ): Promise<Map<string, Map<string, string | number>>> {
    const answers = new Map<string, Map<string, string | number>>();
    for (const formula of formulas) {
      const rows = Array.from({ length: SEEN_ROWS }, (_, row) => [inputs[row] ?? null]);
      await open(inGrid([{ name: 'Sums', rows }]));
      await take(['type', 'B1', formula]);
      const cells = Object.entries(await shown()).flatMap(([at, value]) => {
        const [row = 0, column = 0] = at.split(',').map(Number);
        return column === 0 ? [] : [[`${row},${column - 1}`, value] as const];
      });
      answers.set(formula, new Map(cells));
    }
    return answers;
  }

  interface State {
    readonly after: string;
    readonly typed: Record<string, { f?: string; v: string | number }>;
    readonly shown: Shown;
  }

  /** Says what a state shows wrongly; nothing for a sound one. */
  function wrongIn(
    state: State,
    answers: (formula: string, state: State) => Map<string, string | number>,
  ): string[] {
    const wrong: string[] = [];
    const due = new Map<string, string | number>();
    const blocked: [at: string, reach: string[]][] = [];
    const put = (at: string, value: string | number): void => {
      if (due.has(at)) wrong.push(`${at} is taken twice`);
      due.set(at, value);
    };
    for (const [at, cell] of Object.entries(state.typed)) {
      if (cell.f === undefined) {
        put(at, cell.v);
        continue;
      }
      const [row = 0, column = 0] = at.split(',').map(Number);
      const reach = [...answers(cell.f, state)].map(([by, value]) => {
        const [down = 0, right = 0] = by.split(',').map(Number);
        return [`${row + down},${column + right}`, value] as const;
      });
      if (state.shown[at] === '#SPILL!') {
        put(at, '#SPILL!');
        blocked.push([at, reach.map(([one]) => one).filter((one) => one !== at)]);
      } else for (const [one, value] of reach) put(one, value);
    }
    for (const [at, reach] of blocked) {
      if (!reach.some((one) => due.has(one))) wrong.push(`${at} is blocked by nothing`);
    }
    for (const at of new Set([...due.keys(), ...Object.keys(state.shown)])) {
      if (due.get(at) !== state.shown[at]) {
        wrong.push(`${at} shows ${String(state.shown[at])} for ${String(due.get(at))}`);
      }
    }
    return wrong.map((one) => `${state.after}: ${one}`);
  }

  async function wrongAfter(steps: readonly Step[]): Promise<string[]> {
    await start();
    const states: State[] = [];
    for (const step of steps) {
      await take(step);
      states.push({
        after: `${states.length + 1} ${step.join(' ')}`,
        typed: await typed(),
        shown: await shown(),
      });
    }
    const inputsOf = ({ typed: cells }: State): (string | number | null)[] =>
      [0, 1, 2, 3].map((row) => {
        const cell = cells[`${row},0`];
        return cell === undefined || cell.f !== undefined ? null : cell.v;
      });
    const known = new Map<string, Map<string, Map<string, string | number>>>();
    for (const state of states) {
      const inputs = inputsOf(state);
      const key = JSON.stringify(inputs);
      if (!known.has(key)) known.set(key, await answersOf(FORMULAS, inputs));
    }
    return states.flatMap((state) =>
      wrongIn(
        state,
        (formula, of) =>
          known.get(JSON.stringify(inputsOf(of)))?.get(formula) ??
          new Map<string, string | number>(),
      ),
    );
  }

  describe('Answers of several cells in the grid', () => {
    test('keep their place beside a formula that is blocked, whatever is typed and taken back', async () => {
      const heights = '=COVE.PASSHEIGHTS("3/8")';
      expect(
        await wrongAfter([
          ['type', 'C1', heights],
          ['type', 'B3', '=COVE.SETUP("3","3/4")'],
          ['type', 'D3', 'x'],
          ['undo'],
        ]),
      ).toEqual([]);
      expect(
        await wrongAfter([
          ['type', 'F1', '=COVE.PASSHEIGHTS("3/4")'],
          ['type', 'B8', '=COVE.SETUP(A1:A3,"3/8")'],
          ['type', 'C9', 'x'],
          ['undo'],
        ]),
      ).toEqual([]);
    });

    test('are what the functions give, after any edits and undos', async () => {
      const random = seededNumbers(1406);
      const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)]!;
      const steps = Array.from({ length: count(400, 40) }, (): Step => {
        const kind = random();
        if (kind < 0.2) return ['undo'];
        if (kind < 0.3) return ['redo'];
        if (kind < 0.4) return ['type', `A${1 + Math.floor(random() * 4)}`, pick(INPUTS)];
        const column = 1 + Math.floor(random() * (COLUMNS - 1));
        const at = `${columnLetters(column)}${1 + Math.floor(random() * ROWS)}`;
        return ['type', at, kind < 0.75 ? pick(FORMULAS) : pick(TYPED)];
      });
      for (let from = 0; from < steps.length; from += 20) {
        expect((await wrongAfter(steps.slice(from, from + 20))).slice(0, 5)).toEqual([]);
      }
    }, 300_000);
  });
}
