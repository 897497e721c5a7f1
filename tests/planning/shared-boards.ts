/** Two coves that are cheaper from one board than from two. */
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { planByHand } from './hand-made-plan.ts';
import { planOf, type Tables } from './make-job.ts';

/**
 * By hand. A board of 8 in gives one blank of 4 1/2 (two take 9 1/8) or two of 3 (6 1/8), or one of each
 * side by side (7 5/8). Of its 120 in, 118 are left between the trims. One run of 100 of each profile: by
 * themselves they take a board each, 80.00; together one, 40.00.
 */
export const SHARED: Tables = {
  profiles:
    'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth\n' +
    'Wide,cove,4 1/2,1,Poplar,3,1/2\nNarrow,cove,3,1,Poplar,2,3/8',
  runs: 'Room,Profile,Length,Measured as\nHall,Wide,100,finished\nDen,Narrow,100,finished',
  shop: 'Setting,Value\nset-up spare,0\nhourly rate,0',
  stock: "For,Kind,Class,Width,Length,Price,Per\nPoplar,board,4/4,8,10',40,piece",
};
export const MIXED = [
  { profile: 'Wide', unit: 0, strip: 0, rip: [1, 1], pieces: ['Hall / Wide / 1'] },
  { profile: 'Narrow', unit: 0, strip: 1, rip: [1, 1], pieces: ['Den / Narrow / 1'] },
];
export const withCredit: Tables = {
  ...SHARED,
  shop: `${SHARED.shop!}\noffcut credit %,50\nkeep offcuts over,12`,
};

export const planMixed = (tables: Tables = SHARED): Promise<JobPlan> =>
  planOf(tables, { planSticks: planByHand(MIXED).plan });
