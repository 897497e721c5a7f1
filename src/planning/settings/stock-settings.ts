/** What is lost, joined, kept and allowed of lumber. */
import { ALLOWANCE_OF } from '../../core/lumber/offcut-allowance.ts';
import { length, named, percent, type SettingDefinition } from './setting.ts';

export const STOCK_SETTINGS = {
  crosscutKerf: length('setting.crosscutKerf', '1/8', 'Of the saw that cuts to length', false),
  endTrim: length('setting.endTrim', '1', 'Off each end of every stick, its cut included', false),
  spliceAngle: {
    ...named('setting.spliceAngle'),
    kind: 'angle',
    unit: 'degrees',
    usual: '45',
    least: 10,
    most: 60,
    note: 'Of a scarf, from square',
  },
  // Common practice [C]: a shorter part looks like a patch.
  leastPart: length('setting.leastPart', '24', 'No part of a spliced piece is shorter', false),
  // Common practice [C]: walls are framed so, unless a plan says otherwise.
  studSpacing: {
    ...length(
      'setting.studSpacing',
      '16',
      'Middle to middle, from the left corner of a wall of Walls: joints lie on studs; 0 where not known',
      false,
    ),
    least: 6,
  },
  keepOffcutsOver: length('setting.keepOffcutsOver', '24', 'Shorter offcuts are waste'),
  offcutCredit: percent(
    'setting.offcutCredit',
    '0',
    'Share of the cheapest price that a kept offcut earns',
  ),
  setUpSpare: length(
    'setting.setUpSpare',
    '36',
    'Trial cuts for each cove, from the same lumber',
    false,
  ),
  endAllowance: length(
    'setting.endAllowance',
    '0',
    'Added at each end of a run, to trim at the wall',
    false,
  ),
  // Common practice [C].
  springIn: length(
    'setting.springIn',
    '1/16',
    'Added to trim at the floor over 4 ft that is square or coped between two inside corners of Walls; 0 for none',
    false,
  ),
  offcutAllowance: percent('setting.offcutAllowance', '10', 'On top of net', 300),
  allowanceOf: {
    ...named('setting.allowanceOf'),
    kind: 'word',
    unit: '',
    usual: 'net',
    allowed: ALLOWANCE_OF,
    note: 'What its percent is of: net, or all that is bought',
  },
} as const satisfies Readonly<Record<string, SettingDefinition>>;
