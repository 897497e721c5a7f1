/** What is to make, by profile: pieces, sticks, lengths, board feet, passes and hours. */
import type { LengthUnit } from '../../core/units/length-unit.ts';
import type { ExactInches } from '../../core/units/length.ts';
import type { JobPlan, ProfilePlan } from '../../planning/job-plan.ts';
import { soldThickness } from '../../planning/tally.ts';
import { hoursOf } from '../../planning/work/hours.ts';
import { total } from '../grammar/figures.ts';
import { lengthStyles, type LengthStyles } from '../grammar/length-styles.ts';
import {
  cell,
  sum,
  type DraftCell,
  type SheetDraft,
  type SheetRow,
} from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';
import { hoursOnLabor } from '../hours-on-labor.ts';
import { onSheet, type PlanAnchors, type ProductionTotal } from '../plan-anchors.ts';
import { allowanceFormula } from '../price-formulas.ts';
import { VOLUME, volumeIn } from '../words/lumber-volume.ts';
import { LONG_UNIT, numberIn } from '../words/print-length.ts';
import type { ProductionAnchors } from './production-anchors.ts';
import { QUANTITIES, ROOMS } from './production-columns.ts';
import {
  MAKES,
  NOTHING,
  sayNotMade,
  SECTIONS,
  SOLD_BY_LENGTH,
  UNKNOWN,
  WHOLE_JOB,
} from './production-words.ts';

const NONE = cell(null, 'row');

/** What Labor and Cutting take of a profile's row. */
type Lent =
  | 'netLengthOnProduction'
  | 'stickLengthOnProduction'
  | 'piecesOnProduction'
  | 'boardFeetOnProduction'
  | 'allowedFeetOnProduction'
  | 'allowanceOnProduction'
  | 'hoursOnProduction';
type Lender =
  | 'length'
  | 'stickLength'
  | 'pieces'
  | 'boardFeet'
  | 'boardFeetWithAllowance'
  | 'allowance'
  | 'hours';

type QuantityFactor = 'thickness' | 'blankWidth' | 'length' | 'boardFeet' | 'allowance';

export function addProfiles(
  draft: SheetDraft,
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  onThisSheet: ProductionAnchors,
): void {
  draft.spread(SECTIONS.quantities, 'section');
  draft.put(QUANTITIES.headings(plan.job.shop));
  const first = draft.next;
  const styles = stylesOf(plan);
  plan.profiles.forEach((planned, index) => {
    onThisSheet.place('quantityRow', draft.next, planned);
    const lend = (name: Lent, column: Lender): void => {
      const at = onSheet('production', QUANTITIES.fixed(column, draft.next));
      acrossSheets.place(name, at, planned);
    };
    lend('netLengthOnProduction', 'length');
    lend('stickLengthOnProduction', 'stickLength');
    lend('piecesOnProduction', 'pieces');
    lend('boardFeetOnProduction', 'boardFeet');
    lend('allowanceOnProduction', 'allowance');
    lend('hoursOnProduction', 'hours');
    lend('allowedFeetOnProduction', 'boardFeetWithAllowance');
    draft.put(profileRow(plan, planned, index + 1, styles, acrossSheets, onThisSheet));
  });
  addJobWork(draft, plan, acrossSheets);
  if (plan.profiles.length === 0)
    draft.put(QUANTITIES.loose({ profile: cell(NOTHING.make, 'row') }));
  addTotals(draft, plan, first, styles, onThisSheet);
  for (const line of sayNotMade(plan)) draft.spread(line, 'note', 1);
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
      profiles.flatMap(({ profile }) => soldThickness(profile, job.shop) ?? []),
      unit,
    ),
    width: lengthStyles(
      profiles.flatMap(({ profile }) => profile.blankWidth ?? []),
      unit,
    ),
  };
}

