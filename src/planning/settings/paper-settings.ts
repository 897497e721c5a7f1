/** How a person writes and prints. */
import { LABEL_SHEETS } from '../label-sheets.ts';
import { named, type SettingDefinition } from './setting.ts';

export const PAPER_SETTINGS = {
  unit: {
    ...named('setting.unit'),
    kind: 'word',
    unit: '',
    usual: 'in',
    allowed: ['in', 'mm'],
    note: 'Of a length typed without one',
    metric: { usual: 'mm' },
  },
  lengthPrecision: {
    ...named('setting.lengthPrecision'),
    kind: 'length',
    unit: 'in',
    positive: true,
    note: 'Lengths are rounded up to it; 1/16 in or 1 mm where empty',
    metric: { unit: 'mm', note: 'Lengths are rounded up to it; 1 mm where empty' },
  },
  paper: {
    ...named('setting.paper'),
    kind: 'word',
    unit: '',
    usual: 'letter',
    allowed: ['letter', 'a4'],
    note: 'For printing',
    metric: { usual: 'a4' },
  },
  labels: {
    ...named('setting.labels'),
    kind: 'word',
    unit: '',
    usual: 'none',
    allowed: LABEL_SHEETS,
    note: 'Sheet of labels: plain paper, or across x down',
  },
  pageAddress: {
    ...named('setting.pageAddress'),
    kind: 'address',
    unit: '',
    note: 'Where the page is hosted: Set-ups then has a code to scan; none where empty',
  },
  decimalSign: {
    ...named('setting.decimalSign'),
    kind: 'word',
    unit: '',
    usual: '.',
    allowed: ['.', ','],
    note: 'In typed numbers',
  },
  currency: {
    ...named('setting.currency'),
    kind: 'text',
    unit: '',
    usual: '$',
    note: 'Sign or letters, shown with money',
  },
} as const satisfies Readonly<Record<string, SettingDefinition>>;
