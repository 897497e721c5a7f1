/** Jobs whose set-ups fill a page, or more than one. */
import type { Tables } from '../planning/make-job.ts';

/** What a page of the shop takes at most: a crown with many passes, corners, a note and cautions. */
export const FULL: Tables = {
  runs: 'Room,Run,Profile,Length,Left end,Right end\nHall,north,Crown,90,inside miter,return\nHall,south,Crown,90,outside miter,cope',
  profiles:
    'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Off-center,Spring,Class,Note\n' +
    'Crown,crown cove,5 1/4,1 3/4,Poplar,4,1 3/16,3/8,38,8/4,Match the old crown: the sample hangs by the door',
  shop: 'Setting,Value\nhourly rate,60\ntable front,12\ntable back,15\ntable width,40\nslot to blade,5 3/8',
  stock: "For,Kind,Class,Width,Length,Price,Per,Have,Buy\nPoplar,board,8/4,6,12',5,board foot,,",
};

/**
 * More than one page holds: forty passes of an off-center crown cove, three cautions of its
 * own (a thin kerf, a steep approach, a step over the usual), rails that leave the table at its
 * sides, three kinds of corners and a note.
 */
export const FORTY: Tables = {
  runs: 'Room,Run,Profile,Length,Left end,Right end,Right corner\nHall,north,Crown,90,inside miter,return,\nHall,south,Crown,90,outside miter,outside miter,135',
  profiles:
    'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Off-center,Spring,Class,Note\n' +
    'Crown,crown cove,10 1/2,3,Poplar,7 3/4,2 1/2,5/16,38,12/4,Match the old crown: the sample hangs by the door',
  shop: 'Setting,Value\nhourly rate,60\nkerf,3/32\nfirst pass,1/8\nstep,1/16\nlast pass,1/32\ntable front,12\ntable back,15\ntable width,27\nslot to blade,5 3/8',
  stock: "For,Kind,Class,Width,Length,Price,Per,Have,Buy\nPoplar,board,12/4,11,12',5,board foot,,",
};

export const withSetting = (tables: Tables, setting: string, value: string): Tables => ({
  ...tables,
  shop: `${(tables.shop ?? '').replace(new RegExp(`^${setting},.*\n?`, 'mu'), '').trimEnd()}\n${setting},${value}`,
});

/** Steps of 1/256 in: more passes than two pages hold. */
export const OVERLEAF = withSetting(withSetting(FORTY, 'first pass', '1/256'), 'step', '1/256');
