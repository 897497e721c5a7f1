/** The end of the cutting sheet: a row a profile, each taken over from its own sums, and what they come to. */
import { total } from '../grammar/figures.ts';
import { spreadRow } from '../grammar/paged-rows.ts';
import { cell, sum, type DraftCell } from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';
import { countCut } from '../cut-so-far.ts';
import { onSheet } from '../plan-anchors.ts';
import { OFF_DECIMALS } from '../tolerance.ts';
import { numberIn } from '../words/print-length.ts';
import { ALL, SUMMARY } from './cutting-columns.ts';
import { keptOf } from '../kept-offcuts.ts';
import type { CuttingDraft } from './cutting-group.ts';

export function addSummary(cutting: CuttingDraft): void {
  const { pages, plan, acrossSheets, onThisSheet, facts } = cutting;
  const { unit } = plan.job.shop;
  const { styles } = facts;
  const heads = SUMMARY.headings(plan.job.shop);
  const figures = plan.profiles.map((planned) => ({
    planned,
    sticks: planned.sticks.length,
    stickLength: total(planned.sticks.map((stick) => numberIn(stick.length, unit))),
    keptLength: total(keptOf(planned.sticks).map((stick) => numberIn(stick.offcut, unit))),
    sticksCut: planned.sticks.filter(({ isCut }) => isCut).length,
    lengthsCut: total(planned.sticks.map(countCut)),
  }));
  pages.hold(spreadRow('All profiles', 'section', ALL), heads);
  const rows = figures.map((figure) => {
    const { planned, sticks, stickLength, keptLength, sticksCut, lengthsCut } = figure;
    return SUMMARY.row({
      tick: null,
      profile: cell(planned.profile.name, 'row'),
      sticks: sum(onThisSheet.at('sticks', planned), sticks, 'rowWhole'),
      stickLength: sum(onThisSheet.at('stickLength', planned), stickLength, styles.row),
      keptLength: sum(onThisSheet.at('keptLength', planned), keptLength, styles.row),
      off: sum(onThisSheet.at('lengthsOff', planned), 0, 'rowOff'),
      sticksOff: sum(
        `ROUND(${onThisSheet.at('stickLength', planned)}-${stickLength},${OFF_DECIMALS})`,
        0,
        'rowOff',
      ),
      sticksCut: sum(onThisSheet.at('sticksCut', planned), sticksCut, 'rowWhole'),
      lengthsCut: sum(onThisSheet.at('lengthsCut', planned), lengthsCut, 'rowWhole'),
    });
  });
  const none = SUMMARY.sparseRow({ profile: cell('Nothing is left to cut.', 'row') });
  let places: readonly number[] = [];
  const added = (
    column: 'sticks' | 'stickLength' | 'keptLength' | 'sticksCut' | 'lengthsCut',
    style: StyleName,
  ): DraftCell => {
    const value = total(figures.map((one) => one[column]));
    return sum(() => SUMMARY.sum(column, placeOf(places, 0), placeOf(places, -2)), value, style);
  };
  const together = SUMMARY.row({
    tick: cell(null, 'totalLabel'),
    profile: cell('Together', 'totalLabel'),
    sticks: added('sticks', 'totalWhole'),
    stickLength: added('stickLength', styles.total),
    keptLength: added('keptLength', styles.total),
    off: cell(null, 'totalLabel'),
    sticksOff: cell(null, 'totalLabel'),
    sticksCut: added('sticksCut', 'totalWhole'),
    lengthsCut: added('lengthsCut', 'totalWhole'),
  });
  places = pages.add([...(rows.length === 0 ? [none] : rows), together], [heads]);
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

/** The row at a place, counted from the end where it is less than 0. */
function placeOf(places: readonly number[], at: number): number {
  const row = places.at(at);
  if (row === undefined) throw new RangeError('The summary has no such row.');
  return row;
}
