import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { KEPT_VERSION, readKept } from '../../src/page/keep/kept-work.ts';

const SOUND = {
  version: KEPT_VERSION,
  turn: 3,
  savedAt: 1_700_000_000_000,
  name: 'Maple Street',
  touched: true,
  data: {
    id: 'x',
    name: 'Maple Street',
    appVersion: '',
    locale: 'enUS',
    styles: {},
    sheetOrder: ['a'],
    sheets: { a: { id: 'a', name: 'Runs', cellData: { 0: { 0: { v: 'Room' } } } } },
  },
};

describe('What the browser kept', () => {
  test('is the work where it is sound, and nothing where there is none', () => {
    expect(readKept(SOUND)).toEqual({ kind: 'work', work: SOUND });
    expect(readKept(undefined)).toEqual({ kind: 'none' });
  });

  test('of a later version is named so, whatever else it holds', () => {
    expect(readKept({ version: KEPT_VERSION + 1, turn: 9, blocks: [] })).toEqual({
      kind: 'newer',
      turn: 9,
    });
  });

  test.each([
    { data: { ...SOUND.data, sheets: {} } },
    { data: { ...SOUND.data, sheetOrder: [] } },
    { data: { ...SOUND.data, sheetOrder: [3] } },
    { data: { ...SOUND.data, styles: null } },
    { data: { ...SOUND.data, sheets: { a: { id: 'a', name: 'Runs', cellData: { 0: 'Room' } } } } },
    { data: { ...SOUND.data, sheets: { a: { id: 'a', cellData: {} } } } },
    { data: undefined },
    { version: 0 },
    { turn: '3' },
    { name: null },
    { touched: 1 },
    { savedAt: undefined },
  ])('is damaged with %j', (part) => {
    expect(readKept({ ...SOUND, ...part }).kind).toBe('damaged');
  });

  test('may be anything at all without an exception', () => {
    fc.assert(
      fc.property(fc.anything(), (record) => {
        expect(['none', 'damaged', 'newer']).toContain(readKept(record).kind);
      }),
    );
  });
});
