/** The sheet Changes of a client's copy that came back: other quantities, what they come to, and what else was typed. */
import type { Job } from '../../planning/job.ts';
import {
  changedLines,
  type CopyLine,
  type ReturnedCopy,
} from '../../planning/compare/returned-copy.ts';
import {
  AS_THEY_WERE,
  COUNTS_NOTE,
  sayAccepted,
  sayChanged,
  sayOtherwise,
  sayTaken,
  sayRowsOfLine,
} from '../words/say-copy.ts';
import { DESCRIPTION_VERSION, type WorkbookDescription } from '../grammar/description.ts';
import { roomForRows } from '../grammar/page-size.ts';
import { PagedRows, spreadRow } from '../grammar/paged-rows.ts';
import { cell, SheetDraft, sum, type SheetRow } from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';
import { stampSheet } from '../stamp.ts';
import { printExact } from '../words/print-length.ts';
import { fileTitle } from '../words/say-title.ts';
import { JUDGMENT_CAUTION } from '../words/standing-cautions.ts';
import { ALL, GRID, OTHERWISE, QUANTITIES, TOTALS } from './changes-columns.ts';
import type { ComparedPlans } from './changes-sheet.ts';
import { addTable, CHANGES_SHEET, units } from './changes-tables.ts';

/**
 * @param files the plan and the copy, each in a sentence
 * @param job of the plan: its unit, money and paper, and what names it
 */
export function describeCopyChanges(
  copy: ReturnedCopy,
  files: ComparedPlans,
  { shop, titleBlock }: Job,
  made: string,
): WorkbookDescription {
  const draft = new SheetDraft(CHANGES_SHEET, GRID, true);
  const pages = new PagedRows(draft, GRID, roomForRows(shop.paper, GRID, 'landscape'));
  const [otherwise, taken] = [sayOtherwise(copy), sayTaken(copy)];
  pages.add([
    spreadRow(CHANGES_SHEET, 'title', ALL),
    spreadRow(`Plan: ${files.before}`, 'wrapped', ALL),
    spreadRow(`Client’s copy: ${files.after}`, 'wrapped', ALL),
    spreadRow(JUDGMENT_CAUTION, 'caution', ALL),
    spreadRow(sayChanged(copy), 'wrapped', ALL),
    ...(taken === undefined ? [] : [spreadRow(taken, 'wrapped', ALL)]),
    ...(otherwise === undefined ? [] : [spreadRow(otherwise, 'caution', ALL)]),
    spreadRow(sayAccepted(copy), 'wrapped', ALL),
    spreadRow(COUNTS_NOTE, 'note', ALL),
  ]);
  const { quoted, now } = copy.price;
  const totals: readonly (readonly [string, number, number, StyleName])[] = [
    ['Pieces', quoted.pieces, now.pieces, 'rowWhole'],
    [`Price (${shop.currency})`, units(quoted.priceCents), units(now.priceCents), 'rowDecimal'],
    [`Tax (${shop.currency})`, units(quoted.taxCents), units(now.taxCents), 'rowDecimal'],
    [`To pay (${shop.currency})`, units(quoted.toPayCents), units(now.toPayCents), 'rowDecimal'],
  ];
  addTable(
    { pages },
    {
      title: 'In all',
      headings: TOTALS.headings(shop, { before: 'As quoted', after: 'Now' }),
      rows: totals.map(([what, from, to, style]) => (row) => {
        const more = (): string => `${TOTALS.at('after', row())}-${TOTALS.at('before', row())}`;
        return TOTALS.row({
          what: cell(what, 'row'),
          before: cell(from, style),
          after: cell(to, style),
          more: sum(more, to - from, style),
        });
      }),
    },
  );
  const changed = changedLines(copy);
  addTable(
    { pages },
    {
      title: 'Line by line',
      headings: QUANTITIES.headings(shop),
      rows:
        changed.length === 0
          ? [(): SheetRow => spreadRow(AS_THEY_WERE, 'row', ALL)]
          : changed.map((line) => (row) => lineRow(line, row, printExact(line.length, shop))),
    },
  );
  addTable(
    { pages },
    {
      title: 'Not as handed over',
      headings: OTHERWISE.headings(),
      rows: copy.findings.map(({ where, message }) => () => {
        const at = where !== undefined && 'cell' in where ? where.cell : '';
        return OTHERWISE.row({ at: cell(at, 'row'), says: cell(message, 'row') });
      }),
    },
  );
  const print = { paper: shop.paper, orientation: 'landscape', footer: CHANGES_SHEET } as const;
  const sheet = stampSheet(draft.finish(print), { shop, titleBlock }, undefined);
  return {
    version: DESCRIPTION_VERSION,
    title: fileTitle(CHANGES_SHEET, titleBlock),
    made,
    sheets: [sheet],
  };
}

function lineRow(line: CopyLine, row: () => number, length: string): SheetRow {
  const { room, molding, quantity, now, priceCents, nowCents } = line;
  const more = (): string =>
    `${QUANTITIES.at('priceNow', row())}-${QUANTITIES.at('priceQuoted', row())}`;
  return QUANTITIES.row({
    room: cell(room, 'row'),
    molding: cell(molding, 'row'),
    length: cell(length, 'rowRight'),
    quoted: cell(quantity, 'rowWhole'),
    now: cell(now, 'rowWhole'),
    priceEach: cell(units(priceCents) / quantity, 'rowDecimal'),
    priceQuoted: cell(units(priceCents), 'rowDecimal'),
    priceNow: cell(units(nowCents), 'rowDecimal'),
    more: sum(more, units(nowCents - priceCents), 'rowDecimal'),
    rows: cell(sayRowsOfLine(line), 'row'),
  });
}
