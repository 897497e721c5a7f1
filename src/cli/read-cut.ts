/** The two tables of `cut`: the pieces that are wanted and the sticks that there are. */
import { MOST_PLANNED_PIECES, MOST_STICKS } from '../cutting/problem/limits.ts';
import { isSameCurrency } from '../core/units/currency.ts';
import { exactDecimal, type ExactInches } from '../core/units/length.ts';
import { isBareNumber, LONGEST_RUN_INCHES } from '../core/units/plausible-length.ts';
import { lengthMarkOf, type LengthMark } from '../core/units/stated-unit.ts';
import { fault, placeFault, type Fault, type Where } from '../core/faults/fault.ts';
import { headed, type Heading } from '../planning/input/headings/heading.ts';
import {
  currencyIn,
  plainValue,
  saysLengthUnit,
  type CellValue,
} from '../planning/input/read-cell.ts';
import { cautionRowsAgain } from '../planning/input/rows-again.ts';
import { notShort } from '../planning/input/short-lengths.ts';
import { cautionSums } from '../planning/input/total-rows.ts';
import type { Findings, RowReader } from '../planning/input/row-reader.ts';
import type { OfMaterial } from './cut-materials.ts';

const UNITS: readonly LengthMark[] = ['in', 'ft', 'mm', 'cm', 'm'];

export const PIECE_HEADINGS: readonly Heading[] = [
  {
    ...headed('length'),
    required: true,
    holds: 'length',
    meaning: 'Of one piece.',
    also: ['len', 'lengths', 'cut length', 'piece length'],
    often: ['long', 'size'],
  },
  {
    ...headed('quantity'),
    holds: 'count',
    meaning: 'How many of it; blank is 1.',
    also: ['qty', 'quantities', 'pcs', 'pieces', 'count', 'how many', 'no of pieces'],
    often: ['amount', 'number', 'units', 'ea'],
  },
  {
    ...headed('label'),
    holds: 'note',
    meaning: 'What it is called in the plan.',
    also: ['labels', 'name', 'part', 'piece', 'mark', 'tag', 'item', 'description', 'note'],
  },
  {
    ...headed('unit'),
    holds: 'word',
    allowed: UNITS,
    meaning: "Of the row's bare numbers; without any it is inches.",
    also: ['uom', 'unit of measure', 'unit of length', 'measured in'],
  },
  {
    ...headed('material'),
    holds: 'name',
    meaning:
      'Of which it is made: it is cut from sticks of that alone. Blank in all rows is from any stick.',
    also: [
      'materials',
      'wood',
      'species',
      'profile',
      'profile name',
      'molding',
      'moulding',
      'trim',
    ],
  },
];

export const STICK_HEADINGS: readonly Heading[] = [
  {
    ...headed('length'),
    required: true,
    holds: 'length',
    meaning: 'Of one stick.',
    also: ['len', 'lengths', 'stick length', 'stock length', 'board length'],
    often: ['long', 'size'],
  },
  {
    ...headed('price'),
    holds: 'money',
    meaning: 'Of one stick, to the cent; of all sticks or of none.',
    also: ['cost', 'unit price', 'unit cost', 'price each'],
    often: ['each', 'rate'],
  },
  {
    ...headed('count'),
    holds: 'count',
    meaning: 'How many there are; blank is as many as needed.',
    also: ['available', 'qty', 'quantity', 'quantities', 'pcs', 'pieces', 'have', 'on hand'],
    often: ['in stock', 'stock', 'amount', 'number', 'units', 'rack'],
  },
  {
    ...headed('unit'),
    holds: 'word',
    allowed: UNITS,
    meaning: "Of the row's bare numbers; without any it is inches.",
    also: ['uom', 'unit of measure', 'unit of length', 'measured in'],
  },
  {
    ...headed('kerf'),
    holds: 'length',
    meaning: 'Lost at each cut; the same in every row that states one.',
    also: ['saw kerf', 'blade kerf', 'crosscut kerf'],
  },
  {
    ...headed('material'),
    holds: 'name',
    meaning: 'Of which it is made; where sticks are of several, each piece says of which it is.',
    also: [
      'materials',
      'wood',
      'species',
      'profile',
      'profile name',
      'molding',
      'moulding',
      'trim',
      'for',
    ],
  },
];

const MOST_PRICE = 1_000_000;
/** No saw takes more, in inches: a bare number that comes to more is asked about. Common practice [C]. */
export const WIDEST_KERF = 1;
/** In which no kerf is given. */
const LONG_UNITS: readonly LengthMark[] = ['ft', 'm'];

export interface PieceRow extends OfMaterial {
  readonly length: ExactInches;
  readonly quantity: number;
  /** Empty where the person gave none. */
  readonly label: string;
  /** Of its bare numbers. */
  readonly unit: LengthMark;
  readonly where: Where;
}

export interface StickRow extends OfMaterial {
  readonly length: ExactInches;
  /** Null where no stick of the list has a price. */
  readonly priceCents: number | null;
  /** What its price says it is in, a sign or letters; undefined where it says nothing. */
  readonly currency: string | undefined;
  /** Null is as many as needed. */
  readonly count: number | null;
  /** Of its bare numbers. */
  readonly unit: LengthMark;
  readonly where: Where;
}

/** A kerf that the list of sticks states, and where. */
export interface StatedKerf {
  readonly kerf: ExactInches;
  readonly where: Where;
}

