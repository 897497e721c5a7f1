import { describe, expect, test } from '@jest/globals';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { exportPlan } from '../../src/exports/export-plan.ts';
import { writeList } from '../../src/exports/csv-list.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { planOf } from '../planning/make-job.ts';
import { HOSTILE_NAMES, JOBS } from '../sheets/sheet-jobs.ts';

type Row = Readonly<Record<string, string>>;

/** A list read back, each row by its headings. */
function listOf(plan: JobPlan, name: string): Row[] {
  const delimiter = plan.job.shop.decimalSign === ',' ? ';' : ',';
  const file = exportPlan(plan).find(({ path }) => path === `lists/${name}.csv`);
  return parse(file!.text, { bom: true, columns: true, delimiter });
}

function sum(rows: readonly Row[], heading: string): number {
  return rows.reduce((all, row) => all + Number(row[heading]?.replace(',', '.')), 0);
}

describe.each(Object.entries(JOBS))('lists of the job %s', (_, tables) => {
  const planned = planOf(tables);

  test('hold every piece once, and their lengths make up the net length', async () => {
    const plan = await planned;
    const { unit } = plan.job.shop;
    const pieces = listOf(plan, 'pieces');
    const live = pieces.filter(({ Done }) => Done === '');
    expect(pieces).toHaveLength(plan.pieces.length);
    expect(live).toHaveLength(plan.totals.pieces);
    const net = Number(plan.totals.lengthNet) * (unit === 'mm' ? 25.4 : 1);
    expect(sum(live, `Cut length (${unit})`)).toBeCloseTo(net, 6);
  });

  test('hold as many cuts, passes and cents as the plan has', async () => {
    const plan = await planned;
    const cuts = plan.profiles.flatMap(({ sticks }) => sticks.flatMap((stick) => stick.pieces));
    expect(listOf(plan, 'cuts')).toHaveLength(cuts.length);
    const passes = plan.profiles.flatMap(({ setUp }) => setUp?.passHeights ?? []);
    expect(listOf(plan, 'passes')).toHaveLength(passes.length);
    const { currency, linesCents } = plan.totals;
    expect(sum(listOf(plan, 'rooms'), `Price (${currency})`)).toBeCloseTo(linesCents / 100, 6);
    const kept = plan.profiles.flatMap(({ sticks }) => sticks.filter((one) => one.offcutKept));
    expect(listOf(plan, 'offcuts')).toHaveLength(kept.length);
    expect(listOf(plan, 'cautions')).toHaveLength(plan.cautions.length);
  });
});

