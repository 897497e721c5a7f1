/** A copy that came back against the copy as it was handed over, cell by cell, but for quantities. */
import { own } from '../../core/faults/argument.ts';
import { fault, type Caution, type Where } from '../../core/faults/fault.ts';
import { sayDay } from '../../core/units/calendar-day.ts';
import type { PriceOfLines } from '../../planning/compare/price-of-lines.ts';
import type { RawCell, RawRow } from '../../planning/input/raw-table.ts';
import type { JobPlan, PricedOption } from '../../planning/job-plan.ts';
import type { CellDescription } from '../grammar/description.ts';
import { PRICE_LINES } from '../words/price-lines.ts';
import { LINES, OPTIONS, PRICE } from './client-columns.ts';
import { clientRooms, type ClientLine } from './client-rooms.ts';
import {
  ALL_ROOMS,
  AS_QUOTED,
  sayJob,
  TO_PAY,
  TO_PAY_AGAIN,
  TO_PAY_WITH_OPTIONS,
} from './client-words.ts';
import { numberIn, sayCell } from './copy-cells.ts';
import { cellAt, textOf, type CopyColumns, type LineRow } from './copy-sheet.ts';
import {
  nameOfLine,
  type CopyLine,
  type CopyOption,
  type ReturnedCopy,
} from '../../planning/compare/returned-copy.ts';

/** A row as it was handed over. */
export interface HandedRow {
  readonly cells: readonly (CellDescription | null)[];
  /** Of a line, the line. */
  readonly line?: ClientLine & { readonly room: string };
  /** Of an option that may be taken up, the option. */
  readonly option?: PricedOption;
  /** Of the sum of a room's lines, the room. */
  readonly sumOf?: string;
  readonly walked: LineRow;
}

/** Such a row, and what it came back as. */
export interface Pairing {
  readonly handed: HandedRow;
  readonly row: RawRow;
}

/** What a plain cell says; nothing of a formula, which may say something else by now. */
export function valueOf(one: CellDescription | null | undefined): RawCell {
  const value = one?.value ?? null;
  return one?.formula !== undefined || value === '' ? null : value;
}

/** Texts that may say something else without anyone having changed them, each as what they always say. */
export type PlainText = (cell: RawCell | undefined) => string;

/** Behind the job in a sentence, as `sayCutSticks` has it. */
const CUT_SINCE = /^(?: [\d.,]+ of [^.]*\.)?$/u;

export function plainTexts(plan: JobPlan): PlainText {
  const priced = clientRooms(plan).filter(({ lines }) => lines.length > 0).length;
  const job = sayJob(plan, priced);
  return (cell) => {
    const text = textOf(cell);
    if (text.startsWith(AS_QUOTED.trim())) return AS_QUOTED;
    // How much of it is cut may have been otherwise on the day of the copy.
    return text.startsWith(job) && CUT_SINCE.test(text.slice(job.length)) ? job : text;
  };
}

/** What the copy's own formulas must show by now, in the currency or in pieces. */
export interface FiguresNow {
  readonly ofLine: (line: ClientLine) => number | undefined;
  readonly ofOption: (option: PricedOption) => number;
  readonly ofRoom: (room: string) => { readonly pieces: number; readonly amount: number };
  readonly inAll: Readonly<Record<string, { readonly pieces?: number; readonly amount: number }>>;
}

export function figuresNow(
  lines: readonly CopyLine[],
  options: readonly CopyOption[],
  price: PriceOfLines,
): FiguresNow {
  const ofOptions = new Map(
    options.map(({ name, isTaken, priceCents }) => [name, isTaken ? priceCents : 0]),
  );
  const optionsCents = [...ofOptions.values()].reduce((sum, one) => sum + one, 0);
  const byKey = new Map(lines.map(({ pieces, nowCents }) => [pieces, nowCents / 100]));
  const rooms = new Map<string, { pieces: number; cents: number }>();
  for (const { room, now, nowCents } of lines) {
    const sum = rooms.get(room) ?? { pieces: 0, cents: 0 };
    rooms.set(room, { pieces: sum.pieces + now, cents: sum.cents + nowCents });
  }
  const toPay = { amount: price.toPayCents / 100 };
  return {
    ofLine: ({ pieces }) => byKey.get(pieces),
    ofOption: ({ option }) => (ofOptions.get(option.name) ?? 0) / 100,
    ofRoom: (room) => {
      const { pieces = 0, cents: amount = 0 } = rooms.get(room) ?? {};
      return { pieces, amount: amount / 100 };
    },
    inAll: {
      [ALL_ROOMS]: { pieces: price.pieces, amount: price.linesCents / 100 },
      [TO_PAY]: toPay,
      [TO_PAY_AGAIN]: toPay,
      [TO_PAY_WITH_OPTIONS]: toPay,
      [PRICE_LINES.options]: { amount: optionsCents / 100 },
    },
  };
}

