/** Help on what is cut already, kept plans, clients' copies, and lists that are cut without a job. */
import { inches, told } from './example.ts';

const COPY = { name: 'client.xlsx' };

export const CUT_HELP = {
  'job.cut-profile-gone': [
    'A stick is ticked as cut, and its profile is in the job no more.',
    told({ name: 'Base 1' }, 'Base'),
    'Put the profile back, or take the tick off.',
  ],
  'job.cut-for-nobody': [
    'Sticks are ticked as cut of a molding that no run asks for any more.',
    told({ name: 'Base' }, 2, { cost: '$60.00' }),
    'Keep a run of it; or take the ticks off, and charge what they cost by hand.',
  ],
  'job.cut-profile-changed': [
    'A stick is ticked as cut, and its profile has other sizes now.',
    told({ name: 'Base 1' }, 'Base'),
    'Give the new molding a name of its own.',
  ],
  'job.cut-stock-gone': [
    'A stick is ticked as cut, and its row of Stock is gone.',
    told({ name: 'Base 1' }, 'stick, 16 ft', { of: 'Base' }),
    'Put the row back, with no under Buy.',
  ],
  'job.cut-stock-unfit': [
    'A stick is ticked as cut from a row that doesn’t serve its profile any more.',
    told({ name: 'Cove 1' }, 'board, 10 in wide', { profile: 'Cove' }),
    'Mend the row of Stock.',
  ],
  'job.cut-piece-gone': [
    'A piece is cut, and nothing asks for it any more.',
    told({ name: 'R1-1' }, inches(60), { stick: 'Base 1', why: 'no run asks for it any more' }),
    'Its stick stays paid for; keep it for another job.',
  ],
  'job.cut-piece-changed': [
    'A piece is cut, and has another length now.',
    told({ name: 'R1-1' }, inches(60), { stick: 'Base 1', what: 'too short' }, inches(64)),
    'Another is planned; the old one is left over.',
  ],
  'job.cut-could-recut': [
    'A piece that is left over is long enough to be cut to another.',
    told({ name: 'R1-1' }, inches(60), { stick: 'Base 1', recut: 'R2-3' }, inches(48)),
    'Recut it, and tick the planned one as cut.',
  ],
  'job.cut-serves-other': [
    'A piece that is cut serves a run that is just like its own.',
    told({ name: 'Base 1' }, 'R1-1', { serves: 'R2-1' }),
    'Mark it anew.',
  ],
  'job.cut-match-broken': [
    'A part of a matched group is cut, and the rest comes from another stick.',
    told({ name: 'R1-2' }, 'pair', { others: 1 }),
    'Match the grain by eye.',
  ],
  'job.cut-have-changed': [
    'Have was changed since sticks of it were cut, which count as taken from it.',
    told('have', 3, { before: 5, cut: 2 }),
    'Leave Have as it was before the first cut, and add only what came since.',
  ],
  'plan.kept-other-version': [
    'The kept plan is of another version of the program.',
    told({ name: 'job.xlsx' }, '0.5.0', {}, '0.6.0'),
    'Plan the job anew.',
  ],
  'plan.ticks-lost': [
    'The sheets are of another plan than the one that is kept beside them.',
    told({ name: 'Cutting' }, null),
    'Write the sheets anew, and tick again.',
  ],
  'plan.other-currency': [
    'Two plans count in two currencies.',
    told({ name: 'new.xlsx' }, '€', { before: '$' }),
    'Give both the same under currency on Shop.',
  ],
  'plan.kept-used': [
    'The plan comes out of the file, at its price.',
    told({ name: 'shop.xlsx' }, null),
    'Give --seconds to plan anew.',
  ],
  'plan.kept-damaged': [
    'The kept plan can’t be read.',
    told({ name: 'plan' }, null),
    'Plan the job anew.',
  ],
  'compare.no-plan': [
    'A file has nothing in it that could be compared.',
    told({ name: 'list.xlsx' }, null),
    'Give a workbook that was written or saved after planning, or a client’s copy.',
  ],
  'copy.other-plan': [
    'A client’s copy is of another plan.',
    told(COPY, 'a1b2c3d4', {}, '99887766'),
    'Give the workbook with the copy’s number.',
  ],
  'copy.no-number': [
    'A client’s copy has lost its number.',
    told(COPY, null),
    'Type the number back behind “Number”.',
  ],
  'copy.two': [
    'Two client’s copies were given.',
    told({ name: 'one.xlsx' }, 'two.xlsx'),
    'Give the shop’s workbook, and the copy.',
  ],
  'copy.headings-gone': [
    'The headings of a copy’s lines were changed.',
    told(COPY, 'Client'),
    'Write them as they were.',
  ],
  'copy.planned-anew': [
    'The workbook carries no plan of the copy, so it was planned anew.',
    told({ name: 'trim.xlsx' }, null),
    'Give the workbook that the copy was made from.',
  ],
  'copy.quantity-blank': [
    'A quantity was emptied.',
    told({ name: 'Quantity of Base' }, null, { quoted: 4 }),
    'Ask the client; 0 leaves a line out.',
  ],
  'copy.quantity-text': [
    'A quantity is a text.',
    told({ name: 'Quantity of Base' }, 'four', { quoted: 4 }),
    'Type 4.',
  ],
  'copy.quantity-formula': [
    'A quantity is a formula.',
    told({ name: 'Quantity of Base' }, '=2+2', { quoted: 4 }),
    'Type 4.',
  ],
  'copy.cell-changed': [
    'The client typed over what isn’t a quantity.',
    told({ name: 'Terms' }, '60 days', {}, '30 days'),
    'Ask the client what is meant.',
  ],
  'copy.figure-otherwise': [
    'A figure doesn’t follow from the quantities.',
    told({ name: 'Price' }, 900, {}, 1000),
    'Go by the figure here.',
  ],
  'copy.not-worked-out': [
    'The copy was saved by a program that doesn’t calculate.',
    told({ name: 'copy' }, null),
    'Go by the total here.',
  ],
  'copy.row-gone': [
    'A row of the copy was taken out.',
    told(COPY, 'Not included: delivery'),
    'Ask the client what is meant.',
  ],
  'copy.line-gone': [
    'A line of the copy was taken out.',
    told({ name: 'Base, Hall' }, 4),
    'Ask the client; 0 leaves a line out.',
  ],
  'copy.line-added': [
    'The client put in a line.',
    told(COPY, 'Crown, Den, 4'),
    'Add it to the job, and plan.',
  ],
  'copy.row-added': ['The client put in a row.', told(COPY, 'please hurry'), 'Read it.'],
  'copy.note': ['The client wrote a note.', told({ name: 'Base' }, 'white, please'), 'Read it.'],
} as const;
