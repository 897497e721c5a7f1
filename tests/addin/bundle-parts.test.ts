/** What the build is held to, and what of it is kept for use without a network. */
import { describe, expect, test } from '@jest/globals';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

import { NEVER_KEPT, overBudget, PARTS } from '../../scripts/bundle-parts.mjs';
import { builtPages } from '../browser/built-pages.ts';

interface Kept {
  readonly url: string;
  readonly revision: string | null;
}

function keptFiles(): Readonly<Record<'page' | 'saw', readonly Kept[]>> {
  const text = readFileSync(join(builtPages(), 'offline.js'), 'utf8');
  const [, json = ''] = /^self\.OFFLINE_FILES=(\{.*\});$/mu.exec(text) ?? [];
  return JSON.parse(json) as Readonly<Record<'page' | 'saw', readonly Kept[]>>;
}

describe('The parts of the build', () => {
  test('stop it where one is above its budget, naming its files, their sizes and the budget', () => {
    const files = { functions: ['main.js'], saw: ['saw.html', 'saw.js'] };
    const bytes = (each: number) => () => each;
    expect(overBudget(files, bytes(PARTS.functions.budget * 500))).toHaveLength(1);
    expect(overBudget(files, bytes(1000))).toEqual([]);
    const [said] = overBudget(files, bytes(PARTS.functions.budget * 1000 + 1)).filter((one) =>
      one.includes('main.js'),
    );
    expect(said).toContain(`above its budget of ${PARTS.functions.budget} kB: main.js`);
  });

  test('are kept for the page and for saw.html alone, whole, and nothing that Excel loads', () => {
    const { page, saw } = keptFiles();
    const names = page.map(({ url }) => url);
    for (const name of ['index.html', 'page.js', 'page.css', 'demo.json', 'saw.html', 'saw.js'])
      expect(names).toContain(name);
    expect(names.filter((name) => /\.wasm$|^plan-worker\./u.test(name))).toHaveLength(2);
    expect(saw.map(({ url }) => url)).toEqual(['icon-32.png', 'saw.html', 'saw.js']);
    for (const { url, revision } of [...page, ...saw]) {
      expect(NEVER_KEPT).not.toContain(url);
      expect(url).not.toMatch(/^office-js|^manifest|^\/|:/u);
      const path = join(builtPages(), url);
      expect([url, existsSync(path)]).toEqual([url, true]);
      if (revision === null) expect(url).toMatch(/\.[\da-f]{8}\.\w+$/u);
      else {
        const hash = createHash('sha256').update(readFileSync(path)).digest('hex');
        expect(hash.startsWith(revision)).toBe(true);
      }
    }
    expect(NEVER_KEPT).toEqual(
      expect.arrayContaining(['pane.html', 'functions.json', 'manifest.xml', 'main.js']),
    );
  });
});
