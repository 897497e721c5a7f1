/** The short how-to in front of the input sheets. */
import { formatNumber, type DecimalSign } from '../../core/units/format-number.ts';
import { sayHeading } from '../../planning/input/headings/say-headings.ts';
import { TABLE_HEADINGS } from '../../planning/input/headings/table-headings.ts';
import type { SheetDescription } from '../grammar/description.ts';
import type { InputLook } from './input-sheet.ts';
import { USUAL_WORK } from '../../planning/work/usual-work.ts';
import { COUNTS, sayUsualWork } from './work-words.ts';
import { cell, SheetDraft } from '../grammar/sheet-draft.ts';
import { sayGrades } from '../words/say-grades.ts';
import { standingCautions } from '../words/standing-cautions.ts';

const SHEETS: readonly (readonly [string, string])[] = [
  [
    'Runs',
    'One row a run of molding: room, profile, length, and what each end is. May stay empty where Walls and Trim say all. Needed: Room, Profile, Length. Measured as says what the tape was on. Corners are those of the walls, in degrees. Match: pieces with the same word come from one stick. Done: yes keeps a run on the sheets and out of the plan.',
  ],
  [
    'Walls',
    'May stay empty. One row a wall, room by room, in order to the right as you stand in the room and face them: from these and Trim runs are made, so that each wall is typed once. Corner is what a bevel gauge reads between two walls. The last wall meets the first, and a room that doesn’t come back to where it began is refused, with the wall and the corner that are likeliest wrong; where the last meets nothing, write end under Turn.',
  ],
  [
    'Trim',
    'May stay empty. One row a molding that runs along walls of a room, or of all. Inside corners are coped: the first piece goes up square on the wall across from the door, unless Starts names another, and each next one is coped to it; outside corners are mitered, and those pieces are joined before they go up. Openings whose Wall names a wall cut away what is on the floor, or at a height that they span. A row of Runs with the same room, profile and wall (under Run) stands in place of the run that would be made.',
  ],
  [
    'Openings',
    'May stay empty. One row a door, window or cased opening: it becomes legs, head, apron and stool. Reveal is what stays in sight of the jamb’s edge beside the casing; blank, it is 3/16 in (5 mm in a metric shop). Horn is how far a stool’s ends stand out beyond the casing; blank, it is 1 in (25 mm in a metric shop). Wall is a wall of Walls, or the name that the runs of that wall have under Run, the same one for base, rail, cove and crown; Position is from the wall’s left corner to the opening. Other room is the room that the second side is in: with Sides cased 2 its casing stands in that room’s list. Other wall and Other position say where it is there.',
  ],
  [
    'Profiles',
    'One row a molding. Make: cove (cut here), crown cove (cut here, at a spring angle from the wall) or buy. A cove needs its width and depth and the width and thickness of its blank. Off-center is how far the deepest line on the wood lies from the middle of the cove at its face, where a gauge finds it. Off-center to: blade middle measures to where the middle of the blade tops out instead, up to half a kerf further. Spring is in degrees from the wall. Drop and Projection are for bought crown whose label says other than its width and spring give. Slope is that of a ceiling that a crown goes up along its wall, or of a stair for what runs up it: degrees from level, or the rise in 12, such as 4/12 or 4 in 12; its cuts stand on Set-ups and a cove’s raked profiles on Outlines. Where and Height say what openings cut away of it, as below.',
  ],
  [
    'Shop',
    'The saw, the limits, the rates. The usual values stand there already: put your own in their place. Measure the blade: a blade that was sharpened is smaller. Measure too how high it rises, upright and tilted to 45°, and say with which blade.',
  ],
  [
    'Stock',
    'The lumber and sticks that come in. For is a profile, or a species that coves are cut from. Class is the thickness class, such as 5/4. Have is how many are on the rack; Buy is yes, no, or how many at most. Once sticks are ticked as cut, leave Have as it was before the first cut, and add only what came since. Grade, Yield % and Defects may stay empty: boards are then taken as clear; what they do is said below, at Grade and yield, and Defects.',
  ],
  [
    'Work',
    'May stay empty: what always was in the price stays in it, at the minutes of Shop. A row says what a kind of work takes, or brings one into the price, or takes it out (Ours: no). Needed: Work; the usual kinds are listed below with their minutes, and any other may be named with its Per and Minutes. What is not in the price, the client’s copy says.',
  ],
  [
    'Options',
    'May stay empty. What may be added or made otherwise, each with a price of its own on the client’s copy. A row picks what is to be made in a Room, of a Profile, of a Species (blank is any), typed on Runs, made from Trim or standing round openings; rows with the same Option belong together. Instead blank: they are an addition, neither in the price nor cut until the option is taken up. Instead names a profile: they are in the job as they are, and the option makes them of that one, in another wood for instance. Taken yes: planned and in the price. An option’s price is that of the job with it less that of the job without it, each planned anew at the same effort, so that planning takes as much longer for each; minimum charge, delivery and rounding may hide a part of it. Of several that stand for each other take up one; several together are priced again. What is done stays as it is, and an option whose moldings are cut already is not priced any more.',
  ],
  [
    'Job',
    'May stay empty. What names the job: its name, number and revision and the client stand over every printed page; those, the address, who prepared it, the date, the terms and the deposit stand on the client’s copy, with the shop’s name over them. Date is the day from which the price holds; blank, the day on which the job is planned. Deposit % is of what is to be paid, tax included.',
  ],
  [
    'Hours',
    'May stay empty. What the job took in truth, as it is done: a row a kind of work and day, of all who were at it together. Needed: Work, Hours. It changes no plan and no price. Office, and coveledger rates for several jobs, show what it says of the minutes under Work; you take over what you believe. Write each kind in one way, molding by molding or all together; all under Work is for hours that were not parted by kinds.',
  ],
];

