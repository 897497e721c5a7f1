import { describe, expect, test } from '@jest/globals';
import { readFileSync } from 'node:fs';

import {
  DARK_PALETTE,
  HIGH_CONTRAST_PALETTE,
  LIGHT_PALETTE,
  PAGE_PALETTE,
  paletteCss,
  PRINT_PALETTE,
  type Palette,
} from '../../src/drawings/palette.ts';
import { DARK_SCREEN, LIGHT_SCREEN, shadeOf } from '../../src/drawings/screen-palette.ts';

/** W3C, WCAG 2.2, "relative luminance" and "contrast ratio"; sRGB's own threshold, 0.04045. */
function luminance(color: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(color.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [
    number,
    number,
  ];
  return (light + 0.05) / (dark + 0.05);
}

const PALETTES: readonly (readonly [string, Palette])[] = [
  ['print', PRINT_PALETTE],
  ['light', LIGHT_PALETTE],
  ['dark', DARK_PALETTE],
];

describe('Palettes', () => {
  test('are judged by the formula of WCAG: black on white is 21, #767676 on white just passes', () => {
    expect(contrast('#000000', '#FFFFFF')).toBeCloseTo(21, 9);
    // WebAIM and others give 4.54 for this grey.
    expect(contrast('#767676', '#FFFFFF')).toBeCloseTo(4.54, 2);
  });

  test.each(PALETTES)(
    'of the %s kind keep text readable on all that it stands on',
    (_, palette) => {
      for (const text of ['ink', 'faint', 'measure', 'feed'] as const) {
        expect(contrast(palette[text], palette.paper)).toBeGreaterThanOrEqual(4.5);
      }
      for (const text of ['ink', 'measure', 'feed'] as const) {
        expect(contrast(palette[text], palette.removed)).toBeGreaterThanOrEqual(4.5);
      }
    },
  );

  test.each(PALETTES)('of the %s kind keep lines and areas apart', (_, palette) => {
    // WCAG 2.2, 1.4.11: 3 to 1 for what is needed to understand a graphic.
    for (const under of ['paper', 'wood', 'removed', 'rail'] as const) {
      expect(contrast(palette.ink, palette[under])).toBeGreaterThanOrEqual(3);
    }
    for (const over of ['measure', 'feed'] as const) {
      expect(contrast(palette[over], palette.wood)).toBeGreaterThanOrEqual(3);
    }
    expect(contrast(palette.metal, palette.paper)).toBeGreaterThanOrEqual(3);
  });

  test('for high contrast use only colors that the system pairs with its canvas', () => {
    expect(HIGH_CONTRAST_PALETTE.paper).toBe('Canvas');
    for (const text of ['ink', 'faint', 'measure', 'feed', 'metal'] as const) {
      expect(['CanvasText', 'LinkText']).toContain(HIGH_CONTRAST_PALETTE[text]);
    }
  });

  test('for a page name custom properties, one for each tone, which its style sheet sets', () => {
    const css = paletteCss(DARK_PALETTE);
    for (const [tone, color] of Object.entries(DARK_PALETTE)) {
      expect(css).toContain(`--cl-${tone}: ${color};`);
      expect(PAGE_PALETTE[tone as keyof Palette]).toBe(`var(--cl-${tone})`);
    }
  });
});

describe('The colors of the screen', () => {
  const css = readFileSync(new URL('../../src/page/shell/page.css', import.meta.url), 'utf8');
  const blocks = [...css.matchAll(/:root \{([^}]*)\}/gu)].map(([, block = '']) =>
    Object.fromEntries(
      [...block.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/gu)].map(
        ([, name = '', color = '']) => [name, color] as const,
      ),
    ),
  );

  test.each([
    ['light', LIGHT_SCREEN, 0],
    ['dark', DARK_SCREEN, 1],
  ] as const)('are those of the page’s style sheet, and can be read: %s', (_, screen, at) => {
    expect(blocks[at]).toEqual(screen);
    for (const ground of ['paper', 'bar', 'hover', 'warn', 'danger'] as const) {
      expect(contrast(screen.ink, screen[ground])).toBeGreaterThan(7);
    }
    for (const ground of ['paper', 'bar'] as const) {
      expect(contrast(screen.quiet, screen[ground])).toBeGreaterThan(4.5);
    }
    // Of what can be pressed, its letters; of the focus and the edges of notices, the line.
    expect(contrast(screen.paper, screen.strong)).toBeGreaterThan(4.5);
    for (const line of ['focus', 'warn-line', 'danger-line'] as const) {
      expect(contrast(screen[line], screen.paper)).toBeGreaterThan(3);
    }
  });

  test('go from black over the color itself to white', () => {
    expect([0, 0.5, 1].map((light) => shadeOf('#1b5a84', light))).toEqual([
      '#000000',
      '#1b5a84',
      '#ffffff',
    ]);
  });
});
