import { describe, expect, test } from '@jest/globals';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { WORDING } from '../src/core/faults/wording.ts';

const root = join(import.meta.dirname, '..');
const source = join(root, 'src');

interface Project {
  readonly references: readonly { readonly path: string }[];
}

/** The layers, or a layer and a part of it, that a tsconfig.json names: `core`, `hosts/excel`. */
function referencesOf(folder: string): readonly string[] {
  const text = readFileSync(join(folder, 'tsconfig.json'), 'utf8');
  const { references } = JSON.parse(text) as Project;
  return references.map(({ path }) => relative(source, resolve(folder, path)).split(sep).join('/'));
}

const layerOf = (path: string): string => path.split('/')[0] ?? '';

/** What the compiler builds, from the lowest to the highest; a part follows its layer. */
const PROJECTS = referencesOf(root);
const LAYERS = [...new Set(PROJECTS.map(layerOf))];

/** What each layer may import, itself apart: what its own tsconfig.json, or that of a part, names. */
const MAY_IMPORT = new Map(
  LAYERS.map((layer) => {
    const parts = PROJECTS.filter((project) => layerOf(project) === layer);
    const named = parts.flatMap((part) => referencesOf(join(source, part)).map(layerOf));
    return [layer, [...new Set(named)].filter((one) => one !== layer)];
  }),
);

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
  '@univerjs/engine-render': ['hosts/grid/'],
  '@univerjs/preset-sheets-core': ['hosts/grid/'],
  '@univerjs/drawing': ['hosts/grid/'],
  '@univerjs/sheets': ['hosts/grid/'],
  '@univerjs/sheets-drawing': ['hosts/grid/'],
  '@univerjs/sheets-filter': ['hosts/grid/'],
  '@univerjs/sheets-numfmt': ['hosts/grid/'],
  '@univerjs/sheets-ui': ['hosts/grid/'],
  '@univerjs/themes': ['hosts/grid/'],
  '@univerjs/preset-sheets-drawing': ['hosts/grid/'],
  qr: ['drawings/'],
  'workbox-precaching': ['browser/'],
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
    ...text.matchAll(/^import '([^']+)';/gmu),
    ...text.matchAll(/\bimport\(\s*'([^']+)'/gu),
  ];
  return found.map((match) => ({ file, target: match[1] ?? '' }));
});

/** What is imported of our own, as paths below src. */
const ownImports: readonly Import[] = imports
  .filter(({ target }) => target.startsWith('.'))
  .map(({ file, target }) => ({
    file,
    target: relative(source, resolve(source, dirname(file), target))
      .split(sep)
      .join('/'),
  }));

/** Files of src by what they import. */
function importsOf(all: readonly Import[]): Record<string, string[]> {
  const known = Object.fromEntries(files.map((file): [string, string[]] => [file, []]));
  for (const { file, target } of all) known[file]?.push(target);
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

describe('the layers', () => {
  test('are the folders of src', () => {
    const folders = readdirSync(source, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => entry.name);
    expect(folders.sort()).toEqual([...LAYERS].sort());
  });

  test('are listed from the lowest to the highest: each names lower ones alone', () => {
    const upward = LAYERS.flatMap((layer, place) =>
      MAY_IMPORT.get(layer)!
        .filter((named) => !LAYERS.slice(0, place).includes(named))
        .map((named) => `${layer} names ${named}, which isn't listed before it.`),
    );
    expect(upward).toEqual([]);
  });

  // The compiler is content with what a named layer names in its turn.
  test('import no layer but those that their own tsconfig.json names', () => {
    const broken = ownImports.flatMap(({ file, target }) => {
      const [from, to] = [layerOf(file), layerOf(target)];
      if (from === to || MAY_IMPORT.get(from)?.includes(to) === true) return [];
      return [`${file} imports ${target}: the layer ${from} may not know the layer ${to}.`];
    });
    expect(broken).toEqual([]);
  });

  test('are the rows of the developers’ table, in the same order', () => {
    const text = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');
    const table = /^\| layer .*\n\|.*\n((?:\|.*\n)+)/mu.exec(text)?.[1] ?? '';
    const rows = [...table.matchAll(/^\| (\w+)/gmu)].map((row) => row[1]);
    expect(rows).toEqual(LAYERS);
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

describe("the stick planner's checks", () => {
  const isCheck = (file: string): boolean => file.startsWith('cutting/check/');

  test('share nothing with the planner but the types of its problem', () => {
    const shared = ownImports.filter(({ file, target }) => isCheck(file) && !isCheck(target));
    expect(shared).not.toEqual([]);
    const broken = shared.filter(({ target }) => target !== 'cutting/problem/problem.ts');
    expect(broken).toEqual([]);
    const ofProblem = imports.filter(({ file }) => file === 'cutting/problem/problem.ts');
    expect(ofProblem.filter(({ target }) => target.startsWith('.'))).toEqual([]);
  });

  test('lend nobody anything but checkPlan and checkBound', () => {
    const lent = ownImports.filter(({ file, target }) => !isCheck(file) && isCheck(target));
    expect(lent).not.toEqual([]);
    const broken = lent.filter(
      ({ target }) => !/^cutting\/check\/check-(?:plan|bound)\.ts$/u.test(target),
    );
    expect(broken).toEqual([]);
  });
});

test('The stick planner knows nothing of the worker that runs it', () => {
  const isWorker = (file: string): boolean => file.startsWith('cutting/worker/');
  const broken = ownImports.filter(
    ({ file, target }) => layerOf(file) === 'cutting' && !isWorker(file) && isWorker(target),
  );
  expect(broken).toEqual([]);
});

describe('the files', () => {
  test('are no barrels, and none is longer than 300 lines but the list of wordings and what is generated', () => {
    const long = files.filter(
      (file) =>
        !['core/faults/wording.ts', 'functions/catalogue.ts'].includes(file) &&
        readFileSync(join(source, file), 'utf8').split('\n').length > 301,
    );
    expect(long).toEqual([]);
    expect(files.filter((file) => file.endsWith('index.ts'))).toEqual([]);
  });

  test('import each other in no circle, not even for types', () => {
    expect(circlesIn(importsOf(ownImports))).toEqual([]);
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
