/** The sheet Changes: two plans of one job against each other, for a change order. */
import Fraction from 'fraction.js';
import type { ExactInches } from '../../core/units/length.ts';
import { sayMoney } from '../../core/units/say-money.ts';
import type { ColumnName } from '../grammar/columns.ts';
import type { Comparison, RunPair } from '../../planning/compare/comparison.ts';
import type { Job } from '../../planning/job.ts';
import type { Shop } from '../../planning/shop.ts';
import { DESCRIPTION_VERSION, type WorkbookDescription } from '../grammar/description.ts';
import { lengthStyles } from '../grammar/length-styles.ts';
import { roomForRows } from '../grammar/page-size.ts';
import { PagedRows, spreadRow } from '../grammar/paged-rows.ts';
import { cell, SheetDraft, sum, type DraftCell, type SheetRow } from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';
import { stampSheet } from '../stamp.ts';
import { numberIn } from '../words/print-length.ts';
import { fileTitle } from '../words/say-title.ts';
import { JUDGMENT_CAUTION } from '../words/standing-cautions.ts';
import { ALL, CUT, GRID, LINES, PROFILES, RUNS, TOTALS } from './changes-columns.ts';
import { addTable, CHANGES_SHEET, units } from './changes-tables.ts';
import {
  CUT_TITLE,
  listLost,
  listOtherwise,
  NOTHING_OTHERWISE,
  OFFICE_NOTE,
  sayCounts,
  sayCut,
  sayNeed,
  sayOpen,
  sayProfile,
  sayWhat,
} from './changes-words.ts';

const ZERO = new Fraction(0);

/** Of the plan before and of the one after, each in a sentence. */
export interface ComparedPlans {
  readonly before: string;
  readonly after: string;
}

/**
 * @param plans what the two are, and when each was planned
 * @param job of the plan after: its unit, money and paper, and what names it
 */
export function describeChanges(
  comparison: Comparison,
  plans: ComparedPlans,
  { shop, titleBlock }: Job,
  made: string,
): WorkbookDescription {
  const draft = new SheetDraft(CHANGES_SHEET, GRID, true);
  const pages = new PagedRows(draft, GRID, roomForRows(shop.paper, GRID, 'landscape'));
  const changes = { comparison, shop, pages };
  const say = (cents: number): string => sayMoney(cents, shop.currency, shop.decimalSign);
  const notes = [sayCounts(comparison), sayCut(comparison), sayOpen(comparison, say)];
  pages.add([
    spreadRow(CHANGES_SHEET, 'title', ALL),
    spreadRow(`Before: ${plans.before}`, 'wrapped', ALL),
    spreadRow(`After: ${plans.after}`, 'wrapped', ALL),
    spreadRow(JUDGMENT_CAUTION, 'caution', ALL),
    spreadRow(OFFICE_NOTE, 'note', ALL),
    ...notes.flatMap((one) => (one === undefined ? [] : [spreadRow(one, 'wrapped', ALL)])),
  ]);
  addTotals(changes);
  addRuns(changes);
  addProfiles(changes);
  addLines(changes);
  addCut(changes);
  const print = { paper: shop.paper, orientation: 'landscape', footer: CHANGES_SHEET } as const;
  const sheet = stampSheet(draft.finish(print), { shop, titleBlock }, undefined);
  return {
    version: DESCRIPTION_VERSION,
    title: fileTitle(CHANGES_SHEET, titleBlock),
    made,
    sheets: [sheet],
  };
}

interface Changes {
  readonly comparison: Comparison;
  readonly shop: Shop;
  readonly pages: PagedRows;
}

type Total = readonly [what: string, before: number, after: number, style: StyleName];

