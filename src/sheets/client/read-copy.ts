/**
 * What a client has changed of a copy that comes back. The copy is described once more from its plan, and
 * what came back is held against it row by row: nothing is taken over from it but quantities, the date
 * and the line to sign.
 */
import { own, phrase } from '../../core/faults/argument.ts';
import {
  failed,
  fault,
  ok,
  rewordFault,
  type Caution,
  type Fault,
  type Outcome,
  type Where,
} from '../../core/faults/fault.ts';
import { priceOfLines } from '../../planning/compare/price-of-lines.ts';
import type { RawCell, RawRow } from '../../planning/input/raw-table.ts';
import { type JobPlan, isPriced, type PricedOption } from '../../planning/job-plan.ts';
import { cents } from '../../planning/money.ts';
import type { Stamp } from '../stamp.ts';
import { alignRows } from './align-rows.ts';
import { LINES, OPTIONS } from './client-columns.ts';
import { clientRooms } from './client-rooms.ts';
import { describeClientCopy } from './client-sheet.ts';
import { AS_QUOTED } from './client-words.ts';
import { readQuantity, sayCell } from './copy-cells.ts';
import {
  acceptance,
  comparePairing,
  figuresNow,
  plainTexts,
  valueOf,
  type HandedRow,
  type Pairing,
  type PlainText,
} from './copy-differences.ts';
import {
  cellAt,
  columnsIn,
  walkLines,
  type CopyColumns,
  type CopyFile,
  type LineRow,
} from './copy-sheet.ts';
import {
  nameOfLine,
  type CopyLine,
  type CopyOption,
  type ReturnedCopy,
} from '../../planning/compare/returned-copy.ts';

/**
 * Reads a copy against the plan that it was made of.
 *
 * @param stamp of the plan; its day may be another one than the copy bears
 * @returns faults: copy.headings-gone, and of quantities copy.quantity-blank, copy.quantity-text,
 *   copy.quantity-formula, number.negative, number.not-whole, number.too-large, table.error-cell,
 *   table.veiled-number
 */
export function readCopy(
  plan: JobPlan,
  stamp: Stamp,
  { sheet }: CopyFile,
  fileName: string,
): Outcome<ReturnedCopy> {
  // Of a job in which everything is done there are no lines, and no headings.
  const columns = columnsIn(sheet.rows) ?? (hasLines(plan) ? undefined : AS_HANDED);
  if (columns === undefined) return failed(fault('copy.headings-gone', own(fileName), sheet.name));
  const where = (row: RawRow, column: number): Where => ({
    sheet: sheet.name,
    cell: cellAt(row, column),
  });
  const plain = plainTexts(plan);
  const walked = walkLines(sheet.rows, columns);
  // What stands where nothing was handed over is told too.
  const keys = sheet.rows.map(
    (row, at) => keyOfRow(inPlace(row, columns), walked[at], plain) || sayRow(row.cells),
  );
  const handedKeys: string[] = [];
  const handed = handedRows(plan, stamp).filter(({ cells, walked: is }) => {
    // Of all rows one has a formula for its label, which says something only where a quantity was changed.
    const isQuoted = cells[0]?.formula !== undefined;
    const key = isQuoted ? AS_QUOTED : keyOfRow(cells.map(valueOf), is, plain);
    if (key === '' || (key === AS_QUOTED && !keys.includes(AS_QUOTED))) return false;
    handedKeys.push(key);
    return true;
  });
  const there = sheet.rows.flatMap((row, at) => (keys[at] === '' ? [] : [{ row, at }]));
  const rows = alignRows(
    handedKeys,
    there.map(({ at }) => keys[at] ?? ''),
  );
  const faults: Fault[] = [];
  const lines: CopyLine[] = [];
  const options: CopyOption[] = [];
  const pairings: Pairing[] = [];
  const findings: Caution[] = [];
  for (const [one, other] of rows) {
    const was = one === undefined ? undefined : handed[one];
    const now = other === undefined ? undefined : there[other];
    if (was !== undefined && now !== undefined) pairings.push({ handed: was, row: now.row });
    else if (now !== undefined) findings.push(...addedRow(now.row, walked[now.at], where));
    if (was?.option !== undefined) {
      const read = readOption(was.option, now?.row, { columns, formulas: sheet.formulas, where });
      if (read.ok) options.push(read.value);
      else faults.push(...read.faults);
    }
    if (was?.line === undefined) {
      if (was !== undefined && now === undefined) findings.push(goneRow(was));
      continue;
    }
    const { line } = was;
    if (now === undefined) {
      const name = own(nameOfLine(line));
      findings.push(fault('copy.line-gone', name, line.quantity));
      lines.push({ ...line, now: line.quantity, nowCents: line.priceCents });
      continue;
    }
    const column = columns[LINES.start('quantity')] ?? 0;
    const at = where(now.row, column);
    const isFormula = sheet.formulas.has(cellAt(now.row, column));
    const argument = phrase('quantityOfLine', { line: own(nameOfLine(line)) });
    const read = readQuantity(now.row.cells[column] ?? null, isFormula, argument, line.quantity);
    if (!read.ok) {
      faults.push(...read.faults.map((fault) => ({ ...fault, where: at })));
      continue;
    }
    const nowCents = cents((read.value * line.priceCents) / line.quantity);
    lines.push({ ...line, now: read.value, nowCents, where: at });
  }
  if (faults.length > 0) return { ok: false, faults };
  const price = {
    quoted: priceOfLines(plan, lines),
    now: priceOfLines(
      plan,
      lines.map(({ now, nowCents }) => ({ quantity: now, priceCents: nowCents })),
      plan.options
        .filter(isPriced)
        .filter(({ option }) =>
          options.some(({ name, isTaken }) => isTaken && name === option.name),
        )
        .map(({ more }) => more),
    ),
  };
  const figures = figuresNow(lines, options, price.now);
  findings.push(
    ...pairings.flatMap((pairing) =>
      comparePairing(pairing, { columns, formulas: sheet.formulas, figures, plain, where }),
    ),
  );
  const { unit, decimalSign } = plan.job.shop;
  const inOrder = onceNotWorkedOut(findings)
    .sort((a, b) => lineOf(a) - lineOf(b))
    .map((one) => rewordFault(one, unit, decimalSign));
  return ok({ lines, options, price, accepted: acceptance(pairings, columns), findings: inOrder });
}

