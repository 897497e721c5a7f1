/**
 * The shop's settings as one list: name, kind, usual value and limits. Reading, the blank workbook
 * and the how-to sheet all follow from it, so a new setting is one new line here.
 */
import { sayQuantity } from '../core/faults/quantity.ts';
import { writeDecimal, type DecimalSign } from '../core/units/format-number.ts';
import type { LengthUnit } from '../core/units/length-unit.ts';
import type { ExactInches } from '../core/units/length.ts';

export type SettingKind = 'length' | 'angle' | 'number' | 'percent' | 'word' | 'text';

export interface SettingDefinition {
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

const length = (name: string, usual: string | undefined, note: string, positive = true) =>
  ({
    name,
    kind: 'length',
    unit: 'in',
    note,
    positive,
    ...(usual === undefined ? {} : { usual }),
  }) as const;
const percent = (name: string, usual: string, note: string, most = 100) =>
  ({ name, kind: 'percent', unit: '%', note, usual, least: 0, most }) as const;
const number = (name: string, usual: string, unit: string, note: string, positive = false) =>
  ({ name, kind: 'number', unit, note, usual, least: 0, positive, most: 1e6 }) as const;

export const SETTINGS = {
  bladeDiameter: length('blade diameter', '10', 'Measure it: a resharpened blade is smaller'),
  kerf: length('kerf', '1/8', "The blade's cut in a scrap", false),
  greatestHeightUpright: length(
    'greatest height upright',
    undefined,
    'Highest tooth above the table',
  ),
  greatestHeightAt45: length('greatest height at 45', undefined, 'The same, tilted to 45°'),
  heightsMeasuredWith: length(
    'heights measured with',
    undefined,
    'Diameter of the blade that both heights hold for; the blade above where empty',
  ),
  tiltStop: {
    name: 'tilt stop',
    kind: 'angle',
    unit: 'degrees',
    usual: '45',
    least: 1,
    most: 60,
    note: 'Most tilt from upright',
  },
  steepestApproach: {
    name: 'steepest approach',
    kind: 'angle',
    unit: 'degrees',
    usual: '75',
    least: 30,
    most: 89,
    note: "From the blade line: nearer to 90° the board meets the blade's side",
  },
  tiltSide: {
    name: 'tilt side',
    kind: 'word',
    unit: '',
    usual: 'left',
    allowed: ['left', 'right'],
    note: "Side to which the blade's top leans",
  },
  tableFront: length('table front', undefined, 'From above the arbor to the front edge'),
  tableBack: length('table back', undefined, 'From above the arbor to the back edge'),
  tableWidth: length('table width', undefined, 'Side to side, the blade midway'),
  slotToBlade: length('slot to blade', undefined, 'From the left miter slot to the blade line'),
  angleScaleStep: {
    name: 'angle scale step',
    kind: 'angle',
    unit: 'degrees',
    // A fraction, since it reads alike with either decimal sign.
    usual: '1/2',
    least: 0.01,
    most: 5,
    note: 'How fine the approach can be set',
  },
  tiltScaleStep: {
    name: 'tilt scale step',
    kind: 'angle',
    unit: 'degrees',
    usual: '1/2',
    least: 0.01,
    most: 5,
    note: 'How fine the tilt can be set',
  },
  firstPass: length('first pass', '1/16', 'Height of the first pass; 1/8 at most'),
  step: length('step', '1/16', 'Most that each later pass takes; 1/8 at most'),
  lastPass: length('last pass', '1/32', 'The light pass at the end', false),
  leastWeb: length('least web', '1/4', 'Stock left above the cove'),
  leastFlat: length('least flat', '1/8', 'Flat beside the cove that rides on the table'),
  leastBlankLength: length('least blank length', '36', 'Coves are never cut on shorter blanks'),
  crosscutKerf: length('crosscut kerf', '1/8', 'Of the saw that cuts to length', false),
  endTrim: length('end trim', '1', 'Off each end of every stick, its cut included', false),
  spliceAngle: {
    name: 'splice angle',
    kind: 'angle',
    unit: 'degrees',
    usual: '45',
    least: 10,
    most: 60,
    note: 'Of a scarf, from square',
  },
  // Common practice [C]: a shorter part looks like a patch.
  leastPart: length('least part', '24', 'No part of a spliced piece is shorter', false),
  keepOffcutsOver: length('keep offcuts over', '24', 'Shorter offcuts are waste'),
  offcutCredit: percent(
    'offcut credit %',
    '0',
    'Share of the cheapest price that a kept offcut earns',
  ),
  setUpSpare: length('set-up spare', '36', 'Trial cuts for each cove, from the same lumber', false),
  endAllowance: length(
    'end allowance',
    '0',
    'Added at each end of a run, to trim at the wall',
    false,
  ),
  offcutAllowance: percent('offcut allowance %', '10', 'On top of net board feet', 300),
  unit: {
    name: 'unit',
    kind: 'word',
    unit: '',
    usual: 'in',
    allowed: ['in', 'mm'],
    note: 'Of a length typed without one',
  },
  lengthPrecision: {
    name: 'length precision',
    kind: 'length',
    unit: 'in',
    positive: true,
    note: 'Lengths are rounded up to it; 1/16 in or 1 mm where empty',
  },
  paper: {
    name: 'paper',
    kind: 'word',
    unit: '',
    usual: 'letter',
    allowed: ['letter', 'a4'],
    note: 'For printing',
  },
  decimalSign: {
    name: 'decimal sign',
    kind: 'word',
    unit: '',
    usual: '.',
    allowed: ['.', ','],
    note: 'In typed numbers',
  },
  currency: {
    name: 'currency',
    kind: 'text',
    unit: '',
    usual: '$',
    note: 'Sign or letters, shown with money',
  },
  feed: number('feed', '6', 'ft/min', 'How fast a blank passes over the blade', true),
  handlingPerPass: number('handling per pass', '30', 's', 'Carrying a blank round, each pass'),
  setUpMinutes: number('set-up minutes', '40', 'min', 'Rails, tilt and a trial cut, each cove'),
  smoothingMinutes: number('smoothing minutes per square foot', '7', 'min', 'Scraping and sanding'),
  crosscutSeconds: number('crosscut seconds', '45', 's', 'Each cut to length'),
  // Common practice [C]: two scarfs fitted, glued and sanded flush.
  jointMinutes: number('joint minutes', '10', 'min', 'Fitting and gluing each joint of a splice'),
  hourlyRate: number('hourly rate', '0', 'an hour', 'Shop labor'),
  overhead: percent('overhead %', '0', 'On lumber and labor', 1000),
  margin: percent('margin %', '0', 'Share of the price', 99),
  tax: percent('tax %', '0', 'On the price'),
  // A price commonly holds for a month. Common practice [C].
  priceHoldsDays: {
    name: 'price holds days',
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
