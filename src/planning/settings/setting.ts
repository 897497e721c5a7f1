/** What a setting of the shop is: name, kind, usual value and limits. */
import { NAMES } from '../../core/faults/argument-words.ts';
import type { ArgumentKey } from '../../core/faults/argument.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';

export type SettingKind = 'length' | 'angle' | 'number' | 'percent' | 'word' | 'text' | 'address';

export interface SettingDefinition {
  /** By which faults know it. */
  readonly key: ArgumentKey;
  /** As written in the Setting column. */
  readonly name: string;
  /** As older files have it. */
  readonly formerly?: string;
  readonly kind: SettingKind;
  /** As a person would type it; absent: the setting may stay empty and nothing stands in for it. */
  readonly usual?: string;
  /** Shown in the Unit column; lengths may name another length unit there. */
  readonly unit: string;
  readonly allowed?: readonly string[];
  /** Of a length that may be 0: of any other; inches. */
  readonly least?: number;
  readonly most?: number;
  /** Least value excluded. */
  readonly positive?: boolean;
  /** In the shop's currency: it may stand with the number. */
  readonly money?: boolean;
  /** No fractions. */
  readonly whole?: boolean;
  readonly note: string;
  /** Other units that its number may have, and how much of the one that it is kept in each is. */
  readonly units?: Readonly<Record<string, number>>;
  /** What is otherwise in a shop that counts in millimetres; see settingIn. */
  readonly metric?: Partial<Pick<SettingDefinition, 'usual' | 'unit' | 'note'>>;
}

/** As a shop of this unit has it: a metric one has whole metric values of its own. */
export function settingIn(unit: LengthUnit, definition: SettingDefinition): SettingDefinition {
  return unit === 'mm' ? { ...definition, ...definition.metric } : definition;
}

/** The usual number of a setting that has one, in the unit that it is kept in. */
export function usualNumber(definition: SettingDefinition, unit: LengthUnit): number {
  const { usual = '', unit: typedIn } = settingIn(unit, definition);
  const [over = 0, under = 1] = usual.split('/').map(Number);
  return (over / under) * (definition.units?.[typedIn] ?? 1);
}

type SettingName = Extract<ArgumentKey, `setting.${string}`>;

export const named = <Key extends SettingName>(key: Key) => ({ key, name: NAMES[key] });
/** @param usual in inches, and in millimetres where the shop counts in them */
export const length = (
  key: SettingName,
  usual: readonly [inches: string, millimetres: string] | undefined,
  note: string,
  { positive = true, metricNote = note }: { positive?: boolean; metricNote?: string } = {},
) =>
  ({
    ...named(key),
    kind: 'length',
    unit: 'in',
    note,
    positive,
    ...(usual === undefined ? {} : { usual: usual[0] }),
    metric: {
      unit: 'mm',
      note: metricNote,
      ...(usual === undefined ? {} : { usual: usual[1] }),
    },
  }) as const;
export const percent = (key: SettingName, usual: string, note: string, most = 100) =>
  ({ ...named(key), kind: 'percent', unit: '%', note, usual, least: 0, most }) as const;
export const number = (
  key: SettingName,
  usual: string,
  unit: string,
  note: string,
  positive = false,
) => ({ ...named(key), kind: 'number', unit, note, usual, least: 0, positive, most: 1e6 }) as const;
export const money = (key: SettingName, usual: string, unit: string, note: string) =>
  ({ ...number(key, usual, unit, note), money: true }) as const;
