/** Jobs whose sheets are looked at, and how a described sheet is looked at. */
import type {
  CellDescription,
  SheetDescription,
  WorkbookDescription,
} from '../../src/sheets/grammar/description.ts';
import type { RawCell, RawRow } from '../../src/planning/input/raw-table.ts';
import {
  DEMO_FOLDER,
  folderTables,
  HOUSE_FOLDER,
  houseIsHere,
  PLAIN,
  type Tables,
} from '../planning/make-job.ts';

/** Names as a person, or a paste, may give them; each row of Runs is one room. */
export const HOSTILE_NAMES = [
  '=SUM(A1:A9)',
  '+1',
  '-2+3',
  '@cmd',
  '>5',
  '*',
  'Hall?~',
  '#N/A',
  '🏠 Stube \u{1F468}\u200D\u{1F469}',
  'غرفة الجلوس',
  'Hall',
  'HALL',
  'hall',
  'O\'Brien\'s <den> & "nook"',
  'a\tb',
  'x'.repeat(300),
];

const quote = (text: string): string => `"${text.replaceAll('"', '""')}"`;

const HOSTILE: Tables = {
  runs: [
    'Room,Run,Profile,Length,Left end,Note,Quantity',
    ...HOSTILE_NAMES.map(
      (name, index) =>
        `${quote(name)},${quote(`wall ${name}`)},${index % 2 ? 'Cove' : '"=1+1"'},${40 + index / 8},inside miter,${quote(name)},${1 + (index % 3)}`,
    ),
  ].join('\n'),
  profiles:
    'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Class\n' +
    '"=1+1",buy,5 1/4,3/4,Poplar,,,\nCove,cove,4 1/2,1,Poplar,3,1/2,4/4',
  shop: 'Setting,Value\nhourly rate,61.37\noverhead %,7.5\nmargin %,12.5\ntax %,8.875\ncurrency,"x""[;]@"\noffcut credit %,33',
  stock:
    'For,Kind,Class,Width,Length,Price,Per,Have,Buy\n"=1+1",stick,,,16\',2.37,foot,2,\nPoplar,board,4/4,10,12\',5.13,board foot,1,',
};

export const WALLED: Tables = {
  runs: 'Room,Run,Profile,Length,Note\nReading room,6,Crown,192,typed by hand\nReading room,shelf,Rail,30,of oak\nHall,north,Base,100,',
  walls:
    "Room,Wall,Length,Corner,Turn\nReading room,1,18',90,inside\nReading room,2,10',,\n" +
    "Reading room,3,8',90,outside\nReading room,4,6',,\nReading room,5,10',,\nReading room,6,16',,\n" +
    'Closet,a,40,,\nCloset,b,30,,\nCloset,c,40,,\nCloset,d,30,,\nPorch,<x>,40,,\nPorch,=1+1,30,,end',
  trim: 'Room,Profile,Where,Height,Walls\nall,Base,floor,,\nreading room,Rail,height,32,\nReading room,Crown,ceiling,,',
  openings:
    'Room,Wall,Kind,Width,Height,Casing,Position,Sill,Other room,Other wall\nReading room,5,door,36,80,Casing,42,,Hall,north\n' +
    'Reading room,1,window,60,48,Casing,78,32,,\nReading room,2,cased opening,48,84,Casing,36,,,\n' +
    'Closet,a,door,24,80,Casing,,,,',
  profiles: `${PLAIN.profiles}\nRail,buy,2 1/2,3/4,,Poplar,,,`,
  stock: `${PLAIN.stock}\nRail,stick,,,16',2,foot,,`,
};

export const DEMO: Tables = folderTables(DEMO_FOLDER);

