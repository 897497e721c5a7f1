import { describe, expect, test } from '@jest/globals';
import { readWord } from '../../src/planning/input/read-word.ts';
import {
  END_KINDS,
  MAKES,
  MEASURES,
  OPENING_KINDS,
  PRICE_PER,
  STOCK_KINDS,
} from '../../src/planning/job.ts';
import { readTables } from './make-job.ts';

describe('A word in a cell', () => {
  test.each([
    ['Inside Mitre', END_KINDS, 'inside miter'],
    ['outside-miter', END_KINDS, 'outside miter'],
    ['outside mitered', END_KINDS, 'outside miter'],
    ['coped', END_KINDS, 'cope'],
    ['Returns', END_KINDS, 'return'],
    ['bought', MAKES, 'buy'],
    ['Long  Point', MEASURES, 'long point'],
    ['Windows', OPENING_KINDS, 'window'],
    ['boards', STOCK_KINDS, 'board'],
    ['ea', PRICE_PER, 'piece'],
    ['lineal foot', PRICE_PER, 'foot'],
    ['linear foot', PRICE_PER, 'foot'],
    ['board feet', PRICE_PER, 'board foot'],
  ] as const)('%j is read as %j has it: %j', (text, allowed, word) => {
    expect(readWord<string>(text, allowed)).toEqual({ word });
  });

  test.each([
    ['inside', END_KINDS, 'inside miter'],
    ['miter', END_KINDS, 'inside miter or outside miter'],
    ['sqaure', END_KINDS, 'square'],
    ['crown', MAKES, 'crown cove'],
    ['opening', OPENING_KINDS, 'cased opening'],
    ['pont', MEASURES, 'long point or short point'],
    ['glass', END_KINDS, ''],
  ] as const)('%j is not read: did you mean %j? %j', (text, allowed, may) => {
    expect(readWord<string>(text, allowed)).toEqual({ may });
  });

  test('of every list is read as itself', () => {
    for (const allowed of [END_KINDS, MAKES, MEASURES, OPENING_KINDS, PRICE_PER, STOCK_KINDS]) {
      for (const word of allowed) {
        expect(readWord<string>(word, allowed)).toEqual({ word });
        expect(readWord<string>(` ${word.toUpperCase()}S `, allowed)).toEqual({ word });
      }
    }
  });

  test('is refused with the words that are allowed and the one that is near', () => {
    const { faults } = readTables({ runs: 'Room,Profile,Length,Left end\nHall,Base,60,miter' });
    expect(faults.map(({ message }) => message)).toEqual([
      'Left end: “miter” is not known here. Did you mean inside miter or outside miter? Allowed: square, inside miter, outside miter, cope, return.',
    ]);
  });
});
