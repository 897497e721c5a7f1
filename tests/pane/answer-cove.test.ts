import { describe, expect, test } from '@jest/globals';
import { answerCove } from '../../src/pane/answer-cove.ts';

const typed = { width: '3', depth: '1/2', 'off-center': '0', diameter: '10', kerf: '1/8' };

describe("the pane's answer to a cove", () => {
  // The approach follows from the published triangle in tests/core/cove/published.test.ts: 41.827°.
  test('names what each angle is measured from', () => {
    expect(answerCove(typed).numbers).toEqual([
      ['Approach, from the blade line', '41.8°'],
      ["Approach, from the table's front edge", '48.2°'],
      ['Tilt, from upright', '0.0°'],
      ['Passes of at most 1/16 in', '9'],
    ]);
  });

  test('to text that is no length is the reason, once for each field', () => {
    const { numbers, faults } = answerCove({ ...typed, width: '3/0', depth: '' });
    expect(numbers).toEqual([]);
    expect(faults).toHaveLength(2);
    expect(faults[0]).toMatch(/^Cove width: “3\/0” divides by zero/u);
  });

  test('to a cove that cannot be cut has no numbers', () => {
    const { numbers, faults } = answerCove({ ...typed, width: '9' });
    expect(numbers).toEqual([]);
    expect(faults[0]).toMatch(/^Cove width is 9 in; this blade cuts/u);
  });
});
