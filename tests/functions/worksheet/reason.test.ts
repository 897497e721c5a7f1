import { describe, expect, test } from '@jest/globals';
import { answer, call, column, isError, one } from '../calls.ts';

describe('COVE.REASON', () => {
  test('is blank where nothing is to be said', () => {
    expect(answer('REASON', 3, '3/4')).toBe('');
  });

  test('gives every reason on a line of its own, then the cautions', () => {
    const words = answer('REASON', 3, '3/4', 0, 10, '3/32', '7/8', 3);
    const lines = typeof words === 'string' ? words.split('\n') : [];
    expect(lines).toHaveLength(4);
    expect(lines[0]).toContain('Stock left above the cove is 1/8 in; at least 1/4 in is needed.');
    expect(lines[1]).toContain('Near flat is 0 in; at least 1/8 in');
    expect(lines[2]).toContain('Far flat is 0 in; at least 1/8 in');
    expect(lines[3]).toMatch(/^Caution: The kerf is 3\/32 in/u);
  });

  test('says for bad input what the others say with #VALUE!', () => {
    for (const given of [
      ['x', 1],
      [3, '1/0'],
      [3, '3/4', 2],
      [undefined, '3/4'],
    ]) {
      const error = answer('APPROACH', ...given);
      expect(isError(error) && error.message).toBe(answer('REASON', ...given));
    }
    const shape = call('APPROACH', column(1, 2, 3), column(1, 2));
    const [[error] = []] = shape;
    expect(call('REASON', column(1, 2, 3), column(1, 2))).toEqual([
      [isError(error) ? error.message : 'no error'],
    ]);
  });

  test('gives text in every cell, whatever stands in them', () => {
    const cells = call('REASON', column(3, 'x', null, { code: '#REF!' }), one('3/4'));
    expect(cells.flat().every((cell) => typeof cell === 'string')).toBe(true);
    expect(cells[3]?.[0]).toBe('Width: the cell holds the error “#REF!”. Mend its formula.');
  });
});
