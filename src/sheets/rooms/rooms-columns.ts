/** The tables of the sheet Rooms, one below the other on one grid, each with its columns. */
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import { columns, gridFor, left, middle, right } from '../grammar/columns.ts';
import { columnPoints, POINTS_PER_INCH } from '../grammar/page-size.ts';

/** The pieces of a room in the order in which they go up. */
export const FITTING = columns({
  order: left('Order'),
  wall: left('Wall'),
  profile: left('Profile'),
  mark: left('Piece'),
  length: right(({ unit }) => `Length (${unit})`),
  above: middle('From above'),
  leftEnd: left('Left end', 2),
  rightEnd: left('Right end'),
  note: left('Note', 2),
  up: left('Up'),
});

/** Doors and windows. */
export const OPENINGS = columns({
  room: left('Room', 2),
  wall: left('Wall'),
  kind: left('Kind'),
  width: left('Width'),
  height: left('Height'),
  sides: middle('Sides cased'),
  reveal: left('Reveal'),
  casing: left('Casing, apron, stool'),
  position: left('Left edge, sill'),
  pieces: left('Its pieces', 2),
});

export const GRID = gridFor([6, 11, 11, 8, 10, 9, 7, 8, 15, 12, 11, 5], [FITTING, OPENINGS]);

/** First and last column of the sheet, from 0. */
export const ALL = [0, GRID.length - 1] as const;

const POINTS = GRID.reduce((all, { width }) => all + columnPoints(width), 0);
/** Programs round the widths of columns; a drawing that reached past the last would shrink the page. */
const AIR_MM = 1.5;
const WIDEST_MM = (POINTS / POINTS_PER_INCH) * MM_PER_INCH - AIR_MM;

/** The widest goes first that leaves a room one page. */
export const DRAWING_WIDTHS_MM = [Math.min(150, WIDEST_MM), 130, 110] as const;
