/** A small drawing, and a painter that needs no canvas. */
import type { Drawing } from '../../src/drawings/drawing.ts';

/** A PNG of one pixel. */
const PNG_OF_ONE_PIXEL =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

export function paintTiny(): Promise<Uint8Array> {
  return Promise.resolve(Uint8Array.from(atob(PNG_OF_ONE_PIXEL), (one) => one.charCodeAt(0)));
}

export const TINY_DRAWING: Drawing = {
  title: 'Cove 3" & <more>',
  alt: 'A cove 3" wide and 3/4" deep, so 2 < 3.',
  width: 127,
  height: 63.5,
  shapes: [
    {
      kind: 'path',
      points: [
        [0, 0],
        [127, 63.5],
      ],
      closed: false,
      stroke: { tone: 'ink', width: 0.5 },
    },
    { kind: 'circle', center: [60, 30], radius: 10, fill: 'wood' },
    { kind: 'text', at: [5, 60], text: '3/4"', size: 3, anchor: 'start', tone: 'measure' },
  ],
};
