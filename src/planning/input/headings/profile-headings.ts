/** The columns of Profiles. */
import { headed } from './heading.ts';
import { COVE_SIZES, type SizeKey } from '../../../core/cove/cove-sizes.ts';
import { OFF_CENTER_TO } from '../../../core/cove/cove.ts';
import { THICKNESS_CLASS_NAMES } from '../../../core/lumber/thickness-class.ts';
import { MAKES, MITERS_ACROSS } from '../../job.ts';
import { PLACES } from '../../room-rows.ts';
import type { Heading } from './heading.ts';

/** A cove's sizes that have columns here; the blade is the shop's. */
export const PROFILE_SIZES = [
  'width',
  'depth',
  'offCenter',
  'blankWidth',
  'blankThickness',
  'nearFlat',
] as const satisfies readonly SizeKey[];

type Said = Pick<Heading, 'meaning' | 'also' | 'often'>;

/** What is said of a cove's size, wherever it has a column. */
const SIZES: Readonly<Record<SizeKey, Said>> = {
  width: { meaning: 'Of the cove at its face; a cove needs it.', also: ['width of cove'] },
  depth: {
    meaning: 'From the face to the deepest line; a cove needs it.',
    also: ['depth of cove'],
    often: ['depth'],
  },
  offCenter: {
    meaning:
      'From the middle of the cove at its face to its deepest line, without a sign; blank is 0.',
    also: ['off centre'],
    often: ['offset'],
  },
  blankWidth: {
    meaning: 'Of the board that the cove is cut on, or of a bought molding.',
    also: ['width of blank'],
    often: ['face', 'width', 'board width'],
  },
  blankThickness: {
    meaning: 'Of that board, or of a bought molding.',
    also: ['thickness of blank'],
    often: ['thickness', 'thick', 'board thickness'],
  },
  nearFlat: { meaning: "Of the blank's face, by the near rail; blank has the cove midway." },
  bladeDiameter: { meaning: 'Measured; blank is 10 in (254 mm).', also: ['blade'] },
  kerf: { meaning: "The blade's cut; blank is 1/8 in (3.175 mm).", also: ['blade kerf'] },
};

export function sizeHeading<Key extends SizeKey>(
  key: Key,
): Heading & { readonly key: (typeof COVE_SIZES)[Key]['key']; readonly holds: 'length' } {
  const { key: argument, label } = COVE_SIZES[key];
  return { key: argument, heading: label, holds: 'length', ...SIZES[key] };
}

/** Which line the off-center leads to; blank stands for the deepest line. */
export const OFF_CENTER_TO_COLUMN = {
  ...headed('offCenterTo'),
  holds: 'word',
  allowed: OFF_CENTER_TO,
  meaning: 'The line that Off-center leads to; blank is the deepest line.',
  also: ['off centre to'],
} as const satisfies Heading;

export const PROFILE_HEADINGS = [
  {
    ...headed('profile'),
    required: true,
    holds: 'name',
    meaning: 'Its name, by which Runs, Openings and Stock call it.',
    also: ['molding', 'moulding', 'trim', 'item', 'profile name'],
    often: ['name', 'type', 'style', 'description', 'product', 'part'],
  },
  {
    ...headed('make'),
    holds: 'word',
    allowed: MAKES,
    meaning: 'Cut here as a cove, or as a crown cove at a spring angle, or bought; blank is buy.',
  },
  ...PROFILE_SIZES.map(sizeHeading),
  {
    ...headed('spring'),
    holds: 'degrees',
    meaning: "Angle of a crown's back from the wall, in degrees.",
    also: ['spring angle'],
  },
  {
    ...headed('drop'),
    holds: 'length',
    meaning: 'How far a crown reaches down the wall; blank is as its width and spring give.',
  },
  {
    ...headed('projection'),
    holds: 'length',
    meaning:
      'How far a crown reaches out along the ceiling; blank is as its width and spring give.',
  },
  {
    ...headed('miterAcross'),
    holds: 'word',
    allowed: MITERS_ACROSS,
    meaning: 'What its miters go through; blank goes by how a run is measured.',
    also: ['mitre across'],
  },
  {
    ...headed('where'),
    holds: 'word',
    allowed: PLACES,
    meaning:
      'Where on the wall it is, for what openings cut away; blank is opening where Openings names it, ceiling for a cove or a Spring, else floor.',
  },
  {
    ...headed('height'),
    holds: 'length',
    meaning: "From the floor to a rail's lower edge, for Where height.",
  },
  {
    ...headed('species'),
    holds: 'name',
    meaning: 'The wood: boards on Stock may be listed for it.',
    also: ['wood', 'wood species', 'timber'],
    often: ['material'],
  },
  {
    ...headed('thicknessClass'),
    holds: 'word',
    allowed: THICKNESS_CLASS_NAMES,
    meaning: 'Thickness class of the lumber; blank is any that is thick enough.',
    also: ['thickness class'],
  },
  {
    ...headed('offcutAllowance'),
    holds: 'percent',
    meaning: "On top of this profile's net, of what allowance of on Shop says; blank is Shop's.",
    also: ['waste', 'waste allowance'],
  },
  OFF_CENTER_TO_COLUMN,
  {
    ...headed('slope'),
    holds: 'slope',
    meaning:
      'Of a ceiling that the molding goes up along its wall: degrees from level, or a rise such as 4/12 or 4 in 12; blank is level. Its cuts and raked profiles are then told.',
    also: ['ceiling slope', 'slope of ceiling', 'ceiling pitch'],
    often: ['pitch', 'rake'],
  },
  {
    ...headed('note'),
    holds: 'note',
    meaning: 'Printed with its set-up.',
    also: ['notes', 'remark', 'remarks', 'comment', 'comments'],
  },
] as const satisfies readonly Heading[];
