/** The Shop table: one row a setting, read by the list in shop.ts. */
import { phrase, sayArgument, type ArgumentKey } from '../../core/faults/argument.ts';
import { fault, type Fault, type Outcome, type Where } from '../../core/faults/fault.ts';
import { writeCurrency } from '../../core/units/currency.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import {
  lengthOfNumber,
  parseLength,
  type ExactInches,
  type LengthReading,
} from '../../core/units/length.ts';
import type { DecimalSign } from '../../core/units/format-number.ts';
import { askAboutLength } from '../../core/units/plausible-length.ts';
import { sayGiven, type AllowedUnits } from '../../core/units/number.ts';
import { findNearNames } from '../../core/words/near-words.ts';
import { sameName, type ShopCells } from '../job.ts';
import { plannerLength } from '../planner-length.ts';
import { SETTINGS, type SettingDefinition, type SettingKey, type Shop } from '../shop.ts';
import { findHeading, headNotUsed, saysNotUsed } from './headings/meant-headings.ts';
import { SHOP_HEADINGS } from './headings/shop-headings.ts';
import { whereIs, type RawTable } from './raw-table.ts';
import {
  askAboutShare,
  isValue,
  lengthIn,
  numberIn,
  plainValue,
  saysLengthUnit,
  type CellReading,
  type CellValue,
} from './read-cell.ts';
import { readRows } from './read-rows.ts';
import { readWord } from './read-word.ts';
import { headingKey, type Findings, type RowReader } from './row-reader.ts';
import { isUnitOf, mayBeMoney } from './setting-words.ts';

/** What the stick planner loses or sets aside, so rounded up where a sheet calculated it. */
const LOST_LENGTHS: ReadonlySet<ArgumentKey> = new Set([
  SETTINGS.crosscutKerf.key,
  SETTINGS.endTrim.key,
  SETTINGS.keepOffcutsOver.key,
  SETTINGS.setUpSpare.key,
]);
/** Inches of which no shop has more: a bare 25 is millimetres in a shop of inches. Common practice [C]. */
const MOST_OF: ReadonlyMap<ArgumentKey, number> = new Map([
  [SETTINGS.kerf.key, 1],
  [SETTINGS.crosscutKerf.key, 1],
  [SETTINGS.endTrim.key, 12],
  [SETTINGS.endAllowance.key, 12],
  [SETTINGS.lengthPrecision.key, 1],
]);
const FEET_PER_METRE = 10_000 / 3048;
const LENGTH_UNITS = ['in', 'mm', 'cm', 'm', 'ft'] as const;
const BY_NAME = new Map<string, SettingKey>(
  (Object.keys(SETTINGS) as SettingKey[]).map((key) => [headingKey(SETTINGS[key].name), key]),
);

export interface ShopReading {
  readonly shop: Shop;
  /** Settings that the person left to their usual values. */
  readonly left: readonly SettingKey[];
  /** Where the value of each setting stands that has a row. */
  readonly cells: ShopCells;
}

/** More settings than these are no suggestion any more. */
const MOST_NEAR = 6;

/** A setting's name without regard to case, spaces and hyphens; a percent is said, since a sum may be meant. */
function settingNamed(name: string): SettingKey | undefined {
  const key = BY_NAME.get(headingKey(name));
  if (key === undefined || !SETTINGS[key].name.endsWith('%')) return key;
  return name.includes('%') ? key : undefined;
}

/** Settings that one which isn't known may be meant for. */
function settingsNear(name: string): readonly string[] {
  const names = Object.values(SETTINGS).map((one) => one.name);
  return findNearNames(name, names).slice(0, MOST_NEAR);
}

/** How bare numbers are to be read, found before anything else is. */
export function readingOf(table: RawTable | undefined): CellReading {
  const find = (name: string): string => {
    const setting = columnOf(table, 'setting');
    const value = columnOf(table, 'value');
    const row = table?.rows.find((one) => headingKey(one.cells[setting] ?? null) === name);
    const cell = row?.cells[value] ?? null;
    return isValue(cell) ? String(plainValue(cell)).trim() : '';
  };
  const currency = find('currency');
  return {
    unit: sameName(find('unit'), 'mm') ? 'mm' : 'in',
    decimalSign: find('decimalsign') === ',' ? ',' : '.',
    // Where Shop says none, money is printed in the usual one: another may not be taken for it.
    currency: currency === '' ? SETTINGS.currency.usual : currency,
  };
}

function columnOf(table: RawTable | undefined, key: 'setting' | 'value'): number {
  const wanted = headingKey(sayArgument(key));
  const { cells } = table?.headings ?? { cells: [] };
  const own = cells.findIndex((cell) => headingKey(cell) === wanted);
  if (own >= 0) return own;
  return cells.findIndex(
    (cell) => typeof cell === 'string' && findHeading(cell, SHOP_HEADINGS)?.key === key,
  );
}

