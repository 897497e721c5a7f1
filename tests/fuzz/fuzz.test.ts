/**
 * Every door, with what nobody types on purpose: no exception, no number that is none, no silence, the
 * same answer twice, and an end in time. A short run here; `npm run fuzz` goes on with other draws.
 * What it finds becomes a file in finds/, and stays.
 */
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { ok, type Outcome } from '../../src/core/faults/fault.ts';
import { CATALOGUE } from '../../src/functions/catalogue.ts';
import { readCsvTable } from '../../src/hosts/file/read-csv.ts';
import { readFileWorkbook } from '../../src/hosts/xlsx/read-file-workbook.ts';
import { readWorkbook } from '../../src/hosts/xlsx/read-workbook.ts';
import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { JOB_TABLES } from '../../src/planning/input/read-job.ts';
import type { RawTable } from '../../src/planning/input/raw-table.ts';
import { describeInput } from '../../src/sheets/describe-input.ts';
import { count } from '../deep.ts';
import { DEMO_FOLDER } from '../planning/make-job.ts';
import { READING_ROOM } from '../planning/reading-room.ts';
import { chanceOf } from './chance.ts';
import { whatIsWrong } from './sound.ts';
import { HOSTILE_TEXTS, spoilBytes, spoilPart, spoilText } from './spoil.ts';

/** Of a processor, for one reading or one call: a person would take it for a fault. */
const MOST_SECONDS = 3;
/** How much a run of all of them may leave behind. */
const MOST_MEGABYTES = 400;

const TABLES = JOB_TABLES.map(({ name }) => name);
/** Beside the demo's, which has none. */
const ANNEX: Readonly<Record<string, string>> = {
  Walls: READING_ROOM.walls.replaceAll('Reading room', 'Annex'),
  Trim: 'Room,Profile,Where,Height,Walls,Inside corners,Starts\nAnnex,Reading cove,ceiling,,except 2,,3\nall,Picture rail,height,60,"1, 3; 4",miter,',
  Work: 'Work,Per,Minutes,Money,For,Ours\ncrosscut,,0.75,,,yes\ninstall,foot,3.5,,cove,yes\nhang a door,opening,,25.50,,\ninstall at height,factor,1.25,,Picture rail,no\nprime or finish,,,,,no',
};
const FILES = TABLES.map((name) => ({
  name,
  text: ANNEX[name] ?? readFileSync(join(DEMO_FOLDER, `${name.toLowerCase()}.csv`), 'utf8'),
}));
const FINDS = join(import.meta.dirname, 'finds');

function readFolder(files: readonly { readonly name: string; readonly text: string }[]) {
  const tables: RawTable[] = [];
  for (const { name, text } of files) {
    const read = readCsvTable(new TextEncoder().encode(text), `${name}.csv`, name);
    if (!read.ok) return read;
    tables.push(read.value);
  }
  return ok(tables);
}

/** Runs one try, and gives what is wrong with it. */
async function tried(
  read: () => Outcome<readonly RawTable[]> | Promise<Outcome<readonly RawTable[]>>,
) {
  const before = process.cpuUsage();
  try {
    const wrong = whatIsWrong(await read());
    const { user, system } = process.cpuUsage(before);
    const seconds = (user + system) / 1e6;
    return seconds > MOST_SECONDS ? [...wrong, `took ${seconds} s`] : wrong;
  } catch (error) {
    return [`thrown: ${String(error)}`];
  }
}

let demo: Uint8Array;
let atFirst = 0;
beforeAll(async () => {
  const read = readFolder(FILES);
  if (!read.ok) throw new Error('The demo is at fault.');
  demo = await writeWorkbook(describeInput(read.value));
  atFirst = process.memoryUsage().rss;
});

afterAll(() => {
  expect((process.memoryUsage().rss - atFirst) / 1e6).toBeLessThan(MOST_MEGABYTES);
});

describe('whatever a file holds', () => {
  test('a CSV file that is spoiled gives a sound job, or words', async () => {
    const chance = chanceOf(1);
    for (let at = 0; at < count(20_000, 200); at++) {
      const spoiled = chance.below(FILES.length);
      const times = 1 + chance.below(3);
      const files = FILES.map((file, index) => {
        if (index !== spoiled) return file;
        let { text } = file;
        for (let time = 0; time < times; time++) text = spoilText(text, chance);
        return { ...file, text };
      });
      expect({
        at,
        text: files[spoiled]?.text,
        wrong: await tried(() => readFolder(files)),
      }).toMatchObject({
        wrong: [],
      });
    }
  }, 600_000);

  test('a workbook with turned bits or without its end is read as it was, or refused', async () => {
    const whole = await readWorkbook(demo, 'x', TABLES);
    const chance = chanceOf(2);
    for (let at = 0; at < count(2_000, 40); at++) {
      const bytes = spoilBytes(demo, chance);
      const read = await readWorkbook(bytes, 'x', TABLES);
      expect(await tried(() => read)).toEqual([]);
      if (read.ok) expect(read).toEqual(whole);
      await readFileWorkbook(bytes, 'x');
    }
  }, 600_000);

  test('a workbook with a spoiled part gives a sound job, or words', async () => {
    const chance = chanceOf(3);
    for (let at = 0; at < count(3_000, 40); at++) {
      const bytes = spoilPart(demo, chance);
      const wrong = await tried(() => readWorkbook(bytes, 'x', TABLES));
      expect({ at, wrong }).toEqual({ at, wrong: [] });
      await readFileWorkbook(bytes, 'x');
    }
  }, 600_000);

  test.each(readdirSync(FINDS))('what was found once stays mended: %s', async (file) => {
    const bytes = readFileSync(join(FINDS, file));
    if (extname(file) === '.xlsx') {
      expect(await tried(() => readWorkbook(bytes, file, TABLES))).toEqual([]);
      return;
    }
    const [table = ''] = file.split(' ');
    const files = FILES.map((one) =>
      one.name.toLowerCase() === table ? { ...one, text: bytes.toString('utf8') } : one,
    );
    expect(await tried(() => readFolder(files))).toEqual([]);
  });
});

describe('whatever a cell holds', () => {
  const cells: readonly unknown[] = [
    ...HOSTILE_TEXTS,
    null,
    undefined,
    0,
    -0,
    1,
    45,
    3.5,
    1e9,
    46_085,
    true,
    Number.NaN,
    Infinity,
    '#N/A',
    { type: 'Error', basicType: 'Error', basicValue: '#VALUE!' },
  ];

  test.each(CATALOGUE.map((entry) => [entry.name, entry] as const))(
    '%s answers soundly, twice alike and in time',
    (_, entry) => {
      const chance = chanceOf(10 + CATALOGUE.indexOf(entry));
      for (let at = 0; at < count(20_000, 150); at++) {
        const given = entry.parameters.map(() => [[chance.pick(cells)]]);
        const before = process.cpuUsage();
        const first = entry.call(...given);
        const { user, system } = process.cpuUsage(before);
        const wrong = first
          .flat()
          .filter((cell) => typeof cell === 'number' && !Number.isFinite(cell));
        expect({ given, wrong, again: entry.call(...given) }).toEqual({
          given,
          wrong: [],
          again: first,
        });
        expect((user + system) / 1e6).toBeLessThan(MOST_SECONDS);
      }
    },
    600_000,
  );
});
