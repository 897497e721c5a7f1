/** Every answer in JSON is as its published schema says, and has no field that the schema doesn't tell. */
import { describe, expect, test } from '@jest/globals';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv from 'ajv';
import { DEMO, SMALL } from './job-folders.ts';
import { TRACE } from './match-suite.ts';
import { folderWith, jsonOf, ROOT, run } from './program.ts';

const SCHEMAS = join(ROOT, 'assets', 'schemas');

/** Objects with named fields take no others: for the test alone, since fields may be added. */
function closed(schema: unknown): unknown {
  if (Array.isArray(schema)) return schema.map(closed);
  if (typeof schema !== 'object' || schema === null) return schema;
  const copy = Object.fromEntries(Object.entries(schema).map(([key, one]) => [key, closed(one)]));
  return 'properties' in copy ? { additionalProperties: false, ...copy } : copy;
}

const judge = new Ajv({ allErrors: true });
const judges = new Map(
  readdirSync(SCHEMAS).map((file) => {
    const schema = JSON.parse(readFileSync(join(SCHEMAS, file), 'utf8')) as object;
    return [file.replace('.schema.json', ''), judge.compile(closed(schema) as object)];
  }),
);

/** What of a value is not as the schema of this name says. */
export function faultsOf(name: string, value: unknown): readonly string[] {
  const check = judges.get(name)!;
  if (check(value) === true) return [];
  return (check.errors ?? []).map(
    (one) => `${one.dataPath} ${one.message} ${JSON.stringify(one.params)}`,
  );
}

const FILES = {
  ...SMALL,
  'coves.csv': 'Profile,Cove width,Cove depth,Note\nA,3 1/2,3/4,x\nB,20,1/2,\n,2,3/0,\n',
  'pieces.csv': 'Length,Quantity,Label\n40,5,a\n50,3,b\n300,1,\n',
  'fits.csv': 'Length,Quantity\n40,5\n',
  'sticks.csv': 'Length,Price,Count\n96,5,2\n144,7.50,\n',
  'euros.csv': 'Length,Price\n96,€5\n',
  'lengths.csv': 'Length,Count\n96,2\n144,\n',
  'woods.csv': 'Length,Quantity,Material\n40,5,Oak\n300,1,Pine\n',
  'racks.csv': 'Length,Price,Count,Material\n96,5,1,Oak\n144,7.50,,Oak\n96,3,,Pine\n',
  'bad.csv': 'Length,Price\nlong,x\n',
  'points.csv': TRACE,
};
const EFFORT = ['--steps', '5'];

export function schemaSuite(): void {
  describe('an answer in JSON', () => {
    test.each([
      { name: 'plan', args: ['plan', '.', ...EFFORT], exit: 0 },
      { name: 'plan', args: ['plan', DEMO, ...EFFORT], exit: 0 },
      {
        name: 'plan',
        args: ['plan', '.', ...EFFORT, '-o', 'a.xlsx', '--client', 'b.xlsx', '--export', 'c.zip'],
        exit: 0,
      },
      { name: 'client', args: ['client', '.', ...EFFORT, '-o', 'd.xlsx'], exit: 0 },
      { name: 'compare', args: ['compare', '.', DEMO, ...EFFORT, '-o', 'f.xlsx'], exit: 0 },
      { name: 'export', args: ['export', '.', ...EFFORT, '-o', 'e.zip'], exit: 0 },
      { name: 'runs', args: ['runs', DEMO], exit: 0 },
      { name: 'rates', args: ['rates', DEMO, ...EFFORT], exit: 0 },
      { name: 'setups', args: ['setups', 'coves.csv'], exit: 1 },
      { name: 'match', args: ['match', 'points.csv'], exit: 0 },
      { name: 'trial', args: ['trial', '3x3/4', '3 1/16x3/4'], exit: 0 },
      { name: 'match', args: ['match', 'points.csv', '--tolerance', '1/100'], exit: 0 },
      { name: 'cut', args: ['cut', 'pieces.csv', 'sticks.csv', ...EFFORT], exit: 1 },
      { name: 'cut', args: ['cut', 'fits.csv', 'sticks.csv', '--seconds', '0'], exit: 0 },
      { name: 'cut', args: ['cut', 'fits.csv', 'lengths.csv'], exit: 0 },
      { name: 'cut', args: ['cut', 'fits.csv', 'euros.csv'], exit: 0 },
      { name: 'cut', args: ['cut', 'pieces.csv', 'lengths.csv', ...EFFORT], exit: 1 },
      { name: 'cut', args: ['cut', 'woods.csv', 'racks.csv', ...EFFORT], exit: 1 },
      { name: 'refusal', args: ['plan', 'gone'], exit: 2 },
      { name: 'refusal', args: ['runs', 'gone'], exit: 2 },
      { name: 'refusal', args: ['cut', 'bad.csv', 'bad.csv', '--kerf', 'x'], exit: 2 },
      { name: 'refusal', args: ['setups', 'pieces.csv'], exit: 2 },
      { name: 'refusal', args: ['export', '.', '--ouput', 'x'], exit: 2 },
    ])('is as the schema $name says: $args', async ({ name, args, exit }) => {
      const ran = await run(folderWith(FILES), [...args, '--json']);
      expect(ran.exit).toBe(exit);
      expect(faultsOf(name, jsonOf(ran))).toEqual([]);
    });

    test('is known from any other: each schema refuses the answers of the others', () => {
      for (const name of judges.keys()) {
        expect([name, faultsOf(name, { version: 0 }).length > 0]).toEqual([name, true]);
        expect([name, faultsOf(name, 'text').length > 0]).toEqual([name, true]);
      }
      expect([...judges.keys()].sort()).toEqual([
        'client',
        'compare',
        'compare-copy',
        'cut',
        'export',
        'match',
        'plan',
        'rates',
        'refusal',
        'runs',
        'setups',
        'trial',
      ]);
    });
  });
}
