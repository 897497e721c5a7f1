/** The small job that examples are cut out of: one of each kind of molding, and lumber for all. */

export const TABLE_NAMES = {
  runs: 'Runs',
  walls: 'Walls',
  trim: 'Trim',
  openings: 'Openings',
  profiles: 'Profiles',
  shop: 'Shop',
  stock: 'Stock',
  work: 'Work',
  options: 'Options',
  job: 'Job',
  hours: 'Hours',
} as const;
export type TableName = keyof typeof TABLE_NAMES;

export const SOUND_JOB: Readonly<Partial<Record<TableName, string>>> = {
  runs: 'Room,Run,Profile,Length\nHall,North,Base,100',
  profiles:
    'Profile,Make,Blank width,Blank thickness,Spring,Species,Cove width,Cove depth,Class\n' +
    'Base,buy,5 1/4,3/4,,Poplar,,,\nCasing,buy,3 1/2,11/16,,Poplar,,,\n' +
    'Crown,buy,4 5/8,11/16,38,Poplar,,,\nCove,cove,4 1/2,1,,Poplar,2 1/2,1/2,4/4',
  shop: 'Setting,Value\nhourly rate,60\ngreatest height upright,3 1/8\ngreatest height at 45,2 1/8',
  stock:
    "For,Kind,Class,Width,Length,Price,Per\nBase,stick,,,16',2,foot\nCasing,stick,,,16',3,foot\n" +
    "Crown,stick,,,16',4,foot\nPoplar,board,4/4,10,12',5,board foot",
};
