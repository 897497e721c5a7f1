/** What the functions about crown ask and answer, drawn: its spring, its miter and bevel, a sloped ceiling. */
import { area, arrowHead, compose, line, LINE } from '../compose.ts';
import type { Drawing, Point, Shape } from '../drawing.ts';
import { textAbout } from '../lettering.ts';
import { EXPLAIN_WIDTH } from './on-the-saw.ts';

const SIZE = 3.2;
const RADIANS = Math.PI / 180;

function say(x: number, y: number, text: string, tone: 'ink' | 'measure' | 'feed' = 'ink'): Shape {
  return textAbout([x, y], text, SIZE, { anchor: 'start', tone });
}

/** An arc about a point, from one angle to another, in degrees clockwise from the right. */
function arc([x, y]: Point, radius: number, from: number, to: number): Shape[] {
  const steps = 24;
  const points = Array.from({ length: steps + 1 }, (_, at): Point => {
    const angle = (from + ((to - from) * at) / steps) * RADIANS;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
  const end = points.at(-1) ?? [x, y];
  const way = (to + (to > from ? 90 : -90)) * RADIANS;
  return [line(points, 'measure', LINE.usual), arrowHead(end, way, 'measure')];
}

/** The molding flat on the saw from above, at its fence: the cut's miter from square across. */
export function drawMiter(title: string, alt: string, miter: number): Drawing {
  const [fence, high, cut] = [8, 18, 46];
  const low = fence + high;
  const across = high * Math.tan(miter * RADIANS);
  return compose({ title, alt, width: EXPLAIN_WIDTH }, [
    area(
      [
        [4, 3],
        [EXPLAIN_WIDTH - 4, 3],
        [EXPLAIN_WIDTH - 4, fence],
        [4, fence],
      ],
      'rail',
      {
        tone: 'ink',
        width: LINE.usual,
      },
    ),
    area(
      [
        [8, fence],
        [cut, fence],
        [cut + across, low],
        [8, low],
      ],
      'wood',
      {
        tone: 'ink',
        width: LINE.strong,
      },
    ),
    line(
      [
        [cut, fence - 2],
        [cut, low + 10],
      ],
      'faint',
      LINE.usual,
      [1.2, 0.8],
    ),
    line(
      [
        [cut - across * 0.2, fence - high * 0.2],
        [cut + across * 1.5, fence + high * 1.5],
      ],
      'feed',
      LINE.strong,
    ),
    ...arc([cut, fence], high * 1.2, 90, 90 - miter),
    say(cut + across * 1.5 + 3, low + 8, 'blade', 'feed'),
    say(cut - 24, low + 10, 'square across', 'measure'),
    say(cut + across + 5, fence + high * 0.6, 'miter, from square', 'measure'),
    say(10, 5.5, 'fence'),
    say(12, fence + high / 2, 'molding, flat'),
  ]);
}

/** The molding flat on the saw, seen along the fence: the blade leans from upright by the bevel. */
export function drawBevel(title: string, alt: string, bevel: number): Drawing {
  const [table, thick, foot] = [34, 9, 43];
  const lean = (up: number): number => foot + up * Math.tan(bevel * RADIANS);
  return compose({ title, alt, width: EXPLAIN_WIDTH }, [
    line(
      [
        [4, table],
        [EXPLAIN_WIDTH - 4, table],
      ],
      'metal',
      1,
    ),
    area(
      [
        [14, table - thick],
        [lean(thick), table - thick],
        [foot, table],
        [14, table],
      ],
      'wood',
      {
        tone: 'ink',
        width: LINE.strong,
      },
    ),
    line(
      [
        [foot, table + 3],
        [foot, 6],
      ],
      'faint',
      LINE.usual,
      [1.2, 0.8],
    ),
    line(
      [
        [lean(-4), table + 4],
        [lean(26), table - 26],
      ],
      'feed',
      LINE.strong,
    ),
    ...arc([foot, table], 20, -90, -90 + bevel),
    say(foot - 16, 8, 'upright', 'measure'),
    say(lean(26) + 2, table - 24, 'blade', 'feed'),
    say(lean(18) + 6, table - 14, 'bevel, from upright', 'measure'),
    say(16, table - thick / 2, 'molding, flat'),
  ]);
}

/** The molding at its spring against the fence, as it goes up: upside down, then a plain miter. */
export function drawNested(title: string, alt: string): Drawing {
  const [table, fence] = [36, 22];
  const ends: readonly [Point, Point] = [
    [fence, table - 24],
    [fence + 19, table],
  ];
  return compose({ title, alt, width: EXPLAIN_WIDTH }, [
    line(
      [
        [4, table],
        [EXPLAIN_WIDTH - 4, table],
      ],
      'metal',
      1,
    ),
    area(
      [
        [fence - 6, 4],
        [fence, 4],
        [fence, table],
        [fence - 6, table],
      ],
      'rail',
      { tone: 'ink', width: LINE.usual },
    ),
    area([ends[0], ends[1], [ends[1][0] + 5, table], [fence, table - 30]], 'wood', {
      tone: 'ink',
      width: LINE.strong,
    }),
    ...arc([fence, table - 24], 12, 90, 52),
    say(fence + 4, table - 6, 'spring', 'measure'),
    say(fence + 30, table - 22, 'crown upside down,'),
    say(fence + 30, table - 17, 'its back on the fence'),
    say(fence + 30, table - 9, 'a miter alone:', 'measure'),
    say(fence + 30, table - 4, 'half the corner', 'measure'),
  ]);
}

/** A wall from the front: crown runs level, then up the slope. */
export function drawSlope(title: string, alt: string): Drawing {
  const [left, bend, right] = [6, 48, 94];
  const [level, rise] = [28, 18];
  const high = 7;
  return compose({ title, alt, width: EXPLAIN_WIDTH }, [
    area(
      [
        [left, level],
        [bend, level],
        [bend, level + high],
        [left, level + high],
      ],
      'wood',
      { tone: 'ink', width: LINE.usual },
    ),
    area(
      [
        [bend, level],
        [right, level - rise],
        [right, level - rise + high],
        [bend, level + high],
      ],
      'wood',
      { tone: 'ink', width: LINE.usual },
    ),
    line(
      [
        [left, level],
        [bend, level],
        [right, level - rise],
      ],
      'ink',
      LINE.strong,
    ),
    line(
      [
        [bend, level],
        [right, level],
      ],
      'faint',
      LINE.usual,
      [1.2, 0.8],
    ),
    ...arc([bend, level], 24, 0, -(Math.atan2(rise, right - bend) / RADIANS)),
    line(
      [
        [bend, level - 4],
        [bend, level + high + 4],
      ],
      'feed',
      LINE.strong,
    ),
    say(bend + 16, level + 4, 'slope, from level', 'measure'),
    say(bend - 2, level + high + 8, 'the joint that is cut', 'feed'),
    say(left + 2, level - 4, 'ceiling'),
  ]);
}

/** Crown against wall and ceiling: drop down the wall, projection along the ceiling; on a rake another profile. */
export function drawRake(title: string, alt: string): Drawing {
  const corner = (x: number, drop: number, projection: number, name: string): Shape[] => [
    line(
      [
        [x, 6],
        [x, 38],
      ],
      'ink',
      LINE.strong,
    ),
    line(
      [
        [x, 6],
        [x + 34, 6],
      ],
      'ink',
      LINE.strong,
    ),
    area(
      [
        [x, 6 + drop],
        [x, 6 + drop - 3],
        [x + projection - 3, 6],
        [x + projection, 6],
      ],
      'wood',
      { tone: 'ink', width: LINE.usual },
    ),
    say(x + 2, 6 + drop + 4, 'drop', 'measure'),
    say(x + projection + 1.5, 9.5, 'projection', 'measure'),
    say(x, 42, name),
  ];
  return compose({ title, alt, width: EXPLAIN_WIDTH }, [
    ...corner(6, 16, 19, 'level'),
    ...corner(54, 22, 19, 'up the slope'),
  ]);
}
