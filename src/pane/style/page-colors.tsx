import type { ReactNode } from 'react';
import {
  DARK_PALETTE,
  HIGH_CONTRAST_PALETTE,
  LIGHT_PALETTE,
  paletteCss,
} from '../../drawings/palette.ts';

/** Gives the page and every drawing the theme's colors, and the system's own where it forces them. */
export function PageColors({ dark }: { readonly dark: boolean }): ReactNode {
  const usual = paletteCss(dark ? DARK_PALETTE : LIGHT_PALETTE);
  const forced = paletteCss(HIGH_CONTRAST_PALETTE);
  // The browser's own parts (lists that drop down, scroll bars) go with the theme, and what takes the
  // focus is not to stand under the title.
  const page = `color-scheme: ${dark ? 'dark' : 'light'}; scroll-padding-top: 84px;`;
  const css = `:root { ${page} ${usual} } @media (forced-colors: active) { :root { ${forced} } }`;
  return <style>{css}</style>;
}
