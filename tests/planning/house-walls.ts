/**
 * The closed rooms of the published house as Walls, Trim and Openings, out of its list of runs: its crown
 * has every segment of a wall, its base all but what openings take. Numbers of walls go to the left there.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { folderTables, HOUSE_FOLDER, type Tables } from './make-job.ts';
import { csv } from './houses/typed.ts';

type Row = Readonly<Record<string, string>>;

export interface HouseWall {
  readonly name: string;
  /** Inches, as all of the house's. */
  readonly length: number;
  readonly left: string;
  readonly right: string;
  readonly base: readonly Stretch[];
}

interface Stretch {
  readonly length: number;
  readonly left: string;
  readonly right: string;
}

export interface HouseRoom {
  readonly name: string;
  /** In order to the right. */
  readonly walls: readonly HouseWall[];
  /** Of what reaches the floor: doors, and windows without a sill. */
  readonly openingWidths: readonly number[];
}

/** A sixteenth of an inch is what the house is measured in. */
const SIXTEENTHS = 16;
const CROWN = 'Cove crown';
const BASE = 'Base 5 1/4';
/** Each side of a head's short point. */
const REVEAL = 3 / 16;

/** As the list writes them: 40, 7/8 or 40 1/8. */
const inches = (text: string | undefined): number =>
  (text ?? '').split(' ').reduce((sum, part) => {
    const [top = NaN, bottom = 1] = part.split('/').map(Number);
    return sum + top / bottom;
  }, 0);

function readRows(): Row[] {
  const text = readFileSync(join(HOUSE_FOLDER, 'runs.csv'), 'utf8');
  return parse(text, { columns: true, bom: true });
}

function grouped(rows: readonly Row[], key: (row: Row) => string): Map<string, Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) groups.set(key(row), [...(groups.get(key(row)) ?? []), row]);
  return groups;
}

/** Without a letter, which tells parts of one wall. */
const wallName = (run: string | undefined): string => (run ?? '').replace(/[a-z]$/u, '');

/** Rooms whose crown goes on all round. */
export function closedRooms(): HouseRoom[] {
  const rooms = grouped(readRows(), (row) => row['Room'] ?? '');
  return [...rooms].flatMap(([name, rows]): HouseRoom[] => {
    const ofProfile = (profile: string): Row[] => rows.filter((row) => row['Profile'] === profile);
    const stretchOf = (row: Row): Stretch => ({
      length: inches(row['Length']),
      left: row['Left end'] ?? '',
      right: row['Right end'] ?? '',
    });
    const base = grouped(ofProfile(BASE), (row) => wallName(row['Run']));
    const walls = ofProfile(CROWN)
      .map((row): HouseWall => {
        const wall = row['Run'] ?? '';
        return { name: wall, ...stretchOf(row), base: (base.get(wall) ?? []).map(stretchOf) };
      })
      .reverse();
    if (walls.some(({ left, right }) => left === 'square' || right === 'square')) return [];
    const heads = rows.filter((row) => /^(?:door|window) \d+ head$/u.test(row['Run'] ?? ''));
    const openingWidths = heads.map((row) => inches(row['Length']) - 2 * REVEAL);
    return [{ name, walls, openingWidths }];
  });
}

interface Gap {
  readonly from: number;
  readonly width: number;
}

const lengthOf = (stretches: readonly Stretch[]): number =>
  stretches.reduce((sum, { length }) => sum + length, 0);

/**
 * What base leaves out of a wall. Where it leaves out several, only their sum is known, and they share it:
 * the runs are the same.
 */
function gapsOf(walls: readonly HouseWall[], at: number): Gap[] {
  const wall = walls[at]!;
  const { base, length } = wall;
  const out = length - lengthOf(base);
  if (out === 0) return [];
  const isFull = (step: number): boolean => {
    const beside = walls[(at + step + walls.length) % walls.length]!;
    return lengthOf(beside.base) === beside.length;
  };
  const atLeft = base[0]?.left === 'square' && (base.length === 1 || isFull(-1));
  const atRight = base.at(-1)?.right === 'square' && (base.length === 1 || isFull(1));
  const count = base.length - 1 + Number(atLeft) + Number(atRight);
  const share = Math.floor((out / count) * SIXTEENTHS) / SIXTEENTHS;
  const gaps: Gap[] = [];
  let from = 0;
  const leave = (): void => {
    const width = gaps.length === count - 1 ? out - share * (count - 1) : share;
    gaps.push({ from, width });
    from += width;
  };
  if (atLeft) leave();
  for (const [part, stretch] of base.entries()) {
    from += stretch.length;
    if (part < base.length - 1) leave();
  }
  if (atRight) leave();
  return gaps;
}

/** The house with its closed rooms typed once; the rest as its list has it. */
export function walledHouse(): Tables {
  const rooms = closedRooms();
  const isClosed = new Set(rooms.map(({ name }) => name));
  const stays = (row: Row): boolean =>
    !isClosed.has(row['Room'] ?? '') || ![BASE, CROWN].includes(row['Profile'] ?? '');
  const rows = readRows();
  const headings = Object.keys(rows[0] ?? {});
  const table = (names: readonly string[], cells: readonly (readonly (string | number)[])[]) =>
    csv(
      names,
      cells.map((row) => row.map(String)),
    );
  return {
    ...folderTables(HOUSE_FOLDER),
    runs: table(
      headings,
      rows.filter(stays).map((row) => headings.map((heading) => row[heading] ?? '')),
    ),
    walls: table(
      ['Room', 'Wall', 'Length', 'Turn'],
      rooms.flatMap(({ name, walls }) =>
        walls.map((wall) => [name, wall.name, wall.length, wall.right.split(' ')[0] ?? '']),
      ),
    ),
    trim: table(
      ['Room', 'Profile', 'Where', 'Inside corners'],
      [
        ['all', BASE, 'floor', 'miter'],
        ['all', CROWN, 'ceiling', 'miter'],
      ],
    ),
    openings: table(
      ['Room', 'Wall', 'Kind', 'Width', 'Height', 'Position'],
      rooms.flatMap(({ name, walls }) =>
        walls.flatMap((wall, at) =>
          gapsOf(walls, at).map(({ from, width }) => [
            name,
            wall.name,
            'cased opening',
            width,
            80,
            from,
          ]),
        ),
      ),
    ),
  };
}
