/** What work takes. */
import { number, type SettingDefinition } from './setting.ts';

const FEET_PER_METRE = 10_000 / 3048;

export const LABOR_SETTINGS = {
  // In metres nearly as fast, so that hours are the same by either.
  feed: {
    ...number('setting.feed', '6', 'ft/min', 'How fast a blank passes over the blade', true),
    units: { 'm/min': FEET_PER_METRE, 'metres a minute': FEET_PER_METRE },
    metric: { usual: '1.8', unit: 'm/min' },
  },
  handlingPerPass: number(
    'setting.handlingPerPass',
    '30',
    's',
    'Carrying a blank round, each pass',
  ),
  setUpMinutes: number(
    'setting.setUpMinutes',
    '40',
    'min',
    'Rails, tilt and a trial cut, each cove',
  ),
  smoothingMinutes: {
    ...number('setting.smoothingMinutes', '7', 'min/sq ft', 'Scraping and sanding'),
    formerly: 'smoothing minutes per square foot',
    units: { 'min/m²': FEET_PER_METRE ** -2, 'min/m2': FEET_PER_METRE ** -2 },
    metric: { usual: '75', unit: 'min/m²' },
  },
  crosscutSeconds: number('setting.crosscutSeconds', '45', 's', 'Each cut to length'),
  // Common practice [C]: two scarfs fitted, glued and sanded flush.
  jointMinutes: number(
    'setting.jointMinutes',
    '10',
    'min',
    'Fitting and gluing each joint of a splice',
  ),
} as const satisfies Readonly<Record<string, SettingDefinition>>;