function addTotals(changes: Changes): void {
  const { comparison, shop } = changes;
  const { before, after } = comparison.totals;
  const lengths = lengthStyles([before.length, after.length], shop.unit).row;
  const money = (what: string, of: (figures: typeof before) => number): Total => [
    `${what} (${shop.currency})`,
    units(of(before)),
    units(of(after)),
    'rowDecimal',
  ];
  const [was, is] = [before, after].map(({ length }) => numberIn(length, shop.unit));
  const rows: readonly Total[] = [
    ['Pieces to cut', before.pieces, after.pieces, 'rowWhole'],
    ['Pieces done already', before.done, after.done, 'rowWhole'],
    ['Sticks and blanks', before.sticks, after.sticks, 'rowWhole'],
    [`Net length (${shop.unit})`, was ?? 0, is ?? 0, lengths],
    ['Passes over the blade', before.passes, after.passes, 'rowWhole'],
    ['Hours', before.hours, after.hours, 'rowDecimal'],
    money('Cost', ({ costCents }) => costCents),
    money('Price', ({ priceCents }) => priceCents),
    money('Tax', ({ taxCents }) => taxCents),
    money('To pay', ({ priceCents, taxCents }) => priceCents + taxCents),
  ];
  addTable(changes, {
    title: 'In all',
    headings: TOTALS.headings(shop),
    rows: rows.map(([what, from, to, style]) => (row) => {
      const more = (): string => `${TOTALS.at('after', row())}-${TOTALS.at('before', row())}`;
      return TOTALS.row({
        what: cell(what, 'row'),
        before: cell(from, style),
        after: cell(to, style),
        more: sum(more, to - from, style),
      });
    }),
  });
}

function addRuns(changes: Changes): void {
  const { comparison, shop } = changes;
  const runs = listOtherwise(comparison);
  const lengths = runs.flatMap(({ before, after }) => [before?.length, after?.length]);
  const style = lengthStyles(known(lengths), shop.unit).row;
  const headings = RUNS.headings(shop);
  if (runs.length === 0) {
    const none = (): SheetRow => spreadRow(NOTHING_OTHERWISE, 'row', ALL);
    addTable(changes, { title: 'Run by run', headings, rows: [none] });
    return;
  }
  addTable(changes, {
    title: 'Run by run',
    headings,
    rows: runs.map((one) => (row) => runRow(one, row, style, shop)),
  });
}

function runRow(one: RunPair, row: () => number, style: StyleName, shop: Shop): SheetRow {
  const { room, run, profile, before, after, differs } = one;
  const inUnit = (length: ExactInches | undefined): number => numberIn(length ?? ZERO, shop.unit);
  const [was, is] = [inUnit(before?.length), inUnit(after?.length)];
  const longer = (): string => `${RUNS.at('lengthAfter', row())}-${RUNS.at('lengthBefore', row())}`;
  return RUNS.row({
    is: cell(sayWhat(one), 'row'),
    room: cell(room, 'row'),
    run: cell(run, 'row'),
    profile: cell(profile, 'row'),
    piecesBefore: cell(before?.pieces ?? 0, 'rowWhole'),
    piecesAfter: cell(after?.pieces ?? 0, 'rowWhole'),
    lengthBefore: cell(was, style),
    lengthAfter: cell(is, style),
    longer: sum(longer, is - was, style),
    differs: cell(differs.join(', '), 'row'),
  });
}