/** Every setting, the usual value standing in where a row is absent or its value blank. */
export function readShop(
  table: RawTable | undefined,
  reading: CellReading,
  findings: Findings,
): ShopReading {
  const values: Partial<Record<SettingKey, string | number | ExactInches>> = {};
  const rows = table === undefined ? [] : readRows(table, SHOP_HEADINGS, reading, findings);
  const seen = new Set<SettingKey>();
  const cells: Partial<Record<SettingKey, Where>> = {};
  for (const row of rows) {
    const name = row.requiredText('setting');
    if (name === undefined) continue;
    const key = settingNamed(name);
    if (key !== undefined) cells[key] ??= row.where('value');
    if (key === undefined) {
      const near = saysNotUsed(name) ? [] : settingsNear(name);
      const details = { may: near.join(' or '), notUsed: headNotUsed(name) };
      if (near.length > 0) {
        row.refuse('setting', fault('job.setting-near', 'setting', name, { details }));
      } else if (!saysNotUsed(name) && !row.isBlank('value') && mayBeMoney(name)) {
        row.refuse('setting', fault('job.setting-unread', 'setting', name, { details }));
      } else row.caution('setting', fault('job.setting-unknown', 'setting', name));
    } else if (seen.has(key)) {
      row.refuse('setting', fault('job.setting-twice', 'setting', name));
    } else if (!row.isBlank('value')) {
      const value = readValue(row, SETTINGS[key], reading);
      if (value !== undefined) values[key] = value;
      seen.add(key);
    }
  }
  const left: SettingKey[] = [];
  for (const key of Object.keys(SETTINGS) as SettingKey[]) {
    if (values[key] !== undefined) continue;
    const usual = usualValue(SETTINGS[key], reading.unit);
    if (usual === undefined) continue;
    values[key] = usual;
    if (!seen.has(key)) left.push(key);
  }
  return { shop: values as unknown as Shop, left, cells };
}

function usualValue(
  definition: SettingDefinition,
  unit: LengthUnit,
): string | number | ExactInches | undefined {
  const plain = { unit: 'in', decimalSign: '.' as DecimalSign } as const;
  if (definition === SETTINGS.lengthPrecision) return exact(unit === 'mm' ? '1 mm' : '1/16', plain);
  if (definition.usual === undefined) return undefined;
  if (definition.kind === 'length') return exact(definition.usual, plain);
  if (definition.kind === 'word' || definition.kind === 'text') return definition.usual;
  const [over = 0, under = 1] = definition.usual.split('/').map(Number);
  return over / under;
}

function exact(text: string, reading: LengthReading): ExactInches {
  const parsed = parseLength(text, 'usualValue', reading);
  if (!parsed.ok) throw new RangeError(`A usual value is no length: ${text}`);
  return parsed.value;
}

function readValue(
  row: RowReader,
  definition: SettingDefinition,
  reading: CellReading,
): string | number | ExactInches | undefined {
  const { key, kind } = definition;
  const read = row.value('value');
  if (!read.ok || read.value === null) return undefined;
  const { value } = read;
  const refuse = (...faults: readonly Fault[]): undefined => {
    for (const one of faults) row.refuse('value', one);
    return undefined;
  };
  if (kind === 'text') return writeCurrency(row.text('value'));
  if (kind === 'word') {
    const plain = plainValue(value);
    const wanted = String(plain).trim().toLowerCase();
    if (definition.allowed?.includes(wanted) === true) return wanted;
    const near = readWord(String(plain), definition.allowed ?? []);
    const may = 'may' in near ? near.may : near.word;
    const details = { allowed: definition.allowed?.join(' or ') ?? '', may };
    return refuse(fault('word.unknown', key, sayGiven(plain), { details }));
  }
  if (kind === 'length') return readLength(row, definition, value, reading, refuse);
  const factor = unitFactor(row, definition);
  if (factor === undefined) return undefined;
  const parsed = parseAsNumber(value, definition, reading);
  if (typeof parsed !== 'number') return refuse(...parsed);
  const { least = 0, most = Infinity, positive, whole } = definition;
  if (positive === true && !(parsed > 0)) return refuse(fault('number.not-positive', key, parsed));
  if (parsed < least) return refuse(fault('number.too-small', key, parsed, { limit: least }));
  if (parsed > most) return refuse(fault('number.too-large', key, parsed, { limit: most }));
  if (whole === true && !Number.isInteger(parsed)) {
    return refuse(fault('number.not-whole', key, parsed));
  }
  const asked = kind === 'percent' ? askAboutShare(value, key, parsed) : undefined;
  if (asked !== undefined) row.caution('value', asked);
  return parsed * factor;
}

