/** Help on walls, corners, trim, and what stands on walls. */
import { degrees, inches, job, told } from './example.ts';

const WALLS = 'Room,Wall,Length,Corner,Turn\n';
const DEN = `${WALLS}Den,1,144,,\nDen,2,120,,\nDen,3,144,,\nDen,4,120,,`;
const TRIM = 'Room,Profile,Where\nall,Base,floor';
const ON = { trim: TRIM };
const IN_DEN = { walls: DEN };
const OPENINGS = 'Room,Wall,Kind,Width,Height,Casing,Position\n';
const walls = (given: string, mended: string, beside = {}) =>
  job('walls', WALLS + given, mended, { ...ON, ...beside });
const openings = (given: string, mended: string) =>
  job('openings', OPENINGS + given, OPENINGS + mended, { ...IN_DEN, ...ON });
const trim = (given: string, mended: string) =>
  job(
    'trim',
    `Room,Profile,Where,Height,Walls,Starts\n${given}`,
    `Room,Profile,Where,Height,Walls,Starts\n${mended}`,
    IN_DEN,
  );

export const ROOM_HELP = {
  'room.no-walls': [
    'A room has a name and no walls.',
    told({ name: 'Room Den' }, null),
    'List its walls in order to the right, as you face them.',
  ],
  'room.too-many-walls': [
    'So many walls are those of several rooms.',
    told({ name: 'Room Den' }, 250, {}, 200),
    'Give each room a name of its own.',
  ],
  'room.too-few-walls': [
    'A room that is walked all round has three walls at least.',
    walls('Den,1,144,,\nDen,2,120,,', DEN),
  ],
  'room.corner-out-of-range': [
    'A bevel gauge between two walls reads less than 180 degrees.',
    walls('Den,1,144,270,\nDen,2,120,,\nDen,3,144,,\nDen,4,120,,', DEN),
  ],
  'room.end-before-last': [
    'Walls end in the middle of a room’s list.',
    walls(
      'Den,1,144,,end\nDen,2,120,,\nDen,3,144,,',
      `${WALLS}Den,1,144,,\nDen,2,120,,\nDen,3,144,,end`,
    ),
  ],
  'room.tape-too-long': [
    'The straight line between two marks is longer than both walls together.',
    told({ name: 'Corner by tape' }, inches(80), { markOut: inches(36) }, inches(72)),
    'Mark 36 in (900 mm) out from the corner on both walls, and measure straight across.',
  ],
  'room.turned-about': [
    'The walls are listed to the left, or inside and outside are swapped.',
    walls(
      'Den,1,144,90,outside\nDen,2,120,90,outside\nDen,3,144,90,outside\nDen,4,120,90,outside',
      DEN,
    ),
  ],
  'room.not-closed': [
    'Going round the walls doesn’t end where it began, so one of them is measured wrong.',
    walls('Den,1,144,,\nDen,2,120,,\nDen,3,132,,\nDen,4,120,,', DEN),
  ],
  'room.closes-badly': [
    'Going round ends nearly where it began, by more than a good tape leaves.',
    told({ name: 'Room Den' }, inches(1), { gapAllowed: inches(1.5) }),
    'Measure the wall of the message once more.',
  ],
  'room.walls-cross': [
    'Two walls of a room would run through each other.',
    told({ name: 'Wall 2 of Den' }, null, { other: 'wall 5' }),
    'Check inside and outside under Turn.',
  ],
  'room.opening-wider-than-wall': [
    'A door or window is wider than its wall.',
    openings('Den,2,door,130,80,Casing,', 'Den,2,door,36,80,Casing,20'),
  ],
  'room.openings-overlap': [
    'Two openings on a wall share a place.',
    openings(
      'Den,1,door,36,80,Casing,20\nDen,1,door,36,80,Casing,30',
      'Den,1,door,36,80,Casing,20\nDen,1,door,36,80,Casing,80',
    ),
  ],
  'room.openings-fill-wall': [
    'The openings of a wall are wider together than it is long.',
    openings(
      'Den,2,door,70,80,Casing,\nDen,2,door,70,80,Casing,',
      'Den,2,door,30,80,Casing,10\nDen,2,door,30,80,Casing,70',
    ),
  ],
  'room.corner-twice': [
    'A corner is given by the gauge and by the tape.',
    job(
      'walls',
      'Room,Wall,Length,Corner,Corner by tape\nDen,1,144,90,50 7/8\nDen,2,120,,\nDen,3,144,,\nDen,4,120,,',
      DEN,
      ON,
    ),
  ],
  'room.corner-unused': [
    'A corner stands behind the last wall, where no wall follows.',
    walls(
      'Den,1,144,90,\nDen,2,120,90,\nDen,3,144,85,end',
      `${WALLS}Den,1,144,,\nDen,2,120,,\nDen,3,144,,end`,
    ),
  ],
  'room.wall-twice': [
    'Two walls of a room have one name.',
    walls('Den,1,144,,\nDen,2,120,,\nDen,2,144,,\nDen,4,120,,', DEN),
  ],
  'room.gap': [
    'A room is taken as it is typed, though it doesn’t quite close.',
    told({ name: 'Room Den' }, inches(0.5), { allowed: inches(1.5) }),
    'Measure again where it matters: what is cut goes by the typed lengths.',
  ],
  'room.without-trim': [
    'A room has walls, and no row of Trim runs along them.',
    job('trim', 'Room,Profile,Where\nHall,Base,floor', TRIM, {
      walls: `${DEN}\nHall,a,144,,\nHall,b,120,,\nHall,c,144,,\nHall,d,120,,`,
    }),
  ],
  'room.not-listed': [
    'A row of Trim names a room that Walls doesn’t have.',
    trim('Denn,Base,floor,,,', 'Den,Base,floor,,,'),
  ],
  'room.wall-not-listed': [
    'A row names a wall that its room doesn’t have.',
    trim('Den,Base,floor,,9,', 'Den,Base,floor,,1,'),
  ],
  'room.trim-on-no-wall': [
    'A row of Trim leaves out every wall of its room.',
    told({ name: 'Walls' }, 'except 1, 2, 3, 4'),
    'Name the walls that it runs along, or take the row out.',
  ],
  'room.starts-without-trim': [
    'The first piece would go up on a wall that this trim doesn’t run along.',
    trim('Den,Base,floor,,1; 2,3', 'Den,Base,floor,,1; 2,1'),
  ],
  'room.trim-twice': [
    'Two rows of Trim say the same of one wall.',
    trim('Den,Base,floor,,,\nDen,Base,floor,,,', 'Den,Base,floor,,,'),
  ],
  'room.own-row-first': [
    'A room has a row of its own, so the row for all is not used in it.',
    told({ name: 'Room Den' }, 'Base', { at: 'floor' }),
    'Nothing needs to be changed where that is meant.',
  ],
  'room.trim-above-ceiling': [
    'A rail would run above its wall.',
    told({ name: 'Wall 1 of Den' }, inches(100), {}, inches(96)),
    'Check Height on Trim and on Walls.',
  ],
  'room.above-ceiling': [
    'An opening reaches above its wall.',
    told({ name: 'The door' }, inches(100), { wall: '1', cells: 'Height' }, inches(96)),
    'Check its Height, and the wall’s.',
  ],
  'room.casing-laps-ceiling': [
    'A casing reaches into what runs at the ceiling.',
    told({ name: 'The window' }, inches(2), { profile: 'Crown' }),
    'Notch one of the two, or check the heights.',
  ],
  'room.opening-on-no-wall': [
    'An opening of a room with walls names none of them.',
    openings('Den,,door,36,80,Casing,', 'Den,2,door,36,80,Casing,20'),
  ],
  'room.run-taken-over': [
    'A row of Runs stands in place of the run that Walls and Trim make.',
    told({ name: 'Wall 1 of Den' }, 'Base'),
    'Take the row out to have the made run again.',
  ],
  'room.runs-taken-over': [
    'Rows of Runs say just what Walls and Trim make.',
    told({ name: 'Room Den' }, 4),
    'Take them out, so that a change in Walls reaches them.',
  ],
  'room.runs-beside': [
    'A typed run stands beside what Walls and Trim make of the same profile.',
    told({ name: 'Room Den' }, 1, { profile: 'Base' }),
    'Name its wall under Run, where it stands in its place.',
  ],
  'room.runs-lack-heading': [
    'A made run says something for which Runs has no column.',
    told({ name: 'Left corner' }, degrees(87.5), { run: '1', profile: 'Base', room: 'Den' }),
    'Add the heading, and take the run over again.',
  ],
  'room.run-reads-otherwise': [
    'A name is such that a spreadsheet would read the row otherwise.',
    told({ name: 'Wall =1+1' }, 'Base'),
    'Give the wall a plainer name.',
  ],
  'room.nothing-made': [
    'Walls are listed, and nothing says what runs along them.',
    told({ name: 'Trim' }, 'Den'),
    'Add a row to Trim: all, Base, floor.',
  ],
} as const;
