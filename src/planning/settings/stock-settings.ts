/** What is lost, joined, kept and allowed of lumber. Usual values in millimetres are common practice [C]. */
import { ALLOWANCE_OF } from '../../core/lumber/offcut-allowance.ts';
import { length, named, percent, type SettingDefinition } from './setting.ts';

export const STOCK_SETTINGS = {
  crosscutKerf: length('setting.crosscutKerf', ['1/8', '3'], 'Of the saw that cuts to length', {
    positive: false,
  }),
  endTrim: length('setting.endTrim', ['1', '25'], 'Off each end of every stick, its cut included', {
    positive: false,
  }),
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
  leastPart: length('setting.leastPart', ['24', '600'], 'No part of a spliced piece is shorter', {
    positive: false,
  }),
  // Common practice [C]: walls are framed so, unless a plan says otherwise.
  studSpacing: {
    ...length(
      'setting.studSpacing',
      ['16', '400'],
      'Middle to middle, from the left corner of a wall of Walls: joints lie on studs; 0 where not known',
      { positive: false },
    ),
    least: 6,
  },
  keepOffcutsOver: length('setting.keepOffcutsOver', ['24', '600'], 'Shorter offcuts are waste'),
  offcutCredit: percent(
    'setting.offcutCredit',
    '0',
    'Share of the cheapest price that a kept offcut earns',
  ),
  setUpSpare: length(
    'setting.setUpSpare',
    ['36', '900'],
    'Trial cuts for each cove, from the same lumber',
    { positive: false },
  ),
  endAllowance: length(
    'setting.endAllowance',
    ['0', '0'],
    'Added at each end of a run, to trim at the wall',
    { positive: false },
  ),
  // Common practice [C].
  springIn: length(
    'setting.springIn',
    ['1/16', '1.5'],
    'Added to trim at the floor over 4 ft that is square or coped between two inside corners of Walls; 0 for none',
    {
      positive: false,
      metricNote:
        'Added to trim at the floor over 1200 mm that is square or coped between two inside corners of Walls; 0 for none',
    },
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
