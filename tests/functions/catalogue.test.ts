import { beforeAll, describe, expect, test } from '@jest/globals';
import { boxOf, textsOf } from '../../src/drawings/compose.ts';
import { EXPLAINED } from '../../src/drawings/explain/explain.ts';
import { boxesOverlap } from '../../src/drawings/lettering.ts';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  describeReadme,
  findStale,
  makeFunctionsJson,
  makeFunctionsPage,
  readFunctions,
  type FoundFunction,
  type FunctionsJson,
} from '../../scripts/make-catalogue.mjs';
import type { Argument, ArgumentTable } from '../../src/functions/argument.ts';
import { CATALOGUE } from '../../src/functions/catalogue.ts';
import { isError } from './calls.ts';

const folder = join(import.meta.dirname, '..', '..', 'src', 'functions', 'worksheet');
const ORIGIN = 'https://trim.example';

/**
 * Every function with its arguments in their order. A workbook out there holds these calls: names and
 * order stay, and a new argument comes last and may be left out.
 */
const SIGNATURES = {
  APPROACH: 'width, depth, [offCenter], [bladeDiameter], [kerf], [measuredFrom]',
  BOARDFEET: 'thickness, width, length, [quantity]',
  CROWNBEVEL: 'spring, [corner]',
  CROWNMITER: 'spring, [corner]',
  CROWNNESTEDMITER: 'corner',
  CROWNSLOPEBEVEL: 'spring, pitch, [meets]',
  CROWNSLOPEMITER: 'spring, pitch, [meets]',
  CUT: 'approach, tilt, height, [bladeDiameter], [kerf]',
  FEASIBLE: 'width, depth, [offCenter], [bladeDiameter], [kerf], [stockThickness], [stockWidth]',
  INCHES: 'length',
  INCHTEXT: 'inches, [denominator]',
  EXACT: 'width, depth, [offCenter], [bladeDiameter], [kerf]',
  WINDOW: 'width, depth, [offCenter], [bladeDiameter], [kerf], [tolerance]',
  NEAREST: 'width, depth, [offCenter], [bladeDiameter], [kerf], [stockThickness], [stockWidth]',
  REACH: 'depth, [offCenter], [bladeDiameter], [kerf]',
  TRIAL:
    'width, depth, offCenter, measuredWidth, measuredDepth, [measuredOffCenter], [bladeDiameter], [kerf]',
  MATCH: 'points, [bladeDiameter], [kerf], [painted]',
  OUTLINE: 'width, depth, [offCenter], [bladeDiameter], [kerf], [points]',
  PASSES: 'depth, [firstPass], [step], [lastPass]',
  PASSHEIGHTS: 'depth, [firstPass], [step], [lastPass]',
  RAILMARKS:
    'width, depth, offCenter, blankWidth, tableFront, tableBack, [tiltSide], [nearFlat], [bladeDiameter], [kerf]',
  RAKED: 'out, up, slope, [corner]',
  REASON: 'width, depth, [offCenter], [bladeDiameter], [kerf], [stockThickness], [stockWidth]',
  SETUP: 'width, depth, [offCenter], [bladeDiameter], [kerf]',
  STICKS: 'pieces, stickLength, [quantities], [kerf], [endTrim]',
  TILT: 'width, depth, offCenter, [bladeDiameter], [kerf]',
};

/** What the description of an argument of a kind must say. */
const UNIT: Readonly<Record<Argument['kind'], RegExp>> = {
  length: /inches, or (?:a text|texts) such as .* (?:mm|m)\b/u,
  'exact length': /inches, or a text such as .* (?:mm|m)\b/u,
  angle: /degrees (?:from (?:the blade line|upright|level)|between)/u,
  'whole number': /whole numbers?/u,
  word: /\bword\b/u,
};

let functions: readonly FoundFunction[] = [];
let json: FunctionsJson;

beforeAll(async () => {
  functions = await readFunctions();
  json = await makeFunctionsJson({ origin: ORIGIN });
});

async function tableOf(file: string): Promise<ArgumentTable> {
  const loaded = (await import(pathToFileURL(join(folder, file)).href)) as {
    ARGUMENTS: ArgumentTable;
  };
  return loaded.ARGUMENTS;
}

describe('the catalogue', () => {
  test('and the list in the README are what npm run catalogue makes', async () => {
    const { noMarkers, stale } = await findStale();
    expect({ noMarkers, stale: stale.map(({ name }) => name) }).toEqual({
      noMarkers: false,
      stale: [],
    });
  });

  test('tells where the README has no place for the list, and fills it where it has', () => {
    expect(describeReadme('# A page without', functions)).toBeUndefined();
    const page =
      '<!-- functions: made by npm run catalogue -->\nOUTDATED\n<!-- /functions -->\nend';
    const filled = describeReadme(page, functions) ?? '';
    expect(filled).not.toContain('OUTDATED');
    expect(filled.endsWith('<!-- /functions -->\nend')).toBe(true);
    for (const { name } of functions) expect(filled).toContain(`- \`COVE.${name}(`);
  });

  test('keeps every function’s name and the order of its arguments', () => {
    const signatures = CATALOGUE.map(({ id, parameters }) => [
      id,
      parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(', '),
    ]);
    expect(Object.fromEntries(signatures)).toEqual(SIGNATURES);
    expect(CATALOGUE.map(({ name }) => name)).toEqual(CATALOGUE.map(({ id }) => `COVE.${id}`));
  });

  test('has one function from every file of its folder', () => {
    const files = readdirSync(folder).filter((name) => name.endsWith('.ts'));
    expect(functions.map(({ file }) => file).sort()).toEqual(files.sort());
  });

  test('gives each an example that calls it and has an answer', () => {
    for (const entry of CATALOGUE) {
      const { id, name, example } = entry;
      expect(example.startsWith(`=${name}(`)).toBe(true);
      const inside = example.slice(name.length + 2, -1);
      const cells = inside.match(/\{[^}]*\}|"(?:[^"]|"")*"|[^,\s]+/gu) ?? [];
      const ranges = cells.map((cell) =>
        cell.startsWith('{')
          ? cell
              .slice(1, -1)
              .split(';')
              .map((row) => row.split(',').map(Number))
          : [[cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : Number(cell)]],
      );
      const results = entry.call(...ranges).flat();
      expect({ id, errors: results.filter(isError) }).toEqual({ id, errors: [] });
    }
  });
});

