/** A page that says how to fill the input sheets. */
import type { PrintDescription, SheetDescription } from '../description.ts';
import { SheetDraft } from '../sheet-draft.ts';
import { standingCautions } from '../standing-cautions.ts';

const SHEETS: readonly (readonly [string, string])[] = [
  [
    'Runs',
    'One row a run of molding: room, which run, its profile and its length. Everything else has a usual value: measured along the wall, one of it, square ends, corners of 90°.',
  ],
  [
    'Openings',
    'Doors, windows and cased openings, where you would rather not list legs and heads yourself. A door or cased opening takes its width out of the base on its wall; give its Position and the base becomes two pieces.',
  ],
  [
    'Profiles',
    'One row a profile. Make is cove or crown cove for what is cut here on the saw, buy for the rest. Off-center has no sign: the deep side lies toward the far rail. Blank sizes are needed for coves, and where a bought molding is mitered.',
  ],
  [
    'Shop',
    'Your saw, limits, allowances and rates. Measure the blade: a resharpened one is smaller. What you leave empty takes its usual value, and the plan says so.',
  ],
  [
    'Stock',
    'What lumber comes in. For is a profile, or the species that coves are ripped from. Price is per piece, foot, board foot or metre. Have is what is on the rack; Buy is yes, no, or the most you would buy.',
  ],
];

const MEASURES: readonly (readonly [string, string])[] = [
  ['wall', 'along the wall from corner to corner; an outside miter is added for you'],
  ['opening', 'the clear opening; reveal and miters of the casing are added'],
  ['short point', 'the inner edge of a mitered piece; the miters are added'],
  ['long point', 'the outer edge: cut as it is'],
  ['finished', 'exactly this long; not even the end allowance is added'],
];

export function howToSheet(paper: PrintDescription['paper'], leastBlank: string): SheetDescription {
  const draft = new SheetDraft('How to', [{ width: 16 }, { width: 78 }]);
  const pair = ([name, text]: readonly [string, string]): void => {
    draft.add({ value: name, style: 'label' }, { value: text, style: 'wrapped' });
  };
  draft.spread('How to fill this workbook', 'title');
  draft.spread('Fill the pale cells. Then, where Coveledger is installed:', 'subtitle');
  draft.spread('npm run -s coveledger -- plan THIS-FILE.xlsx --out SHOP.xlsx', 'wrapped');
  draft.blank();
  draft.spread('The sheets', 'section');
  SHEETS.forEach(pair);
  draft.blank();
  draft.spread('Lengths', 'section');
  draft.spread(
    'Type them as you would say them: 3 1/2, 3-1/2", 7\' 4 3/8", 90 mm, 2.29 m. A bare number is in the unit on the Shop sheet. The cells are kept as text, so that 3/4 stays 3/4 and becomes no date.',
    'wrapped',
  );
  draft.blank();
  draft.spread('Measured as', 'section');
  MEASURES.forEach(pair);
  draft.blank();
  draft.spread('Before anything is cut', 'section');
  for (const caution of standingCautions(leastBlank)) draft.spread(caution, 'caution');
  return draft.finish({ paper, orientation: 'portrait', footer: 'How to fill this workbook' });
}
