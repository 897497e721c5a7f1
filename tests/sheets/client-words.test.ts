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

  const WORK = 'Work,Per,Minutes,Money,For,Ours\n';
  const NOT = 'It does not cover';
  const AGREED = 'or taking old trim down, unless that is agreed in writing.';
  test.each<readonly [string, string, string, string, string]>([
    ['', '60', '', '', 'fitting, paint or finish, delivery'],
    ['install,,,,,', '60', '', 'fitting', 'paint or finish, delivery'],
    [
      'install,,,,Base,\nsite visit,room,5,,,',
      '60',
      '',
      'fitting (Base), site visit',
      'paint or finish, delivery',
    ],
    ['smooth,,,,,no\ninstall,,,,,no', '60', '', '', 'paint or finish, delivery, smooth, fitting'],
    ['load and deliver,,0,,,', '60', '', '', 'fitting, paint or finish, delivery'],
    ['', '60', 'delivery,40', '', 'fitting, paint or finish'],
    // Hours at no rate are no price: only what has one of its own is covered.
    ['install,,,,,\nload and deliver,,,50,,', '0', '', 'delivery', 'paint or finish, fitting'],
    ['cope,,9,,,', '60', '', '', 'fitting, paint or finish, delivery'],
  ])(
    'with %j in Work names what is covered and what is not',
    async (rows, rate, setting, also, not) => {
      const shop = `Setting,Value\nhourly rate,${rate}\n${setting}`;
      const said = sayCovered(await planOf({ shop, work: WORK + rows }));
      expect(said.filter((line) => line.startsWith('It covers too'))).toEqual(
        also === '' ? [] : [`It covers too: ${also}.`],
      );
      expect(said).toContain(`${NOT} ${not}, ${AGREED}`);
    },
  );
});
