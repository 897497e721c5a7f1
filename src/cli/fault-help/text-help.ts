/** Help on what cells and options say: lengths, numbers, words, angles, names. */
import { degrees, inches, job, shop, told } from './example.ts';

const RUN = 'Room,Profile,Length\n';
const STICK = 'For,Length,Price\n';
const CORNER = 'Room,Profile,Length,Left end,Left corner\n';

export const TEXT_HELP = {
  'length.missing': [
    'A cell that needs a length is empty.',
    job('runs', `${RUN}Hall,Base,`, `${RUN}Hall,Base,100`),
  ],
  'length.unreadable': [
    'A cell holds something that no rule reads as a length.',
    job('runs', `${RUN}Hall,Base,ten`, `${RUN}Hall,Base,10'`),
  ],
  'length.zero-denominator': [
    'A fraction has 0 below its bar.',
    job('runs', `${RUN}Hall,Base,3/0`, `${RUN}Hall,Base,30`),
  ],
  'length.too-long': [
    'A length is longer than anything that is built.',
    told('length', '9999999 ft', {}, inches(1_200_000)),
    'Write the unit that is meant: 9999 mm, or 32\' 10".',
  ],
  'length.date': [
    'A spreadsheet has made a date of a fraction before the file was saved.',
    job('runs', `${RUN}Hall,Base,2026-03-04`, `${RUN}Hall,Base,0 3/4`),
  ],
  'length.date-number': [
    'A bare number is what a spreadsheet stores for a date that it made of a fraction.',
    job('runs', `${RUN}Hall,Base,45708`, `${RUN}Hall,Base,100`),
  ],
  'length.asked-about': [
    'A bare number is so large that another unit is probably meant.',
    job('runs', `${RUN}Hall,Base,3000`, `${RUN}Hall,Base,3000 mm`),
  ],
  'length.asked-short': [
    'A bare number is so small that feet or metres are probably meant.',
    job(
      'openings',
      'Room,Wall,Kind,Width,Height,Casing\nHall,North,door,3,80,Casing',
      'Room,Wall,Kind,Width,Height,Casing\nHall,North,door,36,80,Casing',
    ),
  ],
  'length.all-short': [
    'All lengths of a list are so short that they were probably measured in feet.',
    told({ name: 'Runs' }, inches(16)),
    'Head the column Length (ft).',
  ],
  'length.beyond-shop': [
    'A setting of the shop is larger than any shop has it.',
    told('setting.kerf', inches(3), {}, inches(1)),
    'Write the unit: 3 mm.',
  ],
  'length.not-positive': [
    'A length that must be more than 0 is 0 or less.',
    shop('blade diameter,0', 'blade diameter,10'),
  ],
  'length.negative': [
    'A length has a minus sign, and can only be 0 or more.',
    shop('kerf,-1/8', 'kerf,1/8'),
  ],
  'length.inches-over-foot': [
    'Feet stand with 12 inches or more behind them, so one of the two is a slip.',
    job('runs', `${RUN}Hall,Base,7' 14 in`, `${RUN}Hall,Base,8' 2 in`),
  ],
  'number.too-many-characters': [
    'A cell holds a long text where a number is wanted.',
    told('price', 300, {}, 100),
    'Write the number alone, and the text under Note.',
  ],
  'number.two-readings': [
    'A comma or point may part thousands or begin the decimals.',
    job('stock', `${STICK}Base,96,"1,234"`, `${STICK}Base,96,1234`),
  ],
  'number.other-sign': [
    'A number has the decimal sign that the job doesn’t use.',
    job('stock', `${STICK}Base,96,"2,50"`, `${STICK}Base,96,2.50`),
  ],
  'number.percent': [
    'A percent stands where a plain number is wanted.',
    job('stock', `${STICK}Base,96,5%`, `${STICK}Base,96,5`),
  ],
  'number.other-unit': [
    'A number has a unit that can’t be meant there.',
    job('stock', `${STICK}Base,96,5 kg`, `${STICK}Base,96,5`),
  ],
  'number.other-currency': [
    'Money stands in another currency than the shop’s.',
    job('stock', `${STICK}Base,96,€5`, `${STICK}Base,96,$5`),
  ],
  'number.below-one-percent': [
    'A percent is so small that a share was probably typed.',
    shop('overhead %,0.2', 'overhead %,20'),
  ],
  'number.unreadable': [
    'A cell holds something that is no number.',
    job('stock', `${STICK}Base,96,five`, `${STICK}Base,96,5`),
  ],
  'number.not-positive': [
    'A number that must be more than 0 is 0 or less.',
    shop('feed,0', 'feed,6'),
  ],
  'number.negative': [
    'A number has a minus sign, and can only be 0 or more.',
    told('price', -1),
    'Write it without the sign.',
  ],
  'number.too-large': [
    'A number is larger than what can be meant there.',
    shop('margin %,100', 'margin %,30'),
  ],
  'number.too-small': [
    'A number is smaller than what can be meant there.',
    job('stock', `${STICK}Base,96,-1`, `${STICK}Base,96,1`),
  ],
  'number.not-whole': [
    'A count has a fraction.',
    shop('price holds days,30.5', 'price holds days,30'),
  ],
  'word.unknown': [
    'A cell takes one of a few words, and holds another.',
    shop('tilt side,up', 'tilt side,left'),
  ],
  'angle.out-of-range': [
    'An angle lies outside of what the saw or the geometry can have.',
    told('approach', degrees(95), { from: 'the blade line', least: degrees(0) }, degrees(90)),
    'Check from what it is measured: from the front edge it is 90 less the one from the blade line.',
  ],
  'angle.corner-tiny': [
    'A corner between two walls is so small that it was probably worked out in radians.',
    job(
      'runs',
      `${CORNER}Hall,Base,100,inside miter,1.5708`,
      `${CORNER}Hall,Base,100,inside miter,90`,
    ),
  ],
  'angle.spring-tiny': [
    'A spring angle is so small that it was probably worked out in radians.',
    job(
      'profiles',
      'Profile,Make,Blank width,Blank thickness,Spring\nBase,buy,5 1/4,3/4,0.66',
      'Profile,Make,Blank width,Blank thickness,Spring\nBase,buy,5 1/4,3/4,38',
    ),
  ],
  'angle.corner-sharp': [
    'A corner is so sharp that the saw’s miter was probably typed in its place.',
    job(
      'runs',
      `${CORNER}Hall,Base,100,inside miter,22.5`,
      `${CORNER}Hall,Base,100,inside miter,135`,
    ),
  ],
  'text.missing': [
    'A cell that needs a name or a word is empty.',
    job('runs', `${RUN},Base,100`, `${RUN}Hall,Base,100`),
  ],
  'text.ditto': [
    'A cell says that it is as above, which is not read so.',
    job('runs', `${RUN}Hall,Base,100\nditto,Base,90`, `${RUN}Hall,Base,100\nHall,Base,90`),
  ],
  'text.too-long': [
    'A name is longer than any sheet can show.',
    told('room', 400, {}, 255),
    'Give it a short name, and write the rest under Note.',
  ],
} as const;
