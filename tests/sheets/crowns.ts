/** Moldings that lie in four ways: bought at a spring, off-center, both, and alike at both edges. */
import type { Tables } from '../planning/make-job.ts';

export const CROWNS: Tables = {
  profiles:
    'Profile,Make,Blank width,Blank thickness,Spring,Species,Cove width,Cove depth,Off-center,Class\n' +
    'Bed,buy,4 5/8,11/16,38,Poplar,,,,\nDeep,cove,4 1/2,1 1/4,,Poplar,3,5/8,3/8,5/4\n' +
    'Arch,crown cove,5 1/2,1 1/4,38,Poplar,3,5/8,3/8,5/4\nEven,cove,4 1/2,1 1/4,,Poplar,3,5/8,,5/4',
  runs:
    'Room,Run,Profile,Length,Left end,Right end,Right corner\n' +
    'Hall,north,Bed,90,inside miter,outside miter,135\nHall,south,Deep,80,cope,return,\n' +
    'Hall,west,Arch,70,square,inside miter,\nHall,east,Even,60,outside miter,square,',
  shop: 'Setting,Value\nhourly rate,60\nset-up spare,30\nend trim,1/2',
  stock:
    "For,Kind,Class,Width,Length,Price,Per,Have,Buy\nBed,stick,,,16',4,foot,1,\n" +
    "Poplar,board,5/4,6,14',5,board foot,2,",
};
