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
function makePackage(name: string, about: object, texts: Readonly<Record<string, string>>): string {
  const at = join(folder, 'node_modules', name);
  mkdirSync(join(at, 'lib'), { recursive: true });
  writeFileSync(join(at, 'package.json'), JSON.stringify({ name, version: '1.2.3', ...about }));
  // A marker that some packages have, which names nothing.
  writeFileSync(join(at, 'lib', 'package.json'), JSON.stringify({ type: 'module' }));
  for (const [file, text] of Object.entries(texts)) writeFileSync(join(at, file), text);
  return join(at, 'lib', 'index.js');
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
