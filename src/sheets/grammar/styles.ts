/**
 * The few cell styles, named and kept in one place; hosts turn them into their own. In all of them
 * text stands at the top of its cell, so that a row with one wrapped cell reads along one line.
 */
export interface CellStyle {
  readonly bold?: boolean;
  readonly italic?: boolean;
  /** Points; 10 where absent. */
  readonly size?: number;
  /** Text and fill as RRGGBB; chosen to stay apart in grey print and for colour-blind readers. */
  readonly color?: string;
  readonly fill?: string;
  readonly align?: 'left' | 'center' | 'right';
  readonly wrap?: boolean;
  /** A hairline all round, a thin line above, or a thin line all round. */
  readonly border?: 'hair' | 'top' | 'box';
  /** May be typed over where its sheet is protected. */
  readonly open?: true;
  /** An Excel number format; @ is text. */
  readonly format?: string;
}

/** Every machine has it or a font of the same widths (Liberation Sans). */
export const STANDARD_FONT = { name: 'Arial', size: 10 } as const;

/** Of borders, as RRGGBB. */
export const LINE_COLOR = '7A878D';

const INK = '1F2A30';
const HEAD_FILL = '2F4B57';
const BAND = 'E6ECEE';
const INPUT = 'FBF7E9';
const WARN = 'F3D9B1';

export const STYLES = {
  plain: {},
  title: { bold: true, size: 16, color: INK },
  wrappedTitle: { bold: true, size: 16, color: INK, wrap: true },
  longTitle: { bold: true, size: 11, color: INK, wrap: true },
  subtitle: { italic: true, color: '4A5960' },
  heading: {
    bold: true,
    color: 'FFFFFF',
    fill: HEAD_FILL,
    wrap: true,
    align: 'left',
    border: 'hair',
  },
  headingRight: {
    bold: true,
    color: 'FFFFFF',
    fill: HEAD_FILL,
    wrap: true,
    align: 'right',
    border: 'hair',
  },
  headingCenter: {
    bold: true,
    color: 'FFFFFF',
    fill: HEAD_FILL,
    wrap: true,
    align: 'center',
    border: 'hair',
  },
  section: { bold: true, size: 12, color: INK, fill: BAND },
  label: { bold: true, color: INK },
  // A label that may be long: with a currency in words, say.
  fact: { bold: true, color: INK, wrap: true },
  text: { format: '@' },
  wrapped: { wrap: true },
  center: { align: 'center' },
  note: { italic: true, wrap: true, color: '4A5960' },
  caution: { wrap: true, fill: WARN, color: INK },
  input: { fill: INPUT, border: 'hair', open: true },
  inputText: { fill: INPUT, border: 'hair', open: true, format: '@' },
  inputWhole: { fill: INPUT, border: 'hair', open: true, format: '#,##0_)', align: 'right' },
  inputDate: { fill: INPUT, border: 'hair', open: true, format: 'd mmm yyyy', align: 'left' },
  date: { bold: true, format: 'd mmm yyyy', align: 'left' },
  length: { align: 'right' },
  number: { align: 'right', format: '0.0###_)' },
  whole: { format: '#,##0_)', align: 'right' },
  decimal: { format: '#,##0.00_)', align: 'right' },
  // Cubic metres, to the litre.
  volume: { format: '#,##0.000_)', align: 'right' },
  inches: { format: '0.0000', align: 'right' },
  degreesFine: { format: '0.0000"°"', align: 'right' },
  // Without a format of its own a number is shown in as many digits as there is room for.
  quiet: { size: 8, color: '4A5960', align: 'right' },
  // What was planned, beside what may be typed over: shown in the same digits.
  plannedSize: { color: '4A5960' },
  quietLabel: { size: 8, color: '4A5960' },
  degrees: { format: '0.0"°"', align: 'right' },
  percent: { format: '0.0" %"', align: 'right' },
  money: { format: '#,##0.00_)', align: 'right' },
  // Inches with a fraction: two figures below the line hold every 64th.
  fraction: { format: '# ??/??_)', align: 'right' },
  rowFraction: { border: 'hair', format: '# ??/??_)', align: 'right' },
  stickFraction: { bold: true, fill: BAND, format: '# ??/??_)', align: 'right' },
  totalFraction: { bold: true, border: 'top', format: '# ??/??_)', align: 'right' },
  total: { bold: true, border: 'top', format: '#,##0.00_)', align: 'right' },
  totalVolume: { bold: true, border: 'top', format: '#,##0.000_)', align: 'right' },
  totalWhole: { bold: true, border: 'top', format: '#,##0_)', align: 'right' },
  totalLabel: { bold: true, border: 'top' },
  totalNumber: { bold: true, border: 'top', align: 'right', format: '0.0###_)' },
  tick: { align: 'center', border: 'box' },
  // By hand or typed, on a line of its own.
  signed: { wrap: true, border: 'hair', open: true },
  // A row of a list: hairlines lead the eye along it.
  row: { wrap: true, border: 'hair' },
  rowStrong: { wrap: true, border: 'hair', bold: true },
  rowStrongRight: { wrap: true, border: 'hair', bold: true, align: 'right' },
  rowDone: { wrap: true, border: 'hair', italic: true, color: '4A5960' },
  rowRight: { wrap: true, border: 'hair', align: 'right' },
  rowCenter: { wrap: true, border: 'hair', align: 'center' },
  rowNumber: { border: 'hair', align: 'right', format: '0.0###_)' },
  // What the saw's stop is set to.
  cutFraction: { border: 'hair', bold: true, size: 11, format: '# ??/??_)', align: 'right' },
  cutNumber: { border: 'hair', bold: true, size: 11, align: 'right', format: '0.0###_)' },
  rowTimes: { border: 'hair', format: '"× "#,##0', align: 'left' },
  rowWhole: { border: 'hair', align: 'right', format: '#,##0_)' },
  // What two sheets differ by: nothing is shown of what agrees.
  rowOff: { border: 'hair', align: 'right', bold: true, format: '+0.0##;-0.0##;""' },
  // Millimetres that are worked out.
  rowTenth: { border: 'hair', align: 'right', format: '#,##0.0_)' },
  rowDecimal: { border: 'hair', align: 'right', format: '#,##0.00_)' },
  rowVolume: { border: 'hair', align: 'right', format: '#,##0.000_)' },
  stick: { bold: true, fill: BAND, wrap: true },
  stickRight: { bold: true, fill: BAND, wrap: true, align: 'right' },
  stickWhole: { bold: true, fill: BAND, align: 'right', format: '#,##0_)' },
  stickDecimal: { bold: true, fill: BAND, align: 'right', format: '#,##0.00_)' },
  stickVolume: { bold: true, fill: BAND, align: 'right', format: '#,##0.000_)' },
  stickNumber: { bold: true, fill: BAND, align: 'right', format: '0.0###_)' },
  setting: { bold: true, size: 11, color: INK, wrap: true, border: 'hair' },
  // What a saw is set to, read at arm's length: angles, heights and marks.
  figure: { bold: true, size: 14, color: INK, wrap: true, border: 'hair' },
  figureRight: { bold: true, size: 14, color: INK, border: 'hair', align: 'right' },
  passRight: { size: 14, color: INK, border: 'hair', align: 'right' },
  // What stands on a page to be looked up, not to be read from the saw.
  small: { size: 9, wrap: true },
  smallRow: { size: 9, wrap: true, border: 'hair' },
  finePrint: { size: 8, wrap: true, color: INK },
} as const satisfies Readonly<Record<string, CellStyle>>;

export type StyleName = keyof typeof STYLES;
