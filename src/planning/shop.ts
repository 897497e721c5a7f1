/**
 * The shop's settings as one list: name, kind, usual value and limits. Reading, the blank workbook
 * and the how-to sheet all follow from it, so a new setting is one new line here.
 */
import { NAMES } from '../core/faults/argument-words.ts';
import type { ArgumentKey } from '../core/faults/argument.ts';
import { sayQuantity } from '../core/faults/quantity.ts';
import { writeDecimal, type DecimalSign } from '../core/units/format-number.ts';
import type { LengthUnit } from '../core/units/length-unit.ts';
import type { ExactInches } from '../core/units/length.ts';
import { LABEL_SHEETS } from './label-sheets.ts';

export type SettingKind = 'length' | 'angle' | 'number' | 'percent' | 'word' | 'text';

export interface SettingDefinition {
  /** By which faults know it. */
  readonly key: ArgumentKey;
  /** As written in the Setting column. */
  readonly name: string;
  readonly kind: SettingKind;
  /** As a person would type it; absent: the setting may stay empty and nothing stands in for it. */
  readonly usual?: string;
  /** Shown in the Unit column; lengths may name another length unit there. */
  readonly unit: string;
  readonly allowed?: readonly string[];
  readonly least?: number;
  readonly most?: number;
  /** Least value excluded. */
  readonly positive?: boolean;
  /** No fractions. */
  readonly whole?: boolean;
  readonly note: string;
}

type SettingName = Extract<ArgumentKey, `setting.${string}`>;

const named = <Key extends SettingName>(key: Key) => ({ key, name: NAMES[key] });
const length = (key: SettingName, usual: string | undefined, note: string, positive = true) =>
  ({
    ...named(key),
    kind: 'length',
    unit: 'in',
    note,
    positive,
    ...(usual === undefined ? {} : { usual }),
  }) as const;
const percent = (key: SettingName, usual: string, note: string, most = 100) =>
  ({ ...named(key), kind: 'percent', unit: '%', note, usual, least: 0, most }) as const;
const number = (key: SettingName, usual: string, unit: string, note: string, positive = false) =>
  ({ ...named(key), kind: 'number', unit, note, usual, least: 0, positive, most: 1e6 }) as const;

