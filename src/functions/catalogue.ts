/** Made by npm run catalogue from the functions' own comments: change those, not this. */
import type { CatalogueEntry } from './catalogue-entry.ts';
import { approach } from './worksheet/approach.ts';
import { boardFeet } from './worksheet/board-feet.ts';
import { crownBevel } from './worksheet/crown-bevel.ts';
import { crownMiter } from './worksheet/crown-miter.ts';
import { crownNestedMiter } from './worksheet/crown-nested-miter.ts';
import { crownSlopeBevel } from './worksheet/crown-slope-bevel.ts';
import { crownSlopeMiter } from './worksheet/crown-slope-miter.ts';
import { cut } from './worksheet/cut.ts';
import { exact } from './worksheet/exact.ts';
import { feasible } from './worksheet/feasible.ts';
import { inches } from './worksheet/inches.ts';
import { inchText } from './worksheet/inch-text.ts';
import { match } from './worksheet/match.ts';
import { nearest } from './worksheet/nearest.ts';
import { outline } from './worksheet/outline.ts';
import { passes } from './worksheet/passes.ts';
import { passHeights } from './worksheet/pass-heights.ts';
import { railMarks } from './worksheet/rail-marks.ts';
import { raked } from './worksheet/raked.ts';
import { reach } from './worksheet/reach.ts';
import { reason } from './worksheet/reason.ts';
import { setup } from './worksheet/setup.ts';
import { sticks } from './worksheet/sticks.ts';
import { tilt } from './worksheet/tilt.ts';
import { trial } from './worksheet/trial.ts';
import { window } from './worksheet/window.ts';