const MEASURED_AS: readonly (readonly [string, string])[] = [
  [
    'wall',
    'Usual: along the wall from corner to corner. An outside miter and the end allowance are added for you.',
  ],
  [
    'opening',
    'The clear opening: the reveal (Reveal on Runs; blank, 3/16 in, or 5 mm in a metric shop) and the miters of the casing are added. At a corner that is not square the reveal counts like the width.',
  ],
  [
    'short point',
    'From short point to short point of a mitered piece: its miters are added, across the face of an outside miter unless Profiles says thickness under Miter across.',
  ],
  ['long point', 'From long point to long point: nothing is added.'],
  ['finished', 'Exactly this long: nothing is added.'],
  [
    'left, right',
    'As you stand in front of the molding and face its wall; of a return, facing the return.',
  ],
];

/** What the plan's figures are made of. */
const FIGURES: readonly (readonly [string, string])[] = [
  [
    'Board feet',
    'Of what is made here: thickness as sold (the Class, or the blank’s own, at least 1 in) × width × length / 144. A metric shop counts m³ instead, the thickness as it is. Net is what the pieces take, with allowance adds the offcut allowance to it (a percent of net, or of what is bought, as allowance of on Shop says), as bought is every board and stick that the plan opens. Moldings bought ready made go by length.',
  ],
  [
    'Grade and yield',
    `Yield % says which share of a bought board’s face can be used by its grade: the plan counts clear boards, each at its price over the yield, and the order is the plan’s boards over the yield, rounded up to whole boards (net / yield, not net and a percent). It is of boards that nobody has seen: sticks come clear, and boards on the rack have their faults under Defects. The offcut allowance is another thing: what cutting to length leaves over. The plan counts that by itself; by the allowance lumber is net and the allowance, over the yield. Neither holds the other, so a figure that holds both is typed once. Work by the board counts the plan’s boards. ${sayGrades()} None of these is filled in for you.`,
  ],
  [
    'Defects',
    'Of one board or stick on the rack (Have 1, Buy no): what can’t be used, from and to along it from an end that you mark, as 30-34; 70-72 1/2. It is crosscut there first; each clear stretch is then a short board of its own, trimmed at both ends, at its share by length of the whole board’s price. A stretch shorter than what the shop keeps is waste with the defects, and a defect narrower than a crosscut takes the cut. One that nothing is cut from is not paid for and stands among the offcuts to keep. On Cutting each piece has its place from the marked end.',
  ],
  [
    'Hours',
    'Of each kind of work that is in the price: how many (What work is counted by, above) times its minutes. Without a table Work these are the cove’s set-up, its passes (blanks fed over the blade and carried round), smoothing, crosscuts and joints, at the minutes of Shop. The sheet Labor has each as a line. A piece that no stick gives whole is cut into the fewest parts, none shorter than the least part where that can be.',
  ],
  [
    'Joints, spring-in',
    'On a wall of Walls the joints of such a piece lie on studs where its parts allow it: counted at the stud spacing from the wall’s left corner, so find the stud before you cut. The part nearer to the room’s first door laps over the other. Trim at the floor over 4 ft (1200 mm), square or coped between two inside corners, is longer than its wall by the spring-in: bow it and let it snap in.',
  ],
  [
    'Money',
    'Cost is lumber, less offcut credit, and labor (hours at the hourly rate), and overhead on these. Contingency is on the cost. Markup is on lumber less credit (material) and on labor, each at its percent of them; margin is a share of the price, so that a margin of 20 % is a markup of 25 %: price = (cost + contingency + markup) / (1 - margin). Each line is rounded to the cent once.',
  ],
  [
    'Price of the job',
    'The moldings, brought up to the minimum charge where they come to less; delivery as it is; and what rounds both up to the next cent, dollar (or whatever the currency is) or 5. Tax is on all of it, on what lumber less credit and its markup make of it (divided by 1 - margin), or on nothing.',
  ],
  [
    'What the price goes by',
    'Price basis on Shop. By the plan: the sticks that the plan opens, their offcut credit and the work on them. By the allowance: net length or board feet with the offcut allowance, at the least price of the lumber that can be bought, no credit, and the work counted by the allowance: no stick and no time of search moves it, and more of anything never costs less. The allowance is of net, or of what is bought (allowance of): 20 % of net makes 120 of 100, 20 % of what is bought 125. Set-up spares are in it by no count of their own. Pieces that are cut stay in the price, done runs are out of it, by the one as by the other; what is cut and asked for no more is in it by the plan alone. Office has both prices, and how far they are apart; the client sees the one.',
  ],
  [
    'Offcut credit',
    'An offcut that is kept earns its length at the percent of the cheapest price, rounded down to the cent offcut by offcut, and never more than half of its stick.',
  ],
  [
    'A client’s copy that comes back',
    'Compare it under Plan, or by the command compare: other quantities are told with what they cost at the prices quoted, and with the rows that their pieces come from; whatever else was typed over is told at its cell. A quantity counts pieces of its line’s length, as they are cut. Nothing is changed here: change the rows, and plan.',
  ],
  [
    'Prices to quote',
    'On the sheet Office, before minimum charge, delivery, rounding up and tax. A foot (or metre) of a molding is its price over its net length, with and without the work of its set-up. Ten feet more (another length may be typed there) are lumber less credit as the price has it by net length, and the work that grows with length: passes, boards, and what goes by the foot, the square foot or the board foot; no set-up, no more pieces, ends, crosscuts and joints. Of lumber and of labor each comes into the price times (1 + overhead) × (1 + contingency) + its markup, over 1 - margin. An opening is what its casing, apron and stool come to by length, on average of its kind.',
  ],
  [
    'Low, likely, high',
    'What nobody knows yet may have a low and a high: the minutes of rows of Work that are in the price, and on Shop the hourly rate, the lumber’s price, waste (how much lumber more or less than the price counts on) and the whole job, one factor of all hours. Blank is known. Ten thousand jobs are drawn, each of these by itself, likeliest as typed and none outside of low and high: one job in ten comes to less than the low price, one in ten to more than the high one. Office shows it as bars, and what moves it most. The same plan has the same figures. Sticks and counts stay as planned; what is wasted brings no credit.',
  ],
  [
    'Rates from hours',
    'The hours of each kind of work stand against how many of it the plan has (What work is counted by). The rates are those for which the sum of squares is least: each job’s hours less what the rates make of them, over what such hours may be off by (15 %, at least a quarter hour); and each rate less the one until now, over what that may be off by (half of a usual one, a quarter of your own). All three are common practice. With one kind and one job: (hours × count / s² + old / t²) / (count² / s² + 1 / t²). In eight cases of ten the true rate lies within what is shown; hours more than three of their spreads off are called odd.',
  ],
  [
    'By room',
    'A profile’s price, passes and hours are shared among the rooms by net length: a short return costs as much a foot as a long wall. Of a board that several profiles are cut from each bears its strips’ width.',
  ],
];

