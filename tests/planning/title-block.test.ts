import { describe, expect, test } from '@jest/globals';
import { NO_TITLE, TITLE_ROWS } from '../../src/planning/title-block.ts';
import { readJob } from '../../src/planning/input/read-job.ts';
import { jobOf, planOf, readTables, tablesOf } from './make-job.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { recognizeTables } from '../../src/planning/input/recognize-tables.ts';

const FULL = [
  'Setting,Value',
  'job,Lending desk and stairs',
  'number,007',
  'rev,C',
  'Customer,Friends of the Library',
  'address,"2 Mill Lane, Wexcombe"',
  'shop,Long Field Joinery',
  'prepared by,A. Person',
  'date,2026-12-01',
  'terms,"A third at the order, the rest when it hangs."',
  'deposit %,30',
].join('\n');

describe('The table Job', () => {
  test('says what names the job, by our words and by others that are read as ours', () => {
    expect(jobOf({ job: FULL }).titleBlock).toEqual({
      job: 'Lending desk and stairs',
      number: '007',
      revision: 'C',
      client: 'Friends of the Library',
      address: '2 Mill Lane, Wexcombe',
      shop: 'Long Field Joinery',
      preparedBy: 'A. Person',
      date: '2026-12-01',
      terms: 'A third at the order, the rest when it hangs.',
      deposit: 30,
    });
  });

  test('may be blank or not there, and then says nothing and changes nothing', async () => {
    const blank = `Setting,Value\n${Object.values(TITLE_ROWS)
      .map(({ name }) => `${name},`)
      .join('\n')}`;
    const reading = readTables({ job: blank });
    expect(reading.faults).toEqual([]);
    expect(reading.job?.titleBlock).toEqual(NO_TITLE);
    const [named, plain] = [await planOf({ job: FULL }), await planOf({})];
    expect({ ...planToJson(named), job: null }).toEqual({ ...planToJson(plain), job: null });
  });

  test.each([
    ['job.title-near', 'cleint,Friends', 'client'],
    ['job.title-near', 'deposit,300', 'deposit %'],
    ['job.title-twice', 'client,One\nCustomer,Other', 'Customer'],
    ['job.setting-of-shop', 'kerf,1/8', 'Shop'],
    ['job.setting-of-shop', 'margin %,20', 'Shop'],
    ['day.unreadable', 'date,12/11/2026', '12/11/2026'],
    ['day.unreadable', 'date,2026-02-30', '2026-02-30'],
    ['day.unreadable', 'date,46000', '46000'],
    ['day.unreadable', 'date,Nov 2026', 'Nov 2026'],
    ['number.too-large', 'deposit %,130', '130'],
    ['number.too-small', 'deposit %,-5', '-5'],
  ])('is refused with %s at its cell: %s', (code, rows, named) => {
    const { faults } = readTables({ job: `Setting,Value\n${rows}` });
    const line = rows.split('\n').length + 1;
    expect(faults).toMatchObject([{ code, where: { file: 'job.csv', line } }]);
    expect(faults[0]?.message).toContain(named);
  });

  test.each([
    ['3 Dec 2026', '2026-12-03'],
    ['Dec 3, 2026', '2026-12-03'],
    ['3. December 2026', '2026-12-03'],
  ])('reads a day whose month is named: %s', (typed, day) => {
    expect(jobOf({ job: `Setting,Value\ndate,"${typed}"` }).titleBlock.date).toBe(day);
  });

  test('reads a cell that holds a date', () => {
    const cells = ['date', { kind: 'date', day: '2027-01-15' }] as const;
    const dated = tablesOf({ job: 'Setting,Value\ndate,x' }).map((table) =>
      table.name === 'Job' ? { ...table, rows: [{ line: 2, cells }] } : table,
    );
    expect(readJob(dated, 'job').job?.titleBlock.date).toBe('2027-01-15');
  });

  test('says of a row that no sheet prints that it is ignored', () => {
    const { cautions } = readTables({ job: 'Setting,Value\nweather,fair' });
    expect(cautions.map(({ code }) => code)).toContain('job.title-unknown');
  });

  test('is a sheet Job with a Setting and a Value: a page of the person’s own of that name isn’t', () => {
    const found = (headings: readonly string[]) =>
      recognizeTables([{ sheet: 'Job', headings }]).find(({ name }) => name === 'Job')?.chosen;
    expect(found(['Setting', 'Value', 'Note'])).toBeDefined();
    expect(found(['Smith residence'])).toBeUndefined();
    expect(found(['Room', 'Run', 'Profile', 'Length'])).toBeUndefined();
  });
});