/** By column of the copy as handed over: what its formula must show now. */
function shownNow({ cells, line, option, sumOf }: HandedRow, now: FiguresNow): Map<number, number> {
  const figures = new Map<number, number>();
  const put = (column: number, value: number | undefined): void => {
    if (value !== undefined) figures.set(column, value);
  };
  if (line !== undefined) put(LINES.start('price'), now.ofLine(line));
  else if (option !== undefined) put(OPTIONS.start('price'), now.ofOption(option));
  else if (sumOf !== undefined) {
    const { pieces, amount } = now.ofRoom(sumOf);
    put(LINES.start('quantity'), pieces);
    put(LINES.start('price'), amount);
  } else if (cells[0]?.style === 'totalLabel') {
    const figure = now.inAll[String(cells[0].value)];
    put(PRICE.start('pieces'), figure?.pieces);
    put(PRICE.start('amount'), figure?.amount);
  }
  return figures;
}

/** Half a cent: what is shown is rounded to the cent. */
const HALF_CENT = 0.005;
/** Programs write numbers with 15 digits. */
const RELATIVE = 1e-12;

const OPEN: ReadonlySet<unknown> = new Set(['inputWhole', 'inputDate', 'signed']);

interface Held {
  readonly columns: CopyColumns;
  readonly formulas: ReadonlySet<string>;
  readonly figures: FiguresNow;
  readonly plain: PlainText;
  readonly where: (row: RawRow, column: number) => Where;
}

/** Every cell of a row that is neither as it was handed over nor open to be typed over. */
export function comparePairing(
  { handed, row }: Pairing,
  { columns, formulas, figures: now, plain, where }: Held,
): Caution[] {
  const figures = shownNow(handed, now);
  const name = own(nameOf(handed));
  const isQuoted = textOf(row.cells[columns[0] ?? 0]).startsWith(AS_QUOTED.trim());
  const signed = handed.cells.some((one) => one?.style === 'signed');
  const places = new Map(columns.map((column, at) => [column, at]));
  // A cell that was blanked at its end leaves a row shorter.
  const width = Math.max(row.cells.length, ...columns.map((column) => column + 1));
  return Array.from({ length: width }, (_, column) => row.cells[column] ?? null).flatMap(
    (cell, column): Caution[] => {
      const at = places.get(column);
      const was = at === undefined ? null : (handed.cells[at] ?? null);
      if (was !== null && OPEN.has(was.style)) return [];
      const is = where(row, column);
      if (was === null || was.value === null || (was.value === '' && was.formula === undefined)) {
        if (cell === null || signed) return [];
        return [fault('copy.note', name, sayCell(cell), { where: is })];
      }
      if (isQuoted) return [];
      const given = cell === null ? null : sayCell(cell);
      const figure = at === undefined ? undefined : figures.get(at);
      if (figure !== undefined) {
        if (typeof cell === 'object' && cell?.kind === 'uncalculated') return [];
        const shown = numberIn(cell);
        if (shown !== undefined && Math.abs(shown - figure) < HALF_CENT) return [];
        // Its formula is whole, and shows what it showed then: the program that saved it works nothing out.
        const isOld = formulas.has(cellAt(row, column)) && isSame(was.value, cell, plain);
        if (isOld) return [fault('copy.not-worked-out', 'workbook', null, { where: is })];
        return [fault('copy.figure-otherwise', name, given, { limit: figure, where: is })];
      }
      if (was.formula !== undefined) {
        if (formulas.has(cellAt(row, column)) || isSame(was.value, cell, plain)) return [];
      } else if (isSame(was.value, cell, plain)) return [];
      return [fault('copy.cell-changed', name, given, { limit: was.value, where: is })];
    },
  );
}

function isSame(was: string | number | boolean, cell: RawCell, plain: PlainText): boolean {
  if (typeof was === 'string') return plain(was) === plain(cell);
  const number = numberIn(cell);
  return (
    typeof was === 'number' &&
    number !== undefined &&
    Math.abs(number - was) <= RELATIVE * Math.max(1, Math.abs(was))
  );
}

/** What a row is called in words. */
function nameOf({ cells, line, option }: HandedRow): string {
  if (line !== undefined) return nameOfLine(line);
  if (option !== undefined) return option.option.name;
  return textOf(cells.map(valueOf).find((cell) => typeof cell === 'string') ?? '');
}

/** The line to sign: what stands in its two places, as far as a program has not moved them. */
export function acceptance(
  pairings: readonly Pairing[],
  columns: CopyColumns,
): ReturnedCopy['accepted'] {
  const found = pairings.find(({ handed }) => handed.cells.some((one) => one?.style === 'signed'));
  if (found === undefined) return { name: '', date: '' };
  const { cells } = found.handed;
  const places = cells.flatMap((one, at) => (one?.style === 'signed' ? [at] : []));
  const [name, date] = [places[0] ?? 0, places.at(-1) ?? 0];
  const label = cells.findLastIndex(
    (one, at) => at < date && one !== null && one.style !== 'signed',
  );
  const between = (from: number, to: number): string =>
    found.row.cells
      .slice(columns[from] ?? 0, columns[to] ?? undefined)
      .filter((cell) => cell !== null)
      .map((cell) =>
        typeof cell === 'object' && cell.kind === 'date' && cell.day !== undefined
          ? sayDay(cell.day)
          : sayCell(cell),
      )
      .join(' ');
  return { name: between(name, label), date: between(date, columns.length) };
}
