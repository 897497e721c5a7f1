/** A room, spoiled in every way that Walls, Trim and Openings can be: which fault comes, at which heading, and what mends it. */
import type { Tables } from './make-job.ts';

const OPENINGS = 'Room,Wall,Kind,Width,Height,Casing,Apron,Stool,Position,Quantity';
export const WALLS = 'Room,Wall,Length,Corner,Turn,Corner by tape,Height';
export const TRIM = 'Room,Profile,Where,Height,Walls,Inside corners,Starts';
const DEN = ['Den,1,144,,,,96', 'Den,2,120,,,,', 'Den,3,144,,,,', 'Den,4,120,,,,'];

/** A square room, one of its rows in another's place, with base all round. */
export const den = (spoiled: Readonly<Record<number, string>> = {}, more: Tables = {}): Tables => ({
  runs: 'Room,Run,Profile,Length',
  openings: OPENINGS,
  profiles: 'Profile,Make,Blank width,Blank thickness\nBase,buy,5,3/4\nCasing,buy,3 1/2,3/4',
  stock: "For,Kind,Length,Price,Per\nBase,stick,16',2,foot\nCasing,stick,16',2,foot",
  walls: [WALLS, ...DEN.map((row, at) => spoiled[at + 1] ?? row)].join('\n'),
  trim: `${TRIM}\nDen,Base,floor,,,,`,
  ...more,
});
const inDen = (opening: string): Tables => den({}, { openings: `${OPENINGS}\n${opening}` });
const trimmed = (row: string): Tables => den({}, { trim: `${TRIM}\n${row}` });

export const ROOM_CASES: readonly (readonly [Tables, string, string, string])[] = [
  [den({ 1: 'Den,1,150,,,,' }), 'room.not-closed', 'Length', '144'],
  [den({ 2: 'Den,2,120,,outside,,' }), 'room.not-closed', 'Turn', 'inside'],
  [den({ 2: 'Den,2,120,180,,,' }), 'room.corner-out-of-range', 'Corner', '90'],
  [den({ 2: 'Den,2,120,0,,,' }), 'room.corner-out-of-range', 'Corner', '90'],
  [den({ 2: 'Den,2,120,90,,50 29/32,' }), 'room.corner-twice', 'Corner by tape', ''],
  [den({ 2: 'Den,2,120,,,72,' }), 'room.tape-too-long', 'Corner by tape', '50 29/32'],
  [den({ 2: 'Den,2,120,,end,,' }), 'room.end-before-last', 'Turn', 'inside'],
  [den({ 2: 'Den,3,120,,,,' }), 'room.wall-twice', 'Wall', '2'],
  [den({ 2: 'Den,2,?,,,,' }), 'length.unreadable', 'Length', '120'],
  [
    den({}, { walls: `${WALLS}\nDen,1,144,,,,\nDen,2,120,,,,` }),
    'room.too-few-walls',
    'Turn',
    'end',
  ],
  [
    den({ 1: 'Den,1,100,,,,', 2: 'Den,2,100,,,,', 3: 'Den,3,60,,,,', 4: 'Den,4,150,,end,,' }),
    'room.walls-cross',
    'Length',
    '50',
  ],
  [inDen('Den,2,door,130,80,Casing,,,,'), 'room.opening-wider-than-wall', 'Width', '30'],
  [inDen('Den,2,door,30,80,Casing,,,100,'), 'job.opening-outside-wall', 'Position', '50'],
  [
    inDen('Den,2,door,30,80,Casing,,,10,\nDen,2,window,30,40,,,,35,'),
    'room.openings-overlap',
    'Position',
    '60',
  ],
  [inDen('Den,2,door,30,80,Casing,,,,5'), 'room.openings-fill-wall', 'Width', '10'],
  [inDen('Den,5,door,30,80,Casing,,,,'), 'room.wall-not-listed', 'Wall', '2'],
  [inDen('Den,1,door,30,100,Casing,,,,'), 'room.above-ceiling', 'Height', '80'],
  [trimmed('Dem,Base,floor,,,,'), 'room.not-listed', 'Room', 'Den'],
  [trimmed('Den,Bass,floor,,,,'), 'job.profile-unknown', 'Profile', 'Base'],
  [trimmed('Den,Base,,,,,'), 'text.missing', 'Where', 'floor'],
  [trimmed('Den,Base,wall,,,,'), 'word.unknown', 'Where', 'floor'],
  [trimmed('Den,Base,floor,30,,,'), 'job.height-elsewhere', 'Height', ''],
  [trimmed('Den,Base,height,100,,,'), 'room.trim-above-ceiling', 'Height', '32'],
  [trimmed('Den,Base,floor,,5,,'), 'room.wall-not-listed', 'Walls', '4'],
  [trimmed('all,Base,floor,,except 5,,'), 'room.wall-not-listed', 'Walls', 'except 4'],
  [trimmed('Den,Base,floor,,except,,'), 'room.wall-not-listed', 'Walls', 'all'],
  [trimmed('Den,Base,floor,,except 1;2;3;4,,'), 'room.trim-on-no-wall', 'Walls', '1;2'],
  [trimmed('Den,Base,floor,,,,5'), 'room.wall-not-listed', 'Starts', '4'],
  [trimmed('Den,Base,floor,,1;2,,3'), 'room.starts-without-trim', 'Starts', '2'],
  [trimmed('Den,Base,floor,,,,\nDen,BASE,floor,,2,,'), 'room.trim-twice', 'Profile', 'Casing'],
  [trimmed('all,Base,floor,,,,\nall,BASE,floor,,2,,'), 'room.trim-twice', 'Profile', 'Casing'],
];