/** Jobs by name; the house only where it is present. */
export const JOBS: Readonly<Record<string, Tables>> = {
  demo: DEMO,
  tiny: {},
  hostile: HOSTILE,
  millimetres: {
    ...PLAIN,
    // What may be taken up: a room more, and the base in another wood.
    options:
      'Option,Room,Profile,Instead,Taken,Note\nKammer,Kammer,,,,"Bis Juni, sonst später"\n' +
      'B,Stube,Base,Eiche,,\nC,Stube,Cove,,yes,',
    runs: 'Room,Run,Profile,Length,Left end,Right end\nStube,Nord,Cove,2410,inside miter,square\nStube,Ost,Base,5200,cope,outside miter\nKammer,Nord,Base,1810,square,square\nKammer,Ost,Cove,2010,square,square',
    shop: 'Setting,Value,Unit\nunit,mm,\npaper,a4,\ncurrency,€,\nhourly rate,55,\ntable front,300,\ntable back,380,\nslot to blade,130,\nfeed,2,m/min\ntax %,19,\ntax on,material,\nprice rounding,5,',
    profiles: `Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Class\nBase,buy,90,18,Poplar,,,\nEiche,buy,90,18,Oak,,,\nCove,cove,110,25,Poplar,75,13,4/4`,
    stock:
      'For,Kind,Class,Width,Length,Price,Per,Have,Buy\nBase,stick,,,2.4 m,4.1,metre,,\nEiche,stick,,,2.4 m,9.3,metre,,\nPoplar,board,4/4,250,3 m,9.9,metre,,',
  },
  // A shop of the decimal comma; names that a person typed have signs of their own.
  comma: {
    shop:
      'Setting,Value,Unit\nunit,mm,\npaper,a4,\ndecimal sign,",",\ncurrency,€,\nhourly rate,"62,5",\n' +
      'tax %,"8,875",\ntilt side,right,\ntable front,"300,5",\ntable back,"380,5",\ntable width,1000,\n' +
      'slot to blade,"130,5",\nkerf,"3,2",\nfeed,"2,5",m/min\nlength precision,"0,5",\nend trim,"12,5",\n' +
      'crosscut kerf,"2,8",\nend allowance,"1,5",\nkeep offcuts over,"450,5",\nsplice angle,"22,5",\n' +
      'least blank length,"914,4",\nset-up spare,"950,5",\noffcut credit %,25,',
    profiles:
      'Profile,Make,Blank width,Blank thickness,Near flat,Spring,Species,Cove width,Cove depth,Off-center,Class,Note,Slope\n' +
      'Base,buy,"90,5",18,,,Tulpe,,,,,,\n' +
      'Cove 7.5,cove,"110,5",25,,,Tulpe,"75,5",13,"6,5",5/4,"Stück 0.5 of 2,25",\n' +
      'Flat,cove,"110,5",24,,,Tulpe,"70,5","11,5",,5/4,,"4,5/12"\n' +
      'Crown,crown cove,"120,5",25,,"38,5",Tulpe,70,"12,5",4,5/4,,"18,5"',
    runs:
      'Room,Run,Profile,Length,Left end,Right end,Left corner,Quantity\n' +
      'Stube 1.5,"Nord 2,5",Cove 7.5,"2410,5",inside miter,square,"87,5",3\n' +
      'Stube 1.5,Ost,Base,"5200,5",cope,outside miter,"90,5",1\nKammer,Ost,Flat,"1805,25",return,square,,2\n' +
      'Kammer,Nord,Crown,2205,inside miter,outside miter,"87,5",2\nKammer,Nord,Base,"1210,5",inside miter,,"87,5",4',
    stock:
      'For,Kind,Class,Width,Length,Price,Per,Have,Buy,Grade,Yield %,Defects\nBase,stick,,,"2400,5","4,15",metre,2,,,,\n' +
      'Tulpe,board,5/4,"317,5","3050,5","19,95",board foot,,,A,"82,5",\nTulpe,board,5/4,200,"850,5",2,piece,,,,,\n' +
      'Tulpe,board,5/4,"317,5","3050,5","19,95",board foot,1,no,A,,"2501,5-2550"',
  },
  // A room typed once: an L with a parted base, a rail and a crown; a closet whose door is nobody knows where.
  walls: WALLED,
  done: { runs: 'Room,Run,Profile,Length,Done\nHall,north,Base,100,yes\nHall,south,Cove,90,yes' },
  sprung: {
    runs: 'Room,Run,Profile,Length,Left end,Right end,Right corner\nHall,north,Crown,100,inside miter,outside miter,135',
  },
  // Two coves of one blank width and one of another share boards, around a molding that is bought.
  shared: {
    profiles:
      'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Class\n' +
      'Wide,cove,4 1/2,1,Poplar,3,1/2,4/4\nBase,buy,5 1/4,3/4,Poplar,,,\n' +
      'Flat,cove,4 1/2,7/8,Poplar,3,3/8,4/4\nNarrow,cove,3,7/8,Poplar,2,3/8,4/4',
    runs: 'Room,Profile,Length\nHall,Wide,100\nHall,Base,90\nDen,Flat,70\nDen,Narrow,80\nDen,Narrow,81',
    shop: 'Setting,Value\nhourly rate,48\noffcut credit %,30\nset-up spare,0',
    stock:
      "For,Kind,Class,Width,Length,Price,Per,Have,Buy\nBase,stick,,,16',2,foot,,\n" +
      "Poplar,board,4/4,9 1/2,12',5.13,board foot,1,\nNarrow,stick,4/4,3 1/4,8',3.07,foot,,",
  },
  // Rooms that differ in case alone, a profile that nobody uses, one that is done, names right to left.
  unused: {
    profiles: `${PLAIN.profiles}\nGhost,cove,4 1/2,1,,Poplar,3,1/2,4/4`,
    runs: 'Room,Run,Profile,Length,Done\nDen,a,Base,100,\nDEN,a,Base,60 1/16,\nDen,b,Casing,50,yes\nغرفة,"جدار ""1""",Cove,70,',
  },
  // Sizes that are no 64ths of an inch, and a molding whose blank is not known.
  decimals: {
    shop: 'Setting,Value\nhourly rate,40\nlength precision,0.1\ncurrency,Swiss francs of the year',
    profiles:
      'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Class\nBase,buy,,,Poplar,,,\nCove,cove,115 mm,26 mm,Poplar,75 mm,13 mm,',
    stock:
      'For,Kind,Class,Width,Length,Price,Per\nBase,stick,,,2.4 m,4,piece\nPoplar,stick,,,4 m,9,piece',
    runs: 'Room,Run,Profile,Length\nHall,a,Base,71.23\nHall,b,Cove,70.05',
  },
  ...(houseIsHere ? { house: folderTables(HOUSE_FOLDER) } : {}),
};

