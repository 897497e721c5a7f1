/**
 * Which column of a table stands under which of our headings, and what is wrong with those that stand
 * under none. What would change a quantity, a price or a shape by being passed over is refused; what
 * is plainly the person's own is said once and left alone.
 */
import type { HeadingKey } from '../../core/faults/argument.ts';
import { fault, placeFault, type Fault, type Where } from '../../core/faults/fault.ts';
import type { LengthReading } from '../../core/units/length.ts';
import {
  countsRows,
  filledCells,
  holdsNumbers,
  mayCountThings,
  unitsNamed,
} from './headings/column-contents.ts';
import type { Heading } from './headings/heading.ts';
import {
  findHeading,
  findMeant,
  headNotUsed,
  meaningOfNumbers,
  saysNotUsed,
} from './headings/meant-headings.ts';
import {
  headingWithoutUnit,
  sayUnit,
  unitOfHeading,
  type HeadingUnit,
} from './headings/unit-of-heading.ts';
import { giveUnits } from './heading-units.ts';
import { tableArgument, whereIs, type RawCell, type RawTable } from './raw-table.ts';
import { headingKey, type Findings } from './row-reader.ts';

/** Unknown headings that are named after the first. */
const MOST_SAID = 4;

export interface MatchedTable {
  /** Bare numbers under a heading with a unit have that unit. */
  readonly table: RawTable;
  /** The column, from 0, of each heading of ours that stands over one. */
  readonly columns: ReadonlyMap<HeadingKey, number>;
  /** Whether every needed heading has a column. */
  readonly isComplete: boolean;
}

/** A column of the table with what it is headed. */
interface Column {
  readonly at: number;
  readonly heading: string;
  /** As the person has it, where the column was chosen for one of ours. */
  readonly name: string;
  readonly cells: readonly RawCell[];
  readonly where: Where;
}

/** A column that stands under one of ours. */
interface Claim extends Column {
  readonly ours: Heading;
  readonly unit: HeadingUnit | undefined;
}

/**
 * Faults: a needed heading that is missing, two filled columns for one meaning, a heading that is
 * nearly ours, and numbers left unused that may be meant. Columns nobody knows are cautioned once, all
 * together; those under `silent` keys are passed over without a word.
 */
export function matchHeadings(
  table: RawTable,
  headings: readonly Heading[],
  reading: LengthReading,
  findings: Findings,
  silent: ReadonlySet<string>,
): MatchedTable {
  const claims: Claim[] = [];
  const others: Column[] = [];
  for (const [at, cell] of table.headings.cells.entries()) {
    const key = headingKey(cell);
    if (key === '' || silent.has(key)) continue;
    if (typeof cell !== 'string') continue;
    const theirs = table.mapped?.theirs[at];
    const column = {
      at,
      heading: cell.trim(),
      name: (typeof theirs === 'string' ? theirs : cell).trim(),
      cells: filledCells(table, at),
      where: whereIs(table, table.headings.line, at),
    };
    const claim =
      table.mapped?.leftOut.includes(at) === true ? undefined : claimOf(column, headings);
    if (claim === undefined) others.push(column);
    else claims.push(claim);
  }
  const chosen = chooseColumns(table, headings, claims, findings);
  const isMissing = ({ key, required }: Heading): boolean => required === true && !chosen.has(key);
  const missing = headings.filter(isMissing);
  const judge: Judge = { table, headings, chosen, reading, isComplete: missing.length === 0 };
  const judged = others.map((column) => ({ column, ...judgeOther(column, judge) }));
  findings.faults.push(...judged.flatMap(({ fault: one }) => one ?? []));
  const ignored = judged
    .filter((one) => one.fault === undefined && !isEmptyLeftOut(table, one.column))
    .map(({ column }) => column);
  const twins = claims.filter((one) => isLabelLeft(one, chosen));
  findings.cautions.push(
    ...cautionIgnored(
      table,
      [...ignored, ...twins].sort((one, other) => one.at - other.at),
    ),
  );
  const asked = new Set(judged.flatMap(({ meant = [] }) => (meant.length === 1 ? meant : [])));
  for (const one of missing) {
    if (asked.has(one)) continue;
    const where = whereIs(table, table.headings.line, 0);
    findings.faults.push(placeFault(fault('table.heading-missing', one.key, table.name), where));
  }
  const units = new Map<number, HeadingUnit>();
  for (const { ours, name, unit, at, where } of chosen.values()) {
    if (unit === undefined || unit === reading.unit) continue;
    units.set(at, unit);
    const details = { unit: sayUnit(unit) };
    findings.cautions.push(
      placeFault(fault('table.heading-unit', ours.key, name, { details }), where),
    );
  }
  return {
    table: giveUnits(table, units, reading),
    columns: new Map([...chosen].map(([key, { at }]) => [key, at])),
    isComplete: missing.length === 0,
  };
}