describe('lists as CSV', () => {
  test('bring every name of a person through, and none of them as a formula', async () => {
    const plan = await planOf(JOBS['hostile']!);
    const rooms = listOf(plan, 'pieces').map((row) => row['Room']!);
    for (const name of HOSTILE_NAMES) {
      const guarded = /^[=+@-]/u.test(name) ? `'${name}` : name;
      expect(rooms).toContain(guarded);
    }
    const cells = exportPlan(plan)
      .filter(({ path }) => path.endsWith('.csv'))
      .flatMap(({ text }) => parse(text, { bom: true }).flat());
    const formulas = cells.filter((cell) => /^[=+@\t\r]|^-(?!\d)/u.test(cell));
    expect(formulas).toEqual([]);
  });

  test('give a number below 0 as a number, and a text that begins with a minus guarded', () => {
    const rows = [[-7.5, '-7.5', null, 0]];
    const { text } = writeList({ name: 'x', headings: ['a', 'b', 'c', 'd'], rows }, '.');
    expect(text).toBe("\uFEFFa,b,c,d\r\n-7.5,'-7.5,,0\r\n");
  });

  test('follow a decimal comma, with semicolons between the cells', () => {
    const { text } = writeList({ name: 'x', headings: ['a', 'b'], rows: [[1.25, 'x;y']] }, ',');
    expect(text).toBe('\uFEFFa;b\r\n1,25;"x;y"\r\n');
  });

  test('quote a text with a line end or a separator in it, and guard each of its lines', () => {
    const given = [
      'line1\n=1+1',
      'a\r+b',
      'a\r\n@c',
      'x;=1+1',
      'x,-2+3',
      'a\n"=1"',
      '\n＝1',
      'a, -b',
    ];
    const { text } = writeList(
      { name: 'x', headings: ['a'], rows: given.map((one) => [one]) },
      '.',
    );
    expect(readStrictly(text, ',').slice(1).flat()).toEqual([
      "line1\n'=1+1",
      "a\r'+b",
      "a\r\n'@c",
      "x;'=1+1",
      "x,'-2+3",
      `a\n'"=1"`,
      "\n'＝1",
      'a, -b',
    ]);
    for (const begun of naively(text)) expect(begun).not.toMatch(/^"*[=+\-@＝]/u);
  });

  const END = fc.constantFrom(
    '\n',
    '\r',
    '\r\n',
    '"',
    ',',
    ';',
    '\t',
    '=',
    '-',
    '@',
    'a',
    ' ',
    'é',
  );
  test('come back through a reader of another make, no row torn, none a formula to any reader', () => {
    const cell = fc.string({ unit: END, maxLength: 10 });
    const record = fc.array(cell, { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(fc.array(record, { maxLength: 5 }), fc.constantFrom(',', '.'), (rows, sign) => {
        const { text } = writeList({ name: 'x', headings: ['a', 'b', 'c'], rows }, sign);
        const back = readStrictly(text, sign === ',' ? ';' : ',').slice(1);
        expect(back.map((one) => one.map((a) => a.replaceAll("'", '')))).toEqual(rows);
        for (const begun of naively(text)) expect(begun).not.toMatch(/^"*[=+\-@]/u);
        for (const line of text.split(/[\r\n]/u)) expect(line).not.toMatch(/^[" ]*[=+\-@]/u);
      }),
    );
  });

  test.each([
    ['a point', 'Setting,Value\nhourly rate,60\n'],
    ['a comma', 'Setting,Value\nhourly rate,60\ndecimal sign,","\nunit,mm\n'],
  ])(
    'of a job with line ends in all its texts keep their rows and columns, with %s',
    async (_, shop) => {
      const wild = (text: string): string => `"${text}\n=1+1\r\n@x"`;
      const plan = await planOf({
        runs: `Room,Run,Profile,Length,Note\n${wild('Hall')},${wild('N')},${wild('Cove')},90 in,${wild('a')}\n${wild('Den')},${wild('S')},${wild('Base')},80 in,\n`,
        profiles: `Profile,Make,Cove width,Cove depth,Blank width,Blank thickness,Species\n${wild('Cove')},cove,2 in,1/2 in,3 in,1 in,${wild('Poplar')}\n${wild('Base')},buy,,,,,\n`,
        stock: `For,Length,Price\n${wild('Cove')},144 in,20\n${wild('Base')},192 in,24\n`,
        shop,
      });
      const separator = plan.job.shop.decimalSign === ',' ? ';' : ',';
      const lists = exportPlan(plan).filter(({ path }) => path.endsWith('.csv'));
      for (const { path, text } of lists) {
        const [headings = [], ...rows] = readStrictly(text, separator);
        expect([path, rows.filter((row) => row.length !== headings.length)]).toEqual([path, []]);
        for (const begun of naively(text))
          expect([path, begun]).not.toEqual([
            path,
            expect.stringMatching(/^["\s]*[=+@]|^-(?!\d)/u),
          ]);
      }
      const rowsOf = (name: string): number =>
        readStrictly(lists.find(({ path }) => path === `lists/${name}.csv`)!.text, separator)
          .length - 1;
      expect([rowsOf('pieces'), rowsOf('rooms'), rowsOf('by-profile')]).toEqual([2, 2, 2]);
    },
  );
});

/** RFC 4180 to the letter, no more: what stands in quotes is one cell, a bare line end ends a record. */
function readStrictly(text: string, separator: string): string[][] {
  const records: string[][] = [];
  const cell = new RegExp(
    `(?:"((?:[^"]|"")*)"|([^"\\r\\n${separator}]*))(${separator}|\\r\\n)`,
    'uy',
  );
  let record: string[] = [];
  const body = text.replace(/^\uFEFF/u, '');
  while (cell.lastIndex < body.length) {
    const at = cell.lastIndex;
    const found = cell.exec(body);
    if (found === null) throw new Error(`No cell of RFC 4180 at ${at}: ${body.slice(at, at + 40)}`);
    const [, quoted, plain = '', end] = found;
    record.push(quoted?.replaceAll('""', '"') ?? plain);
    if (end === separator) continue;
    records.push(record);
    record = [];
  }
  return records;
}

/** What begins a cell to a reader that knows no quotes, whatever it parts cells by. */
function naively(text: string): string[] {
  return text.replace(/^\uFEFF/u, '').split(/[\r\n,;\t]/u);
}
