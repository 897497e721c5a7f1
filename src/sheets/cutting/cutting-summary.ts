/** The end of the cutting sheet: a row a profile, summed up over its lay-outs, and what they come to. */
import Fraction from 'fraction.js';
import type { ProfilePlan } from '../../planning/job-plan.ts';
import { total } from '../grammar/figures.ts';
import { spreadRow } from '../grammar/paged-rows.ts';
import { cell, sum, type DraftCell } from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';
import { countCut } from '../cut-so-far.ts';
import { onSheet } from '../plan-anchors.ts';
import { OFF_DECIMALS } from '../tolerance.ts';
import { numberIn } from '../words/print-length.ts';
import { ALL, BOTH, SUMMARY, type Half } from './cutting-columns.ts';
import { keptOf } from '../kept-offcuts.ts';
import type { CuttingDraft } from './cutting-group.ts';

type Column = Parameters<Half['table']['start']>[0];

/** A formula over the rows of a profile's lay-outs, in both halves. */
type OverRows = (of: (range: (name: Column, to?: Column) => string) => string) => string;

export function addSummary(cutting: CuttingDraft): void {
  const { pages, plan, acrossSheets, onThisSheet, styles } = cutting;
  const heads = SUMMARY.headings(plan.job.shop);
  const figures = plan.profiles.map((planned) => figuresOf(planned, cutting));
  pages.hold(spreadRow('All profiles', 'section', ALL), heads);
  const places: number[] = [];
  const rows = figures.map((figure, at) => rowOf(figure, cutting, () => placeOf(places, at)));
  const none = SUMMARY.sparseRow({ profile: cell('Nothing is left to cut.', 'row') });
  const added = (
    column: Exclude<keyof Figures, 'planned' | 'more'>,
    style: StyleName,
  ): DraftCell => {
    const value = total(figures.map((one) => one[column]));
    return sum(() => SUMMARY.sum(column, placeOf(places, 0), placeOf(places, -2)), value, style);
  };
  const together = SUMMARY.row({
    profile: cell('Together', 'totalLabel'),
    sticks: added('sticks', 'totalWhole'),
    stickLength: added('stickLength', styles.total),
    kept: added('kept', 'totalWhole'),
    keptLength: added('keptLength', styles.total),
    cuts: added('cuts', 'totalWhole'),
    sticksCut: added('sticksCut', 'totalWhole'),
    lengthsCut: added('lengthsCut', 'totalWhole'),
    underProfile: cell(null, 'totalLabel'),
    pieceLength: added('pieceLength', styles.total),
    off: cell(null, 'totalLabel'),
    sticksOff: cell(null, 'totalLabel'),
  });
  places.push(...pages.add([...(rows.length === 0 ? [none] : rows), together], [heads]));
  plan.profiles.forEach((planned, at) => {
    const here = (column: 'sticks' | 'cuts' | 'stickLength'): string =>
      onSheet('cutting', SUMMARY.at(column, placeOf(places, at)));
    acrossSheets.place('sticksOnCutting', here('sticks'), planned);
    acrossSheets.place('cutsOnCutting', here('cuts'), planned);
    acrossSheets.place('lengthOnCutting', here('stickLength'), planned);
  });
  const row = placeOf(places, -1);
  acrossSheets.place('allLengthOnCutting', onSheet('cutting', SUMMARY.at('stickLength', row)));
  acrossSheets.place('allKeptOnCutting', onSheet('cutting', SUMMARY.at('keptLength', row)));
  const here = (column: 'sticks' | 'sticksCut' | 'lengthsCut'): string => SUMMARY.at(column, row);
  onThisSheet.place('allSticks', here('sticks'));
  onThisSheet.place('allSticksCut', here('sticksCut'));
  onThisSheet.place('allLengthsCut', here('lengthsCut'));
  acrossSheets.place('allSticksOnCutting', onSheet('cutting', here('sticks')));
  acrossSheets.place('sticksCutOnCutting', onSheet('cutting', here('sticksCut')));
  acrossSheets.place('lengthsCutOnCutting', onSheet('cutting', here('lengthsCut')));
  const range = (column: 'off' | 'sticksOff'): string =>
    onSheet('cutting', SUMMARY.fixedRange(column, placeOf(places, 0), placeOf(places, -2)));
  acrossSheets.place('lengthsOffOnCutting', range('off'));
  acrossSheets.place('sticksOffOnCutting', range('sticksOff'));
}

