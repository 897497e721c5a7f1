/**
 * What each tone looks like. Areas differ in lightness and never tell anything by their hue alone,
 * so that grey print and color-blind readers lose nothing; blue and vermilion stay apart for all.
 */
import type { Tone } from './drawing.ts';

/** Each tone's color as CSS writes it. */
export type Palette = Readonly<Record<Tone, string>>;

/** For paper: in tune with the cell styles of the sheets. */
export const PRINT_PALETTE: Palette = {
  ink: '#1F2A30',
  faint: '#5F6B71',
  paper: '#FFFFFF',
  wood: '#EBD9B2',
  removed: '#EEF2F3',
  metal: '#7A878D',
  rail: '#A9B8BF',
  measure: '#1B5A84',
  feed: '#A8430B',
};

export const LIGHT_PALETTE: Palette = PRINT_PALETTE;

export const DARK_PALETTE: Palette = {
  ink: '#F0F3F4',
  faint: '#A9B5BB',
  paper: '#1F1F1F',
  wood: '#6B5630',
  removed: '#2E3437',
  metal: '#93A1A8',
  rail: '#566973',
  measure: '#9CCBEE',
  feed: '#FFA26B',
};

/**
 * The system's own colors (W3C, CSS Color 4, section 6.2), where it forces them: only those that it
 * pairs with Canvas, so that text and lines stand out whatever scheme the person chose.
 */
export const HIGH_CONTRAST_PALETTE: Palette = {
  ink: 'CanvasText',
  faint: 'CanvasText',
  paper: 'Canvas',
  wood: 'Canvas',
  removed: 'Canvas',
  metal: 'CanvasText',
  rail: 'Canvas',
  measure: 'CanvasText',
  feed: 'LinkText',
};

const TONES = Object.keys(PRINT_PALETTE) as readonly Tone[];

/** Names of CSS custom properties, for a page that sets them: one SVG then follows any theme. */
export const PAGE_PALETTE: Palette = Object.fromEntries(
  TONES.map((tone) => [tone, `var(${propertyOf(tone)})`]),
) as Record<Tone, string>;

/** The custom properties that PAGE_PALETTE reads, as CSS declarations with a palette's colors. */
export function paletteCss(palette: Palette): string {
  return TONES.map((tone) => `${propertyOf(tone)}: ${palette[tone]};`).join(' ');
}

function propertyOf(tone: Tone): string {
  return `--cl-${tone}`;
}
