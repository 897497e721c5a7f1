import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import {
  findNearNames,
  holdsOther,
  isSlipOf,
  letterDistance,
} from '../../src/core/words/near-words.ts';

/** By its definition, word by word from the ends: slow, and built otherwise. */
function distanceByDefinition(one: string, other: string): number {
  const memo = new Map<string, number>();
  const from = (at: number, place: number): number => {
    const key = `${at} ${place}`;
    const known = memo.get(key);
    if (known !== undefined) return known;
    if (at === one.length || place === other.length) {
      return one.length - at + other.length - place;
    }
    const ways = [
      from(at + 1, place) + 1,
      from(at, place + 1) + 1,
      from(at + 1, place + 1) + (one[at] === other[place] ? 0 : 1),
    ];
    const isSwap = one[at] === other[place + 1] && one[at + 1] === other[place];
    if (isSwap && at + 1 < one.length && place + 1 < other.length) {
      ways.push(from(at + 2, place + 2) + 1);
    }
    const least = Math.min(...ways);
    memo.set(key, least);
    return least;
  };
  return from(0, 0);
}

describe('How many slips lie between two words', () => {
  // The first is the worked example of the letters put for others; the others are by hand.
  test.each([
    ['kitten', 'sitting', 3],
    ['quantity', 'quantity', 0],
    ['qauntity', 'quantity', 1],
    ['quantiy', 'quantity', 1],
    ['diametre', 'diameter', 1],
    ['', 'run', 3],
    ['ca', 'abc', 3],
  ])('%j and %j: %d', (one, other, slips) => {
    expect(letterDistance(one, other)).toBe(slips);
  });

  test('is what the definition says, the same both ways', () => {
    const word = fc.stringMatching(/^[a-d]{0,7}$/u);
    fc.assert(
      fc.property(word, word, (one, other) => {
        expect(letterDistance(one, other)).toBe(distanceByDefinition(one, other));
        expect(letterDistance(other, one)).toBe(letterDistance(one, other));
      }),
    );
  });
});

describe('A name that is nearly another', () => {
  test.each([
    ['run', 'rim'],
    ['buy', 'qty'],
    ['batch', 'match'],
    ['date', 'done'],
    ['position', 'location'],
  ])('%s is no slip of %s', (one, other) => {
    expect(isSlipOf(one, other)).toBe(false);
  });

  test.each([
    ['blade kerf', 'kerf', true],
    ['blade dia.', 'blade diameter', true],
    ['kerf', 'crosscut kerf', true],
    ['table', 'table front', true],
    ['front table', 'table front', false],
    ['in', 'inside', false],
    ['delivered on', 'one piece', false],
    ['', 'kerf', false],
  ])('whether one of %j and %j holds the other: %j', (one, other, holds) => {
    expect(holdsOther(one, other)).toBe(holds);
    expect(holdsOther(other, one)).toBe(holds);
  });

  test('is found by its slip before it is by what it holds', () => {
    const known = ['kerf', 'crosscut kerf', 'blade diameter'];
    expect(findNearNames('kerff', known)).toEqual(['kerf']);
    expect(findNearNames('blade diametre', known)).toEqual(['blade diameter']);
    expect(findNearNames('saw kerf', known)).toEqual(['kerf']);
    expect(findNearNames('paint', known)).toEqual([]);
  });
});