/** What may stand with a setting's number: its percent, its degrees, the shop's money, its unit. */
function unitsOf({ kind, unit, key }: SettingDefinition): AllowedUnits {
  if (kind === 'percent') return { percent: true };
  if (kind === 'angle') return { degrees: true };
  return { words: [unit], ...(key === SETTINGS.hourlyRate.key ? { currency: '' } : {}) };
}

/** Angles and rates may be typed with a fraction: 1/2, or 37 1/2. */
function parseAsNumber(
  value: CellValue,
  definition: SettingDefinition,
  reading: CellReading,
): number | readonly Fault[] {
  const { key } = definition;
  const plain = numberIn(value, key, reading, unitsOf(definition));
  if (plain.ok) return plain.value;
  if (typeof value !== 'string' || plain.faults[0]?.code !== 'number.unreadable') {
    return plain.faults;
  }
  const text = value.trim().replace(/°$/u, '');
  const mixed = parseLength(text, key, { unit: 'in', decimalSign: reading.decimalSign });
  return mixed.ok && !/['"a-z]/iu.test(text) ? Number(mixed.value) : plain.faults;
}

function readLength(
  row: RowReader,
  definition: SettingDefinition,
  value: CellValue,
  reading: LengthReading,
  refuse: (...faults: readonly Fault[]) => undefined,
): ExactInches | undefined {
  const { key } = definition;
  const said = row.text('unit').toLowerCase();
  const unit = LENGTH_UNITS.find((one) => one === said);
  if (said !== '' && unit === undefined) {
    const argument = phrase('unitOfSetting', { setting: key });
    const details = { allowed: LENGTH_UNITS.join(', ') };
    return row.refuse('unit', fault('word.unknown', argument, said, { details }));
  }
  const parsed = unit === undefined ? lengthIn(value, key, reading) : inUnit(value, unit);
  if (!parsed.ok) return refuse(...parsed.faults);
  const inches = Number(parsed.value);
  if (inches < 0) return refuse(fault('length.negative', key, { inches }));
  if (inches === 0 && definition.positive === true) {
    return refuse(fault('length.not-positive', key, { inches }));
  }
  const most = MOST_OF.get(key);
  const asked = saysLengthUnit(value)
    ? undefined
    : askAboutLength(key, plainValue(value), inches, most);
  if (asked !== undefined) return refuse(asked);
  return LOST_LENGTHS.has(key) ? plannerLength(parsed.value, 'up') : parsed.value;

  /** A bare number takes the row's unit; one that says its own keeps it. */
  function inUnit(own: CellValue, rows: (typeof LENGTH_UNITS)[number]): Outcome<ExactInches> {
    if (typeof own === 'number') return lengthOfNumber(own, key, rows);
    if (typeof own === 'object' && own.kind === 'shown' && own.unit === undefined) {
      return lengthOfNumber(own.value, key, rows);
    }
    const withUnit = typeof own === 'string' ? lengthIn(`${own} ${rows}`, key, reading) : undefined;
    return withUnit?.ok === true ? withUnit : lengthIn(own, key, reading);
  }
}

/** 1 for the unit that the setting is kept in; feed may also be given in metres a minute. */
function unitFactor(row: RowReader, definition: SettingDefinition): number | undefined {
  const unit = row.text('unit').toLowerCase();
  if (definition === SETTINGS.feed) {
    if (['m/min', 'metres a minute'].includes(unit)) return FEET_PER_METRE;
    if (!['', 'ft/min', 'feet a minute'].includes(unit)) {
      const details = { allowed: 'ft/min, m/min' };
      row.refuse('unit', fault('word.unknown', 'unitOfFeed', unit, { details }));
      return undefined;
    }
  } else if (!isUnitOf(definition, unit)) {
    const argument = phrase('unitOfSetting', { setting: definition.key });
    const details = { allowed: definition.unit };
    return row.refuse('unit', fault('word.unknown', argument, unit, { details }));
  }
  return 1;
}

/** Where a setting stands, for faults that come up later; the table's heading when it is absent. */
export function whereSetting(table: RawTable | undefined, key: SettingKey): Where | undefined {
  if (table === undefined) return undefined;
  const setting = columnOf(table, 'setting');
  const wanted = headingKey(SETTINGS[key].name);
  const row = table.rows.find((one) => headingKey(one.cells[setting] ?? null) === wanted);
  return whereIs(table, row?.line ?? table.headings.line, Math.max(0, columnOf(table, 'value')));
}
