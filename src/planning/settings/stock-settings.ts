/** What is lost, joined, kept and allowed of lumber. */
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
  offcutAllowance: percent('setting.offcutAllowance', '10', 'On top of net board feet', 300),
} as const satisfies Readonly<Record<string, SettingDefinition>>;
