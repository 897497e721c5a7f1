/** What work takes. */
import { number, type SettingDefinition } from './setting.ts';

export const LABOR_SETTINGS = {
  feed: number('setting.feed', '6', 'ft/min', 'How fast a blank passes over the blade', true),
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
  smoothingMinutes: number('setting.smoothingMinutes', '7', 'min', 'Scraping and sanding'),
  crosscutSeconds: number('setting.crosscutSeconds', '45', 's', 'Each cut to length'),
  // Common practice [C]: two scarfs fitted, glued and sanded flush.
  jointMinutes: number(
    'setting.jointMinutes',
    '10',
    'min',
    'Fitting and gluing each joint of a splice',
  ),
} as const satisfies Readonly<Record<string, SettingDefinition>>;
