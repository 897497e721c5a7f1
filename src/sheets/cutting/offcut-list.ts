/** Offcuts to keep, and blanks that nothing was cut from: a row each, with what to write on it. */
import { lengthStyles, type LengthStyles } from '../grammar/length-styles.ts';
import { numberIn } from '../words/print-length.ts';
import { cell, sum, type DraftCell } from '../grammar/sheet-draft.ts';
import type { CuttingAnchors } from './cutting-anchors.ts';
import { ALL, OFFCUTS } from './cutting-columns.ts';
import type { CuttingDraft } from './cutting-group.ts';
import { listKept, type Kept } from '../kept-offcuts.ts';
import { spreadRow } from '../grammar/paged-rows.ts';

export function addOffcuts({ pages, plan, facts, onThisSheet }: CuttingDraft): void {
  const { unit } = plan.job.shop;
  const list = plan.groups.flatMap((group) => listKept(plan, group, facts.letters));
  pages.hold(spreadRow('Offcuts to keep', 'section', ALL));
  if (list.length === 0) {
    pages.add([spreadRow('none', 'wrapped', ALL), { cells: [] }]);
    return;
  }
  const styles = lengthStyles(
    list.map(({ length }) => length),
    unit,
  );
  const rows = list.map((one) =>
    OFFCUTS.row({
      tick: cell(null, 'tick'),
      label: cell(one.label, 'rowStrong'),
      wide: cell(one.wide, 'row'),
      length: numberCell(one, numberIn(one.length, unit), styles, onThisSheet),
      thick: cell(one.thick, 'row'),
      of: cell(one.of, 'row'),
      what: cell(one.what, 'row'),
      from: cell(one.from, 'row'),
      place: cell(null, 'row'),
    }),
  );
  const heads = OFFCUTS.headings(plan.job.shop);
  pages.hold(heads);
  for (const row of rows) pages.add([row], [heads]);
  pages.add([{ cells: [] }]);
}

/** What stands on the sheet already isn't typed twice. */
function numberCell(
  { stick }: Kept,
  value: number,
  styles: LengthStyles,
  onThisSheet: CuttingAnchors,
): DraftCell {
  if (stick === undefined) return cell(value, styles.row);
  return sum(onThisSheet.at('kept', stick), value, styles.row);
}
