/** The headings of every input table in words: what stands under each, and which other words are read as it. */
import type { Heading } from '../planning/input/headings/heading.ts';
import { sayHeading } from '../planning/input/headings/say-headings.ts';
import { TABLE_HEADINGS } from '../planning/input/headings/table-headings.ts';
import { SETTINGS, sayUsual, settingOf, type SettingKey } from '../planning/shop.ts';
import { columns, join, wrap } from './help-text.ts';

export function helpOfHeadings(): string {
  return join([
    wrap(
      'A job is a workbook with the sheets below, or a folder with a CSV file for each (runs.csv). A star marks a heading that is needed; the order of columns, capital letters and spaces are free, and a column that is left out has its usual values. A bare length is in the unit of the shop.',
    ),
    ...Object.entries(TABLE_HEADINGS).map(
      ([table, headings]) => `${table}\n${columns(headings.map(rowOf))}`,
    ),
    `Settings of the shop, each a row of Shop\n${columns(
      (Object.keys(SETTINGS) as SettingKey[]).map((key) => {
        const { name, note, usual } = settingOf(key);
        const [own, metric] = [sayUsual(key), sayUsual(key, 'mm')];
        const both = own === metric ? own : `${own}; ${metric} in a metric shop`;
        return [name, usual === undefined ? note : `${note}. Usual: ${both}`];
      }),
    )}`,
  ]);
}

function rowOf(heading: Heading): readonly [string, string] {
  const { heading: name, required } = heading;
  return [required === true ? `${name}*` : name, sayHeading({ ...heading, required: false })];
}
