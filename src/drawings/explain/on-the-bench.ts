/** What the functions about lumber and lengths ask and answer, drawn: a stick with its pieces, a stack, a tape. */
import { area, compose, line, LINE } from '../compose.ts';
import { levelMeasure } from '../dimension.ts';
import type { Drawing, Point, Shape } from '../drawing.ts';
import { textAbout } from '../lettering.ts';
import { EXPLAIN_WIDTH } from './on-the-saw.ts';

const SIZE = 3.2;
const EDGE = { tone: 'ink', width: LINE.usual } as const;

function box(left: number, top: number, width: number, height: number): Point[] {
  return [
    [left, top],
    [left + width, top],
    [left + width, top + height],
    [left, top + height],
  ];
}

function say(x: number, y: number, text: string, tone: 'ink' | 'measure' = 'ink'): Shape {
  return textAbout([x, y], text, SIZE, { anchor: 'middle', tone });
}

/** Pieces on sticks, a cut between two, the rest at the end. */
export function drawSticks(title: string, alt: string): Drawing {
  const [left, long, high] = [6, EXPLAIN_WIDTH - 12, 8];
  const inch = long / 192;
  const stick = (top: number, pieces: readonly number[]): Shape[] => {
    let from = left;
    const shapes: Shape[] = [area(box(left, top, long, high), 'removed', EDGE)];
    for (const piece of pieces) {
      shapes.push(area(box(from, top, piece * inch, high), 'wood', EDGE));
      shapes.push(say(from + (piece * inch) / 2, top + high / 2, String(piece)));
      from += piece * inch + 0.6;
    }
    if (left + long - from > 14) shapes.push(say((from + left + long) / 2, top + high / 2, 'rest'));
    return shapes;
  };
  return compose({ title, alt, width: EXPLAIN_WIDTH }, [
    ...stick(4, [84, 84]),
    ...stick(16, [32]),
    ...levelMeasure({
      from: left,
      to: left + long,
      y: 28,
      text: 'stick',
      size: SIZE,
      room: { left: 0, right: EXPLAIN_WIDTH },
      beside: 'right',
    }),
  ]);
}

/** Boards one on the other: thickness, width and length, and how many. */
export function drawStack(title: string, alt: string): Drawing {
  const [left, wide, thick, count] = [20, 24, 5, 4];
  const [far, up] = [36, 14];
  const bottom = 46;
  const boards = Array.from({ length: count }, (_, at): Shape[] => {
    const top = bottom - (at + 1) * thick;
    const front = box(left, top, wide, thick);
    const side: Point[] = [
      [left + wide, top],
      [left + wide + far, top - up],
      [left + wide + far, top - up + thick],
      [left + wide, top + thick],
    ];
    const face: Point[] = [
      [left, top],
      [left + wide, top],
      [left + wide + far, top - up],
      [left + far, top - up],
    ];
    return [
      area(front, 'wood', EDGE),
      area(side, 'rail', EDGE),
      ...(at === count - 1 ? [area(face, 'wood', EDGE)] : []),
    ];
  });
  return compose({ title, alt, width: EXPLAIN_WIDTH }, [
    ...boards.flat(),
    textAbout([left - 1.5, bottom - thick / 2], 'thickness', SIZE, {
      anchor: 'end',
      tone: 'measure',
    }),
    say(left + wide / 2, bottom + 3.5, 'width', 'measure'),
    textAbout([left + wide + far / 2 + 4, bottom - up / 2 + 4], 'length', SIZE, {
      anchor: 'start',
      tone: 'measure',
    }),
    textAbout([left + wide + far + 3, bottom - up - (count * thick) / 2], 'how many', SIZE, {
      anchor: 'start',
      tone: 'measure',
    }),
  ]);
}

/** Inches above and millimetres below on one tape, and one length on both. */
export function drawTape(title: string, alt: string, millimetres: number): Drawing {
  const [left, top, high] = [6, 10, 18];
  const inch = 21;
  const inches = Array.from({ length: 4 * 8 + 1 }, (_, at): Shape => {
    const x = left + (at * inch) / 8;
    const long = at % 8 === 0 ? 6 : at % 4 === 0 ? 4 : 2.5;
    return line(
      [
        [x, top],
        [x, top + long],
      ],
      'ink',
      LINE.thin,
    );
  });
  const metric = Array.from({ length: 21 }, (_, at): Shape => {
    const x = left + (at * 5 * inch) / 25.4;
    return line(
      [
        [x, top + high],
        [x, top + high - (at % 2 === 0 ? 4.5 : 2.5)],
      ],
      'ink',
      LINE.thin,
    );
  });
  const x = left + (millimetres * inch) / 25.4;
  return compose({ title, alt, width: EXPLAIN_WIDTH }, [
    area(box(left - 2, top, EXPLAIN_WIDTH - 8, high), 'wood', EDGE),
    ...inches,
    ...metric,
    ...[1, 2, 3, 4].map((at) => say(left + at * inch - 2.2, top + 5, String(at))),
    ...[20, 40, 60, 80].map((at) => say(left + (at * inch) / 25.4, top + high - 6.8, String(at))),
    line(
      [
        [x, top - 5],
        [x, top + high + 5],
      ],
      'feed',
      LINE.strong,
    ),
    textAbout([x - 1, top - 4], 'inches', SIZE, { anchor: 'end', tone: 'measure' }),
    textAbout([x - 1, top + high + 4], 'mm', SIZE, { anchor: 'end', tone: 'measure' }),
  ]);
}
