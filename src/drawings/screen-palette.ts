/**
 * The colors of the screen around sheets and drawings: the page's bar, the grid's frame and the pane take theirs
 * from here; `page.css` repeats them for the first paint, which a test holds it to. The accent, for what can be pressed, is
 * the drawings' tone of measures.
 */
import { DARK_PALETTE, LIGHT_PALETTE } from './palette.ts';

/** #rrggbb by what it is for: `strong` is the accent, whose letters are `paper`. */
export type ScreenPalette = Readonly<
  Record<
    | 'paper'
    | 'bar'
    | 'ink'
    | 'quiet'
    | 'line'
    | 'strong'
    | 'hover'
    | 'warn'
    | 'warn-line'
    | 'danger'
    | 'danger-line'
    | 'focus',
    string
  >
>;

export const LIGHT_SCREEN: ScreenPalette = {
  paper: '#ffffff',
  bar: '#f3f5f6',
  ink: LIGHT_PALETTE.ink.toLowerCase(),
  quiet: '#4a5960',
  line: '#c9d1d5',
  strong: LIGHT_PALETTE.measure.toLowerCase(),
  hover: '#e2e8ea',
  warn: '#fdf3e3',
  'warn-line': '#b35c00',
  danger: '#fdf0ef',
  'danger-line': '#b10e1c',
  focus: '#0b57a4',
};

export const DARK_SCREEN: ScreenPalette = {
  paper: '#292929',
  bar: '#1f2426',
  ink: '#f2f4f5',
  quiet: '#b9c4c9',
  line: '#4c585e',
  strong: DARK_PALETTE.measure.toLowerCase(),
  hover: '#343c40',
  warn: '#3a2c14',
  'warn-line': '#f0a94b',
  danger: '#3f1d1f',
  'danger-line': '#f1707b',
  focus: '#7ab8f5',
};

/**
 * The accent in steps from dark to light, for libraries that take a color so.
 *
 * @param light From 0, black, over 0.5, the color itself, to 1, white.
 */
export function shadeOf(color: string, light: number): string {
  const ground = light < 0.5 ? 0 : 255;
  const share = Math.abs(light - 0.5) * 2;
  const parts = [1, 3, 5].map((at) => Number.parseInt(color.slice(at, at + 2), 16));
  return `#${parts
    .map((part) => Math.round(part + (ground - part) * share))
    .map((part) => part.toString(16).padStart(2, '0'))
    .join('')}`;
}
