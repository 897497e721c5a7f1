/** A house as a person would type it: tables of text, with what the tape, the gauge and the eye say. */
import type { Tables } from '../make-job.ts';
import { Chance } from './chance.ts';
import type { House, WallRun } from './house.ts';
import { csv, typed } from './typed.ts';
import { shortAndLong } from './wall-points.ts';

export function tablesOfHouse(
  house: House,
  seed: number,
): Required<Omit<Tables, 'walls' | 'trim' | 'work' | 'options' | 'job' | 'hours'>> {
  const chance = new Chance(seed + 0.5);
  const { isMetric, rooms, casing } = house;
  const say = (inches: number): string => typed(inches, isMetric, chance);
  const sayMaybe = (inches: number | undefined): string =>
    inches === undefined ? '' : say(inches);
  const angle = (degrees: number): string => String(Number(degrees.toFixed(9)));
  const corner = (degrees: number, isNeeded: boolean): string =>
    degrees === 90 || !isNeeded ? chance.one(['', '90']) : angle(degrees);
  const roomOf = (room: number): string => rooms[room]!.name;
  const wallOf = (room: number, wall: number): string => rooms[room]!.walls[wall]!.name;
  const runRow = (run: WallRun): string[] => {
    const { room, wall, molding, left, right, measured } = run;
    const { corners } = rooms[room]!;
    const { wallLength, short, long } = shortAndLong(rooms[room]!, run);
    const length = measured === 'wall' ? wallLength : measured === 'short point' ? short : long;
    const [from, to] = [corners[wall]!, corners[(wall + 1) % corners.length]!];
    return [
      roomOf(room),
      wallOf(room, wall),
      molding.name,
      say(length[1] - length[0]),
      measured === 'wall' ? chance.one(['', 'wall']) : measured,
      left === 'square' ? chance.one(['', left]) : left,
      right === 'square' ? chance.one(['', right]) : right,
      corner(from.degrees, left.endsWith('miter')),
      corner(to.degrees, right.endsWith('miter')),
      '',
    ];
  };
  const oddRows = house.oddWindows.flatMap(({ room, name, sides, measured, reveal }) =>
    sides.map(({ length, left, right }) => [
      roomOf(room),
      name,
      casing.name,
      say(length),
      measured,
      'outside miter',
      'outside miter',
      angle(left),
      angle(right),
      measured === 'opening' ? sayMaybe(reveal) : '',
    ]),
  );
  const shout = (text: string): string => (chance.is(0.2) ? text.toUpperCase() : text);
  return {
    runs: csv(
      'Room,Run,Profile,Length,Measured as,Left end,Right end,Left corner,Right corner,Reveal'.split(
        ',',
      ),
      [...house.runs.map(runRow), ...oddRows],
    ),
    openings: csv(
      'Room,Wall,Kind,Width,Height,Sides cased,Reveal,Casing,Apron,Stool,Position,Quantity,Sill,Horn,Other room,Other wall,Other position'.split(
        ',',
      ),
      house.openings.map((one) => [
        shout(roomOf(one.room)),
        shout(wallOf(one.room, one.wall)),
        one.kind,
        say(one.width),
        say(one.height),
        String(one.sides),
        sayMaybe(one.reveal),
        one.casing?.name ?? '',
        one.apron?.name ?? '',
        one.stool?.name ?? '',
        one.isAtKnown ? say(one.at) : '',
        String(one.quantity),
        one.isSillKnown ? say(one.sill) : '',
        sayMaybe(one.horn),
        one.other === undefined ? '' : shout(roomOf(one.other.room)),
        one.other === undefined ? '' : shout(wallOf(one.other.room, one.other.wall)),
        one.other?.isAtKnown === true ? say(one.other.at) : '',
      ]),
    ),
    profiles: csv(
      'Profile,Make,Cove width,Cove depth,Blank width,Blank thickness,Spring,Miter across,Where,Height'.split(
        ',',
      ),
      house.moldings.map((one) => [
        one.name,
        one.isCove === true ? 'cove' : 'buy',
        one.isCove === true ? say(isMetric ? 50 / 25.4 : 2) : '',
        one.isCove === true ? say(isMetric ? 10 / 25.4 : 0.375) : '',
        say(one.width),
        say(one.thick),
        one.spring === undefined ? '' : String(one.spring),
        one.isAcrossThickness === true ? 'thickness' : '',
        one.where,
        sayMaybe(one.height),
      ]),
    ),
    shop: csv(
      ['Setting', 'Value'],
      [
        ['hourly rate', '60'],
        ['end allowance', say(house.endAllowance)],
        ...(isMetric ? [['unit', 'mm']] : []),
      ],
    ),
    stock: 'For,Kind,Length,Price,Per\nBase,stick,192 in,20,piece',
  };
}