describe('functions.json', () => {
  test('has ids that are unique, of letters alone, and never like a cell’s address', () => {
    const ids = json.functions.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[A-Z]{3,}$/u);
    // Letters alone are an address only with digits after them, R and C of the other style apart.
    expect(ids.filter((id) => /^(?:R\d*C\d*|[A-Z]{1,3}\d+)$/u.test(id))).toEqual([]);
    expect(json.functions.map(({ name }) => name)).toEqual(ids);
  });

  test('lets error cells reach the functions, so that one spoils its own row', () => {
    expect(json.allowErrorForDataTypeAny).toBe(true);
  });

  test('has ranges of any cells alone, none that repeats, and no option', () => {
    for (const { parameters, result, options } of json.functions) {
      expect(options).toBeUndefined();
      expect(result).toEqual({ type: 'any', dimensionality: 'matrix' });
      for (const { type, dimensionality, repeating } of parameters) {
        expect({ type, dimensionality, repeating }).toEqual({
          type: 'any',
          dimensionality: 'matrix',
        });
      }
    }
  });

  test('points to an anchor of the help page for each, which carries the cautions', async () => {
    const page = await makeFunctionsPage({ support: 'https://trim.example/help' });
    for (const { id, helpUrl, parameters, description } of json.functions) {
      expect(helpUrl).toBe(`${ORIGIN}/functions.html#${id.toLowerCase()}`);
      expect(page).toContain(`<section id="${id.toLowerCase()}">`);
      expect(description.length).toBeGreaterThan(40);
      for (const { name } of parameters) expect(page).toContain(`<dt><code>${name}</code>`);
    }
    expect(page).toContain('manual first');
    expect(page).toContain('never hands over the blade');
    expect(page).toContain('href="https://trim.example/help"');
  });
});

describe('a function’s table of arguments', () => {
  test('names them as its declaration does, and a blank is refused where they aren’t optional', async () => {
    for (const { file, parameters } of functions) {
      const table = await tableOf(file);
      expect(Object.keys(table)).toEqual(parameters.map(({ name }) => name));
      for (const { name, optional = false } of parameters) {
        const argument = table[name];
        const refused =
          argument !== undefined && 'blank' in argument && argument.blank === 'refused';
        expect({ file, name, optional }).toEqual({ file, name, optional: !refused });
      }
    }
  });

  test('is what each description says: its unit, what an angle is measured from, what a blank is', async () => {
    for (const { file, parameters } of functions) {
      const table = await tableOf(file);
      for (const { name, description } of parameters) {
        const argument = table[name];
        if (argument === undefined) throw new Error(`${file} has no ${name}.`);
        expect({ file, name, description }).toEqual({
          file,
          name,
          description: expect.stringMatching(UNIT[argument.kind]),
        });
        if ('blank' in argument && typeof argument.blank === 'number') {
          expect(description).toMatch(/\bwhen left\s+out\b/u);
          expect(description).toContain(sayUsual(argument.blank));
        }
      }
    }
  });
});

/** 0.125 as the descriptions say it: 1/8. */
function sayUsual(value: number): string {
  for (const under of [1, 8, 16, 32, 64]) {
    if (Number.isInteger(value * under))
      return under === 1 ? String(value) : `${value * under}/${under}`;
  }
  return String(value);
}

describe('The pictures of the functions', () => {
  test('are one for each, said in words, with no text over another or off the paper', () => {
    expect(Object.keys(EXPLAINED).sort()).toEqual(CATALOGUE.map(({ id }) => id).sort());
    for (const [id, draw] of Object.entries(EXPLAINED)) {
      const { alt, height, shapes, title, width } = draw();
      expect([id, title.length > 8, alt.length > 40]).toEqual([id, true, true]);
      const boxes = textsOf(shapes).map((one) => ({ text: one.text, ...boxOf(one) }));
      const off = boxes.filter(
        ({ left, right, top, bottom }) => left < 0 || right > width || top < 0 || bottom > height,
      );
      expect([id, off]).toEqual([id, []]);
      const over = boxes.filter((one, at) =>
        boxes.slice(at + 1).some((other) => boxesOverlap(one, other)),
      );
      expect([id, over]).toEqual([id, []]);
    }
  });
});
