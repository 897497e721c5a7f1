/** Whatever ships as code of others goes with its license, and none of it is of a kind that may not ship. */
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  isPermissive,
  LICENSES_FILE,
  packagesOf,
  sayLicenses,
} from '../../scripts/third-party-licenses.mjs';
import { builtPages } from '../browser/built-pages.ts';
import { root } from './root.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'coveledger-licenses-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A package as it lies in node_modules. @returns a file of its code */
function makePackage(
  name: string,
  about: object,
  texts: Readonly<Record<string, string>>,
  code = '',
): string {
  const at = join(folder, 'node_modules', name);
  mkdirSync(join(at, 'lib'), { recursive: true });
  writeFileSync(join(at, 'package.json'), JSON.stringify({ name, version: '1.2.3', ...about }));
  // A marker that some packages have, which names nothing.
  writeFileSync(join(at, 'lib', 'package.json'), JSON.stringify({ type: 'module' }));
  for (const [file, text] of Object.entries(texts)) writeFileSync(join(at, file), text);
  const file = join(at, 'lib', 'index.js');
  writeFileSync(file, code);
  return file;
}

describe('The licenses of what is bundled', () => {
  test.each([
    ['MIT', true],
    ['(MIT OR GPL-3.0)', true],
    ['MIT AND ISC', true],
    ['MIT AND LGPL-2.1', false],
    ['GPL-3.0-or-later', false],
    ['AGPL-3.0', false],
    ['MPL-2.0', false],
    ['SEE LICENSE IN LICENSE', false],
    ['UNLICENSED', false],
    ['', false],
    [undefined, false],
  ])('%p may ship: %p', (license, may) => {
    expect(isPermissive(license)).toBe(may);
  });

  test('are told package by package, with the text that each brings or its license has', () => {
    const files = [
      makePackage(
        'own-text',
        { license: 'ISC' },
        { 'LICENSE.md': 'ISC of own-text', NOTICE: 'and a notice' },
      ),
      makePackage('@scope/no-text', { license: 'MIT', author: 'A. Person <a@b.c>' }, {}),
      makePackage('no-license', {}, { LICENSE: '   Apache License\n  Version 2.0, January 2004' }),
    ];
    const said = sayLicenses(packagesOf([...files, files[0]!, join(folder, 'src', 'ours.ts')]));
    expect(said).toMatch(/code of 3 packages/);
    expect(said).toMatch(/own-text 1\.2\.3\nLicense: ISC\n\nISC of own-text\s+and a notice/);
    expect(said).toMatch(
      /@scope\/no-text 1\.2\.3\nLicense: MIT\n\nMIT License\s+Copyright \(c\) A\. Person\n/,
    );
    expect(said).toMatch(/no-license 1\.2\.3\nLicense: Apache-2\.0\n/);
  });

  test('stop the build where one is not known to be permissive', () => {
    const files = [
      makePackage('copyleft', { license: 'GPL-3.0' }, { LICENSE: 'GPL' }),
      makePackage('silent', {}, {}),
    ];
    expect(() => sayLicenses(packagesOf(files))).toThrow(
      'No license that a bundle may hold: copyleft 1.2.3 (GPL-3.0), silent 1.2.3 (none).',
    );
  });

  test('tell of code that a package holds of others, once for each package that does', () => {
    const polyfill = "throw new Error('Invalid string. Length must be a multiple of 4')";
    const files = [
      makePackage('holds', { license: 'MIT' }, { LICENSE: 'MIT of holds' }, polyfill),
      makePackage('holds-not', { license: 'MIT' }, { LICENSE: 'MIT of holds-not' }, 'true;'),
      makePackage('base64-js', { license: 'MIT' }, { LICENSE: 'MIT of itself' }, polyfill),
    ];
    const said = sayLicenses(packagesOf(files));
    expect(said).toMatch(
      /MIT of holds\n\nHolds code of base64-js:\n\nMIT License\s+Copyright \(c\) 2014 Jameson Little\n/,
    );
    expect(said.match(/Holds code of/g)).toHaveLength(1);
  });

  test.each([
    ['/*! (c) 2020-2024 Somebody Else, MIT */', true],
    [' * Copyright © 1999 Somebody Else. All rights reserved.', true],
    ['// Copyright (c) A. Person', false],
    ['// Copyright 2001-present Holder, Inc.', false],
    ['// See the copyright notice.', false],
    ['const copyright = "Somebody Else";', false],
  ])('stop the build where code names a holder that is not told: %p, %p', (line, stops) => {
    const code = line.startsWith(' *') ? `/**\n${line}\n */` : line;
    const about = { license: 'MIT', author: 'A. Person <a@b.c>' };
    const file = makePackage('claims', about, { LICENSE: 'Copyright (c) 2001 Holder, Inc.' }, code);
    const say = (): string => sayLicenses(packagesOf([file]));
    if (stops) expect(say).toThrow(/claims 1\.2\.3 holds code whose notice is missing.*Somebody/);
    else expect(say()).toContain('claims 1.2.3');
  });

  test('hold those of the solver, which is compiled: no sign of what would ask for more of them', () => {
    const solver = readFileSync(
      join(root, 'node_modules', 'highs', 'build', 'highs.wasm'),
      'latin1',
    );
    // Its orderings (AMD, METIS, RCM) are in a library of their own, which isn't here; nor is zlib.
    expect(solver).toContain('libhighs_extras');
    expect(solver).toContain('HiGHS build without zlib support');
    expect(solver).not.toMatch(/METIS_|SuiteSparse|incorrect header check/);
  });

  interface Locked {
    readonly version: string;
    readonly license?: string;
    readonly dependencies?: Readonly<Record<string, string>>;
  }
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    readonly packages: Readonly<Record<string, Locked>>;
  };
  const built = (): string => readFileSync(join(builtPages(), LICENSES_FILE), 'utf8');
  const listed = (text: string): (readonly [name: string, version: string, license: string])[] =>
    [...text.matchAll(/^={80}\n(\S+) (\S+)\nLicense: (.+)\n/gm)].map(
      ([, name = '', version = '', license = '']) => [name, version, license],
    );

  test('in the build are those of all that the pages import, and of what that needs', () => {
    const names = new Set(listed(built()).map(([name]) => name));
    // By the sources themselves: what is imported by name in a layer that a page can reach.
    const layers = readdirSync(join(root, 'src'), { withFileTypes: true })
      .filter((one) => one.isDirectory() && one.name !== 'cli')
      .map(({ name }) => name);
    const sources = layers.flatMap((layer) =>
      readdirSync(join(root, 'src', layer), { recursive: true, encoding: 'utf8' })
        .filter(
          (name) => /\.tsx?$/u.test(name) && !/^file[\\/]/u.test(name) && !name.endsWith('.d.ts'),
        )
        .map((name) => readFileSync(join(root, 'src', layer, name), 'utf8')),
    );
    const imported = new Set(
      sources.flatMap((text) =>
        [...text.matchAll(/^(?:import|export) (?!type )[^;]*?from '([^'.][^']*)';/gms)]
          .map(([, from = '']) => /^(@[^/]+\/[^/]+|[^/]+)/u.exec(from)![1]!)
          .filter((name) => !name.startsWith('node:')),
      ),
    );
    // Only gathers others, which are there by their own names.
    imported.delete('@fluentui/react-components');
    expect(imported.size).toBeGreaterThan(8);
    expect([...imported].filter((name) => !names.has(name))).toEqual([]);
    for (const name of [
      'highs',
      'scheduler',
      '@griffel/core',
      '@univerjs/engine-formula',
      'webpack',
    ]) {
      expect(names).toContain(name);
    }
  });

  test('in the build are those of the code that its packages hold of others', () => {
    const sections = built().split('='.repeat(80));
    const held = sections.flatMap((one) =>
      [...one.matchAll(/^Holds code of (.*):$/gm)].map(([, what = '']) => [
        one.trim().split(' ')[0],
        what,
      ]),
    );
    for (const [name, what] of [
      ['csv-parse', 'buffer'],
      ['csv-parse', 'ieee754'],
      ['csv-stringify', 'base64-js'],
      ['csv-stringify', 'lodash'],
      ['highs', 'pdqsort'],
      ['highs', 'musl'],
    ]) {
      expect(held).toContainEqual([name, what]);
    }
  });

  test('in the build are as the lock has them, none of them copyleft, each with its text', () => {
    const text = built();
    const all = listed(text);
    expect(all.length).toBeGreaterThan(50);
    expect(text).toContain(`code of ${all.length} packages`);
    for (const [name, version, license] of all) {
      const known = Object.entries(lock.packages)
        .filter(
          ([path]) => path === `node_modules/${name}` || path.endsWith(`/node_modules/${name}`),
        )
        .map(([, one]) => one);
      expect([name, known.map((one) => one.version)]).toEqual([
        name,
        expect.arrayContaining([version]),
      ]);
      expect([name, license]).not.toEqual([
        name,
        expect.stringMatching(/GPL|MPL|EPL|CDDL|EUPL|SSPL/),
      ]);
      const declared = known.find((one) => one.version === version)?.license;
      if (declared !== undefined) expect([name, license]).toEqual([name, declared]);
      const at = text.indexOf(`\n${name} ${version}\nLicense: `);
      const own = text.slice(at, text.indexOf('='.repeat(80), at) >>> 0);
      expect([name, own.length > 400]).toEqual([name, true]);
    }
  });
});
