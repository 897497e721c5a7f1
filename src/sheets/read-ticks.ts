/** What a shop has ticked on the sheets of a plan: boxes beside sticks and pieces on Cutting, and Done on Pieces. */
import type { RawCell, RawRow } from '../planning/input/raw-table.ts';
import { cutKey, type Ticks } from '../planning/cut/cut-already.ts';
import type { CutStick, JobPlan } from '../planning/job-plan.ts';
import { cleanText } from './grammar/check/clean-text.ts';
import { PIECES_HEADINGS, sayNumber } from './pieces/pieces-sheet.ts';
import { CUT_MARK, NOT_TICKED } from './words/tick-marks.ts';
import { CUTTING_HEADINGS, EARLIER_HEADINGS } from './cutting/cutting-columns.ts';
import { markOf } from './cutting/lay-outs.ts';

/** The rows of the two sheets as they stand; none where the sheet isn't there. */
export interface TickedSheets {
  readonly cutting: readonly RawRow[];
  readonly pieces: readonly RawRow[];
}

/**
 * Reads the ticks of the sheets that were written from a plan. Columns are found by their headings,
 * sticks and pieces by their names, so that inserted columns and notes, and sorting Pieces, do no harm.
 *
 * @returns undefined where Cutting has other sticks, or other pieces on them, or is laid out as it was in
 *   earlier versions: it was written from another plan, and a tick on it means something else
 */
export function readTicks(plan: JobPlan, sheets: TickedSheets): Ticks | undefined {
  const cutting = readCutting(plan, sheets.cutting);
  return cutting && { ...cutting, pieces: readPieces(plan, sheets.pieces) };
}

/** `#12 A3`: the number of a stick, and what it is cut from. */
const STICK_NAME = /^#(\d+) /u;

function readCutting(
  plan: JobPlan,
  rows: readonly RawRow[],
): Pick<Ticks, 'sticks' | 'cuts'> | undefined {
  const nameOf = (profile: RawCell, number: string | undefined): string =>
    JSON.stringify([typeof profile === 'object' ? '' : cleanText(String(profile)), number]);
  const byName = new Map(
    plan.profiles.flatMap(({ profile, sticks }) =>
      sticks.map((stick) => [nameOf(profile.name, stick.id.split('#').at(-1)), stick] as const),
    ),
  );
  const sticks = new Set<string>();
  const cuts = new Set<string>();
  const at = rows.findIndex(({ cells }) => hasAll(cells, Object.values(CUTTING_HEADINGS)));
  if (at < 0) {
    return rows.some(({ cells }) => hasAll(cells, EARLIER_HEADINGS)) ? undefined : { sticks, cuts };
  }
  const heads = rows[at]?.cells ?? [];
  const profileAt = heads.indexOf(CUTTING_HEADINGS.profile);
  const boxes = placesOf(heads, CUTTING_HEADINGS.cut);
  const columns = placesOf(heads, CUTTING_HEADINGS.stick).map((name, pair) => ({
    name,
    box: boxes[pair] ?? -1,
    stick: undefined as CutStick | undefined,
    cutSoFar: 0,
  }));
  for (const { cells } of rows.slice(at + 1)) {
    const profile = cells[profileAt] ?? null;
    for (const column of columns) {
      const text = cells[column.name] ?? null;
      const isOn = isTicked(cells[column.box]);
      if (profile !== null && profile !== '') {
        const number = typeof text === 'string' ? STICK_NAME.exec(text)?.[1] : undefined;
        column.stick = number === undefined ? undefined : byName.get(nameOf(profile, number));
        column.cutSoFar = 0;
        if (number !== undefined && column.stick === undefined) return undefined;
        if (column.stick !== undefined && isOn) sticks.add(column.stick.id);
        continue;
      }
      // Other lists stand below the sticks: of them nothing is looked at.
      const own = column.stick?.pieces[column.cutSoFar];
      if (column.stick === undefined || own === undefined || text === null || text === '') continue;
      column.cutSoFar += 1;
      if (text !== cleanText(markOf(own))) return undefined;
      if (isOn) cuts.add(cutKey(column.stick.id, column.cutSoFar));
    }
  }
  return { sticks, cuts };
}

function hasAll(cells: readonly RawCell[], headings: readonly string[]): boolean {
  return headings.every((heading) => cells.includes(heading));
}

function placesOf(cells: readonly RawCell[], heading: string): number[] {
  return cells.flatMap((cell, at) => (cell === heading ? [at] : []));
}

/** Our own mark stands beside what Cutting says, where it is taken off. */
function readPieces(plan: JobPlan, rows: readonly RawRow[]): ReadonlySet<string> {
  const done = new Set<string>();
  const found = findColumns(rows, PIECES_HEADINGS);
  if (found === undefined) return done;
  const { room, run, piece, profile, done: box } = found.columns;
  const key = (parts: readonly (RawCell | undefined)[]): string =>
    JSON.stringify(
      parts.map((part) => (typeof part === 'object' ? '' : cleanText(String(part ?? '')))),
    );
  const byKey = new Map(
    plan.pieces.map((one) => [key([one.room, one.run, sayNumber(one), one.profile]), one]),
  );
  for (const { cells } of found.below) {
    const cell = cells[box];
    if (!isTicked(cell) || cell === CUT_MARK) continue;
    const own = byKey.get(key([cells[room], cells[run], cells[piece], cells[profile]]));
    if (own !== undefined && !own.done) done.add(own.id);
  }
  return done;
}

const NOT = new Set(['', ...NOT_TICKED]);

/** Anything but a blank, a no and an error: a cross, a date, initials. */
function isTicked(cell: RawCell | undefined): boolean {
  if (cell === undefined || cell === null || cell === false || cell === 0) return false;
  if (typeof cell === 'object') return cell.kind === 'date';
  return typeof cell !== 'string' || !NOT.has(cell.trim().toLowerCase());
}

function findColumns<Name extends string>(
  rows: readonly RawRow[],
  headings: Readonly<Record<Name, string>>,
):
  | { readonly columns: Readonly<Record<Name, number>>; readonly below: readonly RawRow[] }
  | undefined {
  const wanted = Object.entries(headings) as [Name, string][];
  for (const [at, { cells }] of rows.entries()) {
    const columns = wanted.map(([name, heading]) => [name, cells.indexOf(heading)] as const);
    if (columns.some(([, column]) => column < 0)) continue;
    return {
      columns: Object.fromEntries(columns) as Record<Name, number>,
      below: rows.slice(at + 1),
    };
  }
  return undefined;
}
