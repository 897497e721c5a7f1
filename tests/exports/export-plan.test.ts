import { describe, expect, test } from '@jest/globals';
import { unzipSync, strFromU8 } from 'fflate';
import dxfParser, { type IPolylineEntity } from 'dxf-parser';
import { exportPlan } from '../../src/exports/export-plan.ts';
import { newFileNames } from '../../src/exports/file-names.ts';
import { writeZip } from '../../src/hosts/zip/write-zip.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { standingCautions } from '../../src/sheets/words/standing-cautions.ts';
import { parseXml } from '../hosts/xml.ts';
import { planOf } from '../planning/make-job.ts';
import { HOSTILE_NAMES, JOBS } from '../sheets/sheet-jobs.ts';

/** Its types speak of a module that Node doesn't see. */
const Parser = dxfParser as unknown as typeof dxfParser.DxfParser;

describe.each(Object.entries(JOBS))('files of the job %s', (_, tables) => {
  test('hold every drawing of the sheets as sound SVG of its size, under a path of its own', async () => {
    const plan = await planOf(tables);
    const files = exportPlan(plan);
    const drawn = describePlan(plan)
      .sheets.filter(({ name }) => name !== 'Office')
      .flatMap(({ drawings = [] }) => drawings);
    const pictures = files.filter(({ path }) => path.endsWith('.svg'));
    expect(pictures).toHaveLength(drawn.length);
    pictures.forEach(({ text }, at) => {
      const svg = parseXml(text);
      expect(svg.name).toBe('svg');
      const { width } = drawn[at]!.drawing;
      expect(Number.parseFloat(svg.attributes['width']!)).toBeCloseTo(width, 3);
      expect(svg.attributes['width']).toMatch(/mm$/u);
    });
    const paths = files.map(({ path }) => path.toLowerCase());
    expect(new Set(paths).size).toBe(paths.length);
    for (const path of paths)
      expect(path).toMatch(/^[\p{L}\p{M}\p{N}-]+(?:[/ ][\p{L}\p{M}\p{N}-]+)*\.\w{3}$/u);
  });

  test('hold an outline of each cove that another reader takes, as wide as its blank', async () => {
    const plan = await planOf(tables);
    const { unit } = plan.job.shop;
    const made = plan.profiles.filter(({ setUp }) => setUp !== undefined);
    const files = exportPlan(plan)
      .filter(({ path }) => path.endsWith('.dxf'))
      .map(({ text }) => ({ text, entities: new Parser().parseSync(text)!.entities }));
    // What goes up a slope has raked profiles beside the end of its board.
    const ends = files.filter(({ entities }) => entities.some(({ layer }) => layer === 'BOARD'));
    const raked = files.filter((file) => !ends.includes(file));
    expect(ends).toHaveLength(made.length);
    expect(raked.every(({ text }) => / raked /u.test(text))).toBe(true);
    expect(raked.length > 0).toBe(made.some(({ profile }) => profile.slope !== undefined));
    made.forEach(({ profile }, at) => {
      const { entities, text } = ends[at]!;
      const board = entities.find(({ layer }) => layer === 'BOARD') as IPolylineEntity;
      const xs = board.vertices.map(({ x }) => x);
      const wide = Number(profile.blankWidth) * (unit === 'mm' ? 25.4 : 1);
      expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(wide, 4);
      expect(text).toContain('saw');
    });
  });

  test('say the cautions first, all of them', async () => {
    const [first] = exportPlan(await planOf(tables));
    expect(first!.path).toBe('READ FIRST.txt');
    // The shop's least blank stands in one of them.
    const standing = standingCautions().filter((line) => !line.startsWith('Long blanks'));
    for (const line of standing) expect(first!.text).toContain(line);
  });
});

describe('the zip of a plan', () => {
  test('holds the same bytes each time, and each text unharmed', async () => {
    const plan = await planOf(JOBS['hostile']!);
    const files = exportPlan(plan);
    const zip = writeZip(files);
    expect(writeZip(exportPlan(plan))).toEqual(zip);
    const back = Object.entries(unzipSync(zip)).map(([path, bytes]) => ({
      path,
      // The mark at the start of a CSV is taken off by a decoder.
      text: new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes),
    }));
    expect(back).toEqual(files);
    expect(strFromU8(zip.subarray(0, 2))).toBe('PK');
  });

  test('refuses two files of one path', () => {
    const file = { path: 'a.csv', text: '' };
    expect(() => writeZip([file, file])).toThrow(/two files a\.csv/u);
  });
});

describe('names of files', () => {
  test('are letters, figures and hyphens, none twice, none a device, none too long', () => {
    const nameFile = newFileNames();
    const names = [...HOSTILE_NAMES, ...HOSTILE_NAMES, 'CON', 'nul', 'lpt1', '', '../..'].map(
      nameFile,
    );
    expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length);
    for (const name of names) {
      expect(name).toMatch(/^[\p{L}\p{M}\p{N}-]+$/u);
      expect(Array.from(name).length).toBeLessThanOrEqual(54);
      expect(name).not.toMatch(/^(con|nul|lpt1)$/iu);
    }
    expect(nameFile('Reading room, north')).toBe('Reading-room-north');
  });
});
