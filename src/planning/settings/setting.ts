/** What a setting of the shop is: name, kind, usual value and limits. */
import { NAMES } from '../../core/faults/argument-words.ts';
import type { ArgumentKey } from '../../core/faults/argument.ts';

export type SettingKind = 'length' | 'angle' | 'number' | 'percent' | 'word' | 'text' | 'address';

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
}

type SettingName = Extract<ArgumentKey, `setting.${string}`>;

export const named = <Key extends SettingName>(key: Key) => ({ key, name: NAMES[key] });
export const length = (
  key: SettingName,
  usual: string | undefined,
  note: string,
  positive = true,
) =>
  ({
    ...named(key),
    kind: 'length',
    unit: 'in',
    note,
    positive,
    ...(usual === undefined ? {} : { usual }),
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
