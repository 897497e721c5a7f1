import { describe, expect, test } from '@jest/globals';

import { copiedText } from '../../src/hosts/grid/paste/tab-text.ts';
import { looksLikeDay, typedMeaning } from '../../src/hosts/grid/paste/typed-meaning.ts';

describe('What is typed or pasted', () => {
  test.each([
    ...['3/4', '1/2', '5/8', '11/32', '3 1/2', '3-1/2', '3-1/2"', '7\' 4 3/8"', '1-2', '12-4'],
    ...[' 3/4 ', '10 A', '5P', '007', '1E5', '3,5', '1234567890123456', 'Hall', '12.5.7', ''],
  ])('stays the text that it is: %j', (text) => {
    expect(typedMeaning(text)).toEqual({ kind: 'text' });
  });

  test.each([
    ['96', 96],
    ['-0.5', -0.5],
    ['.5', 0.5],
    [' 12 ', 12],
    ['0', 0],
  ])('is a number where it is nothing else: %j', (text, value) => {
    expect(typedMeaning(text)).toEqual({ kind: 'number', value });
  });

  test.each([
    ['1,234.5', 1234.5],
    ['45%', 0.45],
    ['$12.00', 12],
    ['3/4/2026', 46085],
    ['2026-03-04', 46085],
    ['3/4/26', 46085],
    ['10:30', 0.4375],
  ])('is what any spreadsheet takes it for, with its format: %j', (text, value) => {
    const meaning = typedMeaning(text);
    expect(meaning).toMatchObject({ kind: 'number', value });
    expect('format' in meaning).toBe(true);
    expect(looksLikeDay(text)).toBe(false);
  });

  test('is guarded where the grid would make a day of it', () => {
    expect(['3/4', '1-2', '10 A', '12-4'].map(looksLikeDay)).toEqual([true, true, true, true]);
    expect(['96', '45%', 'Hall', '=3/4'].map(looksLikeDay)).toEqual([false, false, false, false]);
  });
});

describe('Copied text', () => {
  const texts = (text: string): (string | null)[][] =>
    copiedText(text).rows.map((row) => row.map((cell) => cell?.text ?? null));

  test('is cells between tabs and line ends', () => {
    expect(texts('a\tb\r\n\tc\n\nd\n')).toEqual([['a', 'b'], [null, 'c'], [null], ['d']]);
    expect(texts('3/4')).toEqual([['3/4']]);
  });

  test('has quotes around what holds tabs, line ends or quotes', () => {
    expect(texts('"two\nlines"\t"a\tb"\t"7\' 4 3/8"""\nx')).toEqual([
      ['two\nlines', 'a\tb', '7\' 4 3/8"'],
      ['x'],
    ]);
  });

  test('keeps inch marks and quotes that close nowhere', () => {
    expect(texts('3-1/2"\t"5" wide"\n"open\tb\n"A"\n')).toEqual([
      ['3-1/2"', '"5" wide"'],
      ['"open', 'b'],
      ['"A"'],
    ]);
  });
});
