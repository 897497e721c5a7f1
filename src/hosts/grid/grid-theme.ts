/** The grid's own frame in the colors of the screen around it. */
import { defaultTheme, type Theme } from '@univerjs/themes';
import { DARK_SCREEN, LIGHT_SCREEN, shadeOf } from '../../drawings/screen-palette.ts';

/** From light to dark; the sixth is the accent. */
const STEPS = [50, 100, 200, 300, 400, 500, 600, 700, 800, 900];

const accent = Object.fromEntries(
  STEPS.map((step, at) => [
    step,
    shadeOf(LIGHT_SCREEN.strong, at < 6 ? 0.97 - 0.078 * at : 0.5 - 0.05 * (at - 6)),
  ]),
);

export const GRID_THEME: Theme = {
  ...defaultTheme,
  primary: { ...defaultTheme.primary, ...accent },
  // The light ones are lines and grounds on paper; the dark ones letters there, and grounds in the dark.
  gray: {
    ...defaultTheme.gray,
    50: LIGHT_SCREEN.bar,
    200: LIGHT_SCREEN.line,
    600: DARK_SCREEN.line,
    700: DARK_SCREEN.hover,
    800: DARK_SCREEN.bar,
    900: DARK_SCREEN.bar,
  },
};
