import { describe, expect, test } from '@jest/globals';
import { readdirSync, readFileSync, existsSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { WORDING } from '../src/core/faults/wording.ts';

const root = join(import.meta.dirname, '..');
const source = join(root, 'src');

/** What each layer may import, itself apart. The same as the references in its tsconfig.json. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  core: [],
  cutting: ['core'],
  threads: ['core', 'cutting'],
  planning: ['core', 'cutting'],
  drawings: ['core'],
  sheets: ['core', 'cutting', 'planning', 'drawings'],
  exports: ['core', 'planning', 'drawings', 'sheets'],
  hosts: ['core', 'planning', 'drawings', 'sheets'],
  functions: ['core', 'cutting'],
  pane: ['core', 'cutting', 'planning', 'drawings', 'sheets', 'exports', 'hosts'],
  browser: [
    'core',
    'cutting',
    'threads',
    'planning',
    'drawings',
    'sheets',
    'exports',
    'hosts',
    'pane',
  ],
  page: [
    'core',
    'cutting',
    'threads',
    'planning',
    'drawings',
    'sheets',
    'exports',
    'hosts',
    'functions',
    'pane',
    'browser',
  ],
  addin: [
    'core',
    'cutting',
    'threads',
    'planning',
    'drawings',
    'sheets',
    'exports',
    'hosts',
    'functions',
    'pane',
    'browser',
  ],
  cli: ['core', 'cutting', 'threads', 'planning', 'drawings', 'sheets', 'exports', 'hosts'],
};

/** Packages that only one place may know, so that it can be changed there alone. */
const PACKAGE_HOMES: Readonly<Record<string, readonly string[]>> = {
  hucre: ['hosts/xlsx/'],
  'csv-parse': ['hosts/csv/'],
  'csv-stringify': ['exports/'],
  fflate: ['hosts/xlsx/', 'hosts/zip/'],
  'cli-table3': ['cli/'],
  react: ['pane/'],
  'react-dom': ['pane/'],
  '@fluentui/react-components': ['pane/'],
  '@napi-rs/canvas': ['hosts/file/'],
  highs: ['cutting/', 'cli/', 'browser/'],
  '@univerjs/core': ['hosts/grid/', 'page/'],
  '@univerjs/engine-formula': ['hosts/grid/'],
  '@univerjs/preset-sheets-core': ['hosts/grid/'],
  '@univerjs/drawing': ['hosts/grid/'],
  '@univerjs/sheets': ['hosts/grid/'],
  '@univerjs/sheets-drawing': ['hosts/grid/'],
  '@univerjs/sheets-ui': ['hosts/grid/'],
  '@univerjs/preset-sheets-drawing': ['hosts/grid/'],
  'fraction.js': ['core/', 'planning/', 'sheets/', 'pane/', 'cli/'],
};

interface Import {
  readonly file: string;
  readonly target: string;
}

const files = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.tsx?$/u.test(name))
  .map((name) => name.split(sep).join('/'));

