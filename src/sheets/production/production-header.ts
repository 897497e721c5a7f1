/** The head of the production sheet: whether the sheets agree, totals, what is ticked. */
import type { JobPlan } from '../../planning/job-plan.ts';
import type { ColumnName } from '../grammar/columns.ts';
import { lengthStyles } from '../grammar/length-styles.ts';
import {
  cell,
  sum,
  type DraftCell,
  type SheetDraft,
  type SheetRow,
} from '../grammar/sheet-draft.ts';
import { addVerdict, verdictFormula } from '../agreement.ts';
import { onSheet, SHEET_NAMES, type PlanAnchors, type ProductionTotal } from '../plan-anchors.ts';
import { sayStamp, type Stamp } from '../stamp.ts';
import { VOLUME, volumeIn } from '../words/lumber-volume.ts';
import { numberIn } from '../words/print-length.ts';
import { sayTicked, tickedFormula } from '../words/tick-marks.ts';
import { countDone, countLengths, type LengthCount } from '../cut-so-far.ts';
import type { ProductionAnchors } from './production-anchors.ts';
import { HEAD } from './production-columns.ts';
import { sayHead, UNKNOWN } from './production-words.ts';

/** A line of one of the lists: a label and its cell, or a heading alone. */
type Line = readonly [label: string, value: DraftCell];

/** The lists: where their labels stand, and what belongs to them. */
const PLACES = [
  ['total', 'totalValue'],
  ['ticked', 'tickedValue'],
] as const;

export function addHeader(
  draft: SheetDraft,
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  onThisSheet: ProductionAnchors,
  stamp?: Stamp,
): void {
  draft.spread(SHEET_NAMES.production, 'title');
  const verdict = addVerdict(draft, () => verdictFormula(acrossSheets.at('verdictsOnOffice')), [
    HEAD.start('total'),
    HEAD.width - 1,
  ]);
  acrossSheets.place('verdictOnProduction', onSheet('production', HEAD.fixed('total', verdict)));
  draft.spread(sayHead(plan), 'note');
  if (stamp !== undefined) {
    draft.spread(sayStamp(stamp, plan.job.shop.decimalSign), 'quietLabel');
  }
  draft.blank();
  const lists = [totalsOf(plan, acrossSheets, onThisSheet), tickedOf(plan, acrossSheets)];
  const most = Math.max(...lists.map((lines) => lines.length));
  for (let at = 0; at < most; at++) draft.put(headRow(lists.map((lines) => lines[at])));
  draft.blank();
}

/** A line of each list, or none where a list has ended. */
function headRow(lines: readonly (Line | undefined)[]): SheetRow {
  const cells: Partial<Record<ColumnName<typeof HEAD>, DraftCell>> = {};
  const joins: (readonly [from: number, to: number])[] = [];
  lines.forEach((line, list) => {
    const place = PLACES[list];
    if (line === undefined || place === undefined) return;
    const [labelName, valueName] = place;
    const [label, value] = line;
    cells[labelName] = cell(label, value === null ? 'section' : 'fact');
    cells[valueName] = value;
    // A heading alone spreads over its values too.
    if (value === null) joins.push([HEAD.start(labelName), HEAD.end(valueName)]);
    else joins.push(HEAD.join(labelName), HEAD.join(valueName));
  });
  return { ...HEAD.loose(cells), joins };
}

function totalsOf(
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  onThisSheet: ProductionAnchors,
): Line[] {
  const { totals, profiles, pieces, job } = plan;
  const { unit } = job.shop;
  const late = (name: ProductionTotal) => (): string => onThisSheet.at(`total ${name}`);
  const net = lengthStyles(
    pieces.map(({ cutLength }) => cutLength),
    unit,
  );
  const sticks = profiles.flatMap((one) => one.sticks.map(({ length }) => length));
  const bought = lengthStyles(sticks, unit);
  const volume = VOLUME[unit];
  return [
    ['In all', null],
    ['Pieces to cut', sum(late('pieces'), totals.pieces, 'whole')],
    ['Pieces done already', cell(totals.done, 'whole')],
    ['Sticks and blanks', sum(late('sticks'), totals.sticks, 'whole')],
    [`Net length (${unit})`, sum(late('lengthNet'), numberIn(totals.lengthNet, unit), net.plain)],
    [
      `Length used of sticks (${unit})`,
      sum(
        () => acrossSheets.at('allLengthOnCutting'),
        numberIn(totals.lengthBought, unit),
        bought.plain,
      ),
    ],
    [
      `${volume.name}, net`,
      sum(late('boardFeetNet'), volumeIn(totals.boardFeetNet, unit), volume.styles.plain),
    ],
    [
      `${volume.name} with allowance`,
      sum(
        late('boardFeetWithAllowance'),
        volumeIn(totals.boardFeetWithAllowance, unit),
        volume.styles.plain,
      ),
    ],
    [
      `${volume.name} as bought`,
      totals.boardFeetBought === undefined
        ? cell(UNKNOWN, 'decimal')
        : sum(late('boardFeetBought'), volumeIn(totals.boardFeetBought, unit), volume.styles.plain),
    ],
    ['Passes over the blade', sum(late('passes'), totals.passes, 'whole')],
    ['Hours', sum(late('hours'), totals.hours, 'decimal')],
  ];
}

/** How far the work is, by the boxes of the other sheets. */
function tickedOf(plan: JobPlan, acrossSheets: PlanAnchors): Line[] {
  const { totals, pieces } = plan;
  const lengths = countLengths(plan);
  const onCutting = (
    label: string,
    name: 'sticksCutOnCutting' | 'lengthsCutOnCutting',
    { cut, all }: LengthCount,
  ): Line => [
    label,
    sum(() => `${acrossSheets.at(name)}&" of ${all}"`, `${cut} of ${all}`, 'whole'),
  ];
  return [
    ['Ticked on Cutting and on Pieces', null],
    onCutting('Sticks cut or begun', 'sticksCutOnCutting', {
      cut: totals.sticksCut,
      all: totals.sticks,
    }),
    onCutting('Lengths cut', 'lengthsCutOnCutting', lengths),
    [
      'Pieces done or cut',
      sum(
        () => tickedFormula(acrossSheets.at('boxesOnPieces'), pieces.length, ''),
        sayTicked(countDone(plan), pieces.length, ''),
        'whole',
      ),
    ],
  ];
}
