import { expect, test } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { KEYS } from '../../src/page/tools/keys.ts';

test('README lists the keys of the page as the page itself does', () => {
  const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
  const [, table = ''] = readme.split(/\| keys +\| on the page +\|\n/u);
  const [rows = ''] = table.split('\n\n');
  const listed = rows
    .trim()
    .split('\n')
    .slice(1)
    .map((row) =>
      row
        .split('|')
        .slice(1, 3)
        .map((cell) => cell.trim()),
    );
  expect(listed).toEqual(KEYS);
});