const imports: Import[] = files.flatMap((file) => {
  const text = readFileSync(join(source, file), 'utf8');
  const found = [
    ...text.matchAll(/^(?:import|export)\b[^;']*?from '([^']+)';/gmu),
    ...text.matchAll(/\bimport\(\s*'([^']+)'/gu),
  ];
  return found.map((match) => ({ file, target: match[1] ?? '' }));
});

/** Files of src by what they import. */
function importsOf(all: readonly Import[]): Record<string, string[]> {
  const known = Object.fromEntries(files.map((file): [string, string[]] => [file, []]));
  for (const { file, target } of all) {
    if (!target.startsWith('.')) continue;
    const path = relative(source, resolve(source, dirname(file), target));
    known[file]?.push(path.split(sep).join('/'));
  }
  return known;
}

/** Each circle that a walk along the imports closes, from the first of its files that was met. */
function circlesIn(graph: Readonly<Record<string, readonly string[]>>): string[][] {
  const circles: string[][] = [];
  const done = new Set<string>();
  const walk = (file: string, way: readonly string[]): void => {
    const met = way.indexOf(file);
    if (met !== -1) circles.push(way.slice(met));
    if (met !== -1 || done.has(file)) return;
    for (const next of graph[file] ?? []) walk(next, [...way, file]);
    done.add(file);
  };
  for (const file of Object.keys(graph)) walk(file, []);
  return circles;
}

const layerOf = (path: string): string => path.split('/')[0] ?? '';

describe('the layers', () => {
  test('are the folders of src, each with its own tsconfig.json', () => {
    const folders = readdirSync(source, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => entry.name);
    expect(folders.sort()).toEqual(Object.keys(MAY_IMPORT).sort());
    for (const folder of folders)
      expect(existsSync(join(source, folder, 'tsconfig.json'))).toBe(true);
  });

  test('import in one direction only: core <- cutting <- planning <- sheets <- hosts <- cli, pane', () => {
    const broken = imports.flatMap(({ file, target }) => {
      if (!target.startsWith('.')) return [];
      const path = relative(source, resolve(source, dirname(file), target))
        .split(sep)
        .join('/');
      const [from, to] = [layerOf(file), layerOf(path)];
      if (from === to || MAY_IMPORT[from]?.includes(to) === true) return [];
      return [`${file} imports ${path}: the layer ${from} may not know the layer ${to}.`];
    });
    expect(broken).toEqual([]);
  });

  test('let the pane know of the hosts no more than what any host offers, and how to yield', () => {
    const broken = imports.filter(
      ({ file, target }) =>
        file.startsWith('pane/') && /\/hosts\/(?!(?:host|yield-to-browser)\.ts$)/u.test(target),
    );
    expect(broken).toEqual([]);
  });

  test("name Excel and Office nowhere but in their own host and the add-in's entry", () => {
    const broken = files.filter(
      (file) =>
        !/^(?:hosts\/excel|addin)\//u.test(file) &&
        /\b(?:Excel|Office)\.[a-zA-Z]/u.test(readFileSync(join(source, file), 'utf8')),
    );
    expect(broken).toEqual([]);
  });

  test('have the references that the compiler enforces', () => {
    for (const [layer, allowed] of Object.entries(MAY_IMPORT)) {
      const text = readFileSync(join(source, layer, 'tsconfig.json'), 'utf8');
      const { references = [] } = JSON.parse(text) as { references?: { path: string }[] };
      const named = references.map(({ path }) => layerOf(path.replace('../', '')));
      expect({ layer, named: named.filter((name) => !allowed.includes(name)) }).toEqual({
        layer,
        named: [],
      });
    }
  });

  test('know nothing of Node but the file host and the command line: the rest runs in a browser', () => {
    const broken = imports
      .filter(
        ({ file, target }) => target.startsWith('node:') && !/^(?:hosts\/file|cli)\//u.test(file),
      )
      .map(
        ({ file, target }) => `${file} imports ${target}: only hosts/file and cli may know Node.`,
      );
    // The types of the grid's packages bring Node's along, so that the compiler doesn't see these.
    const globals = files.filter(
      (file) =>
        !/^(?:hosts\/file|cli)\//u.test(file) &&
        /\b(?:Buffer|process)\.[a-z]/u.test(readFileSync(join(source, file), 'utf8')),
    );
    expect([...broken, ...globals]).toEqual([]);
  });

  test('keep each package behind its own place', () => {
    const broken = imports.flatMap(({ file, target }) => {
      if (target.startsWith('.') || target.startsWith('node:')) return [];
      const name = /^(?:@[^/]+\/)?[^/]+/u.exec(target)?.[0] ?? '';
      const homes = PACKAGE_HOMES[name];
      if (homes?.some((home) => file.startsWith(home)) === true) return [];
      return [`${file} imports ${name}, which belongs to ${homes?.join(', ') ?? 'no layer'}.`];
    });
    expect(broken).toEqual([]);
  });
});

describe('the files', () => {
  test('are no barrels, and none is longer than 300 lines but the list of wordings', () => {
    const long = files.filter(
      (file) =>
        file !== 'core/faults/wording.ts' &&
        readFileSync(join(source, file), 'utf8').split('\n').length > 301,
    );
    expect(long).toEqual([]);
    expect(files.filter((file) => file.endsWith('index.ts'))).toEqual([]);
  });

  test('import each other in no circle, not even for types', () => {
    expect(circlesIn(importsOf(imports))).toEqual([]);
  });

  test('would be seen in a circle, be it of one file or behind a fork', () => {
    const opened = { a: ['b'], b: ['c'], c: [], d: ['a', 'c'] };
    expect(circlesIn(opened)).toEqual([]);
    expect(circlesIn({ ...opened, c: ['a'] })).toEqual([['a', 'b', 'c']]);
    expect(circlesIn({ a: ['b', 'a'], b: ['c', 'd'], c: ['b'], d: [] })).toEqual([
      ['b', 'c'],
      ['a'],
    ]);
  });

  test('use every wording that is listed', () => {
    const text = files
      .filter((file) => file !== 'core/faults/wording.ts')
      .map((file) => readFileSync(join(source, file), 'utf8'))
      .join('\n');
    const unused = Object.keys(WORDING).filter((code) => !text.includes(`'${code}'`));
    expect(unused).toEqual([]);
  });
});
