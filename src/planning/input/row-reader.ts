/** Reads the cells of one row into typed values, collecting every fault with its place. */
import type { Argument, HeadingKey } from '../../core/faults/argument.ts';
import {
  failed,
  fault,
  ok,
  placeFault,
  type Caution,
  type Fault,
  type Outcome,
  type Where,
} from '../../core/faults/fault.ts';
import { parseDay, type CalendarDay } from '../../core/units/calendar-day.ts';
import type { ExactInches } from '../../core/units/length.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import type { LengthMark } from '../../core/units/stated-unit.ts';
import { askAboutCorner, cautionCorner } from '../../core/units/plausible-angle.ts';
import {
  askAboutGroup,
  askAboutLength,
  askAboutThousands,
  isBareNumber,
  LONGEST_RUN_INCHES,
} from '../../core/units/plausible-length.ts';
import { sayGiven, type AllowedUnits } from '../../core/units/number.ts';
import { nameKey } from '../job.ts';
import { whereIs, type RawCell, type RawRow, type RawTable } from './raw-table.ts';
import {
  askAboutShare,
  isValue,
  lengthIn,
  numberIn,
  plainValue,
  saysLengthUnit,
  whyNoValue,
  type CellReading,
  type CellValue,
} from './read-cell.ts';
import { isDitto } from './ditto.ts';
import { readWord } from './read-word.ts';

/** Longest text read from a cell: longer ones can't be printed on a label or a sheet. */
const LONGEST_TEXT = 500;

/** What a count may be shown in. Common practice [C]. */
const COUNTS: AllowedUnits = {
  words: ['pcs', 'pc', 'pieces', 'piece', 'ea', 'each', 'x', '×', 'sticks', 'lengths'],
};

/** A length that was typed without a unit. */
export interface BareLength {
  readonly given: string | number | boolean;
  readonly inches: number;
  /** The shop's, in which it was read. */
  readonly unit: LengthUnit;
}

export interface Findings {
  readonly faults: Fault[];
  readonly cautions: Caution[];
}

/** Headings are the same without regard to case, spaces, hyphens, stars, points and percent signs. */
export function headingKey(heading: RawCell): string {
  return typeof heading === 'string' ? nameKey(heading).replace(/[\s*%_.:‐-]/gu, '') : '';
}

export class RowReader {
  readonly #table: RawTable;
  readonly #row: RawRow;
  readonly #columns: ReadonlyMap<HeadingKey, number>;
  readonly #reading: CellReading;
  readonly #findings: Findings;
  /** Headings whose cell was told of. */
  readonly #dittos = new Set<HeadingKey>();

  constructor(
    table: RawTable,
    row: RawRow,
    columns: ReadonlyMap<HeadingKey, number>,
    reading: CellReading,
    findings: Findings,
  ) {
    this.#table = table;
    this.#row = row;
    this.#columns = columns;
    this.#reading = reading;
    this.#findings = findings;
  }