/** Nothing is lost with it, and the person has chosen. */
function isEmptyLeftOut(table: RawTable, { at, cells }: Column): boolean {
  return cells.length === 0 && table.mapped?.leftOut.includes(at) === true;
}

function claimOf(column: Column, headings: readonly Heading[]): Claim | undefined {
  const { heading } = column;
  if (saysNotUsed(heading)) return undefined;
  const whole = findHeading(heading, headings);
  if (whole !== undefined) return { ...column, ours: whole, unit: undefined };
  const unit = unitOfHeading(heading);
  const ours = unit === undefined ? undefined : findHeading(headingWithoutUnit(heading), headings);
  return ours?.holds === 'length' ? { ...column, ours, unit } : undefined;
}

/** The column of each heading: filled beats empty, and our own word beats another. */
function chooseColumns(
  table: RawTable,
  headings: readonly Heading[],
  claims: readonly Claim[],
  findings: Findings,
): ReadonlyMap<HeadingKey, Claim> {
  const chosen = new Map<HeadingKey, Claim>();
  for (const heading of headings) {
    const all = claims.filter(({ ours }) => ours === heading);
    const filled = all.filter(({ cells }) => cells.length > 0);
    const among = filled.length > 0 ? filled : all;
    const own = among.filter((one) => headingKey(one.heading) === headingKey(heading.heading));
    const first = own[0] ?? among[0];
    if (first === undefined) continue;
    chosen.set(heading.key, first);
    // Of two notes either will do: what is read of them changes nothing.
    if (heading.holds === 'note' && own.length < 2) continue;
    for (const other of filled)
      if (other !== first) findings.faults.push(twice(table, first, other));
  }
  return chosen;
}

function twice(table: RawTable, first: Claim, other: Claim): Fault {
  const isSame = headingKey(first.name) === headingKey(other.name);
  if (isSame)
    return placeFault(
      fault('table.heading-twice', tableArgument(table.name), other.name),
      other.where,
    );
  const details = { other: other.name, notUsed: headNotUsed(other.name) };
  const one = fault('table.heading-two', first.ours.key, first.name, { details });
  return placeFault(one, other.where);
}

/** A second column of notes, which is left alone. */
function isLabelLeft(claim: Claim, chosen: ReadonlyMap<HeadingKey, Claim>): boolean {
  const { ours, cells } = claim;
  return ours.holds === 'note' && cells.length > 0 && chosen.get(ours.key) !== claim;
}

interface Judge {
  readonly table: RawTable;
  readonly headings: readonly Heading[];
  readonly chosen: ReadonlyMap<HeadingKey, Claim>;
  readonly reading: LengthReading;
  readonly isComplete: boolean;
}