const CUT_AWAY: readonly (readonly [string, string])[] = [
  [
    'floor',
    'On the floor, such as base: cut away by doors and cased openings on its wall, casing included. Usual for what is none of the others.',
  ],
  [
    'height',
    'A rail, its lower edge as far from the floor as Height says: cut away by each opening on its wall that spans Height. A door spans from the floor to the top of its casing, a window from the lowest of its casing, stool and apron; Sill is from the floor to the window’s opening. Without Height, or Sill, nothing is cut, and the plan says so. Usual where Height is filled in.',
  ],
  ['ceiling', 'At the ceiling: never cut. Usual for a cove, a crown cove and what has a Spring.'],
  [
    'opening',
    'Round openings, as casing, apron or stool: never cut. Usual for what Openings names as one of these.',
  ],
  [
    'Pieces',
    'A run is cut into the lengths between the casings where every opening on its wall has a Position and a row of its own; else it stays one piece, shorter by all of them, which the plan says. Each cut-away is listed with the plan and on Production.',
  ],
];

const rulesFor = (decimalSign: DecimalSign): readonly (readonly [string, string])[] => [
  [
    'Lengths',
    `Type them as you say them: 3 1/2, 3-1/2", 7' 4 3/8", 90 mm, ${formatNumber(2.29, 2, decimalSign)} m. A bare number is in the unit that Shop names. Their cells are text, so that 3/4 stays 3/4 and becomes no date.`,
  ],
  [
    'Headings',
    'In any order, letters large or small. Words that mean a heading are read as it, as listed below. One that is nearly a heading is asked about, and so are numbers in a column that nothing stands for: head it with (not used) behind its name where it is for yourself alone.',
  ],
  [
    'As shown',
    'What a cell shows is what is meant: 15% is 15 percent, a number shown with mm, cm, m, ft or in has that unit, and money must be in the currency that Shop names. A date is never a length. Hidden and filtered rows are planned too, and the plan says so; a row that is headed Total is left out, or asked about.',
  ],
  [
    'Blank cells',
    'Take the usual value: quantity 1, square ends, 90° corners, measured on the wall.',
  ],
  [
    'Points',
    'Every cut length is from end to end, and the sheets say to which point: the long point at the wall for an inside miter, the long point at the face for an outside one, the long point at the outer edge for casing, the tip of a cope, the long point of a return, a square end.',
  ],
  [
    'Ticks',
    'Cutting has sticks that are cut alike in one block: each length once, with both ends, and a box and marks for each stick. Ticked there, or with its pieces under Done on Pieces, a stick stays as it is cut when this workbook is planned again. Whatever else is typed on the written sheets goes when they are written anew. A run that is Done here is in no price; a stick that is cut stays in it.',
  ],
  [
    'A code to scan',
    'With page address on Shop (where the page is hosted, such as https://example.org/coves/) each page of Set-ups has a code: a phone that scans it shows that cove’s numbers, each with its side, and its passes to tick off. Where a hosted page writes the sheets it fills the address in. Without one there is no code.',
  ],
  [
    'Labels',
    'With labels on Shop a sheet of them comes along: plain, with lines to cut along, or a sheet of labels by paper and count, such as letter 3 x 10 (across x down). Print it at 100 %, on plain paper first. Left and right on it are as you face the molding: on the back they lie the other way round. Each piece still to cut and each offcut to keep has one, in the order of Cutting; its mark (R1-12) is that on Pieces and Cutting: the room’s number as rooms first come up, and the piece’s within the room.',
  ],
  [
    'Then',
    'Plan it under Plan, with the button “Plan the job”, in the pane beside the sheets, and write the sheets there. On a command line, save this workbook and run: npm run -s coveledger -- plan THIS.xlsx --out PLAN.xlsx. The sheets Production, Labor, Office, Pieces, Set-ups, Outlines, Cutting and Client are made, and Rooms where rooms have walls: a page a room for who fits the trim; and Yard where something is bought. What is wrong here is listed all at once, by sheet and cell, and nothing is written then. Why? beside a message leads to a page with an example of it, mended; on a command line: coveledger help CODE, with the code that --json tells.',
  ],
];

