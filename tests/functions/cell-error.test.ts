import { describe, expect, test } from '@jest/globals';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fault } from '../../src/core/faults/fault.ts';
import { WORDING } from '../../src/core/faults/wording.ts';
import { CELL_ERRORS, cellError } from '../../src/functions/cell-error.ts';

const source = join(import.meta.dirname, '..', '..', 'src');

/** Faults that stand in files which the functions use, but that no function can give, and why. */
const NEVER_GIVEN: Readonly<Record<string, string>> = {
  'length.asked-about': 'a function can’t ask: what no shop has is refused',
  'length.asked-short': 'functions don’t ask about what is short',
  'cove.blade-cannot-rise': 'no function is told how high the saw’s blade rises',
  'angle.corner-sharp': 'a caution',
  'cove.undercut': 'a caution',
  'cove.steep-approach': 'a caution',
  'cove.thin-kerf': 'a caution',
  'cove.step-high': 'a caution',
  'trial.likely': 'a caution',
  'trial.other-side': 'a caution',
  'trial.right': 'a caution',
  'trial.several': 'a caution',
  'trial.sure': 'a caution',
  'match.deep-side': 'a caution',
  'match.doubles': 'a caution',
  'match.interval': 'a caution',
  'match.misses': 'a caution',
  'match.not-told-limit': 'a caution',
  'match.not-told-paint': 'a caution',
  'match.not-told-points': 'a caution',
  'match.not-told-waves': 'a caution',
  'match.reordered': 'a caution',
  'match.two-settings': 'a caution',
  'match.upright': 'a caution',
  'number.other-currency': 'no function takes money',
  'cutting.no-sticks': 'a stick length is always given',
  'cutting.blank-twice': 'nothing is ripped',
  'cutting.blank-unknown': 'nothing is ripped',
  'cutting.rip-empty': 'nothing is ripped',
  'cutting.profile-unknown': 'pieces are of one profile',
  'cutting.match-of-two-profiles': 'pieces are of one profile',
  'cutting.id-twice': 'pieces are numbered',
  'cutting.unit-too-fine': 'the unit is fixed',
  'cutting.splice-too-short': 'nothing is spliced',
  'number.negative': 'of prices and counts, which are fixed',
};

/** Every file that the functions import, themselves included. */
function reached(): ReadonlySet<string> {
  const files = new Set<string>();
  const follow = (path: string): void => {
    const name = relative(source, path).split(sep).join('/');
    if (files.has(name) || name === 'core/faults/wording.ts') return;
    files.add(name);
    const text = readFileSync(path, 'utf8');
    for (const [, target = ''] of text.matchAll(/from '(\.[^']+)'/gu)) {
      follow(resolve(dirname(path), target));
    }
  };
  const folder = join(source, 'functions', 'worksheet');
  for (const name of readdirSync(folder)) follow(join(folder, name));
  follow(join(source, 'functions', 'register.ts'));
  files.delete('functions/cell-error.ts');
  return files;
}

describe('faults in cells', () => {
  test('are bad input or no answer on purpose: every fault of the files that the functions use', () => {
    const given = new Set<string>();
    for (const name of reached()) {
      const text = readFileSync(join(source, name), 'utf8').replace(/\/\*[\s\S]*?\*\//gu, '');
      for (const [, code = ''] of text.matchAll(/'([a-z]+\.[a-z0-9-]+)'/gu)) {
        if (code in WORDING) given.add(code);
      }
    }
    const known = [...Object.keys(CELL_ERRORS), ...Object.keys(NEVER_GIVEN)];
    expect([...given].sort()).toEqual([...known].sort());
    expect(Object.keys(NEVER_GIVEN).filter((code) => code in CELL_ERRORS)).toEqual([]);
  });

  test('give one error, all messages joined by a space, and bad input outweighs', () => {
    const wide = fault('cove.web-too-thin', 'stockThickness', { inches: 0.1 });
    const bad = fault('length.missing', 'width', null);
    expect(cellError([wide, bad])).toEqual({
      kind: 'cell error',
      code: '#VALUE!',
      message: `${wide.message} ${bad.message}`,
    });
    expect(cellError([wide]).code).toBe('#N/A');
  });

  test('that are not listed, or none at all, are a bug and nothing else', () => {
    expect(() => cellError([])).toThrow(RangeError);
    expect(() => cellError([fault('file.missing', 'file', 'x')])).toThrow(RangeError);
  });
});