/** The fault of a column that stands under none of ours, if it is one, and which of ours it may be meant for. */
function judgeOther(
  column: Column,
  judge: Judge,
): { readonly fault?: Fault; readonly meant?: readonly Heading[] } {
  const { name, cells, where, at } = column;
  const { table, headings, chosen, isComplete } = judge;
  if (saysNotUsed(column.heading)) return {};
  const isLeftOut = table.mapped?.leftOut.includes(at) === true;
  const { headings: all, isSure } = findMeant(name, headings);
  const meant = all.filter(
    (one) =>
      one.holds !== 'note' &&
      (cells.length > 0 ? (isSure && !isLeftOut) || mayHold(one, cells) : one.required === true) &&
      (isSure || !chosen.has(one.key)),
  );
  const details = { notUsed: headNotUsed(name) };
  if (isLeftOut) {
    if (cells.length === 0) return {};
    const may = meant.map(({ heading }) => heading).join(' or ');
    if (may !== '') return { fault: unused(column, may) };
  } else if (meant.some((one) => !chosen.has(one.key))) {
    const names = meant.filter(({ key }) => !chosen.has(key));
    const may = names.map(({ heading }) => heading).join(' or ');
    const near = fault('table.heading-near', tableArgument(table.name), name, {
      details: { ...details, may },
    });
    return { fault: placeFault(near, where), meant: names };
  } else if (meant.length > 0 && cells.length > 0) {
    const [of] = meant;
    const first = of && chosen.get(of.key);
    if (first !== undefined) {
      const two = { ...details, other: name };
      const one = fault('table.heading-two', first.ours.key, first.name, { details: two });
      return { fault: placeFault(one, where) };
    }
  }
  const may = isComplete ? whatItMayMean(column, judge) : undefined;
  return may === undefined ? {} : { fault: unused(column, may) };
}

function unused({ name, where }: Column, may: string): Fault {
  const details = { may, notUsed: headNotUsed(name) };
  return placeFault(fault('table.column-unused', 'column', name, { details }), where);
}

/** Of these a blank is read as one, or as no end: passed over, they make a smaller plan, or a cheaper one. */
const COUNTS_OF_ROWS: ReadonlySet<HeadingKey> = new Set(['quantity', 'count']);

/** What numbers, or units, that stand unused may be meant for. */
function whatItMayMean({ name, cells }: Column, { headings, chosen, reading }: Judge) {
  if (holdsNumbers(cells)) {
    // Whatever its heading says, in whatever language: a list without a count may have it here.
    const mayCount = headings.some(({ key }) => COUNTS_OF_ROWS.has(key) && !chosen.has(key));
    const isCount = mayCount && !name.includes('%') && mayCountThings(cells);
    return meaningOfNumbers(name, countsRows(cells)) ?? (isCount ? 'quantity' : undefined);
  }
  const units = [...unitsNamed(cells)].filter((unit) => unit !== reading.unit);
  const hasLengths = headings.some(({ key, holds }) => holds === 'length' && chosen.has(key));
  return hasLengths && units.length > 0 ? 'the unit of lengths' : undefined;
}

const YES_OR_NO = new Set(['yes', 'no', 'y', 'n', 'x', 'true', 'false']);

/** Whether the cells could be what stands under the heading. */
function mayHold({ holds, allowed }: Heading, cells: readonly RawCell[]): boolean {
  const has = (isOurs: (word: string) => boolean): boolean =>
    cells.some((cell) => typeof cell !== 'object' && isOurs(String(cell).trim().toLowerCase()));
  if (holds === 'word') return has((word) => allowed?.includes(word) === true);
  if (holds === 'yes or no') return has((word) => YES_OR_NO.has(word));
  return holdsNumbers(cells) !== (holds === 'name' || holds === 'note');
}

/** At the first of them. */
function cautionIgnored(table: RawTable, ignored: readonly Column[]): Fault[] {
  const [first, ...others] = ignored;
  if (first === undefined) return [];
  const said = others.slice(0, MOST_SAID).map(({ name }) => `, “${name}”`);
  const more = others.length > MOST_SAID ? ` and ${others.length - MOST_SAID} more` : '';
  const details = { others: said.join('') + more };
  return [
    placeFault(
      fault('table.heading-unknown', tableArgument(table.name), first.name, { details }),
      first.where,
    ),
  ];
}
