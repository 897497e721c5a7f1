/** The pane's look in the colors of the screen around it. */
import {
  createDarkTheme,
  createLightTheme,
  type BrandVariants,
  type Theme,
} from '@fluentui/react-components';
import {
  DARK_SCREEN,
  LIGHT_SCREEN,
  shadeOf,
  type ScreenPalette,
} from '../../drawings/screen-palette.ts';

/** Sixteen steps, of which the eighth is the accent. */
const ACCENT = Object.fromEntries(
  Array.from({ length: 16 }, (_, at) => {
    const step = at + 1;
    const light = step <= 8 ? 0.2 + (0.3 * step) / 8 : 0.5 + 0.5 * ((step - 8) / 8) ** 0.6;
    return [step * 10, shadeOf(LIGHT_SCREEN.strong, light)];
  }),
) as unknown as BrandVariants;

export const LIGHT_THEME: Theme = { ...createLightTheme(ACCENT), ...groundOf(LIGHT_SCREEN) };
export const DARK_THEME: Theme = {
  ...createDarkTheme(ACCENT),
  ...groundOf(DARK_SCREEN),
  colorBrandForeground1: DARK_SCREEN.strong,
  colorBrandForeground2: DARK_SCREEN.strong,
  colorBrandForegroundLink: DARK_SCREEN.strong,
  colorBrandStroke1: DARK_SCREEN.strong,
  colorCompoundBrandForeground1: DARK_SCREEN.strong,
  colorCompoundBrandStroke: DARK_SCREEN.strong,
};

function groundOf({ paper, ink, quiet, line }: ScreenPalette): Partial<Theme> {
  return {
    colorNeutralBackground1: paper,
    colorNeutralForeground1: ink,
    colorNeutralForeground2: quiet,
    colorNeutralStroke2: line,
  };
}
