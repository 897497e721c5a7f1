/** What is to make, by profile: pieces, sticks, lengths and board feet. */
import { nameKey } from '../../planning/job.ts';
import type { JobPlan, ProfilePlan } from '../../planning/job-plan.ts';
import { soldThickness } from '../../planning/tally.ts';
import { lengthStyles, type LengthStyles } from '../grammar/length-styles.ts';
import { sumOf, total, type PlanCells } from '../plan-cells.ts';
import { numberIn, printTotal } from '../words/print-length.ts';
import { cell, sum, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { CUBIC_PER_BOARD_FOOT, UNKNOWN } from './board-feet-cells.ts';
import type { ProductionCells, TotalName } from './production-cells.ts';

const MADE = { cove: 'cove, cut here', 'crown cove': 'crown, cut here', buy: 'bought' };
const NOTHING = 'Nothing is left to make.';

export function addProfiles(
  draft: SheetDraft,
  plan: JobPlan,
  cells: PlanCells,
  own: ProductionCells,
): void {
  const { unit } = plan.job.shop;
  const { profiles } = plan;
  draft.spread('By profile: pieces, lengths and board feet', 'section');
  draft.add(
    cell('No.', 'headingRight'),
    cell('Profile', 'heading'),
    cell('Made or bought', 'heading'),
    ...[
      'Pieces',
      'Sticks, blanks',
      'Net length',
      `Net length (${unit})`,
      `Sticks, length (${unit})`,
      `Thickness as sold (${unit})`,
      `Blank width (${unit})`,
      'Board feet, net',
      'Allowance, %',
      'with allowance',
    ].map((text) => cell(text, 'headingRight')),
  );
  const first = draft.next;
  const styles = stylesOf(plan);
  profiles.forEach((one, index) => addRow(draft, plan, one, index, styles, cells, own));
  if (profiles.length === 0) draft.add(null, cell(NOTHING, 'row'));
  addTotals(draft, plan, first, styles, own);
  for (const line of notMade(plan)) draft.spread(line, 'note', 1);
  draft.blank();
}

interface Styles {
  readonly net: LengthStyles;
  readonly sticks: LengthStyles;
  readonly thickness: LengthStyles;
  readonly width: LengthStyles;
}

function stylesOf({ profiles, pieces, job }: JobPlan): Styles {
  const { unit } = job.shop;
  return {
    net: lengthStyles(
      pieces.map(({ cutLength }) => cutLength),
      unit,
    ),
    sticks: lengthStyles(
      profiles.flatMap(({ sticks }) => sticks.map(({ length }) => length)),
      unit,
    ),
    thickness: lengthStyles(
      profiles.flatMap(({ profile }) => soldThickness(profile) ?? []),
      unit,
    ),
    width: lengthStyles(
      profiles.flatMap(({ profile }) => profile.blankWidth ?? []),
      unit,
    ),
  };
}

function addRow(
  draft: SheetDraft,
  plan: JobPlan,
  { profile, tally }: ProfilePlan,
  index: number,
  styles: Styles,
  cells: PlanCells,
  own: ProductionCells,
): void {
  const { unit } = plan.job.shop;
  const row = draft.next;
  own.quantityRows[index] = row;
  /** Sums a column of the lines by room over those of this profile: names count as they are written. */
  const ofLines = (column: string) => (): string => {
    const [first, last] = own.rooms;
    const range = (letter: string): string => `${letter}$${first}:${letter}$${last}`;
    return `SUMPRODUCT(EXACT(${range('C')},B${row})*(${range('A')}>0),${range(column)})`;
  };
  const thickness = soldThickness(profile);
  const { blankWidth } = profile;
  const net = tally.boardFeetNet;
  draft.add(
    cell(index + 1, 'rowWhole'),
    cell(profile.name, 'rowStrong'),
    cell(MADE[profile.make], 'row'),
    sum(ofLines('D'), tally.pieces, 'rowWhole'),
    sum(() => cells.sticks[index] ?? '0', tally.sticks, 'rowWhole'),
    cell(printTotal(tally.lengthNet, plan.job.shop), 'rowRight'),
    sum(ofLines('G'), numberIn(tally.lengthNet, unit), styles.net.row),
    sum(() => cells.bought[index] ?? '0', numberIn(tally.lengthBought, unit), styles.sticks.row),
    cell(thickness === undefined ? UNKNOWN : numberIn(thickness, unit), styles.thickness.row),
    cell(blankWidth === undefined ? UNKNOWN : numberIn(blankWidth, unit), styles.width.row),
    net === undefined
      ? cell(UNKNOWN, 'rowDecimal')
      : sum(`I${row}*J${row}*G${row}/${CUBIC_PER_BOARD_FOOT[unit]}`, net, 'rowDecimal'),
    cell(tally.offcutAllowancePercent, 'rowNumber'),
    tally.boardFeetWithAllowance === undefined
      ? cell(UNKNOWN, 'rowDecimal')
      : sum(`K${row}*(1+L${row}/100)`, tally.boardFeetWithAllowance, 'rowDecimal'),
  );
}

function addTotals(
  draft: SheetDraft,
  { profiles, job }: JobPlan,
  first: number,
  styles: Styles,
  own: ProductionCells,
): void {
  const { unit } = job.shop;
  const last = draft.next - 1;
  const row = draft.next;
  const none = cell(null, 'totalLabel');
  const added = (
    column: string,
    name: TotalName,
    style: 'totalWhole' | 'total' | LengthStyles['total'],
    value: (tally: ProfilePlan['tally']) => number,
  ): DraftCell => {
    own.totals.set(name, `${column}${row}`);
    return sum(sumOf(column, first, last), total(profiles.map((one) => value(one.tally))), style);
  };
  draft.add(
    none,
    cell('Together', 'totalLabel'),
    none,
    added('D', 'pieces', 'totalWhole', (tally) => tally.pieces),
    added('E', 'sticks', 'totalWhole', (tally) => tally.sticks),
    none,
    added('G', 'lengthNet', styles.net.total, (tally) => numberIn(tally.lengthNet, unit)),
    added('H', 'lengthBought', styles.sticks.total, (tally) => numberIn(tally.lengthBought, unit)),
    none,
    none,
    added('K', 'boardFeetNet', 'total', (tally) => tally.boardFeetNet ?? 0),
    none,
    added('M', 'boardFeetWithAllowance', 'total', (tally) => tally.boardFeetWithAllowance ?? 0),
  );
}

/** Profiles of the job that nothing is made of, each named once. */
function notMade({ job, pieces, profiles }: JobPlan): string[] {
  const planned = new Set(profiles.map(({ profile }) => profile));
  const asked = new Set(pieces.map(({ profile }) => nameKey(profile)));
  const rest = job.profiles.filter((profile) => !planned.has(profile));
  const done = rest.filter(({ name }) => asked.has(nameKey(name)));
  const unused = rest.filter(({ name }) => !asked.has(nameKey(name)));
  const say = (start: string, some: typeof rest): string[] =>
    some.length === 0 ? [] : [`${start}: ${some.map(({ name }) => name).join(', ')}.`];
  return [...say('Done already', done), ...say('Not used', unused)];
}