// A line an argument, so that a change reads as one.
// prettier-ignore
export const CATALOGUE: readonly CatalogueEntry[] = [
  {
    id: 'APPROACH',
    name: 'COVE.APPROACH',
    description: 'Approach angle that cuts a cove, in degrees from the blade line (0 is a rip cut); with "front" as the last argument in degrees from the table\'s front edge, which is 90 less it. Not rounded.',
    parameters: [
      { name: 'width', optional: false, description: 'Width of the cove at its face: inches, or a text such as 3 1/2 or 90 mm.' },
      { name: 'depth', optional: false, description: 'Depth of the cove: inches, or a text such as 7/8 or 22 mm.' },
      { name: 'offCenter', optional: true, description: 'How far the deepest line lies from the middle: inches, or a text such as 3/8 or 10 mm; 0 when left out.' },
      { name: 'bladeDiameter', optional: true, description: 'Diameter of the blade as measured: inches, or a text such as 9 7/8 or 250 mm; 10 in when left out or 0.' },
      { name: 'kerf', optional: true, description: 'Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.' },
      { name: 'measuredFrom', optional: true, description: "The word front for degrees from the table's front edge; blade, or left out, for degrees from the blade line." },
    ],
    example: '=COVE.APPROACH("3 5/8", "7/8", "3/8")',
    call: approach,
  },
  {
    id: 'BOARDFEET',
    name: 'COVE.BOARDFEET',
    description: 'Board feet of lumber by the plain rule: nominal thickness (under 1 in counts as 1 in) × width × length / 144, not rounded.',
    parameters: [
      { name: 'thickness', optional: false, description: 'Nominal thickness: inches, or a text such as 1 1/4 or 32 mm.' },
      { name: 'width', optional: false, description: 'Width of the board: inches, or a text such as 5 1/2 or 140 mm.' },
      { name: 'length', optional: false, description: "Length of the board: inches, or a text such as 8' or 2.4 m." },
      { name: 'quantity', optional: true, description: 'How many such boards: a whole number; 1 when left out.' },
    ],
    example: '=COVE.BOARDFEET(1, 6, "8\'", 10)',
    call: boardFeet,
  },
  {
    id: 'CROWNBEVEL',
    name: 'COVE.CROWNBEVEL',
    description: "Bevel that cuts a crown lying flat on the saw's table: tilt of the blade in degrees from upright; the saw turns by COVE.CROWNMITER. Not rounded.",
    parameters: [
      { name: 'spring', optional: false, description: 'Spring of the crown: degrees between its back and the wall, above 0 and below 90.' },
      { name: 'corner', optional: true, description: 'Corner of the two walls: degrees between them, above 0 and below 180; 90 when left out or 0. An outside corner takes the same angles, cut the other way round.' },
    ],
    example: '=COVE.CROWNBEVEL(38, 90)',
    call: crownBevel,
  },
  {
    id: 'CROWNMITER',
    name: 'COVE.CROWNMITER',
    description: "Miter that cuts a crown lying flat on the saw's table, in degrees from a square crosscut; the blade tilts by COVE.CROWNBEVEL. Not rounded.",
    parameters: [
      { name: 'spring', optional: false, description: 'Spring of the crown: degrees between its back and the wall, above 0 and below 90.' },
      { name: 'corner', optional: true, description: 'Corner of the two walls: degrees between them, above 0 and below 180; 90 when left out or 0. An outside corner takes the same angles, cut the other way round.' },
    ],
    example: '=COVE.CROWNMITER(38, 90)',
    call: crownMiter,
  },
  {
    id: 'CROWNNESTEDMITER',
    name: 'COVE.CROWNNESTEDMITER',
    description: 'Miter that cuts a crown nested, upside down at its spring between fence and table, in degrees from a square crosscut, whatever its spring; the blade stays upright. Not rounded. For crown that lies flat take COVE.CROWNMITER and COVE.CROWNBEVEL.',
    parameters: [
      { name: 'corner', optional: false, description: 'Corner of the two walls: degrees between them, above 0 and below 180. An outside corner takes the same angle, cut the other way round.' },
    ],
    example: '=COVE.CROWNNESTEDMITER(135)',
    call: crownNestedMiter,
  },
  {
    id: 'CROWNSLOPEBEVEL',
    name: 'COVE.CROWNSLOPEBEVEL',
    description: "Bevel that cuts a crown lying flat on the saw's table where it stays on its wall and the ceiling begins to slope: tilt of the blade in degrees from upright; the saw turns by COVE.CROWNSLOPEMITER. Not rounded. Try it in scrap first.",
    parameters: [
      { name: 'spring', optional: false, description: 'Spring of the crown: degrees between its back and the wall, above 0 and below 90.' },
      { name: 'pitch', optional: false, description: 'Pitch of the ceiling along that wall: degrees from level, above 0 and below 90.' },
      { name: 'meets', optional: true, description: 'What the slope meets there: the word level, also when left out, or slope for another slope of that pitch, as at a ridge.' },
    ],
    example: '=COVE.CROWNSLOPEBEVEL(38, 12, "slope")',
    call: crownSlopeBevel,
  },
  {
    id: 'CROWNSLOPEMITER',
    name: 'COVE.CROWNSLOPEMITER',
    description: "Miter that cuts a crown lying flat on the saw's table where it stays on its wall and the ceiling begins to slope, in degrees from a square crosscut; the blade tilts by COVE.CROWNSLOPEBEVEL. Not rounded. Try it in scrap first.",
    parameters: [
      { name: 'spring', optional: false, description: 'Spring of the crown: degrees between its back and the wall, above 0 and below 90.' },
      { name: 'pitch', optional: false, description: 'Pitch of the ceiling along that wall: degrees from level, above 0 and below 90.' },
      { name: 'meets', optional: true, description: 'What the slope meets there: the word level, also when left out, or slope for another slope of that pitch, as at a ridge.' },
    ],
    example: '=COVE.CROWNSLOPEMITER(38, 12, "slope")',
    call: crownSlopeMiter,
  },
  {
    id: 'CUT',
    name: 'COVE.CUT',
    description: 'The cove that a setting of the saw cuts, a row each: its width, how far off center its deepest line lies and the length along its curve, in inches; the area of its section, in square inches; how far its deep side leans past upright (0 for not at all) and how far off center the middle of the blade tops out, in inches; and what is to be said in words. Its depth is the height.',
    parameters: [
      { name: 'approach', optional: false, description: "Approach angle, a column or one cell: degrees from the blade line, above 0 and at most 90. An angle measured from the table's front edge is 90 less it." },
      { name: 'tilt', optional: false, description: 'Tilt of the blade, a column or one cell: degrees from upright, 0 to 60.' },
      { name: 'height', optional: false, description: 'Height of the highest tooth above the table, a column or one cell: inches, or a text such as 3/4 or 19 mm.' },
      { name: 'bladeDiameter', optional: true, description: 'Diameter of the blade as measured, a column or one cell: inches, or a text such as 9 7/8 or 250 mm; 10 in when left out or 0.' },
      { name: 'kerf', optional: true, description: 'Thickness of the cut, a column or one cell: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.' },
    ],
    example: '=COVE.CUT(33, 27, "7/8")',
    call: cut,
  },
  {
    id: 'EXACT',
    name: 'COVE.EXACT',
    description: 'How much a cove changes for a little more of each thing that is set or taken as known, a row each: what it is, by how much (degrees of the approach from the blade line and of the tilt from upright, else inches), and the changes of width, depth and off-center in inches. Takes single cells.',
    parameters: [
      { name: 'width', optional: false, description: 'Width of the cove at its face: inches, or a text such as 3 1/2 or 90 mm.' },
      { name: 'depth', optional: false, description: 'Depth of the cove: inches, or a text such as 7/8 or 22 mm.' },
      { name: 'offCenter', optional: true, description: 'How far the deepest line lies from the middle: inches, or a text such as 3/8 or 10 mm; 0 when left out.' },
      { name: 'bladeDiameter', optional: true, description: 'Diameter of the blade as measured: inches, or a text such as 9 7/8 or 250 mm; 10 in when left out or 0.' },
      { name: 'kerf', optional: true, description: 'Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.' },
    ],
    example: '=COVE.EXACT("3 5/8", "7/8", "3/8")',
    call: exact,
  },
  {
    id: 'FEASIBLE',
    name: 'COVE.FEASIBLE',
    description: 'TRUE when a cove can be made with this blade, on a saw whose blade tilts to 45 degrees from upright and rises to half its diameter less 1 7/8 in, by an approach up to 75 degrees from the blade line, and from this stock where it is given; else FALSE. COVE.REASON says why not.',
    parameters: [
      { name: 'width', optional: false, description: 'Width of the cove at its face: inches, or a text such as 3 1/2 or 90 mm.' },
      { name: 'depth', optional: false, description: 'Depth of the cove: inches, or a text such as 7/8 or 22 mm.' },
      { name: 'offCenter', optional: true, description: 'How far the deepest line lies from the middle: inches, or a text such as 3/8 or 10 mm; 0 when left out.' },
      { name: 'bladeDiameter', optional: true, description: 'Diameter of the blade as measured: inches, or a text such as 9 7/8 or 250 mm; 10 in when left out or 0.' },
      { name: 'kerf', optional: true, description: 'Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.' },
      { name: 'stockThickness', optional: true, description: 'Thickness of the blank, of which 1/4 in must stay above the cove: inches, or a text such as 1 1/8 or 28 mm; not looked at when left out or 0.' },
      { name: 'stockWidth', optional: true, description: 'Width of the blank, of which 1/8 in must stay flat on each side of the cove: inches, or a text such as 4 1/2 or 115 mm; not looked at when left out or 0.' },
    ],
    example: '=COVE.FEASIBLE("3 5/8", "7/8", "3/8", 10, "1/8", "1 1/4", "4 1/2")',
    call: feasible,
  },
  {
    id: 'INCHES',
    name: 'COVE.INCHES',
    description: 'Number of inches of a length as people write it: 3 1/2, 3-1/2", 7\' 4 3/8", 90 mm, 2.29 m. A number is inches already.',
    parameters: [
      { name: 'length', optional: false, description: 'The length: inches, or a text such as 7\' 4 3/8" or 90 mm.' },
    ],
    example: '=COVE.INCHES("90 mm")',
    call: inches,
  },
  {
    id: 'INCHTEXT',
    name: 'COVE.INCHTEXT',
    description: 'A length as a text in inches and a fraction, such as 3 1/2", rounded to the nearest sixteenth or to the fraction asked for.',
    parameters: [
      { name: 'inches', optional: false, description: 'The length: inches, or a text such as 90 mm.' },
      { name: 'denominator', optional: true, description: 'The finest fraction: a whole number, 1 to 128; 16 when left out or 0.' },
    ],
    example: '=COVE.INCHTEXT(3.54, 32)',
    call: inchText,
  },
  {
    id: 'MATCH',
    name: 'COVE.MATCH',
    description: "The setting whose cove comes nearest to points traced off an existing molding: approach in degrees from the blade line, tilt in degrees from upright, height of the highest tooth, width, depth and off-center of the cove that it cuts, the farthest miss, all in inches, and what is to be said of it in words. The first and last point lie on the face. Read your saw's manual first: some forbid this cut.",
    parameters: [
      { name: 'points', optional: false, description: 'The points, a range of two columns, in order along the profile: how far across, and how far into the wood from there; inches, or texts such as 1 3/8 or 35 mm. The first and last lie on the flats. Rows that are blank are skipped.' },
      { name: 'bladeDiameter', optional: true, description: 'Diameter of the blade as measured: inches, or a text such as 9 7/8 or 250 mm; 10 in when left out or 0.' },
      { name: 'kerf', optional: true, description: 'Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.' },
      { name: 'painted', optional: true, description: 'The word yes where paint lies on the molding, which only adds to it; no, or left out, for bare wood.' },
    ],
    example: '=COVE.MATCH({0,0;0.4,0;0.7,0.36;1.1,0.62;1.6,0.74;2.1,0.74;2.6,0.62;3,0.36;3.3,0;3.7,0})',
    call: match,
  },
  {
    id: 'NEAREST',
    name: 'COVE.NEAREST',
    description: 'The nearest cove that can be made where one can\'t: a row for each size that may change alone, what changes and what it becomes in inches, the least change first; "none this way" where no change of it helps. Takes the same arguments as COVE.FEASIBLE, from single cells; one row, "as asked", where it can be made.',
    parameters: [
      { name: 'width', optional: false, description: 'Width of the cove at its face: inches, or a text such as 3 1/2 or 90 mm.' },
      { name: 'depth', optional: false, description: 'Depth of the cove: inches, or a text such as 7/8 or 22 mm.' },
      { name: 'offCenter', optional: true, description: 'How far the deepest line lies from the middle: inches, or a text such as 3/8 or 10 mm; 0 when left out.' },
      { name: 'bladeDiameter', optional: true, description: 'Diameter of the blade as measured: inches, or a text such as 9 7/8 or 250 mm; 10 in when left out or 0.' },
      { name: 'kerf', optional: true, description: 'Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.' },
      { name: 'stockThickness', optional: true, description: 'Thickness of the blank, of which 1/4 in must stay above the cove: inches, or a text such as 1 1/8 or 28 mm; not looked at when left out or 0.' },
      { name: 'stockWidth', optional: true, description: 'Width of the blank, of which 1/8 in must stay flat on each side of the cove: inches, or a text such as 4 1/2 or 115 mm; not looked at when left out or 0.' },
    ],
    example: '=COVE.NEAREST(6, "5/8", "3/8")',
    call: nearest,
  },
  {
    id: 'OUTLINE',
    name: 'COVE.OUTLINE',
    description: "Points of a cove's outline, one below the other, from the near edge over the deepest line to the far edge, such as a chart of points is drawn from: how far across from the near edge, and how deep, in inches.",
    parameters: [
      { name: 'width', optional: false, description: 'Width of the cove at its face: inches, or a text such as 3 1/2 or 90 mm.' },
      { name: 'depth', optional: false, description: 'Depth of the cove: inches, or a text such as 7/8 or 22 mm.' },
      { name: 'offCenter', optional: true, description: 'How far the deepest line lies from the middle: inches, or a text such as 3/8 or 10 mm; 0 when left out.' },
      { name: 'bladeDiameter', optional: true, description: 'Diameter of the blade as measured: inches, or a text such as 9 7/8 or 250 mm; 10 in when left out or 0.' },
      { name: 'kerf', optional: true, description: 'Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.' },
      { name: 'points', optional: true, description: 'How many points: a whole number, 4 to 2000; 64 when left out or 0.' },
    ],
    example: '=COVE.OUTLINE("3 5/8", "7/8", "3/8")',
    call: outline,
  },
  {
    id: 'PASSES',
    name: 'COVE.PASSES',
    description: 'How many passes a depth takes: a first one, even steps, and a light last one. A pass takes 1/8 in at most, and no more than 1/16 in is usual.',
    parameters: [
      { name: 'depth', optional: false, description: 'Depth of the cove: inches, or a text such as 7/8 or 22 mm.' },
      { name: 'firstPass', optional: true, description: 'Height of the first pass: inches, or a text such as 1/16 or 1.5 mm; 1/16 in when left out or 0.' },
      { name: 'step', optional: true, description: 'The most that a later pass takes: inches, or a text such as 1/16 or 1.5 mm; 1/16 in when left out or 0.' },
      { name: 'lastPass', optional: true, description: 'What is left for the light last pass: inches, or a text such as 1/32 or 0.8 mm; 1/32 in when left out, 0 for none.' },
    ],
    example: '=COVE.PASSES("3/4")',
    call: passes,
  },
  {
    id: 'PASSHEIGHTS',
    name: 'COVE.PASSHEIGHTS',
    description: 'Heights of the passes, one below the other: the highest tooth above the table, in inches; the last is the depth itself. Takes the same arguments as COVE.PASSES, from single cells.',
    parameters: [
      { name: 'depth', optional: false, description: 'Depth of the cove: inches, or a text such as 7/8 or 22 mm.' },
      { name: 'firstPass', optional: true, description: 'Height of the first pass: inches, or a text such as 1/16 or 1.5 mm; 1/16 in when left out or 0.' },
      { name: 'step', optional: true, description: 'The most that a later pass takes: inches, or a text such as 1/16 or 1.5 mm; 1/16 in when left out or 0.' },
      { name: 'lastPass', optional: true, description: 'What is left for the light last pass: inches, or a text such as 1/32 or 0.8 mm; 1/32 in when left out, 0 for none.' },
    ],
    example: '=COVE.PASSHEIGHTS("3/4")',
    call: passHeights,
  },
  {
    id: 'RAILMARKS',
    name: 'COVE.RAILMARKS',
    description: "Where the two rails cross the table's edges: a small table with its headings, in inches to the right of the blade line (less than 0 is to the left of it). The table is taken to be 72 in wide, the widest that there are, the blade midway. Marks hold at the final height and tilt; clamp both rails at both ends and make a trial cut in scrap first.",
    parameters: [
      { name: 'width', optional: false, description: 'Width of the cove at its face: inches, or a text such as 3 1/2 or 90 mm.' },
      { name: 'depth', optional: false, description: 'Depth of the cove: inches, or a text such as 7/8 or 22 mm.' },
      { name: 'offCenter', optional: false, description: 'How far the deepest line lies from the middle: inches, or a text such as 3/8 or 10 mm; 0 for a blade that stays upright. The deep side lies toward the far rail.' },
      { name: 'blankWidth', optional: false, description: 'Width of the blank, which is the space between the rails: inches, or a text such as 4 1/2 or 115 mm.' },
      { name: 'tableFront', optional: false, description: "From the middle of the raised blade to the table's front edge: inches, or a text such as 16 1/2 or 420 mm." },
      { name: 'tableBack', optional: false, description: "From the middle of the raised blade to the table's back edge: inches, or a text such as 10 1/2 or 265 mm." },
      { name: 'tiltSide', optional: true, description: 'The side to which the blade tilts: the word left, also when left out, for a feed from left to right, or right for a feed from right to left.' },
      { name: 'nearFlat', optional: true, description: 'Flat of the blank beside the near edge of the cove: inches, or a text such as 3/4 or 19 mm; the cove sits midway when left out.' },
      { name: 'bladeDiameter', optional: true, description: 'Diameter of the blade as measured: inches, or a text such as 9 7/8 or 250 mm; 10 in when left out or 0.' },
      { name: 'kerf', optional: true, description: 'Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.' },
    ],
    example: '=COVE.RAILMARKS("3 5/8", "7/8", "3/8", "4 1/2", "16 1/2", "10 1/2", "left")',
    call: railMarks,
  },
  {
    id: 'RAKED',
    name: 'COVE.RAKED',
    description: "How high a point of a raked molding's profile stands, in inches square to the slope, so that it meets a level molding's profile in the miter of an outside corner; it stands out from the wall as far as the level one's. Not rounded. Draw the points full size and try the profile in scrap first.",
    parameters: [
      { name: 'out', optional: false, description: "How far the level molding's point stands out from the wall: inches, or a text such as 2 5/8 or 67 mm." },
      { name: 'up', optional: false, description: "How far it stands up from the corner's height, below it less than 0: inches, or a text such as 3 1/2 or 90 mm." },
      { name: 'slope', optional: false, description: 'Slope of the raked molding: degrees from level, more than 0 where it rises away from the corner and less than 0 where it falls; the other way round at an inside corner.' },
      { name: 'corner', optional: true, description: 'Corner of the two walls: degrees between them, above 0 and below 180; 90 when left out or 0.' },
    ],
    example: '=COVE.RAKED("2 5/8", "3 1/2", 20)',
    call: raked,
  },
  {
    id: 'REACH',
    name: 'COVE.REACH',
    description: 'The widest cove that a blade cuts at a depth, or at a column of depths, a row each: by an approach up to 75 degrees from the blade line, up to 60 (steeper loads the blade from the side) and up to 45; inches.',
    parameters: [
      { name: 'depth', optional: false, description: 'Depth of the cove, a column or one cell: inches, or a text such as 7/8 or 22 mm.' },
      { name: 'offCenter', optional: true, description: 'How far the deepest line lies from the middle, a column or one cell: inches, or a text such as 3/8 or 10 mm; 0 when left out.' },
      { name: 'bladeDiameter', optional: true, description: 'Diameter of the blade as measured, a column or one cell: inches, or a text such as 9 7/8 or 250 mm; 10 in when left out or 0.' },
      { name: 'kerf', optional: true, description: 'Thickness of the cut, a column or one cell: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.' },
    ],
    example: '=COVE.REACH({0.5;0.75;1})',
    call: reach,
  },
  {
    id: 'REASON',
    name: 'COVE.REASON',
    description: 'Says in words why a cove can\'t be made, every reason on a line of its own, then what to be careful of ("Caution: …"); nothing where nothing is to be said. Takes the same arguments as COVE.FEASIBLE.',
    parameters: [
      { name: 'width', optional: false, description: 'Width of the cove at its face: inches, or a text such as 3 1/2 or 90 mm.' },
      { name: 'depth', optional: false, description: 'Depth of the cove: inches, or a text such as 7/8 or 22 mm.' },
      { name: 'offCenter', optional: true, description: 'How far the deepest line lies from the middle: inches, or a text such as 3/8 or 10 mm; 0 when left out.' },
      { name: 'bladeDiameter', optional: true, description: 'Diameter of the blade as measured: inches, or a text such as 9 7/8 or 250 mm; 10 in when left out or 0.' },
      { name: 'kerf', optional: true, description: 'Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.' },
      { name: 'stockThickness', optional: true, description: 'Thickness of the blank, of which 1/4 in must stay above the cove: inches, or a text such as 1 1/8 or 28 mm; not looked at when left out or 0.' },
      { name: 'stockWidth', optional: true, description: 'Width of the blank, of which 1/8 in must stay flat on each side of the cove: inches, or a text such as 4 1/2 or 115 mm; not looked at when left out or 0.' },
    ],
    example: '=COVE.REASON(9, "7/8", "3/8", 10, "1/8", 1, 9)',
    call: reason,
  },
  {
    id: 'SETUP',
    name: 'COVE.SETUP',
    description: "The whole set-up of a cove, or of a column of coves in one call, a row each: approach in degrees from the blade line, approach in degrees from the table's front edge, tilt in degrees from upright, how many passes of 1/16 in at most, and what is to be said of it in words. Not rounded. Read your saw's manual first: some forbid this cut.",
    parameters: [
      { name: 'width', optional: false, description: 'Width of the cove at its face, a column or one cell: inches, or a text such as 3 1/2 or 90 mm.' },
      { name: 'depth', optional: false, description: 'Depth of the cove, a column or one cell: inches, or a text such as 7/8 or 22 mm.' },
      { name: 'offCenter', optional: true, description: 'How far the deepest line lies from the middle, a column or one cell: inches, or a text such as 3/8 or 10 mm; 0 when left out.' },
      { name: 'bladeDiameter', optional: true, description: 'Diameter of the blade as measured, a column or one cell: inches, or a text such as 9 7/8 or 250 mm; 10 in when left out or 0.' },
      { name: 'kerf', optional: true, description: 'Thickness of the cut, a column or one cell: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.' },
    ],
    example: '=COVE.SETUP("3 5/8", "7/8", "3/8")',
    call: setup,
  },
  {
    id: 'STICKS',
    name: 'COVE.STICKS',
    description: 'How many sticks of one length a range of pieces can be cut from, by a quick plan: enough; fewer may do. Blank cells are skipped.',
    parameters: [
      { name: 'pieces', optional: false, description: 'Lengths of the pieces, a range: inches, or texts such as 7\' 4 3/8" or 2.29 m.' },
      { name: 'stickLength', optional: false, description: "Length of a stick: inches, or a text such as 16' or 4.8 m." },
      { name: 'quantities', optional: true, description: 'How many of each piece, a range of the same size as pieces: whole numbers; 1 each when left out.' },
      { name: 'kerf', optional: true, description: 'Lost at each cut: inches, or a text such as 1/8 or 3 mm; 1/8 in when left out or 0, the text "0" for none.' },
      { name: 'endTrim', optional: true, description: 'Cut off each end of every stick: inches, or a text such as 1/2 or 12 mm; 0 when left out.' },
    ],
    example: '=COVE.STICKS({84;84;32}, 192)',
    call: sticks,
  },
  {
    id: 'TILT',
    name: 'COVE.TILT',
    description: 'Tilt of the blade that cuts a cove whose deepest line lies off center, in degrees from upright (0 is a blade square to the table). Not rounded.',
    parameters: [
      { name: 'width', optional: false, description: 'Width of the cove at its face: inches, or a text such as 3 1/2 or 90 mm.' },
      { name: 'depth', optional: false, description: 'Depth of the cove: inches, or a text such as 7/8 or 22 mm.' },
      { name: 'offCenter', optional: false, description: 'How far the deepest line lies from the middle: inches, or a text such as 3/8 or 10 mm; 0 for a blade that stays upright.' },
      { name: 'bladeDiameter', optional: true, description: 'Diameter of the blade as measured: inches, or a text such as 9 7/8 or 250 mm; 10 in when left out or 0.' },
      { name: 'kerf', optional: true, description: 'Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.' },
    ],
    example: '=COVE.TILT("3 5/8", "7/8", "3/8")',
    call: tilt,
  },
  {
    id: 'TRIAL',
    name: 'COVE.TRIAL',
    description: 'What to move after a trial cut that was measured: by how many degrees the approach from the blade line and the tilt from upright, by how many inches the height, more or (below 0) less than they read now; and in words what was likely wrong. Unplug the saw before you set it.',
    parameters: [
      { name: 'width', optional: false, description: 'Width of the cove aimed at: inches, or a text such as 3 1/2 or 90 mm.' },
      { name: 'depth', optional: false, description: 'Depth of the cove aimed at: inches, or a text such as 7/8 or 22 mm.' },
      { name: 'offCenter', optional: false, description: 'How far its deepest line lies from the middle, 0 for none: inches, or a text such as 3/8 or 10 mm.' },
      { name: 'measuredWidth', optional: false, description: 'Width of the trial cut: inches, or a text such as 3 9/16 or 90.5 mm.' },
      { name: 'measuredDepth', optional: false, description: 'Depth of the trial cut: inches, or a text such as 27/32 or 21.5 mm.' },
      { name: 'measuredOffCenter', optional: true, description: 'How far its deepest line lies from its middle, below 0 toward the near rail: inches, or a text such as 5/16 or 8 mm; 0 when left out.' },
      { name: 'bladeDiameter', optional: true, description: 'Diameter of the blade as measured: inches, or a text such as 9 7/8 or 250 mm; 10 in when left out or 0.' },
      { name: 'kerf', optional: true, description: 'Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.' },
    ],
    example: '=COVE.TRIAL("3 5/8", "7/8", "3/8", "3 11/16", "57/64", "3/8")',
    call: trial,
  },
  {
    id: 'WINDOW',
    name: 'COVE.WINDOW',
    description: 'How exactly a cove must be set: by how many degrees the approach from the blade line and the tilt from upright, and by how many inches the height may be off, either way and all three at once, with the outline nowhere off by more than the tolerance; a row for each cove of a column.',
    parameters: [
      { name: 'width', optional: false, description: 'Width of the cove at its face, a column or one cell: inches, or a text such as 3 1/2 or 90 mm.' },
      { name: 'depth', optional: false, description: 'Depth of the cove, a column or one cell: inches, or a text such as 7/8 or 22 mm.' },
      { name: 'offCenter', optional: true, description: 'How far the deepest line lies from the middle, a column or one cell: inches, or a text such as 3/8 or 10 mm; 0 when left out.' },
      { name: 'bladeDiameter', optional: true, description: 'Diameter of the blade as measured, a column or one cell: inches, or a text such as 9 7/8 or 250 mm; 10 in when left out or 0.' },
      { name: 'kerf', optional: true, description: 'Thickness of the cut, a column or one cell: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.' },
      { name: 'tolerance', optional: true, description: 'How far the outline may be off, square to itself, a column or one cell: inches, or a text such as 1/32 or 0.5 mm; 1/64 in when left out or 0.' },
    ],
    example: '=COVE.WINDOW("3 5/8", "7/8", "3/8")',
    call: window,
  },
];
