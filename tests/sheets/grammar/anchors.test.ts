import { describe, expect, test } from '@jest/globals';
import { Anchors } from '../../../src/sheets/grammar/anchors.ts';

interface Places {
  readonly total: string;
  readonly row: number;
}

const placesOf = (): Anchors<Places> => new Anchors('Production');

describe('Anchors', () => {
  test('give what was placed, one for each thing that it is of', () => {
    const anchors = placesOf();
    const [cove, base] = [{ name: 'Cove' }, { name: 'Base' }];
    anchors.place('total', 'K9');
    anchors.place('row', 4, cove);
    anchors.place('row', 5, base);
    expect(anchors.at('total')).toBe('K9');
    expect([anchors.at('row', cove), anchors.at('row', base)]).toEqual([4, 5]);
  });

  test('throw where nothing was placed: a formula never goes by a 0 instead', () => {
    const anchors = placesOf();
    expect(() => anchors.at('total')).toThrow('“total” of Production has no place.');
    anchors.place('row', 4, 'Cove');
    expect(() => anchors.at('row', 'Base')).toThrow('“row” of Production has no place.');
    expect(() => anchors.at('row')).toThrow('“row” of Production has no place.');
  });

  test('throw where a name is placed twice: no sheet overwrites what another counts on', () => {
    const anchors = placesOf();
    anchors.place('total', 'K9');
    expect(() => {
      anchors.place('total', 'K10');
    }).toThrow('“total” of Production has two places.');
  });
});
