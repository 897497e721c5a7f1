/** What a shop has ticked on the sheets of a plan: boxes under Cut on Cutting, and Done on Pieces. */
import type { RawCell, RawRow } from '../planning/input/raw-table.ts';
import { cutKey, type Ticks } from '../planning/cut/cut-already.ts';
import type { CutStick, JobPlan } from '../planning/job-plan.ts';
import { cleanText } from './grammar/check/clean-text.ts';
import { PIECES_HEADINGS, sayNumber } from './pieces/pieces-sheet.ts';
import { CUT_MARK, NOT_TICKED } from './words/tick-marks.ts';
import { CUTTING_HEADINGS } from './cutting/cutting-columns.ts';

/** The rows of the two sheets as they stand; none where the sheet isn't there. */
export interface TickedSheets {
  readonly cutting: readonly RawRow[];
  readonly pieces: readonly RawRow[];
}

/**
 * Reads the ticks of the sheets that were written from a plan. Columns are found by their headings,
 * sticks and pieces by their names, so that sorting, inserted columns and notes do no harm.
 *
 * @returns undefined where Cutting has other sticks, or other pieces on them: it was written from
 *   another plan, and a tick on it means something else
 */
export function readTicks(plan: JobPlan, sheets: TickedSheets): Ticks | undefined {
  const cutting = readCutting(plan, sheets.cutting);
  return cutting && { ...cutting, pieces: readPieces(plan, sheets.pieces) };
}

const STICK_ID = /#\d+$/u;

function readCutting(
  plan: JobPlan,
  rows: readonly RawRow[],
): Pick<Ticks, 'sticks' | 'cuts'> | undefined {
  const all = plan.profiles.flatMap((one) => one.sticks);
  const byId = new Map(all.map((stick) => [cleanText(stick.id), stick]));
  const sticks = new Set<string>();
  const cuts = new Set<string>();
  const found = findColumns(rows, CUTTING_HEADINGS);
  if (found === undefined) return { sticks, cuts };
  const { cut, number, piece } = found.columns;
  let current: CutStick | undefined;
  let cutSoFar = 0;
  for (const { cells } of found.below) {
    const at = cells[number] ?? null;
    const stick = typeof at === 'string' ? byId.get(at) : undefined;
    if (stick !== undefined) {
      current = stick;
      cutSoFar = 0;
      if (isTicked(cells[cut])) sticks.add(stick.id);
      continue;
    }
    if (typeof at === 'string' && STICK_ID.test(at)) return undefined;
    // Other lists stand below the sticks: of them nothing is looked at.
    if (current === undefined || at === null || typeof at === 'object') continue;
    const place = Number(at);
    const own = current.pieces[cutSoFar];
    if (Number.isNaN(place) || own === undefined) continue;
    cutSoFar += 1;
    const name = cells[piece];
    const isHere = typeof name === 'string' && name.startsWith(cleanText(own.id));
    if (place !== cutSoFar || !isHere) return undefined;
    if (isTicked(cells[cut])) cuts.add(cutKey(current.id, place));
  }
  return { sticks, cuts };
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
