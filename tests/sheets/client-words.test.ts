import { describe, expect, test } from '@jest/globals';

import { sayCovered } from '../../src/sheets/client/client-words.ts';
import { PLAIN, planOf } from '../planning/make-job.ts';

describe('What the client is told of the price', () => {
  test.each([
    ['60', 'the wood, making or buying them, and cutting each piece to length'],
    ['0', 'The work of making them and of cutting them to length is not in it.'],
  ])('at %s an hour says whether work is in it', async (rate, says) => {
    const plan = await planOf({ ...PLAIN, shop: `Setting,Value\nhourly rate,${rate}` });
    expect(sayCovered(plan)[0]).toContain(says);
  });
});