interface Figures {
  readonly planned: ProfilePlan;
  readonly sticks: number;
  readonly stickLength: number;
  readonly kept: number;
  readonly keptLength: number;
  readonly cuts: number;
  readonly pieceLength: number;
  readonly sticksCut: number;
  readonly lengthsCut: number;
  /** Overlaps and spares are cut, but are no piece's. */
  readonly more: number;
}

function figuresOf(planned: ProfilePlan, { plan }: CuttingDraft): Figures {
  const { unit } = plan.job.shop;
  const { sticks, tally } = planned;
  const pieces = sticks.flatMap((stick) => stick.pieces);
  const cut = pieces.reduce((all, { length }) => all.add(length), new Fraction(0));
  const kept = keptOf(sticks);
  return {
    planned,
    sticks: sticks.length,
    stickLength: total(sticks.map((stick) => numberIn(stick.length, unit))),
    kept: kept.length,
    keptLength: total(kept.map((stick) => numberIn(stick.offcut, unit))),
    cuts: pieces.length,
    pieceLength: numberIn(cut, unit),
    sticksCut: sticks.filter(({ isCut }) => isCut).length,
    lengthsCut: total(sticks.map(countCut)),
    more: numberIn(cut.sub(tally.lengthNet), unit),
  };
}

function rowOf(
  figure: Figures,
  { acrossSheets, onThisSheet, styles }: CuttingDraft,
  row: () => number,
): ReturnType<typeof SUMMARY.row> {
  const { planned, more } = figure;
  const over: OverRows = (of) => {
    const [first, last] = onThisSheet.at('layOuts', planned);
    return BOTH.map(({ table }) =>
      of((name, to) => table.rangeTo(name, to ?? name, first, last)),
    ).join('+');
  };
  return SUMMARY.row({
    profile: cell(planned.profile.name, 'row'),
    sticks: sum(() => over((range) => `SUM(${range('sticks')})`), figure.sticks, 'rowWhole'),
    stickLength: sum(
      () => over((range) => `SUMPRODUCT(${range('sticks')},${range('stickLength')})`),
      figure.stickLength,
      styles.row,
    ),
    kept: sum(
      () => over((range) => `SUMIF(${range('kept')},">0",${range('sticks')})`),
      figure.kept,
      'rowWhole',
    ),
    keptLength: sum(
      () => over((range) => `SUMPRODUCT(${range('sticks')},${range('kept')})`),
      figure.keptLength,
      styles.row,
    ),
    cuts: sum(() => over((range) => `SUM(${range('times')})`), figure.cuts, 'rowWhole'),
    // A stick is begun once one of its lengths is cut.
    sticksCut: sum(
      () => over((range) => `COUNTIF(${range('done1', 'done2')},">0")`),
      figure.sticksCut,
      'rowWhole',
    ),
    lengthsCut: sum(
      () => over((range) => `SUM(${range('done1', 'done2')})`),
      figure.lengthsCut,
      'rowWhole',
    ),
    underProfile: cell(null, 'row'),
    pieceLength: sum(
      () => over((range) => `SUMPRODUCT(${range('times')},${range('length')})`),
      figure.pieceLength,
      styles.row,
    ),
    off: sum(
      () => {
        const net = acrossSheets.at('netLengthOnProduction', planned);
        return `ROUND(${SUMMARY.at('pieceLength', row())}-${more}-${net},${OFF_DECIMALS})`;
      },
      0,
      'rowOff',
    ),
    sticksOff: sum(
      () => `ROUND(${SUMMARY.at('stickLength', row())}-${figure.stickLength},${OFF_DECIMALS})`,
      0,
      'rowOff',
    ),
  });
}

/** The row at a place, counted from the end where it is less than 0. */
function placeOf(places: readonly number[], at: number): number {
  const row = places.at(at);
  if (row === undefined) throw new RangeError('The summary has no such row.');
  return row;
}
