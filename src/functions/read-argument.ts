/** Reads one cell as its argument says: the only place where an argument's limits are enforced. */
import { failed, fault, ok, type Fault, type Outcome } from '../core/faults/fault.ts';
import { inchesGiven } from '../core/faults/quantity.ts';
import {
  exactDecimal,
  LONGEST_INCHES,
  parseLength,
  type ExactInches,
} from '../core/units/length.ts';
import { parseNumber, sayGiven } from '../core/units/number.ts';
import { checkShopSize } from '../core/units/plausible-length.ts';
import type {
  AngleArgument,
  Argument,
  LengthArgument,
  Value,
  WholeArgument,
  WordArgument,
} from './argument.ts';
import type { Cell } from './cell.ts';

/** What is thinner than this is nothing: a slip of a formula that should give 0. */
const LEAST_INCHES = 1e-6;

type AnyValue = number | string | ExactInches | undefined;

/**
 * Reads a cell; what is blank in any way (nothing, null, "" or spaces) is the same, and so is the 0 that
 * an older Excel hands over for a blank cell, wherever a 0 can't be meant.
 * Faults: `table.error-cell`, those of core's parseLength and parseNumber, `length.not-positive`,
 * `length.negative`, `length.beyond-shop`, `length.date-number`, `text.missing`, `number.not-whole`, `number.too-small`, `number.too-large`,
 * `angle.out-of-range`, `word.unknown`; each by the argument's name.
 */
export function readArgument<One extends Argument>(argument: One, cell: Cell): Outcome<Value<One>> {
  // One switch reads every kind; that each kind gives its own type is what readPlain is written to.
  return readPlain(argument, plainCell(cell)) as Outcome<Value<One>>;
}

/** Whether a cell holds nothing: a blank in a list of pieces is skipped. */
export function isBlank(cell: Cell): boolean {
  const plain = plainCell(cell);
  return (
    plain === undefined || plain === null || (typeof plain === 'string' && plain.trim() === '')
  );
}

function readPlain(argument: Argument, cell: Cell): Outcome<AnyValue> {
  const error = errorIn(cell);
  if (error !== undefined) return failed(fault('table.error-cell', argument.name, error));
  const blank = isBlank(cell) || (cell === 0 && isLeftOutByZero(argument));
  switch (argument.kind) {
    case 'length':
      return blank ? blankLength(argument) : readLength(argument, cell);
    case 'exact length':
      return blank ? exactOf(blankLength(argument)) : readExact(argument, cell);
    case 'angle':
      return blank ? blankNumber(argument) : readAngle(argument, cell);
    case 'whole number':
      return blank ? blankNumber(argument) : readWhole(argument, cell);
    case 'word':
      return blank ? ok(argument.allowed[0]) : readWord(argument, cell);
  }
}

/** Whether a 0 can't be meant, and a blank stands for something. */
function isLeftOutByZero(argument: Argument): boolean {
  if (argument.kind === 'word') return true;
  if (argument.blank === 'refused') return false;
  if (argument.zero === 'left out') return true;
  switch (argument.kind) {
    case 'whole number':
      return argument.least > 0;
    case 'angle':
      return argument.limits?.above === 0;
    case 'length':
    case 'exact length':
      return argument.least === 'above 0';
  }
}

function blankLength({ blank, name }: LengthArgument): Outcome<number | undefined> {
  if (blank === 'refused') return failed(fault('length.missing', name, null));
  return ok(blank === 'absent' ? undefined : blank);
}

function exactOf(read: Outcome<number | undefined>): Outcome<ExactInches | undefined> {
  return read.ok ? ok(read.value === undefined ? undefined : exactDecimal(read.value)) : read;
}

function blankNumber({ blank, name }: AngleArgument | WholeArgument): Outcome<number> {
  return blank === 'refused' ? failed(fault('text.missing', name, null)) : ok(blank);
}