  where(heading: HeadingKey): Where {
    return whereIs(this.#table, this.#row.line, this.#columns.get(heading) ?? 0);
  }

  refuse(heading: HeadingKey, one: Fault): undefined {
    this.#findings.faults.push(placeFault(one, this.where(heading)));
    return undefined;
  }

  caution(heading: HeadingKey, one: Caution): void {
    this.#findings.cautions.push(placeFault(one, this.where(heading)));
  }

  /** The cell's value, null where it is blank. One that holds no value is at fault, which is in the findings. */
  raw(heading: HeadingKey): Outcome<string | number | boolean | null> {
    const read = this.value(heading);
    return read.ok ? ok(read.value === null ? null : plainValue(read.value)) : read;
  }

  /** The same with what is seen beside a number. */
  value(heading: HeadingKey): Outcome<CellValue | null> {
    const cell = this.cell(heading);
    if (cell === null || (typeof cell === 'string' && cell.trim() === '')) return ok(null);
    return isValue(cell) ? ok(cell) : this.#note(heading, failed(whyNoValue(heading, cell)));
  }

  /** Whether nothing is in the cell; one that can't be read holds something. */
  isBlank(heading: HeadingKey): boolean {
    const cell = this.cell(heading);
    return cell === null || (typeof cell === 'string' && cell.trim() === '');
  }

  text(heading: HeadingKey): string {
    const value = this.#given(heading);
    const text = value === undefined ? '' : String(value).trim();
    if (text.length > LONGEST_TEXT) {
      this.refuse(heading, fault('text.too-long', heading, text.length, { limit: LONGEST_TEXT }));
    }
    if (isDitto(heading, text) && !this.#dittos.has(heading)) {
      this.#dittos.add(heading);
      this.refuse(heading, fault('text.ditto', heading, text));
    }
    return text;
  }

  requiredText(heading: HeadingKey): string | undefined {
    if (this.isBlank(heading)) {
      return this.refuse(heading, fault('text.missing', heading, null));
    }
    const text = this.text(heading);
    return text === '' ? undefined : text;
  }

  /**
   * A length above 0 (or from 0, where `orZero`); undefined when blank or at fault.
   *
   * @param most inches: a bare number that comes to more is asked about
   * @param bareUnit of a bare number, where it isn't the table's
   */
  length(
    heading: HeadingKey,
    orZero = false,
    most: number = LONGEST_RUN_INCHES,
    bareUnit: LengthMark = this.#reading.unit,
  ): ExactInches | undefined {
    const value = this.#valued(heading);
    if (value === undefined) return undefined;
    const parsed = this.#note(
      heading,
      lengthIn(value, heading, { ...this.#reading, unit: bareUnit }),
    );
    if (!parsed.ok) return undefined;
    const inches = Number(parsed.value);
    if (inches < 0 || (inches === 0 && !orZero)) {
      const code = orZero ? 'length.negative' : 'length.not-positive';
      return this.refuse(heading, fault(code, heading, { inches }));
    }
    const isSaid = saysLengthUnit(value);
    const asked = isSaid ? undefined : askAboutLength(heading, plainValue(value), inches, most);
    return asked === undefined ? parsed.value : this.refuse(heading, asked);
  }

  requiredLength(
    heading: HeadingKey,
    most: number = LONGEST_RUN_INCHES,
    bareUnit?: LengthMark,
  ): ExactInches | undefined {
    if (this.isBlank(heading)) return this.refuse(heading, fault('length.missing', heading, null));
    const read = this.length(heading, false, most, bareUnit);
    // Of a run or a stick: a kerf of 3.175 mm is meant.
    if (read === undefined || most !== LONGEST_RUN_INCHES) return read;
    const unit = bareUnit ?? this.#reading.unit;
    const asked = askAboutThousands(heading, this.#valued(heading), unit);
    return asked === undefined ? read : this.refuse(heading, asked);
  }

  /** The number of a cell that says no unit, and what it is in inches; undefined for any other, which is told of elsewhere. */
  bareLength(heading: HeadingKey): BareLength | undefined {
    const cell = this.cell(heading);
    if (cell === null || !isValue(cell) || saysLengthUnit(cell)) return undefined;
    const given = plainValue(cell);
    const read = isBareNumber(given) ? lengthIn(cell, heading, this.#reading) : undefined;
    if (read?.ok !== true) return undefined;
    return { given, inches: Number(read.value), unit: this.#reading.unit };
  }

  /**
   * A number within limits; undefined when blank or at fault. A percent below one that doesn't say it is
   * one is asked about.
   *
   * @param units what may stand with it: a percent, degrees, the shop's money
   */
  number(
    heading: HeadingKey,
    least: number,
    most: number,
    units: AllowedUnits = {},
  ): number | undefined {
    const value = this.#valued(heading);
    if (value === undefined) return undefined;
    const parsed = this.#note(heading, numberIn(value, heading, this.#reading, units));
    if (!parsed.ok) return undefined;
    const asked = units.percent === true ? askAboutShare(value, heading, parsed.value) : undefined;
    if (asked !== undefined) this.caution(heading, asked);
    if (parsed.value < least) {
      const low = fault('number.too-small', heading, parsed.value, { limit: least });
      return this.refuse(heading, low);
    }
    if (parsed.value > most) {
      const high = fault('number.too-large', heading, parsed.value, { limit: most });
      return this.refuse(heading, high);
    }
    return parsed.value;
  }

  /** The corner, in degrees; undefined where no two walls meet so. One that may be a miter is cautioned. */
  plausibleCorner(heading: HeadingKey, corner: number): number | undefined {
    const tiny = askAboutCorner(heading, corner);
    if (tiny !== undefined) return this.refuse(heading, tiny);
    const sharp = cautionCorner(heading, corner);
    if (sharp !== undefined) this.caution(heading, sharp);
    return corner;
  }

  whole(heading: HeadingKey, usual: number, least: number, most: number): number {
    const value = this.number(heading, least, most, COUNTS);
    if (value === undefined) return usual;
    const asked = askAboutGroup(heading, this.#given(heading));
    if (asked !== undefined) this.refuse(heading, asked);
    if (Number.isInteger(value)) return value;
    this.refuse(heading, fault('number.not-whole', heading, value));
    return usual;
  }

  /** One of a few words, as `readWord` reads them; the usual one when blank or at fault. */
  word<Word extends string>(heading: HeadingKey, allowed: readonly Word[], usual: Word): Word {
    const value = this.#given(heading);
    if (value === undefined) return usual;
    const read = readWord(String(value), allowed);
    if ('word' in read) return read.word;
    const details = { allowed: allowed.join(', '), may: read.may };
    this.refuse(heading, fault('word.unknown', heading, sayGiven(value), { details }));
    return usual;
  }

  /** A day that is told without a doubt: a date's own cell, 2026-11-30, or with its month by name. */
  day(heading: HeadingKey, argument: Argument): CalendarDay | undefined {
    const cell = this.cell(heading);
    const isDate = typeof cell === 'object' && cell?.kind === 'date';
    const value = isDate && cell.day !== undefined ? cell.day : this.#given(heading);
    const day = value === undefined ? undefined : this.#note(heading, parseDay(value, argument));
    return day?.ok === true ? day.value : undefined;
  }

  /** The usual answer when blank or at fault. */
  yesNo(heading: HeadingKey, usual: boolean): boolean {
    const value = this.#given(heading);
    if (value === undefined) return usual;
    if (typeof value === 'boolean') return value;
    const word = String(value).trim().toLowerCase();
    if (['yes', 'y', 'true', '1', 'x', '✓', '✔'].includes(word)) return true;
    if (['no', 'n', 'false', '0'].includes(word)) return false;
    const details = { allowed: 'yes, no' };
    this.refuse(heading, fault('word.unknown', heading, sayGiven(value), { details }));
    return usual;
  }

  cell(heading: HeadingKey): RawCell {
    const column = this.#columns.get(heading);
    return column === undefined ? null : (this.#row.cells[column] ?? null);
  }

  /** The cell's value as a text says it; undefined when blank or at fault. */
  #given(heading: HeadingKey): string | number | boolean | undefined {
    const value = this.#valued(heading);
    return value === undefined ? undefined : plainValue(value);
  }

  /** The cell's value; undefined when blank or at fault. */
  #valued(heading: HeadingKey): CellValue | undefined {
    const value = this.value(heading);
    return value.ok ? (value.value ?? undefined) : undefined;
  }

  /** The same outcome, its faults among the findings. */
  #note<T>(heading: HeadingKey, outcome: Outcome<T>): Outcome<T> {
    if (!outcome.ok) for (const one of outcome.faults) this.refuse(heading, one);
    return outcome;
  }
}
