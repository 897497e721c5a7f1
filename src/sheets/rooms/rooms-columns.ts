/** The tables of the sheet Rooms, one below the other on one grid, each with its columns. */
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import { columns, gridFor, left, right } from '../grammar/columns.ts';
import { columnPoints, POINTS_PER_INCH } from '../grammar/page-size.ts';

/** The pieces of a room in the order in which they go up. */
export const FITTING = columns({
  order: left('Order'),
  wall: left('Wall'),
  profile: left('Profile'),
  mark: left('Piece'),
  length: right(({ unit }) => `Length (${unit})`),
  leftEnd: left('Left end', 2),
  rightEnd: left('Right end', 2),
  note: left('Note'),
  up: left('Up'),
});

/** Doors and windows. */
export const OPENINGS = columns({
  room: left('Room', 2),
  wall: left('Wall; left edge'),
  kind: left('Kind; width × height', 2),
  cased: left('Sides; reveal', 2),
  casing: left('Casing, apron, stool', 2),
  pieces: left('Its pieces', 2),
});

/** As wide as an upright page: what is read at arm's length keeps its size. */
export const GRID = gridFor(
  [5, 9, 10.5, 7.5, 9.5, 6.5, 6.5, 6.5, 6.5, 13.5, 4.5],
  [FITTING, OPENINGS],
);

/** First and last column of the sheet, from 0. */
export const ALL = [0, GRID.length - 1] as const;

const POINTS = GRID.reduce((all, { width }) => all + columnPoints(width), 0);
/** Programs round the widths of columns; a drawing that reached past the last would shrink the page. */
const AIR_MM = 1.5;
const WIDEST_MM = (POINTS / POINTS_PER_INCH) * MM_PER_INCH - AIR_MM;

/** The widest goes first that leaves a room one page. */
export const DRAWING_WIDTHS_MM = [Math.min(150, WIDEST_MM), 130, 110] as const;