/** Said of one cell: where it is true of one, it is of all that a quantity leads to. */
function onceNotWorkedOut(findings: readonly Caution[]): Caution[] {
  const first = findings.find(({ code }) => code === 'copy.not-worked-out');
  return findings.filter((one) => one.code !== 'copy.not-worked-out' || one === first);
}

function lineOf({ where }: Caution): number {
  return where !== undefined && 'cell' in where ? Number(/\d+$/u.exec(where.cell)?.[0]) : 0;
}

/** Where the columns of a copy stand as long as nobody puts one in. */
const AS_HANDED: CopyColumns = Array.from({ length: LINES.width }, (_, column) => column);

function hasLines(plan: JobPlan): boolean {
  return clientRooms(plan).some(({ lines }) => lines.length > 0);
}

/** Every row as it was handed over, those of lines with their line. */
function handedRows(plan: JobPlan, stamp: Stamp): HandedRow[] {
  const [sheet] = describeClientCopy(plan, stamp).sheets;
  if (sheet === undefined) throw new RangeError('The copy has no sheet.');
  const lines = clientRooms(plan).flatMap(({ room, lines: own }) =>
    own.map((line) => ({ ...line, room })),
  );
  const raw = sheet.rows.map(({ cells }, at) => ({
    line: at + 1,
    cells: cells.map((one) => one?.value ?? null),
  }));
  const walked = walkLines(raw, AS_HANDED);
  let next = 0;
  const options = plan.options.filter(isPriced);
  const rows = sheet.rows.map(({ cells }, at): HandedRow => {
    const is = walked[at] ?? { is: 'other' };
    if (is.is === 'other' && cells[OPTIONS.start('quantity')]?.style === 'inputWhole') {
      const option = options.shift();
      if (option === undefined) throw new RangeError('The copy offers an option too many.');
      return { cells, walked: is, option };
    }
    if (is.is === 'sum') return { cells, walked: is, sumOf: lines[next - 1]?.room ?? '' };
    const line = is.is === 'line' ? lines[next++] : undefined;
    return { cells, walked: is, ...(line === undefined ? {} : { line }) };
  });
  if (next !== lines.length)
    throw new RangeError(`${next} lines are on the copy of ${lines.length}.`);
  if (options.length > 0) throw new RangeError('The copy lacks an option.');
  return rows;
}

/** @param row as it came back; undefined where it was taken out, so that nobody takes the option up */
function readOption(
  { option, more }: PricedOption,
  row: RawRow | undefined,
  held: {
    readonly columns: CopyColumns;
    readonly formulas: ReadonlySet<string>;
    readonly where: (row: RawRow, column: number) => Where;
  },
): Outcome<CopyOption> {
  const { name } = option;
  const { priceCents } = more;
  if (row === undefined) return ok({ name, isTaken: false, priceCents });
  const column = held.columns[OPTIONS.start('quantity')] ?? 0;
  const where = held.where(row, column);
  const argument = phrase('quantityOfLine', { line: own(name) });
  const isFormula = held.formulas.has(cellAt(row, column));
  const read = readQuantity(row.cells[column] ?? null, isFormula, argument, 0, 1);
  if (!read.ok) return { ok: false, faults: read.faults.map((one) => ({ ...one, where })) };
  return ok({ name, isTaken: read.value === 1, priceCents, where });
}

/** The cells where they stood when the copy was handed over. */
function inPlace({ cells }: RawRow, columns: CopyColumns): RawCell[] {
  return columns.map((column) => cells[column] ?? null);
}

/** What a row is told by: a line by room, molding and length, any other by its first text. Empty: it says nothing. */
function keyOfRow(
  cells: readonly RawCell[],
  walked: LineRow | undefined,
  plain: PlainText,
): string {
  const texts = cells.map(plain);
  if (walked !== undefined && walked.is !== 'other') {
    return JSON.stringify([walked.is, walked.room, texts[0], texts[1]]);
  }
  return texts.find((one) => one !== '') ?? '';
}

/** What a row says, as far as it does. */
function sayRow(cells: readonly RawCell[]): string {
  return cells
    .filter((cell) => cell !== null && !isUncalculated(cell))
    .map(sayCell)
    .join(', ');
}

function isUncalculated(cell: RawCell): boolean {
  return typeof cell === 'object' && cell?.kind === 'uncalculated';
}

function addedRow(
  row: RawRow,
  walked: LineRow | undefined,
  where: (row: RawRow, column: number) => Where,
): Caution[] {
  const first = row.cells.findIndex((cell) => cell !== null);
  const code = walked?.is === 'line' ? 'copy.line-added' : 'copy.row-added';
  return [fault(code, 'workbook', sayRow(row.cells), { where: where(row, Math.max(0, first)) })];
}

function goneRow({ cells }: HandedRow): Caution {
  return fault('copy.row-gone', 'workbook', sayRow(cells.map(valueOf)));
}
