/** Random calls of the worksheet functions, as formulas in a sheet and as the core is asked. */
import type { CatalogueEntry } from '../../src/functions/catalogue-entry.ts';
import { CATALOGUE } from '../../src/functions/catalogue.ts';
import type { Results } from '../../src/functions/cell.ts';
import { columnLetters } from '../../src/core/cells/cell-range.ts';
import { seededNumbers } from '../seeded-numbers.ts';

/** A cell that a formula refers to: null is blank, an error stands there by a formula of its own. */
export type ArgumentCell = number | string | boolean | null | { readonly code: string };

export interface Call {
  readonly formula: string;
  /** Of the formula's own cell, from 0. */
  readonly row: number;
  readonly cells: readonly {
    readonly row: number;
    readonly column: number;
    readonly value: ArgumentCell;
  }[];
  /** What the core is asked with: a matrix an argument, undefined where it is left out. */
  readonly ranges: readonly (readonly (readonly ArgumentCell[])[] | undefined)[];
  /** As this engine answers; another one's may differ in the last bits. */
  readonly expected: Results;
}

/** Answers spill from column A on; what they are asked with stands beyond the widest of them. */
export const ARGUMENTS_FROM = 12;

/** Functions that take single cells: a range is an error for them, so they are given few. */
const OF_SINGLE_CELLS = [
  'EXACT',
  'NEAREST',
  'OUTLINE',
  'PASSHEIGHTS',
  'RAILMARKS',
  'STICKS',
  'TRIAL',
];

const JUNK: readonly ArgumentCell[] = [0, -1, 1e9, 0.1, 'wide', '1/0', ' ', true, false, '#N/A'];
const ERRORS: readonly ArgumentCell[] = [{ code: '#DIV/0!' }, { code: '#N/A' }];

/** What a parameter is plausibly given, by a word in its name. */
const PLAUSIBLE: readonly (readonly [RegExp, readonly ArgumentCell[]])[] = [
  [/offCenter/u, [0, 0.25, '1/2', 0.3]],
  [/blankWidth|stockWidth/u, [4.5, '5 1/4', 6]],
  [/thickness/iu, [0.75, 1, '1 1/4', '32 mm']],
  [/width/iu, [3, 2.5, '3 1/2', '76.2 mm', 4]],
  [/depth/iu, [0.5, 0.625, '3/4', '19 mm']],
  [/Diameter/u, [10, '9 7/8', 12, 8.25]],
  [/kerf/iu, [0.125, '3/32', 0, '3 mm']],
  [/approach/u, [30, 41.8, 60]],
  [/tilt$/u, [0, 12.5, 37.1]],
  [/height/u, [0.5, 0.75, '5/8']],
  [/spring/u, [38, 45, 52]],
  [/corner/u, [90, 135, 87.5]],
  [/pitch|slope/u, [7.2, 12, 33.7]],
  [/meets/u, ['level', 'slope']],
  [/tiltSide/u, ['left', 'right']],
  [/measuredFrom/u, ['front', 'blade']],
  [/tableFront/u, [8, '10 1/4']],
  [/tableBack/u, [9, '15 1/2']],
  [/nearFlat/u, [0.5, '3/4']],
  [/points/u, [3, 5, '4']],
  [/tolerance/u, ['1/64', 0.03]],
  [/painted/u, ['yes', 'no']],
  [/denominator/u, [8, 16, 64]],
  [/quantit/u, [1, 2, 5]],
  [/Pass|step/u, [0.0625, '1/16', '1/32']],
  [/./u, [3, '3 1/2', `7' 4 3/8"`, '90 mm', 46.625, 0.5]],
];

/** Of a trial nothing is said but of one that is near to what was aimed at. */
const OF_TRIAL: readonly (readonly [RegExp, readonly ArgumentCell[]])[] = [
  [/width/iu, [3.25, '3 1/4', 3.28]],
  [/depth/iu, [0.625, '5/8', 0.64]],
  [/offCenter/iu, [0.25, '1/4', 0.24]],
];

/** Points across an invented cove, each off by a little. */
function trace(next: () => number): ArgumentCell[][] {
  return Array.from({ length: 14 }, (_, at) => {
    const across = at / 4;
    const deep = at === 0 || at === 13 ? 0 : 0.7 - ((across - 1.625) / 2) ** 2;
    return [across, Math.max(0, deep + (next() - 0.5) / 50)];
  });
}

/** @param count of calls, the same for the same function */
export function randomCalls(entry: CatalogueEntry, count: number): Call[] {
  const next = seededNumbers(CATALOGUE.indexOf(entry) + 1);
  const pick = <One>(from: readonly One[]): One => from[Math.floor(next() * from.length)]!;
  // One bad cell spoils a call: the more cells, the fewer of them.
  const bad = 0.3 / entry.parameters.length;
  const singles = OF_SINGLE_CELLS.includes(entry.id) ? 0.95 : 0.6;
  let row = 0;
  return Array.from({ length: count }, () => {
    const given = entry.parameters.map(({ name, optional }) => {
      const kinds = entry.id === 'TRIAL' ? [...OF_TRIAL, ...PLAUSIBLE] : PLAUSIBLE;
      const plausible = kinds.find(([pattern]) => pattern.test(name))![1];
      const value = (): ArgumentCell => {
        const chance = next();
        if (chance < bad * 0.4) return pick(JUNK);
        if (chance < bad * 0.7) return null;
        return chance < bad ? pick(ERRORS) : pick(plausible);
      };
      const chance = next();
      if (chance < (optional ? 0.3 : 0.01)) return undefined;
      if (entry.id === 'MATCH' && name === 'points' && chance < 0.9) {
        return { literal: false, matrix: trace(next) };
      }
      if (chance < singles) return { literal: next() < 0.5, matrix: [[value()]] };
      const [rows, columns] = pick([
        [1, 1],
        [2, 1],
        [2, 1],
        [3, 1],
        [1, 2],
        [2, 2],
      ] as const);
      const matrix = Array.from({ length: rows }, () => Array.from({ length: columns }, value));
      return { literal: false, matrix };
    });
    while (given.length > 0 && given.at(-1) === undefined) given.pop();
    const cells: { row: number; column: number; value: ArgumentCell }[] = [];
    let column = ARGUMENTS_FROM;
    const words = given.map((one) => {
      if (one === undefined) return '';
      const [[only] = []] = one.matrix;
      if (one.literal && only !== undefined && only !== null) return written(only);
      const { matrix } = one;
      const [first, from] = [row, column];
      matrix.forEach((values, r) =>
        values.forEach((value, c) => cells.push({ row: first + r, column: from + c, value })),
      );
      column += matrix[0]!.length;
      const start = `${columnLetters(from)}${first + 1}`;
      const end = `${columnLetters(column - 1)}${first + matrix.length}`;
      return start === end ? start : `${start}:${end}`;
    });
    const ranges = given.map((one) => one?.matrix);
    const expected = entry.call(...ranges);
    const call = { formula: `=${entry.name}(${words.join(',')})`, row, cells, ranges, expected };
    row += Math.max(expected.length, ...given.map((one) => one?.matrix.length ?? 0), 3) + 1;
    return call;
  });
}

/** A literal; an error is what gives it. */
function written(value: Exclude<ArgumentCell, null>): string {
  if (typeof value === 'string') return `"${value.replaceAll('"', '""')}"`;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'number') return String(value);
  return errorFormula(value);
}

export function errorFormula({ code }: { readonly code: string }): string {
  return code === '#N/A' ? 'NA()' : '1/0';
}
