/** Help on Stock: boards, their defects and yields. */
import { inches, job, shop, told } from './example.ts';

const P = 'Profile,Make,Cove width,Cove depth,Spring,Blank width,Blank thickness,Species,Class\n';
const profiles = (given: string, mended: string, beside = {}) =>
  job('profiles', P + given, P + mended, beside);
const S = 'For,Kind,Class,Width,Length,Price,Per,Have,Buy,Grade,Yield %,Defects\n';
const COVES = { runs: 'Room,Profile,Length,Measured as\nHall,Cove,60,finished' };
const GOOD = "Poplar,board,4/4,10,12',5,board foot,,,,,";
const stock = (given: string, mended = GOOD) => job('stock', S + given, S + mended, COVES);
const RACK = "Poplar,board,4/4,10,12',5,board foot,1,no,,,";
const defects = (given: string, mended: string) =>
  job('stock', `${S}${RACK}${given}\n${GOOD}`, `${S}${RACK}${mended}\n${GOOD}`, COVES);

export const STOCK_HELP = {
  'job.no-stock': [
    'Nothing on Stock is for this profile.',
    job(
      'stock',
      "For,Kind,Length,Price\nCrown,stick,16',30",
      "For,Kind,Length,Price\nBase,stick,16',30",
    ),
  ],
  'job.stock-unused': [
    'A row of Stock is for nothing in the job.',
    job('stock', "For,Length,Price\nBase,16',30\nTeak,16',90", "For,Length,Price\nBase,16',30"),
  ],
  'job.spare-below-least': [
    'A trial cut is a cove too, and as long as the least blank.',
    shop('set-up spare,12', 'set-up spare,36', COVES),
  ],
  'job.spare-leaves-short': [
    'With the trial piece cut off, the rest of the stick would be too short to run over the blade.',
    told({ name: 'Cove 1' }, inches(30), {}, inches(36)),
    'Cut the cove on the whole stick, and make trial cuts in other scrap.',
  ],
  'job.part-below-least': [
    'A piece that no stick gives whole comes in parts, and one of them is short.',
    told({ name: 'Base' }, inches(18), { pieces: '1' }, inches(24)),
    'List a longer stick.',
  ],
  'job.joint-off-stud': [
    'A joint can’t lie on a stud.',
    told({ name: 'Hall / North' }, inches(16), { at: inches(70) }),
    'Put a block behind the joint.',
  ],
  'job.spare-takes-stick': [
    'The trial piece takes a stick of its own.',
    told({ name: 'Cove' }, inches(36), { cost: '$30.00' }),
    'Write set-up spare 0 where scrap serves.',
  ],
  'job.trim-spoils-fit': [
    'A piece would fit the stick but for its end trims.',
    told(
      { name: 'Base' },
      inches(94),
      { pieces: 'R1-1', fits: 'fits', saving: '', trim: inches(0.5) },
      inches(96),
    ),
    'Write a smaller end trim where sticks come with good ends.',
  ],
  'job.board-too-narrow': [
    'A board on Stock is narrower than a blank.',
    job('stock', `${S}${GOOD}\nPoplar,board,4/4,3,12',5,board foot,,,,,`, S + GOOD, COVES),
  ],
  'job.board-for-bought': [
    'A board is listed for a molding that is bought.',
    job(
      'stock',
      "For,Kind,Width,Length,Price,Per\nBase,stick,,16',30,piece\nBase,board,8,12',30,piece",
      "For,Kind,Width,Length,Price,Per\nBase,stick,,16',30,piece",
    ),
  ],
  'job.board-too-thin': [
    'A board on Stock is thinner than a blank.',
    profiles('Cove,cove,2 1/2,1/2,,4 1/2,1 1/8,Poplar,', 'Cove,cove,2 1/2,1/2,,4 1/2,1,Poplar,', {
      ...COVES,
      stock:
        "For,Kind,Class,Width,Length,Price\nPoplar,board,4/4,10,12',50\nPoplar,board,5/4,10,12',60",
    }),
  ],
  'job.stock-two-prices': [
    'The same stick stands at two prices without end.',
    job(
      'stock',
      "For,Kind,Length,Price,Per\nBase,stick,16',30,piece\nBase,stick,16',40,piece",
      "For,Kind,Length,Price,Per\nBase,stick,16',30,piece",
    ),
  ],
  'job.board-price': [
    'What a board’s price is for isn’t said.',
    stock("Poplar,board,4/4,10,12',50,,,,,,", "Poplar,board,4/4,10,12',50,piece,,,,,"),
  ],
  'job.grade-no-yield': [
    'A grade stands without the share of a board that can be used.',
    stock(
      "Poplar,board,4/4,10,12',5,board foot,,,FAS,,",
      "Poplar,board,4/4,10,12',5,board foot,,,FAS,80,",
    ),
  ],
  'job.yield-no-share': [
    'A yield is a percent from 1 to 100.',
    stock(
      "Poplar,board,4/4,10,12',5,board foot,,,,0,",
      "Poplar,board,4/4,10,12',5,board foot,,,,80,",
    ),
  ],
  'job.yield-is-grade': [
    'A grade stands under Yield %.',
    stock(
      "Poplar,board,4/4,10,12',5,board foot,,,,FAS,",
      "Poplar,board,4/4,10,12',5,board foot,,,FAS,80,",
    ),
  ],
  'job.yield-of-stick': [
    'Sticks are bought clear, and have no yield.',
    stock("Poplar,stick,4/4,5,12',5,piece,,,,80,", "Poplar,stick,4/4,5,12',5,piece,,,,,"),
  ],
  'job.yield-on-rack': [
    'Boards on the rack can be seen, so a yield is of those that are bought.',
    stock(
      "Poplar,board,4/4,10,12',5,board foot,2,,,80,",
      "Poplar,board,4/4,10,12',5,board foot,,,,80,",
    ),
  ],
  'job.defects-unreadable': ['A defect is from and to along the board.', defects('knot', '30-34')],
  'job.defect-reversed': ['A defect ends before it begins.', defects('34-30', '30-34')],
  'job.defect-outside': [
    'A defect lies beyond the end of the board.',
    defects('140-150', '140-144'),
  ],
  'job.defects-overlap': [
    'Two defects share a part of the board.',
    defects('10-20; 18-30', '10-30'),
  ],
  'job.defects-leave-none': [
    'The defects leave nothing that is long enough to use.',
    defects('0-144', '0-60'),
  ],
  'job.defects-of-many': [
    'Defects are those of one board.',
    job(
      'stock',
      `${S}Poplar,board,4/4,10,12',5,board foot,3,no,,,30-34\n${GOOD}`,
      `${S}${RACK}30-34\n${GOOD}`,
      COVES,
    ),
  ],
  'job.defects-of-bought': [
    'Nobody knows the defects of a board that isn’t bought yet.',
    job(
      'stock',
      `${S}Poplar,board,4/4,10,12',5,board foot,1,,,,30-34\n${GOOD}`,
      `${S}${RACK}30-34\n${GOOD}`,
      COVES,
    ),
  ],
  'job.board-needs-width': [
    'A board without a width can’t be ripped.',
    stock("Poplar,board,4/4,,12',50,piece,,,,,", GOOD),
  ],
  'job.rips-limited': [
    'A board can be ripped into so many widths that not all ways are weighed.',
    told({ name: 'Poplar' }, inches(12), { blanks: 9 }, 2000),
    'Give profiles the same blank width where you can.',
  ],
  'job.blank-below-least': [
    'A stick is shorter than the least blank, and no cove is cut on it.',
    stock(`Poplar,stick,4/4,5,30,5,piece,,,,,\n${GOOD}`),
  ],
  'job.price-per-needs': [
    'A price by volume needs the board’s thickness and width.',
    job(
      'stock',
      "For,Kind,Length,Price,Per\nBase,stick,16',5,board foot",
      "For,Kind,Length,Price,Per\nBase,stick,16',2,foot",
      { profiles: 'Profile,Make\nBase,buy' },
    ),
  ],
  'job.weight-unknown': [
    'The weight of this wood isn’t known, and is left out.',
    profiles('Base,buy,,,,5 1/4,3/4,Ironbark,', 'Base,buy,,,,5 1/4,3/4,Poplar,'),
  ],
} as const;
