import { expect, test } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { VERSION } from '../../src/core/version.ts';

test('The version that workbooks bear is that of package.json', () => {
  const text = readFileSync(join(import.meta.dirname, '..', '..', 'package.json'), 'utf8');
  expect(VERSION).toBe((JSON.parse(text) as { version: string }).version);
});
