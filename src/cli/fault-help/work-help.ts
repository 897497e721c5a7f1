/** Help on Work, Hours, Options, and rates learned from hours. */
import { job, told } from './example.ts';

const W = 'Work,Per,Minutes,Money,For,Ours,Low,High\n';
const work = (given: string, mended: string, beside = {}) =>
  job('work', W + given, W + mended, beside);
const H = 'Date,Work,Profile,Hours\n';
const hours = (given: string, mended: string) => job('hours', H + given, H + mended);
const O = 'Option,Room,Profile,Species,Instead,Taken\n';
const TWO = {
  runs: 'Room,Run,Profile,Length\nHall,North,Base,100\nHall,North,Crown,90',
};
const options = (given: string, mended: string) => job('options', O + given, O + mended, TWO);

export const WORK_HELP = {
  'job.work-twice': [
    'Two rows of Work are the same work for the same moldings.',
    work('cope,,4,,,,,\nCope,,5,,all,,,', 'cope,,4,,,,,'),
  ],
  'job.work-for-unknown': [
    'A row of Work is for a profile that isn’t there.',
    work('cope,,4,,Bse,,,', 'cope,,4,,Base,,,'),
  ],
  'job.work-for-of-job': [
    'What is counted by the job or the room is for no molding of its own.',
    work('site visit,room,10,,Base,,,', 'site visit,room,10,,,,,'),
  ],
  'job.work-needs-minutes': [
    'A kind of work of your own needs its minutes.',
    work('measure,room,,,,,,', 'measure,room,15,,,,,'),
  ],
  'job.work-factor-money': [
    'A factor times other work, and has no money of its own.',
    work('install at height,,1.2,5,,,,', 'install at height,,1.2,,,,,'),
  ],
  'job.work-differs': [
    'Work and Shop say different minutes of one thing.',
    work('crosscut,,2,,,,,', 'crosscut,,0.75,,,,,', { shop: 'Setting,Value\ncrosscut seconds,45' }),
  ],
  'job.work-low-above': ['Low is above Minutes.', work('cope,,4,,,,5,', 'cope,,4,,,,3,')],
  'job.work-high-below': ['High is below Minutes.', work('cope,,4,,,,,3', 'cope,,4,,,,,6')],
  'job.work-range-of-nothing': [
    'Low and High stand beside work that isn’t in the price.',
    work('cope,,4,,,no,3,', 'cope,,4,,,yes,3,'),
  ],
  'job.work-needs-width': [
    'Work by the face needs to know how wide the molding is.',
    work('prime or finish,,,,,,,', 'prime or finish,,,,Casing,,,', {
      profiles: 'Profile,Make,Blank width,Blank thickness\nBase,buy,,3/4\nCasing,buy,3 1/2,3/4',
    }),
  ],
  'job.hours-unreadable': [
    'Hours are a number, or hours and minutes.',
    hours(',cope,,a morning', ',cope,,3.5'),
  ],
  'job.hours-as-time': [
    'A spreadsheet has made a time of day of the hours.',
    told({ name: 'Hours' }, '1:30'),
    'Write 1.5, or give the cell the format of text.',
  ],
  'job.hours-per-day': [
    'More hours than a day has stand on one day.',
    hours('2026-03-04,cope,,30', '2026-03-04,cope,,3'),
  ],
  'job.hours-work-unknown': ['Hours are of work that isn’t known.', hours(',copng,,3', ',cope,,3')],
  'job.hours-of-factor': [
    'A factor takes no hours by itself.',
    hours(',install at height,,3', ',install,,3'),
  ],
  'job.hours-profile-of-job': [
    'Work for the whole job has no hours of one profile.',
    hours(',load and deliver,Base,2', ',load and deliver,,2'),
  ],
  'job.hours-overlap': [
    'Hours of one kind may hold others that stand beside them.',
    hours(',cope,,3\n,cope,Base,1', ',cope,Base,1'),
  ],
  'job.hours-twice': [
    'A row of hours stands twice.',
    hours('2026-03-04,cope,,3\n2026-03-04,cope,,3', '2026-03-04,cope,,3'),
  ],
  'job.hours-without-job': [
    'Hours are given, and no runs that took them.',
    told({ name: 'Hours' }, null),
    'Keep Hours beside the job’s Runs.',
  ],
  'job.hours-of-nothing': [
    'Hours are for work that the job has none of.',
    told({ name: 'Hours' }, 3, { work: 'cope' }),
    'Correct the work or the profile.',
  ],
  'job.hours-odd': [
    'Hours are far from what all the others say.',
    told({ name: 'Hours' }, 30, { work: 'cope', hours: '4' }),
    'See whether they are of this job, and in hours.',
  ],
  'job.hours-of-done': [
    'Pieces that are done count in no plan, though their hours do.',
    told({ name: 'Runs' }, 4),
    'Take yes out under Done before rates are learned.',
  ],
  'rates.no-hours': [
    'No job has hours to learn from.',
    told({ name: 'rates' }, null),
    'Fill in Hours: Work and Hours.',
  ],
  'rates.on-shop': [
    'A rate is a setting of Shop, and is written there.',
    told({ name: 'crosscut' }, 'crosscut seconds', { value: 50 }),
    'Write the number of the message under crosscut seconds.',
  ],
  'rates.reads-otherwise': [
    'A name would be read otherwise from a CSV file.',
    told('workDone', '=1+1'),
    'Type its row into Work by hand.',
  ],
  'rates.lack-heading': [
    'A learned row says something for which Work has no column.',
    told('minutes', 4, { work: 'cope' }),
    'Add the column to Work.',
  ],
  'job.option-room-unknown': [
    'An option is about a room in which nothing is to be made.',
    options('Paint,Hal,Crown,,,', 'Paint,Hall,Crown,,,'),
  ],
  'job.option-species-unknown': [
    'An option is about a wood that no profile is of.',
    options('Oak,Hall,,Oak,,', 'Poplar,Hall,Crown,Poplar,,'),
  ],
  'job.option-picks-none': [
    'An option picks nothing that is still to be made.',
    options('Cove,Hall,Cove,,,', 'Crown,Hall,Crown,,,'),
  ],
  'job.option-instead-same': [
    'An option would make a molding of itself.',
    options('Same,Hall,Crown,,Crown,', 'Casing,Hall,Crown,,Casing,'),
  ],
  'job.option-instead-several': [
    'One profile would stand in place of several.',
    options('Casing,Hall,,,Casing,', 'Casing,Hall,Crown,,Casing,'),
  ],
  'job.option-mixes': [
    'Two rows of an option say different things of one molding.',
    options('A,Hall,Crown,,,\nA,Hall,Crown,,Casing,', 'A,Hall,Crown,,,'),
  ],
  'job.option-two-additions': [
    'One molding is an addition of two options.',
    options('A,Hall,Crown,,,\nB,Hall,Crown,,,', 'A,Hall,Crown,,,'),
  ],
  'job.option-of-addition': [
    'An option would change what another one only adds.',
    options('A,Hall,Crown,,,\nB,Hall,Crown,,Casing,', 'A,Hall,Crown,,,yes\nB,Hall,Crown,,Casing,'),
  ],
  'job.option-two-taken': [
    'Two options that are taken up make one molding otherwise.',
    options(
      'A,Hall,Crown,,Casing,yes\nB,Hall,Crown,,Base,yes',
      'A,Hall,Crown,,Casing,yes\nB,Hall,Crown,,Base,',
    ),
  ],
  'job.option-taken-differs': [
    'An option is taken up as a whole, or not.',
    options('A,Hall,Crown,,,yes\nA,Hall,Base,,,no', 'A,Hall,Crown,,,'),
  ],
  'job.options-too-many': [
    'Each option is a plan of its own, and so many would take too long.',
    told({ name: 'Options' }, 30, {}, 20),
    'Take out those that nobody asks about any more.',
  ],
  'job.options-all': [
    'All of the job is an addition, so nothing is left to price.',
    options('A,Hall,,,,', 'A,Hall,Crown,,,'),
  ],
  'job.option-at-fault': [
    'With the option taken up the job can’t be made.',
    told('option', 'Oak', { says: 'No stock that serves is listed for Oak base.' }),
    'Correct what its message says.',
  ],
  'job.option-cut': [
    'What an option would change is cut already.',
    told('option', 'Oak', { profile: 'Base' }),
    'Price it by hand, or take its rows out.',
  ],
  'job.option-caution': [
    'A caution is of the job with an option taken up.',
    told('option', 'Oak', { says: 'A stick is too short.' }),
    'See the caution itself.',
  ],
} as const;