function profileRow(
  plan: JobPlan,
  planned: ProfilePlan,
  number: number,
  styles: Styles,
  acrossSheets: PlanAnchors,
  onThisSheet: ProductionAnchors,
): SheetRow {
  const { unit } = plan.job.shop;
  const { profile, tally } = planned;
  const at = (column: 'number' | QuantityFactor): string =>
    QUANTITIES.at(column, onThisSheet.at('quantityRow', planned));
  /** Sums a column of the lines by room over those of this profile. */
  const ofLines = (column: 'pieces' | 'length') => (): string => {
    const rows = onThisSheet.at('roomRows');
    const numbers = ROOMS.rowsOf('profileNumber', ...rows);
    return `SUMIF(${numbers},${at('number')},${ROOMS.rowsOf(column, ...rows)})`;
  };
  const length = numberIn(tally.lengthBought, unit);
  const long = numberIn(tally.lengthNet, unit) / LONG_UNIT[unit].holds;
  return QUANTITIES.row({
    number: cell(number, 'rowWhole'),
    profile: cell(profile.name, 'rowStrong'),
    make: cell(MAKES[profile.make], 'row'),
    pieces: sum(ofLines('pieces'), tally.pieces, 'rowWhole'),
    sticks: sum(() => acrossSheets.at('sticksOnCutting', planned), tally.sticks, 'rowWhole'),
    long: sum(`${at('length')}/${LONG_UNIT[unit].holds}`, long, 'rowDecimal'),
    passes:
      profile.make === 'buy'
        ? cell(null, 'rowWhole')
        : sum(() => onThisSheet.at('passesInOrder', planned), tally.passes, 'rowWhole'),
    hours: sum(() => onThisSheet.at('hoursInOrder', planned), hoursOf(tally.hours), 'rowDecimal'),
    length: sum(ofLines('length'), numberIn(tally.lengthNet, unit), styles.net.row),
    stickLength: sum(() => acrossSheets.at('lengthOnCutting', planned), length, styles.sticks.row),
    allowance: cell(tally.offcutAllowancePercent, 'rowNumber'),
    ...(profile.make === 'buy'
      ? {
          thickness: NONE,
          blankWidth: NONE,
          boardFeet: cell(SOLD_BY_LENGTH, 'rowDecimal'),
          boardFeetWithAllowance: NONE,
          boardFeetBought: NONE,
        }
      : {
          thickness: sizeCell(soldThickness(profile, plan.job.shop), unit, styles.thickness.row),
          blankWidth: sizeCell(profile.blankWidth, unit, styles.width.row),
          boardFeet: figureCell(
            `${at('thickness')}*${at('blankWidth')}*${at('length')}/${VOLUME[unit].cubic}`,
            tally.boardFeetNet,
            unit,
          ),
          boardFeetWithAllowance: figureCell(
            allowanceFormula(at('boardFeet'), at('allowance'), plan.job.shop.allowanceOf),
            tally.boardFeetWithAllowance,
            unit,
          ),
          boardFeetBought: boughtCell(plan, planned, onThisSheet),
        }),
  });
}

/** Work for the whole job: a row without a number, where there is any. */
function addJobWork(
  draft: SheetDraft,
  { jobWork: { lines, hours } }: JobPlan,
  acrossSheets: PlanAnchors,
): void {
  if (lines.length === 0) {
    acrossSheets.place('jobHoursOnProduction', '0');
    return;
  }
  const row = draft.put(
    QUANTITIES.sparseRow({
      profile: cell(WHOLE_JOB, 'rowStrong'),
      hours: sum(() => hoursOnLabor(lines, acrossSheets), hours, 'rowDecimal'),
    }),
  );
  const at = onSheet('production', QUANTITIES.at('hours', row));
  acrossSheets.place('jobHoursOnProduction', at);
}

