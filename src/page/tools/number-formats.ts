/** How the numbers of chosen cells are shown: formats by plain names. */

export interface NumberFormat {
  readonly name: string;
  /** As spreadsheets write it; empty for none. */
  readonly pattern: string;
}

export const NUMBER_FORMATS: readonly NumberFormat[] = [
  { name: 'Plain', pattern: '' },
  { name: 'Whole', pattern: '#,##0' },
  { name: '0.0', pattern: '0.0' },
  { name: '0.00', pattern: '0.00' },
  { name: '0.000', pattern: '0.000' },
  { name: 'Sixteenths', pattern: '# ??/16' },
  { name: 'Degrees', pattern: '0.00"°"' },
  { name: 'Money', pattern: '#,##0.00' },
  { name: 'Percent', pattern: '0.0%' },
  { name: 'Text', pattern: '@' },
];

/** Of a cell whose format is none of these. */
export const ITS_OWN = 'Its own';
