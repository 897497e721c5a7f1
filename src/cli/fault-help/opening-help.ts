/** Help on what doors and windows cut away. */
import { job, told } from './example.ts';

const O = 'Room,Wall,Kind,Width,Height,Casing,Position,Stool,Apron,Sill,Horn,Quantity\n';
const openings = (given: string, mended: string, beside = {}) =>
  job('openings', O + given, O + mended, beside);
const DOOR = 'Hall,North,door,36,80,Casing,30,,,,,1';
const WINDOW = 'Hall,North,window,30,40,Casing,30';
const P = 'Profile,Make,Blank width,Blank thickness,Where,Height\n';
const FLAT = 'Base,buy,5 1/4,3/4,,\nCasing,buy,3 1/2,3/4,,\n';
const rail = (given: string, mended: string, beside = {}) =>
  job('profiles', `${P}${FLAT}Rail,buy,3,3/4,${given}`, `${P}${FLAT}Rail,buy,3,3/4,${mended}`, {
    runs: 'Room,Run,Profile,Length\nHall,North,Base,100\nHall,North,Rail,100',
    openings: O + DOOR,
    stock: "For,Length,Price\nBase,16',20\nCasing,16',20\nRail,16',20",
    ...beside,
  });

export const OPENING_HELP = {
  'job.sill-unused': [
    'A door reaches the floor, so it has no sill.',
    openings('Hall,North,door,36,80,Casing,30,,,20,,1', DOOR),
  ],
  'job.horn-unused': [
    'Only a stool has horns.',
    openings(`${WINDOW},,,30,1,1`, `${WINDOW},,,30,,1`),
  ],
  'job.height-elsewhere': [
    'A molding on the floor or at the ceiling has no height of its own.',
    rail('floor,32', 'height,32'),
  ],
  'job.height-needs-where': [
    'A height stands beside a molding that usually has none.',
    job('profiles', `${P}Base,buy,5 1/4,3/4,,\nCasing,buy,3 1/2,3/4,,32`, P + FLAT, {
      openings: O + DOOR,
    }),
  ],
  'job.wall-unknown': [
    'An opening names a wall on which no run is.',
    openings('Hall,Nort,door,36,80,Casing,30,,,,,1', DOOR),
  ],
  'job.wall-without-base': [
    'On the wall of an opening nothing stands on the floor.',
    told({ name: 'The door' }, 'North', { profiles: 'Crown' }),
    'Give the base of that wall the same name under Run.',
  ],
  'job.other-room-unknown': [
    'The other side of an opening is in a room that has no runs.',
    told({ name: 'The door' }, 'Den'),
    'Check Other room.',
  ],
  'job.other-wall-open': [
    'Of the other side of an opening the room is known, and the wall isn’t.',
    told({ name: 'The door' }, 'Den'),
    'Write the wall’s name under Other wall.',
  ],
  'job.cuts-unknown': [
    'How high a rail is isn’t given, so no opening cuts it.',
    rail('height,', 'height,32'),
  ],
  'job.window-cuts-unknown': [
    'Where a window begins isn’t given, so whether it cuts a rail isn’t known.',
    openings(`${WINDOW},,,,,1`, `${WINDOW},,,30,,1`, {
      profiles: `${P}${FLAT}Rail,buy,3,3/4,height,32`,
      runs: 'Room,Run,Profile,Length\nHall,North,Rail,100',
      stock: "For,Length,Price\nCasing,16',20\nRail,16',20",
    }),
  ],
  'job.window-laps-floor': [
    'A window, with what is under it, reaches down into the base.',
    openings(`${WINDOW},,,6,,1`, `${WINDOW},,,30,,1`),
  ],
  'job.opening-laps-rail': [
    'An opening reaches into a rail, and not through it.',
    rail('height,26', 'height,10', { openings: `${O}${WINDOW},,,31,,1` }),
  ],
  'job.taken-for-casing': [
    'A molding is taken for casing, since Openings names it so.',
    told({ name: 'Hall / North' }, 'Casing', { run: 'North' }),
    'Write opening, or floor, under Where on Profiles.',
  ],
  'job.taken-for-ceiling': [
    'A cove is taken to be at the ceiling.',
    told({ name: 'Hall / North' }, 'Cove', { run: 'North' }),
    'Write ceiling, or height, under Where on Profiles.',
  ],
  'job.several-on-floor': [
    'An opening is cut out of several moldings that all count as on the floor.',
    rail(',', 'height,32'),
  ],
  'job.opening-in-several': [
    'Two runs of a room have one name, and the opening is cut out of each.',
    job(
      'runs',
      'Room,Run,Profile,Length\nHall,North,Base,100\nHall,North,Base,90',
      'Room,Run,Profile,Length\nHall,North,Base,100\nHall,East,Base,90',
      { openings: O + DOOR },
    ),
  ],
  'job.opening-outside-wall': [
    'An opening reaches beyond the end of its wall.',
    openings('Hall,North,door,36,80,Casing,90,,,,,1', DOOR),
  ],
  'job.opening-in-each': [
    'A run is asked for several times, and the opening is cut out of each.',
    job(
      'runs',
      'Room,Run,Profile,Length,Quantity\nHall,North,Base,100,2',
      'Room,Run,Profile,Length\nHall,North,Base,100\nHall,South,Base,100',
      { openings: O + DOOR },
    ),
  ],
  'job.opening-needs-wall-length': [
    'Position counts from the wall’s corner, and the run isn’t measured along the wall.',
    told({ name: 'Hall / North' }, 'finished'),
    'Give the run’s length along the wall, from corner to corner.',
  ],
  'job.openings-overlap': [
    'Two openings on a run share a place.',
    openings(
      'Hall,North,door,30,80,Casing,10,,,,,1\nHall,North,door,30,80,Casing,30,,,,,1',
      'Hall,North,door,30,80,Casing,10,,,,,1\nHall,North,door,30,80,Casing,60,,,,,1',
    ),
  ],
  'job.opening-by-total': [
    'Where an opening is isn’t given, so its width is taken off the run as a whole.',
    openings('Hall,North,door,36,80,Casing,,,,,,1', DOOR),
  ],
  'job.base-all-cut-away': [
    'The openings leave nothing of a run.',
    openings('Hall,North,door,96,80,Casing,2,,,,,1', DOOR),
  ],
  'job.casing-needs-width': [
    'How wide a casing is isn’t given, so what an opening takes isn’t known.',
    told({ name: 'The door' }, 'Casing', { needed: 'Blank width' }),
    'Fill in Blank width on Profiles.',
  ],
} as const;