function readLength(argument: LengthArgument, cell: Cell): Outcome<number> {
  // A number is taken as it is: ten thousand rows needn't pass through fractions.
  if (typeof cell === 'number' && Math.abs(cell) <= LONGEST_INCHES) {
    const wrong = checkLimits(argument, cell, cell);
    return wrong === undefined ? ok(cell) : failed(wrong);
  }
  const exact = readExact(argument, cell);
  return exact.ok ? ok(Number(exact.value)) : exact;
}

function readExact(argument: LengthArgument, cell: Cell): Outcome<ExactInches> {
  const parsed = parseLength(sayable(cell), argument.name);
  if (!parsed.ok) return parsed;
  const wrong = checkLimits(argument, cell, Number(parsed.value));
  return wrong === undefined ? parsed : failed(wrong);
}

function checkLimits(
  { name, least, most }: LengthArgument,
  given: Cell,
  inches: number,
): Fault | undefined {
  if (least === 'above 0' && !(inches >= LEAST_INCHES)) {
    return fault('length.not-positive', name, inchesGiven(inches));
  }
  if (least === 'from 0' && !(inches >= 0)) {
    return fault('length.negative', name, inchesGiven(inches));
  }
  return checkShopSize(name, given, inches, most);
}

function readAngle({ name, from, limits, asked }: AngleArgument, cell: Cell): Outcome<number> {
  const parsed = parseNumber(sayable(cell), name, '.', { degrees: true });
  if (!parsed.ok) return parsed;
  const question = asked?.(name, parsed.value);
  if (question !== undefined) return failed(question);
  if (limits === undefined) return parsed;
  const { above, least = 0, most } = limits;
  const low = above === undefined ? parsed.value < least : parsed.value <= above;
  if (!low && parsed.value <= most) return parsed;
  const start = above === undefined ? { least: { degrees: least } } : { above: { degrees: above } };
  return failed(
    fault(
      'angle.out-of-range',
      name,
      { degrees: parsed.value },
      { limit: { degrees: most }, details: { from, ...start } },
    ),
  );
}

function readWhole({ name, least, most }: WholeArgument, cell: Cell): Outcome<number> {
  const parsed = parseNumber(sayable(cell), name);
  if (!parsed.ok) return parsed;
  const { value } = parsed;
  if (value < least) return failed(fault('number.too-small', name, value, { limit: least }));
  if (value > most) return failed(fault('number.too-large', name, value, { limit: most }));
  return Number.isInteger(value) ? parsed : failed(fault('number.not-whole', name, value));
}

function readWord({ name, allowed }: WordArgument, cell: Cell): Outcome<string> {
  const given = sayable(cell);
  const word = typeof given === 'string' ? given.trim().toLowerCase() : undefined;
  const known = allowed.find((one) => one === word);
  if (known !== undefined) return ok(known);
  return failed(
    fault('word.unknown', name, sayGiven(given), { details: { allowed: allowed.join(', ') } }),
  );
}

/** TRUE and FALSE are said as the sheet shows them. */
function sayable(cell: Cell): Cell {
  return typeof cell === 'boolean' ? String(cell).toUpperCase() : cell;
}

/** A formatted number or another rich value carries the plain one beside it. */
function plainCell(cell: Cell): Cell {
  if (typeof cell !== 'object' || cell === null || !('basicValue' in cell)) return cell;
  return 'type' in cell && cell.type === 'Error' ? cell : cell.basicValue;
}

const ERROR_TEXT = /^#[A-Z_]+(?:\/[A0])?[!?]?$/u;

/** An error in a cell, as text: `#N/A`. It may come as an object with a code, or as its text. */
function errorIn(cell: Cell): string | undefined {
  if (typeof cell === 'string')
    return cell.startsWith('#') && ERROR_TEXT.test(cell) ? cell : undefined;
  if (typeof cell !== 'object' || cell === null) return undefined;
  const code = 'code' in cell ? cell.code : 'basicValue' in cell ? cell.basicValue : undefined;
  return typeof code === 'string' && code.startsWith('#') ? code : undefined;
}
