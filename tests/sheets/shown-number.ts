/** Numbers as a spreadsheet shows them, for the few formats that our sheets use. */

/** What stands for a digit that isn't there, and for the room of a bracket: both take width. */
const FIGURE_SPACE = '0';
const BRACKET = ')';

export function shownNumber(value: number, format: string | undefined): string {
  switch (format) {
    case undefined:
    case '@':
      return String(value);
    case '#,##0_)':
      return grouped(value, 0) + BRACKET;
    case '#,##0.00_)':
      return grouped(value, 2) + BRACKET;
    case '#,##0.000_)':
      return grouped(value, 3) + BRACKET;
    case '#,##0.0_)':
      return grouped(value, 1) + BRACKET;
    case '0.0###_)':
      return decimals(value, 4) + BRACKET;
    case '# ??/??_)':
      return fraction(value) + BRACKET;
    case '+0.0##;-0.0##;""':
      return value === 0 ? '' : `${value < 0 ? '-' : '+'}${decimals(Math.abs(value), 3)}`;
    case '"× "#,##0':
      return `× ${grouped(value, 0)}`;
    case '0.0000':
      return value.toFixed(4);
    case '0.0"°"':
      return `${value.toFixed(1)}°`;
    case '0.0" %"':
      return `${value.toFixed(1)} %`;
    default:
      throw new Error(`How a number is shown in the format ${format} is not known here.`);
  }
}

function grouped(value: number, places: number): string {
  return value.toLocaleString('en-US', {
    minimumFractionDigits: places,
    maximumFractionDigits: places,
  });
}

function decimals(value: number, most: number): string {
  const text = value.toFixed(most).replace(/0+$/u, '');
  return text.endsWith('.') ? `${text}0` : text;
}

/** Whole and fraction of at most two figures each, which keep their room where there is no fraction. */
function fraction(value: number): string {
  const whole = Math.trunc(Math.abs(value));
  return `${value < 0 ? '-' : ''}${whole} ${FIGURE_SPACE.repeat(2)}/${FIGURE_SPACE.repeat(2)}`;
}