export function readPieceRows(rows: readonly RowReader[], findings: Findings): PieceRow[] {
  const haveUnits = rows.some((row) => !row.isBlank('unit'));
  const pieces = rows.flatMap((row): PieceRow[] => {
    const unit = readUnit(row, haveUnits);
    const length = row.requiredLength('length', LONGEST_RUN_INCHES, unit);
    const quantity = row.whole('quantity', 1, 1, MOST_PLANNED_PIECES);
    const label = row.text('label');
    if (length === undefined) return [];
    return [{ length, quantity, label, unit, where: row.where('length'), ...materialOf(row) }];
  });
  cautionSums(pieces, findings);
  cautionRowsAgain('pieces', pieces, allOf, findings);
  const count = pieces.reduce((sum, { quantity }) => sum + quantity, 0);
  if (count > MOST_PLANNED_PIECES) {
    const limit = MOST_PLANNED_PIECES;
    findings.faults.push(fault('cutting.too-many-pieces', 'pieces', count, { limit }));
  }
  return pieces;
}

function allOf({ length, quantity, label, material }: PieceRow): string {
  return JSON.stringify([length.toFraction(), quantity, label, material]);
}

/** Sticks have prices, all of them, or none: a blank among prices is refused, never 0. */
export function readStickRows(rows: readonly RowReader[]): StickRow[] {
  const havePrices = rows.some((row) => !row.isBlank('price'));
  const haveUnits = rows.some((row) => !row.isBlank('unit'));
  const currencies: string[] = [];
  return rows.flatMap((row): StickRow[] => {
    const unit = readUnit(row, haveUnits);
    // Where the row says its unit, that is meant.
    const read = row.requiredLength('length', LONGEST_RUN_INCHES, unit);
    const length = row.isBlank('unit') ? notShort(row, 'length', read) : read;
    const priceCents = havePrices ? readCents(row) : null;
    const count = row.isBlank('count') ? null : row.whole('count', 0, 0, MOST_STICKS);
    if (length === undefined || priceCents === undefined) return [];
    const currency = priceCents === null ? undefined : readCurrency(row, currencies);
    const where = row.where('length');
    return [{ length, priceCents, currency, count, unit, where, ...materialOf(row) }];
  });
}

function materialOf(row: RowReader): OfMaterial {
  return { material: row.text('material'), materialAt: row.where('material') };
}

/** Prices are added up: those that say what they are in must agree with each other. */
function readCurrency(row: RowReader, earlier: string[]): string | undefined {
  const cell = row.value('price');
  const currency = cell.ok && cell.value !== null ? currencyIn(cell.value) : undefined;
  if (currency === undefined) return undefined;
  const other = earlier.find((one) => !isSameCurrency(one, currency));
  if (other === undefined) earlier.push(currency);
  else row.refuse('price', fault('cutting.currency-differs', 'price', currency, { limit: other }));
  return currency;
}

/** The kerf of the rows that state one; they must agree. */
export function readKerfColumn(rows: readonly RowReader[]): StatedKerf | undefined {
  let stated: StatedKerf | undefined;
  for (const row of rows) {
    if (row.isBlank('kerf')) continue;
    const kerf = readKerf(row);
    if (kerf === undefined) continue;
    stated ??= { kerf, where: row.where('kerf') };
    if (stated.kerf.equals(kerf)) continue;
    const limit = { inches: Number(stated.kerf) };
    row.refuse('kerf', fault('cutting.kerf-differs', 'kerf', { inches: Number(kerf) }, { limit }));
  }
  return stated;
}

/** One kerf said in two places is one where both say the same. */
export function checkKerfTwice(stated: StatedKerf, option: ExactInches): Fault[] {
  if (stated.kerf.equals(option)) return [];
  const limit = { inches: Number(option) };
  const one = fault('cutting.kerf-twice', 'kerf', { inches: Number(stated.kerf) }, { limit });
  return [placeFault(one, stated.where)];
}

function readKerf(row: RowReader): ExactInches | undefined {
  // What is wrong with it was found with the row's length.
  const unit = lengthMarkOf(row.text('unit')) ?? 'in';
  if (!LONG_UNITS.includes(unit)) return row.length('kerf', true, WIDEST_KERF, unit);
  const inches = row.length('kerf', true, WIDEST_KERF, 'in');
  if (inches === undefined) return undefined;
  // One that says its unit itself is the same whatever a bare number is.
  if (row.length('kerf', true, LONGEST_RUN_INCHES, 'mm')?.equals(inches) === true) return inches;
  const more = { details: { unit } };
  return row.refuse('kerf', fault('cutting.kerf-without-unit', 'kerf', row.text('kerf'), more));
}

/** Of a row's bare numbers; inches where no row says one: a blank below mm may well mean the same again. */
function readUnit(row: RowReader, haveUnits: boolean): LengthMark {
  if (row.isBlank('unit')) {
    const length = row.value('length');
    const isBare = length.ok && length.value !== null && !saysUnit(length.value);
    if (haveUnits && isBare) row.refuse('unit', fault('cutting.some-units', 'unit', null));
    return 'in';
  }
  const mark = lengthMarkOf(row.text('unit'));
  return mark ?? row.word('unit', UNITS, 'in');
}

/** Sums of prices are exact since a price is whole cents: a finer one is refused, never rounded. */
function readCents(row: RowReader): number | undefined {
  if (row.isBlank('price')) {
    return row.refuse('price', fault('cutting.some-prices', 'price', null));
  }
  const price = row.number('price', 0, MOST_PRICE, { currency: '' });
  if (price === undefined) return undefined;
  const exact = exactDecimal(price).mul(100);
  if (exact.d === 1n) return Number(exact);
  return row.refuse('price', fault('cutting.price-too-fine', 'price', price));
}

function saysUnit(length: CellValue): boolean {
  return saysLengthUnit(length) || !isBareNumber(plainValue(length));
}
