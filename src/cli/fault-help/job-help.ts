/** Help on Shop, Job, Profiles, Runs and Stock. */
import { job, shop, told } from './example.ts';

const RUN = 'Room,Run,Profile,Length\n';
const P = 'Profile,Make,Cove width,Cove depth,Spring,Blank width,Blank thickness,Species,Class\n';
const profiles = (given: string, mended: string, beside = {}) =>
  job('profiles', P + given, P + mended, beside);
const COVES = { runs: 'Room,Profile,Length,Measured as\nHall,Cove,60,finished' };
const ends = (given: string, mended: string) =>
  job(
    'runs',
    `Room,Profile,Length,Measured as,Left end,Left corner,Reveal\nHall,Base,100,${given}`,
    `Room,Profile,Length,Measured as,Left end,Left corner,Reveal\nHall,Base,100,${mended}`,
  );

export const JOB_HELP = {
  'job.profile-unknown': [
    'A run is of a profile that Profiles doesn’t have.',
    job('runs', `${RUN}Hall,North,Bse,100`, `${RUN}Hall,North,Base,100`),
  ],
  'job.profile-twice': [
    'Two rows of Profiles have one name.',
    profiles(
      'Base,buy,,,,5 1/4,3/4,Poplar,\nbase,buy,,,,4 1/4,3/4,Poplar,',
      'Base,buy,,,,5 1/4,3/4,Poplar,\nLow base,buy,,,,4 1/4,3/4,Poplar,',
    ),
  ],
  'job.setting-near': ['A row of Shop is nearly a setting.', shop('margin,20', 'margin %,20')],
  'job.setting-unknown': [
    'A row of Shop is no setting, and is passed over.',
    shop('phone,555-0100', 'hourly rate,60'),
  ],
  'job.usual-values': [
    'Settings that nobody filled in have usual values, which are listed.',
    told({ name: 'Shop' }, 30, { list: 'kerf 1/8 in; end trim 1 in' }),
    'Fill in what is otherwise in your shop.',
  ],
  'job.usual-values-counted': [
    'Settings that nobody filled in have usual values.',
    told({ name: 'Shop' }, 30),
    'Plan with --verbose to see them.',
  ],
  'job.heights-assumed': [
    'How high the blade rises isn’t known, so that of a usual saw is assumed.',
    shop('hourly rate,60', 'hourly rate,60\ngreatest height upright,3 1/8', COVES),
  ],
  'job.height-at-45-assumed': [
    'How high the tilted blade rises isn’t known.',
    job(
      'shop',
      'Setting,Value\ngreatest height upright,3 1/8',
      'Setting,Value\ngreatest height upright,3 1/8\ngreatest height at 45,2 1/8',
      {
        profiles:
          'Profile,Make,Cove width,Cove depth,Off-center,Blank width,Blank thickness,Species\nCove,cove,2 1/2,1/2,1/4,4 1/2,1,Poplar',
        ...COVES,
      },
    ),
  ],
  'job.no-hourly-rate': [
    'Labor costs nothing as long as no rate is given.',
    shop('kerf,1/8', 'hourly rate,60'),
  ],
  'job.setting-unread': [
    'A row of Shop would change a price by its name, and is no setting.',
    shop('fuel surcharge,5', 'delivery,5'),
  ],
  'job.title-near': [
    'A row of Job is nearly one that is printed.',
    job('job', 'Setting,Value\nclint,Mrs. Holt', 'Setting,Value\nclient,Mrs. Holt'),
  ],
  'job.title-unknown': [
    'A row of Job is not printed anywhere.',
    job('job', 'Setting,Value\nweather,rain', 'Setting,Value\nclient,Mrs. Holt'),
  ],
  'job.title-twice': [
    'Job says one thing twice.',
    job('job', 'Setting,Value\nclient,Holt\nclient,Hale', 'Setting,Value\nclient,Holt'),
  ],
  'job.setting-of-shop': [
    'A setting of Shop stands on Job.',
    job('job', 'Setting,Value\nkerf,1/8', 'Setting,Value\nclient,Holt'),
  ],
  'job.setting-twice': ['A setting stands twice.', shop('kerf,1/8\nKerf,3/32', 'kerf,1/8')],
  'job.reveal-unused': [
    'A reveal stands beside a run that isn’t measured as an opening.',
    ends('wall,,,3/16', 'opening,,,3/16'),
  ],
  'job.cove-sizes-unused': [
    'A profile that is bought has the sizes of a cove.',
    profiles('Base,buy,2 1/2,1/2,,4 1/2,1,Poplar,', 'Base,buy,,,,4 1/2,1,Poplar,'),
  ],
  'job.corner-unused': [
    'A corner stands beside an end that is cut alike at any corner.',
    ends('wall,square,80,', 'wall,inside miter,80,'),
  ],
  'job.corner-without-end': [
    'A corner stands beside an end of which nothing is said.',
    ends('wall,,80,', 'wall,inside miter,80,'),
  ],
  'job.cell-needs-another': [
    'A cell says nothing without another.',
    job(
      'openings',
      'Room,Wall,Kind,Width,Height,Casing,Other wall\nHall,North,door,36,80,Casing,East',
      'Room,Wall,Kind,Width,Height,Casing,Other room,Other wall\nHall,North,door,36,80,Casing,Den,East',
    ),
  ],
  'job.match-of-two-profiles': [
    'Pieces that come from one stick are of one profile.',
    job(
      'runs',
      'Room,Profile,Length,Match\nHall,Base,60,pair\nHall,Casing,60,pair',
      'Room,Profile,Length,Match\nHall,Base,60,pair\nHall,Base,50,pair',
    ),
  ],
  'job.projection-unknown': [
    'How far a molding stands out isn’t given, and its miters go by it.',
    told({ name: 'Hall / North' }, 'Base', { needed: 'Blank thickness' }),
    'Fill in Blank thickness on Profiles.',
  ],
  'job.make-missing': [
    'A profile has the sizes of a cove, and nothing says whether it is cut here.',
    profiles('Base,,2 1/2,1/2,,4 1/2,1,Poplar,', 'Base,buy,,,,4 1/2,1,Poplar,'),
  ],
  'job.cove-needs': [
    'A cove that is cut here needs its sizes and its blank.',
    profiles(
      'Cove,cove,2 1/2,,,4 1/2,1,Poplar,4/4',
      'Cove,cove,2 1/2,1/2,,4 1/2,1,Poplar,4/4',
      COVES,
    ),
  ],
  'job.allowance-takes-all': [
    'All of what is bought would be waste.',
    shop(
      'allowance of,bought\noffcut allowance %,100',
      'allowance of,bought\noffcut allowance %,20',
    ),
  ],
  'job.quantity-too-large': [
    'A job has more pieces than are planned together.',
    told('quantity', 50_000, {}, 20_000),
    'Plan it floor by floor.',
  ],
} as const;
