/** Offcuts to keep, and blanks that nothing was cut from: a row each, with what to write on it. */
import { plansOf, type CuttingGroup, type JobPlan } from '../../planning/job-plan.ts';
import type { ExactInches, LengthReading } from '../../core/units/length.ts';
import { lengthStyles, type LengthStyles } from '../grammar/length-styles.ts';
import { numberIn, printExact } from '../words/print-length.ts';
import {
  cell,
  sum,
  type DraftCell,
  type SheetDraft,
  type SheetRow,
} from '../grammar/sheet-draft.ts';
import type { CuttingAnchors } from './cutting-anchors.ts';
import { ALL, OFFCUTS } from './cutting-columns.ts';
import type { CuttingDraft } from './cutting-group.ts';
import { keptOf } from './cutting-group.ts';
import { spreadRow, type PagedRows } from '../grammar/paged-rows.ts';
import { nameUnit, sayWhich, type LotLetters } from './stock-lots.ts';

interface Kept {
  /** Not twice in a job: what is written on it. */
  readonly label: string;
  readonly length: ExactInches;
  /** The number's cell on the sheet, where it stands there already. */
  readonly at?: string;
  readonly what: string;
  readonly of: string;
  readonly wide: string;
  readonly thick: string;
  readonly from: string;
}

export function addOffcuts({ draft, pages, plan, facts, onThisSheet }: CuttingDraft): void {
  const { unit, offcutCredit } = plan.job.shop;
  const list = plan.groups.flatMap((group) => [
    ...keptOffcuts(plan, group, facts.letters, onThisSheet),
    ...wholeBlanks(group, facts.letters, plan.job.shop, offcutCredit > 0),
  ]);
  pages.hold(spreadRow('Offcuts to keep', 'section', ALL));
  if (list.length === 0) {
    pages.add([spreadRow('none', 'wrapped', ALL), { cells: [] }]);
    return;
  }
  const styles = lengthStyles(
    list.map(({ length }) => length),
    unit,
  );
  const rows = list.map((one, index) =>
    OFFCUTS.row({
      tick: cell(null, 'tick'),
      number: cell(index + 1, 'rowWhole'),
      label: cell(one.label, 'rowStrong'),
      wide: cell(one.wide, 'row'),
      length: numberCell(one, numberIn(one.length, unit), styles),
      thick: cell(one.thick, 'row'),
      of: cell(one.of, 'row'),
      what: cell(one.what, 'row'),
      from: cell(one.from, 'row'),
      place: cell(null, 'row'),
    }),
  );
  addList(draft, pages, OFFCUTS.headings(plan.job.shop), rows);
  pages.add([{ cells: [] }]);
}

function numberCell({ at }: Kept, value: number, styles: LengthStyles): DraftCell {
  return at === undefined ? cell(value, styles.row) : sum(at, value, styles.row);
}

/** A table proper on one page; a longer list has its headings on each. */
function addList(
  draft: SheetDraft,
  pages: PagedRows,
  heads: SheetRow,
  rows: readonly SheetRow[],
): void {
  if (pages.fitOnPage([heads, ...rows])) {
    const [top = 1] = pages.add([heads, ...rows]);
    draft.addTable('Offcuts', top, top + rows.length, OFFCUTS.width);
    return;
  }
  pages.hold(heads);
  for (const row of rows) pages.add([row], [heads]);
}

function keptOffcuts(
  plan: JobPlan,
  group: CuttingGroup,
  letters: LotLetters,
  onThisSheet: CuttingAnchors,
): Kept[] {
  const { shop } = plan.job;
  return plansOf(plan, group).flatMap(({ profile, sticks }) =>
    keptOf(sticks).map((stick): Kept => {
      const { blankWidth, blankThickness } = profile;
      return {
        label: `${stick.id} rest`,
        length: stick.offcut,
        at: onThisSheet.at('kept', stick),
        what: 'rest of a stick',
        of: profile.name,
        wide: blankWidth === undefined ? '' : printExact(blankWidth, shop),
        thick: blankThickness === undefined ? '' : printExact(blankThickness, shop),
        from: sayWhich(letters, stick),
      };
    }),
  );
}

/** Each by itself: `C4 blank 2`. */
function wholeBlanks(
  { boards }: CuttingGroup,
  letters: LotLetters,
  reading: LengthReading,
  isCredited: boolean,
): Kept[] {
  return boards.flatMap(({ item, unit: number, strips }) =>
    strips.flatMap(({ width, profile }, at): Kept[] => {
      if (profile !== undefined) return [];
      const name = nameUnit(letters, item, number);
      return [
        {
          label: `${name} blank ${at + 1}`,
          length: item.length,
          what: `whole blank${isCredited ? ', not credited' : ''}`,
          of: item.for,
          wide: printExact(width, reading),
          thick: item.thicknessClass,
          from: `board ${name}`,
        },
      ];
    }),
  );
}
