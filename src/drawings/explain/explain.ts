/** A picture for each worksheet function: what its arguments and its answer are in the wood or on the saw. */
import type { Drawing } from '../drawing.ts';
import { drawSticks, drawStack, drawTape } from './on-the-bench.ts';
import {
  drawCoveInBoard,
  drawCoveOnTable,
  drawOutlinePoints,
  drawPasses,
  drawTilt,
} from './on-the-saw.ts';
import { drawBevel, drawMiter, drawNested, drawRake, drawSlope } from './on-the-wall.ts';

const IN_BOARD =
  'The end of a board on the saw table, the blade under it: the cove is as wide and deep as its measures, its deepest line off the middle by the off-center, with flats beside it and wood above.';
const ON_TABLE =
  'The saw table from above: a board goes over the blade at the approach angle, measured from the blade line, and at 90 degrees less it from the front edge.';

/** By the function's id. */
export const EXPLAINED: Readonly<Record<string, () => Drawing>> = {
  APPROACH: () => drawCoveOnTable('The approach, from the blade line', ON_TABLE, false),
  TILT: () =>
    drawTilt(
      'The blade leans toward the deep side',
      'The end of a board on the saw table, its cove deeper to the left; the blade under it leans to the left by the tilt, measured from upright.',
    ),
  SETUP: () =>
    drawCoveOnTable(
      'The set-up of a cove',
      `${ON_TABLE} Two rails guide it, one on each side.`,
      true,
    ),
  RAILMARKS: () =>
    drawCoveOnTable(
      'Where the rails cross the table edges',
      `${ON_TABLE} Both rails cross the front and the back edge; each mark is so far left or right of the blade line.`,
      true,
    ),
  CUT: () =>
    drawCoveInBoard(
      'What a setting cuts',
      `${IN_BOARD} Approach, tilt and height make this width, depth and off-center.`,
    ),
  FEASIBLE: () =>
    drawCoveInBoard(
      'Whether blade, saw and board can make it',
      `${IN_BOARD} The flats and the wood above must not be too small.`,
    ),
  REASON: () =>
    drawCoveInBoard(
      'Why a cove can’t be made',
      `${IN_BOARD} The answer names what is too large or too small.`,
    ),
  OUTLINE: () =>
    drawOutlinePoints(
      'The curve as points',
      'The curve of a cove from the near edge to the far one, with points on it, each so far across and so deep.',
    ),
  MATCH: () =>
    drawOutlinePoints(
      'Points traced off an old molding',
      'The curve of a cove with points on it, each so far across and so far into the wood: the set-up is looked for whose cove runs nearest to them.',
    ),
  REACH: () =>
    drawCoveInBoard(
      'The widest that a depth allows',
      `${IN_BOARD} At a given depth the width grows with the approach, up to the steepest.`,
    ),
  NEAREST: () =>
    drawCoveInBoard(
      'The nearest that can be made',
      `${IN_BOARD} Each of these sizes is changed alone, as little as will do.`,
    ),
  EXACT: () =>
    drawTilt(
      'What a little more changes',
      'The end of a board on the saw table, its cove deeper to the left, the blade leaning under it: half a degree or a sixty-fourth more changes its width, depth and off-center.',
    ),
  WINDOW: () =>
    drawCoveOnTable(
      'How far the angles may be off',
      `${ON_TABLE} Approach, tilt and height may each be off by a little, all at once.`,
      false,
    ),
  TRIAL: () =>
    drawCoveInBoard(
      'What to measure on a trial cut',
      `${IN_BOARD} Width, depth and off-center of the trial piece say what to move.`,
    ),
  PASSES: () =>
    drawPasses(
      'How many passes',
      'A board on the table, its cove cut in levels: one for each pass, the last one light.',
    ),
  PASSHEIGHTS: () =>
    drawPasses(
      'The height of each pass',
      'A board on the table, its cove cut in levels: each is the height of the blade above the table at one pass.',
    ),
  CROWNMITER: () =>
    drawMiter(
      'The miter of crown that lies flat',
      'The molding flat on the saw, from above, along the fence: the blade crosses it at the miter, measured from square across.',
      31.6,
    ),
  CROWNBEVEL: () =>
    drawBevel(
      'The bevel of crown that lies flat',
      'The molding flat on the saw table, from its end: the blade leans from upright by the bevel.',
      33.9,
    ),
  CROWNNESTEDMITER: () =>
    drawNested(
      'Crown cut in its position',
      'The crown upside down between fence and table, at its spring: the saw is set to a miter alone.',
    ),
  CROWNSLOPEMITER: () =>
    drawSlope(
      'Crown up a sloped ceiling: the miter',
      'A wall from the front: crown runs level, then up the ceiling’s slope, measured from level; the joint between the two is cut.',
    ),
  CROWNSLOPEBEVEL: () =>
    drawSlope(
      'Crown up a sloped ceiling: the bevel',
      'A wall from the front: crown runs level, then up the ceiling’s slope, measured from level; the joint between the two is cut.',
    ),
  RAKED: () =>
    drawRake(
      'The raked profile',
      'Two crowns at wall and ceiling: a level one with its drop and projection, and beside it one up a slope, with more drop.',
    ),
  STICKS: () =>
    drawSticks(
      'Pieces on sticks',
      'Two sticks: one with two pieces of 84 and a rest, one with a piece of 32 and a rest; a cut lies between two pieces.',
    ),
  BOARDFEET: () =>
    drawStack(
      'Board feet',
      'A stack of boards with their thickness, width and length, and how many there are.',
    ),
  INCHES: () =>
    drawTape(
      'A length in inches',
      'A tape with inches above and millimetres below: 90 mm is a little over three and a half inches.',
      90,
    ),
  INCHTEXT: () =>
    drawTape(
      'Inches as the tape has them',
      'A tape with inches above, in eighths, and millimetres below; a line marks a length on both.',
      90,
    ),
};
