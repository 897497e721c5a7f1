/** Help on coves, rails, crown, lumber and the bid's range. */
import { degrees, inches, job, shop, told } from './example.ts';

const RUNS = { runs: 'Room,Profile,Length\nHall,Cove,60' };
const COVE =
  'Profile,Make,Cove width,Cove depth,Off-center,Blank width,Blank thickness,Species,Class\nCove,cove,';
const cove = (given: string, mended: string) =>
  job('profiles', `${COVE}${given},Poplar,4/4`, `${COVE}${mended},Poplar,4/4`, RUNS);
const saw = (given: string, mended: string) => shop(given, mended, RUNS);
const HIGH = 'greatest height upright,3 1/8\ngreatest height at 45,2 1/8\n';
const CROWN = 'Profile,Make,Blank width,Blank thickness,Spring,Drop,Slope\nBase,buy,5 1/4,3/4,';
const crown = (given: string, mended: string) =>
  job('profiles', `${CROWN}${given}`, `${CROWN}${mended}`);

export const COVE_HELP = {
  'cove.size-missing': [
    'A cove has a width or a depth of 0, or none.',
    told('depth', inches(0)),
    'Give the size as it is drawn.',
  ],
  'cove.kerf-too-thick': [
    'No blade of this diameter cuts so thick a kerf.',
    saw('kerf,4 in', 'kerf,1/8'),
  ],
  'cove.off-center-negative': [
    'How far off center a cove is deepest has no sign: the deep side always lies toward the far rail.',
    told('offCenter', inches(-0.25)),
    'Write 1/4, and feed the board with its deep side to the far rail.',
  ],
  'cove.off-center-beyond-half': [
    'The deepest line would lie outside of the cove.',
    cove('2 1/2,1/2,1 1/2,4 1/2,1', '2 1/2,1/2,1/4,4 1/2,1'),
  ],
  'cove.too-wide': [
    'Even at the steepest approach this blade cuts no cove so wide at this depth.',
    cove('6 1/2,1/4,,9,1', '2 1/2,1/4,,4 1/2,1'),
  ],
  'cove.no-wider-than-kerf': [
    'A blade fed along its own plane already cuts wider: a groove of its kerf.',
    cove('1/8,1/16,,4 1/2,1', '2 1/2,1/2,,4 1/2,1'),
  ],
  'cove.too-deep-for-blade': [
    'The cove asks for more than half of the blade above the table.',
    told('depth', inches(6), {}, inches(5)),
    'Take a shallower cove, or a larger blade.',
  ],
  'cove.no-tilt-enough': [
    'No tilt that the saw has brings the deepest line so far to one side.',
    told('offCenter', inches(1.5), { tiltStop: degrees(45) }, inches(0.9)),
    'Take the off-center of the message, or a centered cove.',
  ],
  'cove.corner-alone': [
    'Beyond some tilt a corner of the blade’s rim alone would cut, which no formula here covers.',
    told('offCenter', inches(0.2), { tiltStop: degrees(30) }, inches(0.1)),
    'Take a thinner blade, or a deeper cove.',
  ],
  'cove.tilt-beyond-stop': [
    'The cove asks for more tilt than the saw has.',
    cove('3 1/2,1/2,1 1/2,5 1/2,1', '3 1/2,1/2,1/4,5 1/2,1'),
  ],
  'cove.blade-cannot-rise': [
    'The cove is deeper than this saw brings the blade up.',
    job(
      'shop',
      'Setting,Value\ngreatest height upright,1/4\ngreatest height at 45,1/4',
      'Setting,Value\ngreatest height upright,3 1/8\ngreatest height at 45,2 1/8',
      RUNS,
    ),
  ],
  'cove.blade-cannot-rise-unstated-saw': [
    'The cove is deeper than a saw of this blade usually brings it up, and Shop doesn’t say how high yours does.',
    told('depth', inches(3.5), { allowance: inches(1.875) }, inches(3.125)),
    'Measure the highest tooth above the table, and write it under greatest height upright.',
  ],
  'cove.height-below-corner': [
    'A tilted blade that is hardly raised shows a corner of its rim alone.',
    told('height', inches(0.02), {}, inches(0.04)),
    'Raise the blade, or tilt it less.',
  ],
  'cove.web-too-thin': [
    'Too little wood would stay above the cove, so that the board may break on the saw.',
    cove('2 1/2,3/4,,4 1/2,7/8', '2 1/2,1/2,,4 1/2,7/8'),
  ],
  'cove.flat-too-narrow': [
    'Too little of the board beside the cove would ride on the table.',
    cove('4 3/8,1/2,,4 1/2,1', '4,1/2,,4 1/2,1'),
  ],
  'cove.undercut-eats-flat': [
    'The tilted blade leans under the deep side and leaves too little of the flat there.',
    told(
      'farFlat',
      inches(0.3),
      {
        beyondFace: inches(0.25),
        left: inches(0.05),
        widthThatWould: inches(4.75),
      },
      inches(0.125),
    ),
    'Take a wider blank.',
  ],
  'cove.undercut-meets-rail': [
    'The tilted blade leans so far under the deep side that it comes out of the board into the rail.',
    told('farFlat', inches(0.2), { beyondFace: inches(0.25), widthThatWould: inches(4.75) }),
    'Take a wider blank.',
  ],
  'cove.undercut': [
    'The tilted blade leaves a cove that is wider inside than at its face.',
    told('cove', inches(0.1), { farFlat: inches(0.225), leastFlat: inches(0.125) }, inches(2.6)),
    'It can be made; a smaller off-center has no undercut.',
  ],
  'cove.steep-approach': [
    'The board goes over the blade nearly square to it, which loads the blade sideways.',
    told('approach', degrees(68), {}, degrees(60)),
    'Take lighter passes, or a narrower cove.',
  ],
  'cove.thin-kerf': [
    'A thin blade bends where the board pushes it sideways.',
    saw(`${HIGH}kerf,3/32`, `${HIGH}kerf,1/8`),
  ],
  'cove.step-too-high': [
    'A pass would take more than is ever safe.',
    saw(`${HIGH}step,1/4`, `${HIGH}step,1/16`),
  ],
  'cove.step-high': [
    'A pass takes more than is usual.',
    saw(`${HIGH}step,3/32`, `${HIGH}step,1/16`),
  ],
  'cove.too-many-passes': [
    'The steps are so small that nobody would make so many passes.',
    saw(`${HIGH}step,0.0001 in\nfirst pass,0.0001 in`, `${HIGH}step,1/16`),
  ],
  'rails.miss-table': [
    'A rail would lie beside the table, with nothing to clamp it to.',
    told({ name: 'Cove' }, inches(4.5), { rail: 'far' }),
    'Extend the table to that side, or take a narrower blank.',
  ],
  'rails.corner-alone': [
    'A rail would lie on a corner of the table alone and could turn.',
    told({ name: 'Cove' }, inches(4.5), { rail: 'far' }, inches(3)),
    'Extend the table to that side, or take a narrower blank.',
  ],
  'rails.off-table': [
    'A mark for a rail would lie beyond the table’s side edge.',
    told({ name: 'The far rail’s front mark' }, inches(20), {}, inches(14)),
    'Mark where the rail crosses the side edge.',
  ],
  'rails.off-usual-table': [
    'A mark for a rail would lie beyond the widest tables there are.',
    told({ name: 'The far rail’s front mark' }, inches(60), {}, inches(40)),
    'Write table width on Shop.',
  ],
  'crown.spring-out-of-range': [
    'A spring angle is measured from the wall, and lies between upright and flat.',
    told('spring', degrees(95)),
    'Write degrees from the wall: 38, 45 or 52.',
  ],
  'crown.corner-out-of-range': [
    'A corner between two walls is 0 or 180 degrees or more.',
    told('corner', degrees(200)),
    'Write what a bevel gauge reads between the walls.',
  ],
  'crown.pitch-out-of-range': [
    'A ceiling’s pitch is measured from level, and is less than upright.',
    told({ name: 'Pitch' }, degrees(95)),
    'Write degrees from level.',
  ],
  'crown.slope-out-of-range': [
    'A molding can’t rise straight up along a wall.',
    told({ name: 'Slope' }, degrees(95)),
    'Write degrees from level.',
  ],
  'crown.slope-unreadable': [
    'A slope is degrees from level, or a rise in 12.',
    crown('38,,4//12', '38,,4 in 12'),
  ],
  'crown.slope-nearly-level': [
    'A slope is so small that a rise in 12 was probably worked out as a number.',
    crown('38,,0.33', '38,,4 in 12'),
  ],
  'crown.slope-too-steep': [
    'A ceiling’s slope is steeper than any that crown goes up.',
    crown('38,,85', '38,,18.4'),
  ],
  'crown.bevel-too-near': [
    'The bevels at the back of a crown would cut into its cove, or leave too little wood to it.',
    told({ name: 'Crown cove' }, inches(0.05), { widthThatWould: inches(5.5) }, inches(0.125)),
    'Take a wider or a thicker blank, or a smaller cove.',
  ],
  'crown.bevel-one-way': [
    'A crown’s cove lies so near one edge that it can go up one way only.',
    told({ name: 'Crown cove' }, inches(0.05), { onWall: 'near' }, inches(0.125)),
    'Put the edge of the message on the wall.',
  ],
  'crown.size-without-spring': [
    'Drop and Projection say how a crown lies, and without a spring angle it lies flat.',
    crown(',3,', '38,,'),
  ],
  'crown.size-beyond-face': [
    'Drop and Projection together are more than the molding is wide.',
    crown('38,6,', '38,4,'),
  ],
  'bid.range-unsound': [
    'A low, likely or high rate is no number from 0.',
    told('setting.hourlyRate', 'NaN'),
    'Write numbers from 0.',
  ],
  'bid.range-out-of-order': [
    'What is likely doesn’t lie between low and high.',
    told('setting.hourlyRate', 60, { low: 70, high: 90 }),
    'Put the three in order.',
  ],
  'job.range-low-above': [
    'Low is above what is likely.',
    shop('hourly rate,60\nhourly rate low,70', 'hourly rate,60\nhourly rate low,50'),
  ],
  'job.range-high-below': [
    'High is below what is likely.',
    shop('hourly rate,60\nhourly rate high,50', 'hourly rate,60\nhourly rate high,70'),
  ],
  'job.range-without-rate': [
    'A low and a high stand beside a rate that isn’t there.',
    shop('hourly rate low,50', 'hourly rate,60\nhourly rate low,50'),
  ],
  'lumber.class-unknown': [
    'A thickness class is written in quarters of an inch: 4/4, 5/4, 8/4.',
    job(
      'profiles',
      'Profile,Make,Blank width,Blank thickness,Class\nBase,buy,5 1/4,3/4,7/5',
      'Profile,Make,Blank width,Blank thickness,Class\nBase,buy,5 1/4,3/4,4/4',
    ),
  ],
  'lumber.nominal-unknown': [
    'A nominal size is one of those of dry softwood, such as 2x4.',
    told({ name: 'Size' }, '2x5', { allowed: '1x2, 1x4, 2x4, 2x6' }),
    'Write one of those of the message.',
  ],
  'lumber.species-unknown': [
    'The weight of a wood that isn’t in the table of densities is left out.',
    told('species', 'Ironbark', { allowed: 'poplar, red oak, white oak' }),
    'It changes no plan; write one of those of the message to have weights.',
  ],
  'lumber.board-too-narrow': [
    'A board is narrower than the blank that would be ripped from it.',
    told('width', inches(4), {}, inches(4.5)),
    'Take a wider board.',
  ],
} as const;
