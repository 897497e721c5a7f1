/** The value of one setting: a length, a number in its unit, or one of its words. */
import { phrase, type ArgumentKey } from '../../core/faults/argument.ts';
import { fault, type Fault, type Outcome } from '../../core/faults/fault.ts';
import { writeCurrency } from '../../core/units/currency.ts';
import type { DecimalSign } from '../../core/units/format-number.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import {
  lengthOfNumber,
  parseLength,
  type ExactInches,
  type LengthReading,
} from '../../core/units/length.ts';
import { sayGiven, type AllowedUnits } from '../../core/units/number.ts';
import { askAboutLength } from '../../core/units/plausible-length.ts';
import { pageAddressOf } from '../saw-code/page-address.ts';
import { plannerLength } from '../planner-length.ts';
import { settingIn, usualNumber, type SettingDefinition } from '../settings/setting.ts';
import { SETTINGS } from '../shop.ts';
import {
  askAboutShare,
  lengthIn,
  numberIn,
  plainValue,
  saysLengthUnit,
  type CellReading,
  type CellValue,
} from './read-cell.ts';
import { readWord } from './read-word.ts';
import type { RowReader } from './row-reader.ts';
import { isUnitOf } from './setting-words.ts';

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
  [SETTINGS.studSpacing.key, 48],
  [SETTINGS.springIn.key, 1 / 2],
]);
const SAYS_FOOT = /foot|ft/iu;
const LENGTH_UNITS = ['in', 'mm', 'cm', 'm', 'ft'] as const;
export type SettingValue = string | number | ExactInches;

/** What stands in for a setting that is left out or empty; undefined where nothing does. */
export function usualValue(
  definition: SettingDefinition,
  unit: LengthUnit,
): SettingValue | undefined {
  const plain = { unit, decimalSign: '.' as DecimalSign } as const;
  if (definition === SETTINGS.lengthPrecision) return exact(unit === 'mm' ? '1' : '1/16', plain);
  const { usual, kind } = settingIn(unit, definition);
  if (usual === undefined) return undefined;
  if (kind === 'length') return exact(usual, plain);
  if (kind === 'word' || kind === 'text') return usual;
  return usualNumber(definition, unit);
}

function exact(text: string, reading: LengthReading): ExactInches {
  const parsed = parseLength(text, 'usualValue', reading);
  if (!parsed.ok) throw new RangeError(`A usual value is no length: ${text}`);
  return parsed.value;
}

/** Undefined where it is refused. */
export function readSetting(
  row: RowReader,
  definition: SettingDefinition,
  reading: CellReading,
): SettingValue | undefined {
  const { key, kind } = definition;
  const read = row.value('value');
  if (!read.ok || read.value === null) return undefined;
  const { value } = read;
  const refuse = (...faults: readonly Fault[]): undefined => {
    for (const one of faults) row.refuse('value', one);
    return undefined;
  };
  if (kind === 'address') {
    const address = pageAddressOf(row.text('value'));
    return address ?? refuse(fault('address.unreadable', key, row.text('value')));
  }
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
  const factor = unitFactor(row, definition, reading.unit);
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
function unitsOf({ kind, unit, money }: SettingDefinition): AllowedUnits {
  if (kind === 'percent') return { percent: true };
  if (kind === 'angle') return { degrees: true };
  return { words: [unit], ...(money === true ? { currency: '' } : {}) };
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
  const { least } = definition;
  if (least !== undefined && inches > 0 && inches < least) {
    return refuse(fault('number.too-small', key, { inches }, { limit: { inches: least } }));
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

/** 1 for the unit that the setting is kept in; what goes by the foot may also be given by the metre. */
function unitFactor(
  row: RowReader,
  definition: SettingDefinition,
  shopUnit: LengthUnit,
): number | undefined {
  const unit = row.text('unit').toLowerCase();
  const { units = {} } = definition;
  const factor = units[unit];
  if (factor !== undefined) return factor;
  if (isUnitOf(definition, unit)) {
    // Bare minutes are those of the shop's own square, unless the old name of the setting says a foot.
    const isBare = definition === SETTINGS.smoothingMinutes && !SAYS_FOOT.test(row.text('setting'));
    const isOfMetre = isBare && shopUnit === 'mm' && !SAYS_FOOT.test(unit);
    return isOfMetre ? (units['min/m²'] ?? 1) : 1;
  }
  const argument = phrase('unitOfSetting', { setting: definition.key });
  const details = { allowed: [definition.unit, ...Object.keys(units).slice(0, 1)].join(', ') };
  row.refuse('unit', fault('word.unknown', argument, unit, { details }));
  return undefined;
}
