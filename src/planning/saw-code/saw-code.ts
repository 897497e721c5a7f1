/**
 * A set-up in the fragment of an address, which a browser keeps to itself: what it is worked out from, the
 * numbers that are printed, and a check over both.
 */
import Fraction from 'fraction.js';
import { hashText } from '../../core/hash-text.ts';
import type { RailLayout, RailMark } from '../../core/cove/rails.ts';
import { toDegrees } from '../../core/units/angle.ts';
import type { ExactInches } from '../../core/units/length.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import type { CoveProfile } from '../job.ts';
import type { SetUp } from '../plan-setup.ts';
import { SAW_SETTINGS } from '../settings/saw-settings.ts';
import type { SettingDefinition } from '../settings/setting.ts';
import type { SawShop } from '../shop.ts';

/** Another one once parts, settings, their order or their usual values change: see the test of this file. */
export const CODE_FORM = 1;
export const PART_SIGN = '_';
export const LIST_SIGN = '-';
/** Of what is known by its place alone. */
export const CHECK_DIGITS = 8;
/** As many as a code holds in squares that a phone tells apart on paper. */
export const MOST_CODE_SIGNS = 300;
const MORE = '...';

export type SawSetting = keyof typeof SAW_SETTINGS;
export const SAW_KEYS = Object.keys(SAW_SETTINGS) as readonly SawSetting[];
export const definitionOf = (key: SawSetting): SettingDefinition => SAW_SETTINGS[key];

/** A cove's set-up as it goes into a code, and as it comes out of one. */
export interface CodedSetUp {
  readonly profile: CoveProfile;
  readonly setUp: SetUp;
  readonly shop: SawShop;
  readonly blanks: number;
  /** What the printed page says besides stays there. */
  readonly hasNote: boolean;
}

/**
 * @returns Signs that an address may hold: form, check, flags, saw, cove, numbers, name, species. The name is
 * shortened where all of it would be longer than MOST_CODE_SIGNS.
 */
export function writeSawCode(coded: CodedSetUp): string {
  const { profile, setUp, shop } = coded;
  const species = textToSigns(profile.species);
  const rest = [flagsOf(coded), sawOf(shop), coveOf(coded), numbersOf(setUp, shop)].join(PART_SIGN);
  const letters = Array.from(profile.name);
  for (let kept = letters.length; kept >= 0; kept--) {
    const name = textToSigns(letters.slice(0, kept).join('') + (kept < letters.length ? MORE : ''));
    const body = [rest, name, species].join(PART_SIGN);
    const code = [CODE_FORM, checkOf(body), body].join(PART_SIGN);
    if (code.length <= MOST_CODE_SIGNS || kept === 0) return code;
  }
  return '';
}

export function checkOf(body: string): string {
  return hashText(`${CODE_FORM}${body}`).slice(0, CHECK_DIGITS);
}

/** Unit, decimal sign, what off-center leads to, kind of cove, whether there is a note. */
function flagsOf({ profile, shop, hasNote }: CodedSetUp): string {
  return [
    shop.unit === 'mm' ? 'm' : 'i',
    shop.decimalSign === ',' ? 'c' : 'p',
    profile.cove.offCenterTo === 'blade middle' ? 'b' : 'd',
    profile.make === 'cove' ? 'f' : 'c',
    hasNote ? 'n' : 'o',
  ].join('');
}

/** Nothing where a setting has its usual value, or none. */
function sawOf(shop: SawShop): string {
  return SAW_KEYS.map((key) => {
    const { usual = '', allowed } = definitionOf(key);
    const value = shop[key];
    if (value === undefined) return '';
    if (typeof value === 'string') return value === usual ? '' : String(allowed?.indexOf(value));
    const isUsual = usual !== '' && Number(value) === Number(new Fraction(usual));
    return isUsual ? '' : lengthToSigns(Number(value));
  }).join(LIST_SIGN);
}

function coveOf({ profile, blanks }: CodedSetUp): string {
  const { cove, blankWidth, blankThickness, nearFlat, spring } = profile;
  const sizes = [
    cove.width,
    cove.depth,
    cove.offCenter,
    Number(blankWidth),
    Number(blankThickness),
  ];
  return [
    ...sizes.map(lengthToSigns),
    nearFlat === undefined ? '' : lengthToSigns(Number(nearFlat)),
    spring === undefined ? '' : lengthToSigns(spring),
    String(blanks),
  ].join(LIST_SIGN);
}

/**
 * Angles in hundredths of a degree, the height in ten thousandths of an inch, marks as a tape has them. Browsers
 * differ in the last bit of a sine: what may lie midway between two marks, as a blank's width between the rails,
 * is among the sizes alone.
 */
function numbersOf({ setting, rails, passHeights }: SetUp, { unit }: SawShop): string {
  return [
    Math.round(toDegrees(setting.approach) * 100),
    Math.round(toDegrees(setting.tilt) * 100),
    Math.round(setting.height * 10_000),
    passHeights.length,
    ...(rails === undefined ? [] : marksOf(rails, unit)),
  ].join(LIST_SIGN);
}

/** From the blade line, then from the slot where its distance is given; `x` off the table. */
function marksOf({ near, far, railLength }: RailLayout, unit: LengthUnit): string[] {
  const steps = (inches: number): number => Math.round(inches * (unit === 'mm' ? 50.8 : 32));
  const sided = (inches: number, [less, more]: readonly [string, string]): string => {
    const size = steps(Math.abs(inches));
    return `${size}${size === 0 ? 'o' : inches < 0 ? less : more}`;
  };
  const mark = ({ fromBlade, fromSlot, onTable }: RailMark): string => {
    if (!onTable) return 'x';
    return [fromBlade, ...(fromSlot === undefined ? [] : [fromSlot])]
      .map((inches) => sided(inches, ['l', 'r']))
      .join('');
  };
  const along = (inches: number | undefined): string[] =>
    inches === undefined ? [] : [sided(inches, ['f', 'b'])];
  return [
    ...[near, far].flatMap((rail) => [
      mark(rail.front),
      mark(rail.back),
      ...(rail.front.onTable && rail.back.onTable
        ? []
        : [...along(rail.left), ...along(rail.right)]),
    ]),
    String(steps(railLength)),
  ];
}

/** A number of 0 or more without a sign or an exponent: in inches, or in millimetres (`90m`) where that is shorter. */
function lengthToSigns(value: number): string {
  const plain = String(value).includes('e') ? value.toFixed(12) : String(value);
  const metric = String(Number((value * 25.4).toFixed(6)));
  const isMetric = metric.length + 1 < plain.length && Number(exactOf(`${metric}m`)) === value;
  return isMetric ? `${metric}m` : plain.replace(/^0\./u, '.');
}

/** @param signs As lengthToSigns writes them. */
export function exactOf(signs: string): ExactInches {
  return signs.endsWith('m')
    ? new Fraction(signs.slice(0, -1)).mul(5).div(127)
    : new Fraction(signs.replace(/^\./u, '0.'));
}

/** Words with a sign for each space, free of what parts are told apart by. */
function textToSigns(text: string): string {
  return encodeURIComponent(text.replace(/\p{Surrogate}/gu, '\uFFFD'))
    .replace(
      /[-_!~*'()]/gu,
      (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase().padStart(2, '0')}`,
    )
    .replaceAll('%20', '+');
}