/** Where the columns of Pieces stand, from 0. */
export const PIECES_AT = {
  no: 0,
  mark: 1,
  room: 2,
  run: 3,
  piece: 4,
  profile: 5,
  length: 6,
  done: 11,
  line: 12,
  off: 13,
} as const;

/** Rows of the list of pieces. */
export function listedPieces(workbook: WorkbookDescription) {
  const sheet = sheetOf(workbook, 'Pieces');
  const heads = rowWith(sheet, 'No.');
  return sheet.rows.slice(heads + 1).map(({ cells }) => {
    const at = (column: keyof typeof PIECES_AT) => cells[PIECES_AT[column]]?.value ?? null;
    return {
      no: at('no'),
      line: at('line'),
      room: at('room'),
      run: at('run'),
      piece: at('piece'),
      profile: at('profile'),
      length: at('length'),
      off: at('off'),
      mark: at('done'),
    };
  });
}

export function sheetOf(workbook: WorkbookDescription, name: string): SheetDescription {
  const sheet = workbook.sheets.find((one) => one.name === name);
  if (sheet === undefined) throw new Error(`There is no sheet ${name}.`);
  return sheet;
}

/** A sheet's rows as a host reads them. */
export function rawRowsOf({ rows }: SheetDescription): RawRow[] {
  return rows.flatMap(({ cells }, at) => {
    const values = cells.map((cell): RawCell => cell?.value ?? null);
    return values.every((value) => value === null) ? [] : [{ line: at + 1, cells: values }];
  });
}

export function cellAt(
  sheet: SheetDescription,
  row: number,
  column: number,
): CellDescription | null {
  return sheet.rows[row]?.cells[column] ?? null;
}

/** Every text of a sheet, in its order. */
export function textsOf(sheet: SheetDescription): string[] {
  return sheet.rows.flatMap(({ cells }) =>
    cells.flatMap((cell) => (typeof cell?.value === 'string' ? [cell.value] : [])),
  );
}

/** The first row whose cell in `column` reads so; at or after `from`. */
export function rowWith(sheet: SheetDescription, text: string, column = 0, from = 0): number {
  const row = sheet.rows.findIndex(
    ({ cells }, index) => index >= from && cells[column]?.value === text,
  );
  if (row < 0) throw new Error(`No row of ${sheet.name} reads "${text}".`);
  return row;
}

export function numberAt(sheet: SheetDescription, row: number, column: number): number {
  const value = cellAt(sheet, row, column)?.value;
  if (typeof value !== 'number') throw new Error(`${sheet.name} has no number in row ${row + 1}.`);
  return value;
}
