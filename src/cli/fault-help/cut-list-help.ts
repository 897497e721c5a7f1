/** Help on lists of pieces and sticks that are cut without a job. */
import { inches, job, told } from './example.ts';

export const CUT_LIST_HELP = {
  'cutting.unserved': [
    'A piece can’t be cut from any stick.',
    told({ name: 'R1-1' }, inches(250), { why: 'longer than any stick' }),
    'List longer stock, or write no under One piece.',
  ],
  'cutting.no-sticks': [
    'There is nothing to cut from.',
    told({ name: 'Base' }, null),
    'List a stick.',
  ],
  'cutting.stick-shorter-than-trim': [
    'A stick’s two end trims are as long as the stick.',
    job('stock', "For,Length,Price\nBase,16',30\nBase,2 in,1", "For,Length,Price\nBase,16',30"),
  ],
  'cutting.id-twice': [
    'Two things have one name.',
    told({ name: 'Piece' }, 'a'),
    'Give each its own.',
  ],
  'cutting.price-missing': [
    'A stick has no price.',
    told('price', null),
    'Give one; 0 where it costs nothing.',
  ],
  'cutting.some-units': [
    'Some rows have a unit, and others none.',
    told('unit', null),
    'Write it in each row.',
  ],
  'cutting.some-prices': [
    'Some sticks have a price, and others none.',
    told('price', null),
    'Write one in each row, or in none.',
  ],
  'cutting.some-materials': [
    'Some rows have a material, and others none.',
    told({ name: 'Material' }, null),
    'Write it in each row.',
  ],
  'cutting.materials-untold': [
    'Pieces are of two materials, and the sticks don’t say which they are of.',
    told({ name: 'Material' }, 'Pine', { first: 'Oak', other: 'sticks' }),
    'Give the sticks a column Material too.',
  ],
  'cutting.material-without-sticks': [
    'No stick is of a piece’s material.',
    told({ name: 'Material' }, 'Pine', { known: 'Oak' }),
    'Add sticks of it.',
  ],
  'cutting.lists-swapped': [
    'The sticks were given before the pieces.',
    told({ name: 'PIECES.csv' }, 'sticks.csv', { second: 'pieces.csv' }),
    'Type cut PIECES.csv STICKS.csv.',
  ],
  'cutting.currency-differs': [
    'Prices stand in two currencies.',
    told('price', '€', {}, '$'),
    'Give all in one.',
  ],
  'cutting.kerf-differs': [
    'Two rows have two kerfs.',
    told('kerf', inches(0.25), {}, inches(0.125)),
    'Write one kerf.',
  ],
  'cutting.kerf-twice': [
    'The kerf stands in the list and in --kerf.',
    told('kerf', inches(0.25), {}, inches(0.125)),
    'Leave one out.',
  ],
  'cutting.kerf-without-unit': [
    'A kerf without a unit stands beside lengths in feet or metres.',
    told('kerf', '3', { unit: 'm' }),
    'Write 3 mm.',
  ],
  'cutting.too-many-pieces': [
    'So many pieces are not planned at once.',
    told({ name: 'Pieces' }, 300_000, {}, 200_000),
    'Plan them in parts.',
  ],
  'cutting.unit-too-fine': [
    'The lengths have no common unit that is coarse enough.',
    told({ name: 'Lengths' }, 'no', {}, 1_000_000),
    'Round them to 1/64 in, or to 0.1 mm.',
  ],
  'cutting.splice-too-short': [
    'A splice needs more overlap than the longest stick gives.',
    told({ name: 'Base' }, inches(8), {}, inches(6)),
    'List longer stock.',
  ],
  'cutting.kerf-longer-than-piece': [
    'A piece is shorter than the cut that parts it.',
    told({ name: 'Piece a' }, inches(0.125), {}, inches(0.0625)),
    'Check its length.',
  ],
  'cutting.profile-unknown': [
    'A piece is of a profile that isn’t listed.',
    told({ name: 'Piece a' }, 'Bse'),
    'List the profile, or correct its name.',
  ],
  'cutting.match-of-two-profiles': [
    'A matched group has pieces of two profiles.',
    told({ name: 'pair' }, 'Base', { other: 'Crown' }),
    'Give each profile a group of its own.',
  ],
  'cutting.rip-empty': [
    'A board gives no strips.',
    told({ name: 'Board' }, 0),
    'List the blanks that it rips into.',
  ],
  'cutting.blank-unknown': [
    'A board rips into a blank that no profile is made from.',
    told({ name: 'Board' }, 'wide'),
    'Correct the name of the blank.',
  ],
  'cutting.blank-twice': [
    'A blank stands twice for one board.',
    told({ name: 'Board' }, 'wide'),
    'Count its strips together.',
  ],
  'cutting.length-too-fine': [
    'A length is finer than what is planned in.',
    told({ name: 'Piece a' }, '1/3000000', {}, 1_000_000),
    'Round it.',
  ],
  'cutting.price-too-fine': [
    'A price has parts of a cent.',
    told('price', 1.005),
    'Round it to two decimals.',
  ],
  'cutting.piece-too-long': [
    'A piece is longer than the longest stick.',
    told({ name: 'Piece a' }, inches(200), {}, inches(190)),
    'List longer sticks.',
  ],
  'cutting.left-over': [
    'The sticks don’t reach for all pieces.',
    told({ name: 'Piece a' }, 2, { length: inches(40), why: 'no stick is left' }, 5),
    'List more sticks.',
  ],
} as const;
