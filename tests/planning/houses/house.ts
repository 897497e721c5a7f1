/** A house by chance: rooms, openings at known places on their walls, moldings, and where each one runs. */
import { Chance } from './chance.ts';
import { roomByChance, type Room } from './rooms.ts';
import { MM } from './typed.ts';
import { shortAndLong } from './wall-points.ts';

export interface Molding {
  readonly name: string;
  readonly width: number;
  readonly thick: number;
  readonly spring?: number;
  readonly isCove?: boolean;
  readonly isAcrossThickness?: boolean;
  /** As typed under Where; blank where it isn't. */
  readonly where: string;
  readonly height?: number;
}

export interface Opening {
  readonly room: number;
  readonly wall: number;
  readonly kind: 'door' | 'window' | 'cased opening';
  /** From the wall's left corner to the opening's left edge. */
  readonly at: number;
  readonly isAtKnown: boolean;
  readonly width: number;
  readonly height: number;
  /** Of a window; the tape may not have been put there. */
  readonly sill: number;
  readonly isSillKnown: boolean;
  readonly sides: number;
  /** Absent: the usual one. */
  readonly reveal?: number;
  readonly usual: { readonly reveal: number; readonly horn: number };
  readonly casing?: Molding;
  readonly apron?: Molding;
  readonly stool?: Molding;
  readonly horn?: number;
  readonly quantity: number;
  readonly other?: {
    readonly room: number;
    readonly wall: number;
    readonly at: number;
    readonly isAtKnown: boolean;
  };
}

/** A window whose casing isn't at square corners, listed side by side in Runs. */
export interface OddWindow {
  readonly room: number;
  readonly name: string;
  /** Its sides are as long, and meet at as many degrees. */
  readonly sides: readonly {
    readonly length: number;
    readonly left: number;
    readonly right: number;
  }[];
  readonly measured: 'opening' | 'short point' | 'long point';
  readonly reveal?: number;
  readonly usual: { readonly reveal: number };
}

export type EndKind = 'square' | 'inside miter' | 'outside miter' | 'cope' | 'return';
export type Measure = 'wall' | 'long point' | 'short point' | 'finished';

export interface WallRun {
  readonly room: number;
  readonly wall: number;
  readonly molding: Molding;
  readonly left: EndKind;
  readonly right: EndKind;
  readonly measured: Measure;
}

export interface House {
  readonly isMetric: boolean;
  readonly precision: number;
  readonly endAllowance: number;
  readonly rooms: readonly Room[];
  readonly moldings: readonly Molding[];
  readonly casing: Molding;
  readonly openings: readonly Opening[];
  readonly oddWindows: readonly OddWindow[];
  readonly runs: readonly WallRun[];
}

/** Where a cell is blank, in inches: 5 and 25 mm in a metric house. */
const USUAL = { reveal: 3 / 16, horn: 1 };
const USUAL_METRIC = { reveal: 5 / MM, horn: 25 / MM };

export function houseByChance(seed: number): House {
  const chance = new Chance(seed);
  const isMetric = chance.is(0.35);
  const mark = isMetric ? 1 / MM : chance.one([1 / 16, 1 / 32, 1 / 4]);
  const rooms = Array.from({ length: chance.whole(1, 3) }, (_, at) =>
    roomByChance(chance, at, mark),
  );
  const size = (least: number, most: number): number => chance.tape(least, most, mark);
  const flat = (
    name: string,
    width: number,
    thick: number,
    more: Partial<Molding> = {},
  ): Molding => ({
    name,
    width,
    thick,
    where: '',
    ...more,
  });
  const casing = flat('Casing', size(2, 4.5), size(0.5, 1));
  const stool = flat('Stool', size(3, 6), size(0.75, 1.25));
  const apron = chance.is(0.5) ? casing : flat('Apron', size(2, 4), size(0.5, 0.75));
  const isShod = chance.is(0.2);
  const upright = (): Partial<Molding> => (chance.is(0.5) ? { isAcrossThickness: true } : {});
  const onWalls = [
    flat('Base', size(3, 7), size(0.5, 1), { ...upright(), where: isShod ? 'floor' : '' }),
    ...(isShod ? [flat('Shoe', size(0.5, 0.75), size(0.5, 0.75), { where: 'floor' })] : []),
    flat('Chair rail', size(2, 4), size(0.5, 1), { ...upright(), height: size(18, 44) }),
    flat('Picture rail', size(1, 3), size(0.5, 1), { where: 'height', height: size(60, 92) }),
    flat('Crown', size(3, 5), size(0.5, 0.75), { spring: chance.one([38, 45, 52, 30.5]) }),
    flat('Ceiling cove', size(3, 4), size(0.75, 1), { isCove: true, ...upright() }),
  ].filter((one) => one.name === 'Base' || chance.is(0.6));
  const usual = isMetric ? USUAL_METRIC : USUAL;
  const base = { isMetric, rooms, casing, moldings: [...onWalls, casing, stool, apron] };
  const openings = openingsByChance(chance, rooms, size, { casing, stool, apron, usual });
  return {
    ...base,
    moldings: [...new Set(base.moldings)],
    precision: isMetric ? 1 / MM : 1 / 16,
    endAllowance: isMetric ? chance.one([0, 3]) / MM : chance.one([0, 0, 1 / 16, 1 / 8]),
    openings,
    oddWindows: rooms.flatMap((_, room) =>
      chance.is(0.5) ? [oddWindow(chance, room, size, usual)] : [],
    ),
    runs: runsByChance(chance, rooms, onWalls, openings),
  };
}

interface Round {
  readonly casing: Molding;
  readonly stool: Molding;
  readonly apron: Molding;
  readonly usual: Opening['usual'];
}