export const SETTINGS = {
  bladeDiameter: length(
    'setting.bladeDiameter',
    '10',
    'Measure it: a resharpened blade is smaller',
  ),
  kerf: length('setting.kerf', '1/8', "The blade's cut in a scrap", false),
  greatestHeightUpright: length(
    'setting.greatestHeightUpright',
    undefined,
    'Highest tooth above the table',
  ),
  greatestHeightAt45: length('setting.greatestHeightAt45', undefined, 'The same, tilted to 45°'),
  heightsMeasuredWith: length(
    'setting.heightsMeasuredWith',
    undefined,
    'Diameter of the blade that both heights hold for; the blade above where empty',
  ),
  tiltStop: {
    ...named('setting.tiltStop'),
    kind: 'angle',
    unit: 'degrees',
    usual: '45',
    least: 1,
    most: 60,
    note: 'Most tilt from upright',
  },
  steepestApproach: {
    ...named('setting.steepestApproach'),
    kind: 'angle',
    unit: 'degrees',
    usual: '75',
    least: 30,
    most: 89,
    note: "From the blade line: nearer to 90° the board meets the blade's side",
  },
  tiltSide: {
    ...named('setting.tiltSide'),
    kind: 'word',
    unit: '',
    usual: 'left',
    allowed: ['left', 'right'],
    note: "Side to which the blade's top leans",
  },
  tableFront: length('setting.tableFront', undefined, 'From above the arbor to the front edge'),
  tableBack: length('setting.tableBack', undefined, 'From above the arbor to the back edge'),
  tableWidth: length('setting.tableWidth', undefined, 'Side to side, the blade midway'),
  slotToBlade: length(
    'setting.slotToBlade',
    undefined,
    'From the left miter slot to the blade line',
  ),
  angleScaleStep: {
    ...named('setting.angleScaleStep'),
    kind: 'angle',
    unit: 'degrees',
    // A fraction, since it reads alike with either decimal sign.
    usual: '1/2',
    least: 0.01,
    most: 5,
    note: 'How fine the approach can be set',
  },
  tiltScaleStep: {
    ...named('setting.tiltScaleStep'),
    kind: 'angle',
    unit: 'degrees',
    usual: '1/2',
    least: 0.01,
    most: 5,
    note: 'How fine the tilt can be set',
  },
  firstPass: length('setting.firstPass', '1/16', 'Height of the first pass; 1/8 at most'),
  step: length('setting.step', '1/16', 'Most that each later pass takes; 1/8 at most'),
  lastPass: length('setting.lastPass', '1/32', 'The light pass at the end', false),
  leastWeb: length('setting.leastWeb', '1/4', 'Stock left above the cove'),
  leastFlat: length('setting.leastFlat', '1/8', 'Flat beside the cove that rides on the table'),
  leastBlankLength: length(
    'setting.leastBlankLength',
    '36',
    'Coves are never cut on shorter blanks',
  ),
  crosscutKerf: length('setting.crosscutKerf', '1/8', 'Of the saw that cuts to length', false),
  endTrim: length('setting.endTrim', '1', 'Off each end of every stick, its cut included', false),
  spliceAngle: {
    ...named('setting.spliceAngle'),
    kind: 'angle',
    unit: 'degrees',
    usual: '45',
    least: 10,
    most: 60,
    note: 'Of a scarf, from square',
  },
  // Common practice [C]: a shorter part looks like a patch.
  leastPart: length('setting.leastPart', '24', 'No part of a spliced piece is shorter', false),
  keepOffcutsOver: length('setting.keepOffcutsOver', '24', 'Shorter offcuts are waste'),
  offcutCredit: percent(
    'setting.offcutCredit',
    '0',
    'Share of the cheapest price that a kept offcut earns',
  ),
  setUpSpare: length(
    'setting.setUpSpare',
    '36',
    'Trial cuts for each cove, from the same lumber',
    false,
  ),
  endAllowance: length(
    'setting.endAllowance',
    '0',
    'Added at each end of a run, to trim at the wall',
    false,
  ),
  offcutAllowance: percent('setting.offcutAllowance', '10', 'On top of net board feet', 300),
  unit: {
    ...named('setting.unit'),
    kind: 'word',
    unit: '',
    usual: 'in',
    allowed: ['in', 'mm'],
    note: 'Of a length typed without one',
  },
  lengthPrecision: {
    ...named('setting.lengthPrecision'),
    kind: 'length',
    unit: 'in',
    positive: true,
    note: 'Lengths are rounded up to it; 1/16 in or 1 mm where empty',
  },
  paper: {
    ...named('setting.paper'),
    kind: 'word',
    unit: '',
    usual: 'letter',
    allowed: ['letter', 'a4'],
    note: 'For printing',
  },
  labels: {
    ...named('setting.labels'),
    kind: 'word',
    unit: '',
    usual: 'none',
    allowed: LABEL_SHEETS,
    note: 'Sheet of labels: plain paper, or across x down',
  },
  decimalSign: {
    ...named('setting.decimalSign'),
    kind: 'word',
    unit: '',
    usual: '.',
    allowed: ['.', ','],
    note: 'In typed numbers',
  },
  currency: {
    ...named('setting.currency'),
    kind: 'text',
    unit: '',
    usual: '$',
    note: 'Sign or letters, shown with money',
  },
  feed: number('setting.feed', '6', 'ft/min', 'How fast a blank passes over the blade', true),
  handlingPerPass: number(
    'setting.handlingPerPass',
    '30',
    's',
    'Carrying a blank round, each pass',
  ),
  setUpMinutes: number(
    'setting.setUpMinutes',
    '40',
    'min',
    'Rails, tilt and a trial cut, each cove',
  ),
  smoothingMinutes: number('setting.smoothingMinutes', '7', 'min', 'Scraping and sanding'),
  crosscutSeconds: number('setting.crosscutSeconds', '45', 's', 'Each cut to length'),
  // Common practice [C]: two scarfs fitted, glued and sanded flush.
  jointMinutes: number(
    'setting.jointMinutes',
    '10',
    'min',
    'Fitting and gluing each joint of a splice',
  ),
  hourlyRate: number('setting.hourlyRate', '0', 'an hour', 'Shop labor'),
  overhead: percent('setting.overhead', '0', 'On lumber and labor', 1000),
  margin: percent('setting.margin', '0', 'Share of the price', 99),
  tax: percent('setting.tax', '0', 'On the price'),
  // A price commonly holds for a month. Common practice [C].
  priceHoldsDays: {
    ...named('setting.priceHoldsDays'),
    kind: 'number',
    unit: 'days',
    usual: '30',
    least: 1,
    most: 3650,
    whole: true,
    note: "From the date on the client's copy",
  },
} as const satisfies Readonly<Record<string, SettingDefinition>>;

export type SettingKey = keyof typeof SETTINGS;

type ValueOf<Key extends SettingKey> = (typeof SETTINGS)[Key]['kind'] extends 'length'
  ? ExactInches
  : (typeof SETTINGS)[Key]['kind'] extends 'word' | 'text'
    ? (typeof SETTINGS)[Key] extends { allowed: readonly (infer Word)[] }
      ? Word
      : string
    : number;

type Optional =
  | 'greatestHeightUpright'
  | 'greatestHeightAt45'
  | 'heightsMeasuredWith'
  | 'tableFront'
  | 'tableBack'
  | 'tableWidth'
  | 'slotToBlade';

/** Every setting by its key: lengths in exact inches, angles in degrees, shares in percent. */
export type Shop = { readonly [Key in Exclude<SettingKey, Optional>]: ValueOf<Key> } & {
  readonly [Key in Optional]?: ValueOf<Key>;
};

export function settingOf(key: SettingKey): SettingDefinition {
  return SETTINGS[key];
}

/** The usual value with its unit, as a person would write it; lengths in the shop's own unit. */
export function sayUsual(
  key: SettingKey,
  lengthUnit: LengthUnit = 'in',
  decimalSign: DecimalSign = '.',
): string {
  const { kind, name, unit, usual: typed = '' } = settingOf(key);
  // A sign or letters for money are no number.
  const usual = kind === 'text' || kind === 'word' ? typed : writeDecimal(typed, decimalSign);
  if (name.endsWith('%')) return usual;
  if (kind === 'length' && lengthUnit === 'mm') {
    const [over = 0, under = 1] = typed.split('/').map(Number);
    return sayQuantity({ inches: over / under }, 'mm', decimalSign);
  }
  return unit === 'degrees' ? `${usual}°` : `${usual} ${unit}`.trim();
}
