import { describe, expect, test } from '@jest/globals';
import { listPieces } from '../../src/planning/pieces/list-pieces.ts';
import { count } from '../deep.ts';
import { houseByChance, type House } from './houses/house.ts';
import { nameAsTyped, piecesOfHouse, type Due } from './houses/house-pieces.ts';
import { tablesOfHouse } from './houses/house-tables.ts';
import { jobOf } from './make-job.ts';

const HOUSES = count(2_000, 200);

/** What arithmetic may be off where a length is irrational; a sum of tape marks is off by rounding alone. */
const IRRATIONAL_SLACK = 4e-6;
const ROUNDING_SLACK = 1e-9;

/** The next mark up; where a length lies a hair over a mark, that mark too. */
function isRoundedUp(cut: number, exact: number, precision: number): boolean {
  const marks = Math.round(cut / precision);
  if (Math.abs(cut - marks * precision) > ROUNDING_SLACK) return false;
  const least = Math.ceil((exact - IRRATIONAL_SLACK) / precision);
  const most = Math.ceil((exact - ROUNDING_SLACK) / precision);
  return marks >= least && marks <= most;
}

const keyOf = (room: string, run: string, profile: string): string =>
  JSON.stringify([room, nameAsTyped(run), profile]);

function grouped<T>(list: readonly T[], key: (one: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const one of list) groups.set(key(one), [...(groups.get(key(one)) ?? []), one]);
  return groups;
}

/** What may be said of these houses: walls without base, windows without a sill, doors without a place. */
const SAID = new Set([
  'job.opening-by-total',
  'job.window-cuts-unknown',
  'job.opening-laps-rail',
  'job.wall-unknown',
  'job.wall-without-base',
]);

/** What differs between the pieces as listed and as the house has them. */
function differences(house: House, seed: number): string[] {
  const listed = listPieces(jobOf(tablesOfHouse(house, seed)));
  const due = piecesOfHouse(house);
  const said = listed.cautions.filter((one) => !SAID.has(one.code));
  const wrong = [...listed.faults, ...said].map((one) => `${one.code}: ${one.message}`);
  const got = grouped(listed.pieces, (one) => keyOf(one.room, one.run, one.profile));
  const wanted = grouped(due.pieces, (one) => keyOf(one.room, one.run, one.profile));
  for (const key of new Set([...got.keys(), ...wanted.keys()])) {
    const pieces = got.get(key) ?? [];
    const dues: readonly Due[] = wanted.get(key) ?? [];
    if (pieces.length !== dues.length) wrong.push(`${key}: ${pieces.length}, not ${dues.length}`);
    for (const [at, piece] of pieces.entries()) {
      const one = dues[at];
      if (one === undefined) continue;
      const cut = Number(piece.cutLength);
      if (!isRoundedUp(cut, one.length, house.precision)) {
        wrong.push(`${piece.id} ${piece.profile}: ${cut}, from coordinates ${one.length}`);
      }
      const ends = [
        piece.kind,
        piece.left.kind,
        piece.right.kind,
        piece.left.point,
        piece.right.point,
      ];
      if (ends.join() !== [one.kind, ...one.ends, ...one.points].join()) {
        wrong.push(
          `${piece.id}: ${ends.join()}, not ${[one.kind, ...one.ends, ...one.points].join()}`,
        );
      }
    }
  }
  const cuts = listed.cutAways.map((one) => ({
    said: JSON.stringify([one.room, nameAsTyped(one.wall), one.run, one.profile, one.opening]),
    taken: Number(one.taken),
  }));
  const dueCuts = due.cuts.map((one) => ({
    said: JSON.stringify([one.room, nameAsTyped(one.run), one.run, one.profile, one.opening]),
    taken: one.taken,
  }));
  if (cuts.map((one) => one.said).join() !== dueCuts.map((one) => one.said).join()) {
    wrong.push(
      `cut away ${cuts.map((one) => one.said).join()}, not ${dueCuts.map((one) => one.said).join()}`,
    );
  } else {
    for (const [at, { said, taken }] of cuts.entries()) {
      const exact = dueCuts[at]!.taken;
      if (Math.abs(taken - exact) > IRRATIONAL_SLACK) wrong.push(`${said}: ${taken}, not ${exact}`);
    }
  }
  if (new Set(listed.pieces.map((one) => one.id)).size !== listed.pieces.length) {
    wrong.push('an id stands twice');
  }
  return wrong;
}

describe('a house whose corners are known', () => {
  const houses = Array.from({ length: HOUSES }, (_, seed) => houseByChance(seed));

  test(`gives every piece as its coordinates do, in ${HOUSES} houses`, () => {
    const wrong = houses.flatMap((house, seed) =>
      differences(house, seed).map((one) => `house ${seed}: ${one}`),
    );
    expect(wrong.slice(0, 20)).toEqual([]);
  });

  test('has what chance should bring: every measure, end, kind of opening and odd corner', () => {
    const runs = houses.flatMap((one) => one.runs);
    const corners = houses.flatMap((one) => one.rooms.flatMap((room) => room.corners));
    const openings = houses.flatMap((one) => one.openings);
    const kinds = {
      measures: new Set(runs.map((one) => one.measured)).size,
      ends: new Set(runs.flatMap((one) => [one.left, one.right])).size,
      openings: new Set(openings.map((one) => one.kind)).size,
      odd: corners.some((one) => one.degrees !== 90 && !one.isInside),
      others: openings.some((one) => one.other?.isAtKnown === true),
      unknown: openings.some((one) => !one.isAtKnown),
      metric: houses.some((one) => one.isMetric) && houses.some((one) => !one.isMetric),
    };
    expect(kinds).toEqual({
      measures: 4,
      ends: 5,
      openings: 3,
      odd: true,
      others: true,
      unknown: true,
      metric: true,
    });
  });
});