/** A profile with stock of its own has the sum of what is pulled and bought; else its share, a number. */
function boughtCell(
  plan: JobPlan,
  planned: ProfilePlan,
  onThisSheet: ProductionAnchors,
): DraftCell {
  const { boardFeetBought } = planned.tally;
  const group = plan.groups.find(({ profiles }) => profiles.includes(planned.profile));
  if (boardFeetBought === undefined || group?.profiles.length !== 1) {
    return volumeCell(boardFeetBought, plan.job.shop.unit);
  }
  return figureCell(
    () => onThisSheet.at('boardFeetBorne', planned),
    boardFeetBought,
    plan.job.shop.unit,
  );
}

function sizeCell(size: ExactInches | undefined, unit: LengthUnit, style: StyleName): DraftCell {
  return cell(size === undefined ? UNKNOWN : numberIn(size, unit), style);
}

/** Of board feet. */
function figureCell(
  formula: string | (() => string),
  boardFeet: number | undefined,
  unit: LengthUnit,
): DraftCell {
  if (boardFeet === undefined) return volumeCell(boardFeet, unit);
  return sum(formula, volumeIn(boardFeet, unit), VOLUME[unit].styles.row);
}

function volumeCell(boardFeet: number | undefined, unit: LengthUnit): DraftCell {
  const { row } = VOLUME[unit].styles;
  return cell(boardFeet === undefined ? UNKNOWN : volumeIn(boardFeet, unit), row);
}

function addTotals(
  draft: SheetDraft,
  { profiles, job, jobWork, totals }: JobPlan,
  first: number,
  styles: Styles,
  onThisSheet: ProductionAnchors,
): void {
  const { unit } = job.shop;
  const row = draft.next;
  const added = (
    column:
      | 'pieces'
      | 'sticks'
      | 'length'
      | 'stickLength'
      | 'boardFeet'
      | 'boardFeetWithAllowance'
      | 'boardFeetBought'
      | 'passes'
      | 'hours',
    name: ProductionTotal,
    style: StyleName,
    value: (one: ProfilePlan) => number,
    ofJob = 0,
  ): DraftCell => {
    onThisSheet.place(`total ${name}`, QUANTITIES.at(column, row));
    return QUANTITIES.sumCell(column, [first, row - 1], total(profiles.map(value)) + ofJob, style);
  };
  const { net, sticks } = styles;
  const volume = VOLUME[unit].styles.total;
  const long = numberIn(totals.lengthNet, unit) / LONG_UNIT[unit].holds;
  const together = {
    profile: cell('Together', 'totalLabel'),
    pieces: added('pieces', 'pieces', 'totalWhole', ({ tally }) => tally.pieces),
    sticks: added('sticks', 'sticks', 'totalWhole', ({ tally }) => tally.sticks),
    long: sum(`${QUANTITIES.at('length', row)}/${LONG_UNIT[unit].holds}`, long, 'total'),
    boardFeet: added('boardFeet', 'boardFeetNet', volume, ({ tally }) =>
      volumeIn(tally.boardFeetNet ?? 0, unit),
    ),
    boardFeetWithAllowance: added(
      'boardFeetWithAllowance',
      'boardFeetWithAllowance',
      volume,
      ({ tally }) => volumeIn(tally.boardFeetWithAllowance ?? 0, unit),
    ),
    boardFeetBought: added('boardFeetBought', 'boardFeetBought', volume, ({ tally }) =>
      volumeIn(tally.boardFeetBought ?? 0, unit),
    ),
    passes: added('passes', 'passes', 'totalWhole', ({ tally }) => tally.passes),
    hours: added('hours', 'hours', 'total', ({ tally }) => hoursOf(tally.hours), jobWork.hours),
    length: added('length', 'lengthNet', net.total, ({ tally }) => numberIn(tally.lengthNet, unit)),
    stickLength: added('stickLength', 'lengthBought', sticks.total, ({ tally }) =>
      numberIn(tally.lengthBought, unit),
    ),
  };
  draft.put(QUANTITIES.loose(together, cell(null, 'totalLabel')));
}