function addProfiles(changes: Changes): void {
  const { comparison, shop } = changes;
  const { before, after } = comparison.totals;
  addTable(changes, {
    title: 'By profile',
    headings: PROFILES.headings(shop),
    rows: comparison.profiles.map((one) => (row) => {
      const [was, is] = [one.before, one.after];
      const [from, to] = [units(was?.priceCents), units(is?.priceCents)];
      const more = (): string =>
        `${PROFILES.at('priceAfter', row())}-${PROFILES.at('priceBefore', row())}`;
      return PROFILES.row({
        profile: cell(sayProfile(one), 'row'),
        piecesBefore: cell(was?.pieces ?? 0, 'rowWhole'),
        piecesAfter: cell(is?.pieces ?? 0, 'rowWhole'),
        hoursBefore: cell(was?.hours ?? 0, 'rowDecimal'),
        hoursAfter: cell(is?.hours ?? 0, 'rowDecimal'),
        costBefore: cell(units(was?.costCents), 'rowDecimal'),
        costAfter: cell(units(is?.costCents), 'rowDecimal'),
        priceBefore: cell(from, 'rowDecimal'),
        priceAfter: cell(to, 'rowDecimal'),
        more: sum(more, to - from, 'rowDecimal'),
      });
    }),
    together: (first, last) => {
      const add = (
        column: Exclude<ColumnName<typeof PROFILES>, 'profile'>,
        value: number,
        style: StyleName = 'total',
      ): DraftCell => sum(() => PROFILES.sum(column, first(), last()), value, style);
      const [from, to] = [units(before.priceCents), units(after.priceCents)];
      return PROFILES.row({
        profile: cell('Together', 'totalLabel'),
        piecesBefore: add('piecesBefore', before.pieces, 'totalWhole'),
        piecesAfter: add('piecesAfter', after.pieces, 'totalWhole'),
        hoursBefore: add('hoursBefore', before.hours),
        hoursAfter: add('hoursAfter', after.hours),
        costBefore: add('costBefore', units(before.costCents)),
        costAfter: add('costAfter', units(after.costCents)),
        priceBefore: add('priceBefore', from),
        priceAfter: add('priceAfter', to),
        more: add('more', to - from),
      });
    },
  });
}

function addLines(changes: Changes): void {
  const { comparison, shop } = changes;
  const { lines, totals } = comparison;
  const lengths = lines.flatMap(({ before, after }) => [before?.length, after?.length]);
  const style = lengthStyles(known(lengths), shop.unit).row;
  addTable(changes, {
    title: 'By room and profile',
    headings: LINES.headings(shop),
    rows: lines.map(({ room, profile, before, after }) => (row) => {
      const [from, to] = [units(before?.priceCents), units(after?.priceCents)];
      const more = (): string =>
        `${LINES.at('priceAfter', row())}-${LINES.at('priceBefore', row())}`;
      return LINES.sparseRow({
        room: cell(room, 'row'),
        profile: cell(profile, 'row'),
        piecesBefore: cell(before?.pieces ?? 0, 'rowWhole'),
        piecesAfter: cell(after?.pieces ?? 0, 'rowWhole'),
        lengthBefore: cell(numberIn(before?.length ?? ZERO, shop.unit), style),
        lengthAfter: cell(numberIn(after?.length ?? ZERO, shop.unit), style),
        priceBefore: cell(from, 'rowDecimal'),
        priceAfter: cell(to, 'rowDecimal'),
        more: sum(more, to - from, 'rowDecimal'),
      });
    }),
    together: (first, last) => {
      const [from, to] = [units(totals.before.priceCents), units(totals.after.priceCents)];
      const add = (column: 'priceBefore' | 'priceAfter' | 'more', value: number): DraftCell =>
        sum(() => LINES.sum(column, first(), last()), value, 'total');
      return LINES.sparseRow({
        room: cell('Together', 'totalLabel'),
        priceBefore: add('priceBefore', from),
        priceAfter: add('priceAfter', to),
        more: add('more', to - from),
      });
    },
  });
}

function addCut(changes: Changes): void {
  const { comparison, shop } = changes;
  const lost = listLost(comparison);
  if (lost.length === 0) return;
  const style = lengthStyles(
    lost.map(({ length }) => length),
    shop.unit,
  ).row;
  addTable(changes, {
    title: CUT_TITLE,
    headings: CUT.headings(shop),
    rows: lost.map(
      (one) => () =>
        CUT.row({
          mark: cell(one.mark, 'row'),
          id: cell(one.id, 'row'),
          profile: cell(one.profile, 'row'),
          length: cell(numberIn(one.length, shop.unit), style),
          stick: cell(one.stick ?? 'done, as Runs has it', 'row'),
          need: cell(sayNeed(one), 'row'),
        }),
    ),
  });
}

function known(lengths: readonly (ExactInches | undefined)[]): ExactInches[] {
  return lengths.filter((length) => length !== undefined);
}
