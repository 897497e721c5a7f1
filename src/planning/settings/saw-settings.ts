/**
 * The table saw and how coves are cut on it. Usual values in millimetres are common practice [C], whole or half
 * ones beside those in inches: the blade of 250 mm with a full kerf of 3.2.
 */
import { length, named, type SettingDefinition } from './setting.ts';

export const SAW_SETTINGS = {
  bladeDiameter: length(
    'setting.bladeDiameter',
    ['10', '250'],
    'Measure it: a resharpened blade is smaller',
  ),
  kerf: length('setting.kerf', ['1/8', '3.2'], "The blade's cut in a scrap", { positive: false }),
  greatestHeightUpright: length(
    'setting.greatestHeightUpright',
    undefined,
    'Highest tooth above the table',
  ),
  greatestHeightAt45: length('setting.greatestHeightAt45', undefined, 'The same, tilted to 45°'),
  heightsMeasuredWith: length(
    'setting.heightsMeasuredWith',
    undefined,
    'Diameter of the blade that both heights hold for; the blade above where empty',
  ),
  tiltStop: {
    ...named('setting.tiltStop'),
    kind: 'angle',
    unit: 'degrees',
    usual: '45',
    least: 1,
    most: 60,
    note: 'Most tilt from upright',
  },
  steepestApproach: {
    ...named('setting.steepestApproach'),
    kind: 'angle',
    unit: 'degrees',
    usual: '75',
    least: 30,
    most: 89,
    note: "From the blade line: nearer to 90° the board meets the blade's side",
  },
  tiltSide: {
    ...named('setting.tiltSide'),
    kind: 'word',
    unit: '',
    usual: 'left',
    allowed: ['left', 'right'],
    note: "Side to which the blade's top leans",
  },
  tableFront: length('setting.tableFront', undefined, 'From above the arbor to the front edge'),
  tableBack: length('setting.tableBack', undefined, 'From above the arbor to the back edge'),
  tableWidth: length('setting.tableWidth', undefined, 'Side to side, the blade midway'),
  slotToBlade: length(
    'setting.slotToBlade',
    undefined,
    'From the left miter slot to the blade line',
  ),
  angleScaleStep: {
    ...named('setting.angleScaleStep'),
    kind: 'angle',
    unit: 'degrees',
    // A fraction, since it reads alike with either decimal sign.
    usual: '1/2',
    metric: { usual: '0.5' },
    least: 0.01,
    most: 5,
    note: 'How fine the approach can be set',
  },
  tiltScaleStep: {
    ...named('setting.tiltScaleStep'),
    kind: 'angle',
    unit: 'degrees',
    usual: '1/2',
    metric: { usual: '0.5' },
    least: 0.01,
    most: 5,
    note: 'How fine the tilt can be set',
  },
  firstPass: length('setting.firstPass', ['1/16', '1.5'], 'Height of the first pass; 1/8 at most', {
    metricNote: 'Height of the first pass; 3 at most',
  }),
  step: length('setting.step', ['1/16', '1.5'], 'Most that each later pass takes; 1/8 at most', {
    metricNote: 'Most that each later pass takes; 3 at most',
  }),
  lastPass: length('setting.lastPass', ['1/32', '0.5'], 'The light pass at the end', {
    positive: false,
  }),
  leastWeb: length('setting.leastWeb', ['1/4', '6'], 'Stock left above the cove'),
  leastFlat: length(
    'setting.leastFlat',
    ['1/8', '3'],
    'Flat beside the cove that rides on the table',
  ),
  leastBlankLength: length(
    'setting.leastBlankLength',
    ['36', '900'],
    'Coves are never cut on shorter blanks',
  ),
} as const satisfies Readonly<Record<string, SettingDefinition>>;
