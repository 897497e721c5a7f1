/** A job's tables as CSV files to fill in: their headings, the shop's settings and the usual kinds of work at their usual values. */
import { writeDecimal, type DecimalSign } from '../core/units/format-number.ts';
import type { LengthUnit } from '../core/units/length-unit.ts';
import type { Heading } from '../planning/input/headings/heading.ts';
import { TABLE_HEADINGS } from '../planning/input/headings/table-headings.ts';
import { sayUsual, SETTINGS, settingOf, type SettingKey } from '../planning/shop.ts';
import { usualWorkRows } from '../sheets/input/work-words.ts';
import { writeList } from './csv-list.ts';
import type { ExportFile } from './export-file.ts';

/** Each file by the name that a folder of a job's tables has for it. */
export function blankLists(decimalSign: DecimalSign, unit: LengthUnit = 'in'): ExportFile[] {
  return Object.entries(TABLE_HEADINGS).map(([table, headings]) => {
    const name = table.toLowerCase();
    const list = {
      name,
      headings: headings.map(({ heading }) => heading),
      rows:
        table === 'Shop'
          ? settingRows(decimalSign, unit)
          : table === 'Work'
            ? workRows(headings, decimalSign, unit)
            : [],
    };
    return { path: `${name}.csv`, text: writeList(list, decimalSign).text };
  });
}

function settingRows(decimalSign: DecimalSign, shopUnit: LengthUnit): string[][] {
  return (Object.keys(SETTINGS) as SettingKey[]).map((key) => {
    const { name, kind, unit, note, usual = '' } = settingOf(key, shopUnit);
    const isWord = kind === 'text' || kind === 'word';
    const typed = isWord || usual === '' ? usual : writeDecimal(usual, decimalSign);
    const value = key === 'decimalSign' ? decimalSign : typed;
    const said = usual === '' ? note : `${note}. Usual: ${sayUsual(key, shopUnit, decimalSign)}`;
    return [name, value, unit, said];
  });
}

function workRows(
  headings: readonly Heading[],
  decimalSign: DecimalSign,
  unit: LengthUnit,
): string[][] {
  return usualWorkRows(unit).map((row) =>
    headings.map(({ key }) => {
      const value = row[key] ?? '';
      return typeof value === 'number' ? writeDecimal(String(value), decimalSign) : value;
    }),
  );
}
