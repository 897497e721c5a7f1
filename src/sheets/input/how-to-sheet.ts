/** The short how-to in front of the input sheets. */
import { formatNumber, type DecimalSign } from '../../core/units/format-number.ts';
import type { SheetDescription } from '../grammar/description.ts';
import type { InputLook } from './input-sheet.ts';
import { cell, SheetDraft } from '../grammar/sheet-draft.ts';
import { standingCautions } from '../words/standing-cautions.ts';

const SHEETS: readonly (readonly [string, string])[] = [
  [
    'Runs',
    'One row a run of molding: room, profile, length, and what each end is. Needed: Room, Profile, Length. Measured as says what the tape was on. Corners are those of the walls, in degrees. Match: pieces with the same word come from one stick. Done: yes keeps a run on the sheets and out of the plan.',
  ],
  [
    'Openings',
    'May stay empty. One row a door, window or cased opening: it becomes legs, head, apron and stool. Wall is a Run of that room; base is cut away there for doors and cased openings, into two pieces where Position (from the left corner of the wall) is given.',
  ],
  [
    'Profiles',
    'One row a molding. Make: cove (cut here), crown cove (cut here, at a spring angle from the wall) or buy. A cove needs its width and depth and the width and thickness of its blank. Off-center is how far the deepest line lies from the middle. Spring is in degrees from the wall. Drop and Projection are for bought crown whose label says other than its width and spring give.',
  ],
  [
    'Shop',
    'The saw, the limits, the rates. The usual values stand there already: put your own in their place. Measure the blade: a 10 in blade that was sharpened is smaller. Measure too how high it rises, upright and tilted to 45°, and say with which blade.',
  ],
  [
    'Stock',
    'The lumber and sticks that come in. For is a profile, or a species that coves are cut from. Class is the thickness class, such as 5/4. Have is how many are on the rack; Buy is yes, no, or how many at most.',
  ],
];

const MEASURED_AS: readonly (readonly [string, string])[] = [
  [
    'wall',
    'Usual: along the wall from corner to corner. An outside miter and the end allowance are added for you.',
  ],
  ['opening', 'The clear opening: reveal and miters of the casing are added.'],
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

const rulesFor = (decimalSign: DecimalSign): readonly (readonly [string, string])[] => [
  [
    'Lengths',
    `Type them as you say them: 3 1/2, 3-1/2", 7' 4 3/8", 90 mm, ${formatNumber(2.29, 2, decimalSign)} m. A bare number is in the unit that Shop names. Their cells are text, so that 3/4 stays 3/4 and becomes no date.`,
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
    'Then',
    'Plan it under Plan, with the button “Plan the job”, in the pane beside the sheets, and write the sheets there. On a command line, save this workbook and run: npm run -s coveledger -- plan THIS.xlsx --out PLAN.xlsx. The sheets Production, Pieces, Set-ups, Outlines, Cutting and Client are made. What is wrong here is listed all at once, by sheet and cell, and nothing is written then.',
  ],
];

/** `leastBlank` is the shop's least length of a blank, as printed. */
export function describeHowTo(
  { paper, decimalSign }: InputLook,
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
  draft.spread('Measured as', 'section');
  for (const [name, text] of MEASURED_AS) draft.add(cell(name, 'label'), cell(text, 'wrapped'));
  draft.spread('Every time a cove is cut', 'section');
  const cautions = standingCautions(leastBlank);
  cautions.forEach((line, index) => draft.spread(`${index + 1}. ${line}`, 'wrapped'));
  return draft.finish({ paper, orientation: 'portrait', footer: 'How to' });
}
