import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from '@jest/globals';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

/**
 * The width, the depth and the off-center of the check value, one after the other, however they are typed:
 * 3,3/4,1/2 in a file, ("3", 0.75, "1/2") in a call, "3 in wide, 3/4 deep, 1/2 off center" in prose [C].
 * Between two of them stand words and marks, but no other number, and never a blank alone (3 3/4).
 */
const CHECK_VALUE =
  /(?<![\d/.]|\d )3(?:\.0+)?(?![\d/.])(?=[^\d\n]*[^\d\s])[^\d\n]{1,24}(?:3 ?\/ ?4|0?\.75)(?![\d/])(?=[^\d\n]*[^\d\s])[^\d\n]{1,24}(?:1 ?\/ ?2|0?\.50?)(?![\d/])/gu;

const TEXT = /\.(?:csv|[cm]?[jt]sx?|json|md|svg|html|css|xml)$/u;

function filesUnder(path: string): string[] {
  if (!statSync(path).isDirectory()) return TEXT.test(path) ? [path] : [];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesUnder(join(path, name)));
}

/** Every line of a file that holds the check value, where no [C] stands in it or the ten above. */
function unmarkedIn(path: string, isMarkEnough: boolean): string[] {
  const lines = readFileSync(path, 'utf8').split('\n');
  return lines.flatMap((line, at) => {
    if (line.match(CHECK_VALUE) === null) return [];
    const isMarked = lines.slice(Math.max(0, at - 10), at + 1).some((one) => one.includes('[C]'));
    return isMarkEnough && isMarked ? [] : [`${relative(ROOT, path)}:${at + 1} ${line.trim()}`];
  });
}

describe("The trade's check value, a cove 3 wide, 3/4 deep and 1/2 off center [C]", () => {
  test('is no example of ours: no demo, help text, screen or page has it', () => {
    const own = ['src', 'assets', 'README.md', 'DEVELOPERS.md', 'scripts', 'manifest.xml'];
    const files = own.flatMap((name) => filesUnder(join(ROOT, name)));
    expect(files.length).toBeGreaterThan(400);
    expect(files.flatMap((path) => unmarkedIn(path, false))).toEqual([]);
  });

  test('stands in those tests alone that are marked [C]', () => {
    const files = filesUnder(join(ROOT, 'tests'));
    expect(files.length).toBeGreaterThan(200);
    expect(files.flatMap((path) => unmarkedIn(path, true))).toEqual([]);
  });

  test.each([
    'Some cove,cove,3,3/4,1/2,4 1/2,1 1/4', // [C]
    '=COVE.SETUP(3, "3/4", "1/2")', // [C]
    "answer('TILT', '3', '3/4', 0.5)", // [C]
    '{ width: 3, depth: 0.75, offCenter: 0.5 }', // [C]
    'settingFor(3, 3 / 4, 1 / 2)', // [C]
    'a cove 3 in wide, 3/4 deep and 1/2 off center', // [C]
  ])('is found as it is typed: %s', (typed) => {
    expect(typed.match(CHECK_VALUE)).toHaveLength(1);
  });

  test.each([
    'a cove 2 3/4, 1/2',
    'Cove,cove,3,5/8,1/4,4 1/2',
    '13, 3/4, 1/2',
    "SETUP(3, '1/2', 0, 10)",
  ])('is not mistaken for: %s', (typed) => {
    expect(typed.match(CHECK_VALUE)).toBeNull();
  });
});