/** `leastBlank` is the shop's least length of a blank, as printed. */
export function describeHowTo(
  { paper, decimalSign, unit }: InputLook,
  leastBlank: string,
): SheetDescription {
  const draft = new SheetDraft('How to', [{ width: 16 }, { width: 84 }]);
  draft.spread('Coves, moldings and a house of them', 'title');
  draft.spread('Fill in the sheets of this workbook, then have them planned', 'subtitle');
  draft.blank();
  draft.spread('The sheets', 'section');
  for (const [name, text] of SHEETS) draft.add(cell(name, 'label'), cell(text, 'wrapped'));
  draft.spread('How to fill them', 'section');
  for (const [name, text] of rulesFor(decimalSign))
    draft.add(cell(name, 'label'), cell(text, 'wrapped'));
  for (const [name, headings] of Object.entries(TABLE_HEADINGS)) {
    draft.spread(`The columns of ${name}`, 'section');
    for (const one of headings) {
      draft.add(cell(one.heading, 'label'), cell(sayHeading(one), 'wrapped'));
    }
  }
  draft.spread('Measured as', 'section');
  for (const [name, text] of MEASURED_AS) draft.add(cell(name, 'label'), cell(text, 'wrapped'));
  draft.spread('What openings cut away: Where on Profiles', 'section');
  for (const [name, text] of CUT_AWAY) draft.add(cell(name, 'label'), cell(text, 'wrapped'));
  draft.spread('The usual kinds of work, and what they take (common practice)', 'section');
  for (const one of USUAL_WORK) {
    draft.add(cell(one.work, 'label'), cell(sayUsualWork(one, { decimalSign, unit }), 'wrapped'));
  }
  draft.spread('What work is counted by: Per on Work', 'section');
  for (const [name, text] of COUNTS) draft.add(cell(name, 'label'), cell(text, 'wrapped'));
  draft.spread('What the figures are', 'section');
  for (const [name, text] of FIGURES) draft.add(cell(name, 'label'), cell(text, 'wrapped'));
  draft.spread('Every time a cove is cut', 'section');
  const cautions = standingCautions(leastBlank);
  cautions.forEach((line, index) => draft.spread(`${index + 1}. ${line}`, 'wrapped'));
  return draft.finish({ paper, orientation: 'portrait', footer: 'How to' });
}
