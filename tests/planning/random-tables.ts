/** Jobs by chance. */
import fc from 'fast-check';
import type { Tables } from './make-job.ts';

const profile = fc.record({
  blank: fc.constantFrom('3', '3 1/2', '4 1/2', '5'),
  thick: fc.constantFrom('1', '1 1/4'),
  class: fc.constantFrom('', '5/4'),
});
const row = fc.record({
  for: fc.constantFrom('Poplar', 'P0', 'P1'),
  kind: fc.constantFrom('board', 'board', 'stick'),
  class: fc.constantFrom('', '4/4', '5/4', '6/4'),
  width: fc.constantFrom('5 1/4', '7 3/4', '9 1/2', '14'),
  feet: fc.constantFrom(6, 8, 10, 12),
  price: fc.integer({ min: 0, max: 999 }),
  per: fc.constantFrom('piece', 'board foot'),
  have: fc.nat(2),
  buy: fc.constantFrom('yes', 'yes', '3', 'no'),
  grade: fc.constantFrom('', 'FAS', '1C'),
  yield: fc.constantFrom('', '80', '66 2/3', '100'),
  defects: fc.constantFrom('', '30-34', '40-40 1/16; 62 to 70', '0-3'),
});
const run = fc.record({
  profile: fc.nat(3),
  length: fc.integer({ min: 20, max: 170 }),
  quantity: fc.integer({ min: 1, max: 4 }),
});
/** Jobs of two to four coves from boards and sticks that some of them have in common. */
export const jobsThatShareStock = fc
  .record({
    profiles: fc.array(profile, { minLength: 2, maxLength: 4 }),
    rows: fc.array(row, { minLength: 1, maxLength: 5 }),
    runs: fc.array(run, { minLength: 1, maxLength: 8 }),
    credit: fc.constantFrom(0, 40, 100),
    spare: fc.constantFrom('0', '36'),
    unsure: fc.constantFrom('', '', '\nwaste high %,10\nwhole job low %,-5\nhourly rate high,42'),
    basis: fc.constantFrom('plan', 'allowance'),
  })
  .map(({ profiles, rows, runs, credit, spare, unsure, basis }): Tables => ({
    profiles: [
      'Profile,Make,Blank width,Blank thickness,Class,Species,Cove width,Cove depth',
      ...profiles.map(
        (one, at) => `P${at},cove,${one.blank},${one.thick},${one.class},Poplar,2,1/4`,
      ),
    ].join('\n'),
    stock: [
      'For,Kind,Class,Width,Length,Price,Per,Have,Buy,Grade,Yield %,Defects',
      // One that serves all of them, so that most jobs can be made.
      "Poplar,board,6/4,14,15',90,piece,1,yes,,,",
      ...rows.map((one) => {
        // Only boards that are bought have a yield, only one that is here has defects.
        const share = one.kind === 'board' && one.have === 0 ? one.yield : '';
        const defects = one.have === 1 && one.buy === 'no' ? one.defects : '';
        return `${one.for},${one.kind},${one.class},${one.width},${one.feet}',${one.price / 100},${one.per},${one.have},${one.buy},${one.grade},${share},${defects}`;
      }),
    ].join('\n'),
    runs: [
      'Room,Run,Profile,Length,Quantity',
      ...runs.map((one, at) => {
        const name = `P${one.profile % profiles.length}`;
        return `Hall,r${at},${name},${one.length},${one.quantity}`;
      }),
    ].join('\n'),
    shop: `Setting,Value\noffcut credit %,${credit}\nset-up spare,${spare}\nhourly rate,30\nprice basis,${basis}${unsure}`,
  }));