/** Openings never lap each other's casing; one may lap the corner that its wall begins at. */
function openingsByChance(
  chance: Chance,
  rooms: readonly Room[],
  size: (least: number, most: number) => number,
  round: Round,
): Opening[] {
  const GAP = 16;
  /** How far each wall is taken, from its left corner. */
  const taken = new Map<string, number>();
  const place = (room: number, wall: number, width: number, first: number): number | undefined => {
    const key = `${room} ${wall}`;
    const from = (taken.get(key) ?? 0) === 0 ? first : taken.get(key)! + GAP;
    if (from + width + 8 > rooms[room]!.walls[wall]!.length) return undefined;
    taken.set(key, from + width);
    return from;
  };
  const openings: Opening[] = [];
  for (const [room, { walls, corners }] of rooms.entries()) {
    for (const wall of walls.keys()) {
      for (let more = 0; more < 3 && chance.is(0.35); more++) {
        const kind = chance.one(['door', 'window', 'cased opening'] as const);
        const width = size(20, 48);
        const isLapping = corners[wall]!.isInside && chance.is(0.15);
        const at = place(room, wall, width, isLapping ? size(0.5, 2) : size(8, 30));
        if (at === undefined) continue;
        const otherRoom = chance.whole(0, rooms.length - 1);
        const otherWall = chance.whole(0, rooms[otherRoom]!.walls.length - 1);
        const otherAt = chance.is(0.4)
          ? place(otherRoom, otherWall, width, size(8, 30))
          : undefined;
        const isSafe = otherRoom !== room || otherWall !== wall;
        const sides = chance.whole(1, 2);
        const isRevealed = chance.is(0.5);
        const hasCasing = chance.is(0.9);
        const hasStool = kind === 'window' && chance.is(0.4);
        openings.push({
          room,
          wall,
          kind,
          at,
          isAtKnown: chance.is(0.85),
          width,
          height: kind === 'window' ? size(30, 60) : size(78, 90),
          sill: kind === 'window' ? size(14, 44) : 0,
          isSillKnown: kind === 'window' && chance.is(0.85),
          sides,
          usual: round.usual,
          ...(isRevealed ? { reveal: size(0, 0.5) } : {}),
          ...(hasCasing ? { casing: round.casing } : {}),
          ...(hasStool ? { stool: round.stool } : {}),
          ...(kind === 'window' && chance.is(0.4) ? { apron: round.apron } : {}),
          ...(hasStool && chance.is(0.5) ? { horn: size(0.5, 2) } : {}),
          quantity: 1,
          ...(otherAt === undefined || !isSafe
            ? {}
            : {
                other: {
                  room: otherRoom,
                  wall: otherWall,
                  at: otherAt,
                  isAtKnown: chance.is(0.7),
                },
              }),
        });
      }
    }
  }
  return openings;
}

function oddWindow(
  chance: Chance,
  room: number,
  size: (least: number, most: number) => number,
  usual: Opening['usual'],
): OddWindow {
  const count = chance.whole(3, 10);
  const corner = 180 - 360 / count;
  const length = size(12, 40);
  const isTrapezoid = chance.is(0.3);
  const sharp = chance.one([45, 60, 72]);
  const slant = length / Math.cos((sharp * Math.PI) / 180);
  const sides = isTrapezoid
    ? [
        { length: 3 * length, left: sharp, right: sharp },
        { length: slant, left: sharp, right: 180 - sharp },
        { length, left: 180 - sharp, right: 180 - sharp },
        { length: slant, left: 180 - sharp, right: sharp },
      ]
    : Array.from({ length: count }, () => ({ length, left: corner, right: corner }));
  return {
    room,
    name: 'odd window',
    usual,
    sides,
    measured: chance.one(['opening', 'opening', 'short point', 'long point'] as const),
    ...(chance.is(0.5) ? { reveal: size(0, 0.75) } : {}),
  };
}

/** Every molding goes round most walls, its ends as the corners ask. */
function runsByChance(
  chance: Chance,
  rooms: readonly Room[],
  moldings: readonly Molding[],
  openings: readonly Opening[],
): WallRun[] {
  return rooms.flatMap(({ walls, corners }, room) =>
    walls.flatMap((_, wall) => {
      const hasOpening = openings.some(
        (one) =>
          (one.room === room && one.wall === wall) ||
          (one.other?.room === room && one.other.wall === wall),
      );
      return moldings.flatMap((molding): WallRun[] => {
        if (chance.is(0.15)) return [];
        const endAt = (isInside: boolean): EndKind =>
          isInside
            ? chance.one(['inside miter', 'inside miter', 'cope', 'square'] as const)
            : chance.one(['outside miter', 'outside miter', 'return'] as const);
        const left = endAt(corners[wall]!.isInside);
        const right = endAt(corners[(wall + 1) % corners.length]!.isInside);
        const measures: Measure[] = ['wall', 'wall'];
        // Position counts from the wall's corner, where a miter's other point is not.
        if (!hasOpening || !left.endsWith('miter')) measures.push('long point', 'finished');
        const isOutside = left === 'outside miter' || right === 'outside miter';
        const isPlain = molding.spring !== undefined || molding.isAcrossThickness === true;
        const run: WallRun = { room, wall, molding, left, right, measured: 'wall' };
        const { short } = shortAndLong(rooms[room]!, run);
        const isLongEnough = short[1] - short[0] > 1;
        if (measures.length > 2 && (!isOutside || isPlain) && isLongEnough) {
          measures.push('short point');
        }
        return [{ ...run, measured: chance.one(measures) }];
      });
    }),
  );
}
