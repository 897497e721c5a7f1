/** What faults are about: keys whose words stand in one table, and names that are said as they stand. */
import { describe, expect, test } from '@jest/globals';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { NAMES, PHRASES } from '../../src/core/faults/argument-words.ts';
import { HEADINGS } from '../../src/core/faults/heading-argument-words.ts';
import {
  own,
  phrase,
  sayArgument,
  syntax,
  type Argument,
  type ArgumentKey,
} from '../../src/core/faults/argument.ts';
import { fault, rewordFault, type FaultCode } from '../../src/core/faults/fault.ts';
import { faultsToJson } from '../../src/core/faults/fault-json.ts';
import { WORDING } from '../../src/core/faults/wording.ts';
import { TABLE_HEADINGS } from '../../src/planning/input/headings/table-headings.ts';
import { JOB_TABLES } from '../../src/planning/input/read-job.ts';
import { tableArgument } from '../../src/planning/input/raw-table.ts';
import { SETTINGS } from '../../src/planning/shop.ts';

const source = join(import.meta.dirname, '../../src');
const files = (readdirSync(source, { recursive: true }) as string[]).filter(
  (file) => /\.tsx?$/u.test(file) && !file.endsWith('argument-words.ts'),
);
const text = files.map((file) => readFileSync(join(source, file), 'utf8')).join('\n');

/** Every text in quotes, and every text with slots as a pattern: `rail.${rail}.${edge}`. */
const quoted = new Set([...text.matchAll(/'([^'\n]*)'/gu)].map(([, one = '']) => one));
const patterns = [...text.matchAll(/`([\w.]*\$\{[\w.${}]*)`/gu)]
  .map(([, one = '']) => one.replace(/\$\{[\w.]+\}/gu, '\0'))
  .filter((one) => one.replaceAll('\0', '').length > 1)
  .map((one) => new RegExp(`^${one.replaceAll('.', '\\.').replaceAll('\0', '\\w+')}$`, 'u'));
const isUsed = (key: string): boolean => quoted.has(key) || patterns.some((one) => one.test(key));

describe('The words of arguments', () => {
  test('are there for each key, no two keys say the same, and each is used', () => {
    const said: readonly string[] = [...Object.values(NAMES), ...Object.values(PHRASES)];
    expect(said.filter((one) => one.trim() !== one || one === '')).toEqual([]);
    // A heading may name the sheet that it points to, and only that: Walls.
    const sheets = Object.entries(NAMES).flatMap(([key, name]) =>
      key.startsWith('sheet.') ? [name as string] : [],
    );
    const headings: readonly string[] = Object.values(HEADINGS);
    const both = sheets.filter((name) => headings.includes(name));
    expect(new Set(said).size).toBe(said.length - both.length);
    expect(new Set(sheets).size).toBe(sheets.length);
    const keys = [...Object.keys(NAMES), ...Object.keys(PHRASES)];
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys.filter((key) => !isUsed(key))).toEqual([]);
    expect(['nothingOfTheKind', 'rail.near.side.front', 'depthIn'].filter(isUsed)).toEqual([]);
  });

  test('are those of the headings, the settings and the sheets, typed once', () => {
    const headings = Object.values(TABLE_HEADINGS).flat();
    expect(headings.map(({ heading }) => heading)).toEqual(headings.map(({ key }) => NAMES[key]));
    const settings = Object.entries(SETTINGS).map(([key, { name }]) => [`setting.${key}`, name]);
    expect(Object.entries(NAMES).filter(([key]) => key.startsWith('setting.'))).toEqual(settings);
    expect(Object.values(SETTINGS).map(({ key, name }) => [key, name])).toEqual(settings);
    for (const { name } of JOB_TABLES) expect(tableArgument(name)).toBe(`sheet.${name}`);
    expect(tableArgument('Trim list')).toEqual(own('Trim list'));
  });

  test('are no words of ours where a name of the person’s own or syntax is meant', () => {
    // A name comes out of what the person gave: no text that stands in our code is one.
    expect(text.match(/\bown(?:\(|: )\s*['"`]/gu)).toBeNull();
    const typed = [...text.matchAll(/\bsyntax\(\s*['"`]([^'"`]*)/gu)].map(([, one]) => one);
    // An option, a command, or a place in a call as its help has it.
    const isSyntax = (one = ''): boolean => /^(?:--[a-z-]+|help|[A-Z]+(?:\.\w+)?)$/u.test(one);
    expect(typed.filter((one) => !isSyntax(one))).toEqual([]);
  });

  test('are found by keys that the compiler knows, with every slot filled', () => {
    // @ts-expect-error Words are no key.
    const words: Argument = 'Cove width';
    // @ts-expect-error There is no such slot.
    const slot = phrase('stockFor', { profile: own('Oak') });
    // @ts-expect-error A slot is left open.
    const open = phrase('runIn', { run: own('north') });
    expect(() => sayArgument(slot)).toThrow(RangeError);
    expect(() => sayArgument(open)).toThrow(RangeError);
    expect(NAMES[words as ArgumentKey]).toBeUndefined();
  });
});

describe('An argument is said', () => {
  test.each<readonly [Argument, string]>([
    ['coveWidth', 'Cove width'],
    ['setting.kerf', 'kerf'],
    [own('{id}'), '{id}'],
    [syntax('--kerf'), '--kerf'],
    [phrase('stockFor', { name: own('$& {name}') }), 'Stock for $& {name}'],
    [phrase('columnOf', { column: own('C'), table: 'sheet.Runs' }), 'Column C of Runs'],
    [phrase('unitOfSetting', { setting: 'setting.feed' }), 'Unit of feed'],
    [
      phrase('boardPart', { number: 2, part: phrase('stickOf', { id: own('a') }) }),
      'Board 2, Stick a',
    ],
  ])('%j', (argument, words) => {
    expect(sayArgument(argument)).toBe(words);
    const one = fault('text.missing', argument, null);
    expect(one.message).toBe(`${words} is empty and is needed here.`);
    expect(faultsToJson([one])).toEqual([{ ...one, argument: words }]);
    // A fault goes to a worker and back, and into a kept plan.
    expect(JSON.parse(JSON.stringify(one))).toEqual(one);
  });

  test('in another language by another table of words, the fault being the same', () => {
    const shout = <Table extends object>(table: Table): Record<keyof Table, string> =>
      Object.fromEntries(
        Object.entries(table).map(([key, one]) => [key, `¡${String(one)}!`]),
      ) as Record<keyof Table, string>;
    const messages = Object.fromEntries(
      Object.keys(WORDING).map((code) => [code, ({ argument }: { argument: string }) => argument]),
    ) as Record<FaultCode, (facts: { readonly argument: string }) => string>;
    const other = { names: shout(NAMES), phrases: shout(PHRASES), messages };
    const one = fault(
      'table.heading-merged',
      phrase('columnOf', { column: own('C'), table: 'sheet.Runs' }),
      null,
    );
    expect(rewordFault(one, 'in', '.', other)).toEqual({
      ...one,
      message: '¡Column C of ¡Runs!!',
    });
    expect(rewordFault(one, 'in')).toEqual(one);
  });
});
