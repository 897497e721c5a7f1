/** How sheets say that they agree, and how each of them shows it when they don't. */
import { rangeAt } from './grammar/columns.ts';
import { sum, type SheetDraft, type SheetRow } from './grammar/sheet-draft.ts';

/** What a check comes to. */
export const AGREES = 'agrees';
export const DIFFERS = 'differs';

/** The line of a workbook whose sheets agree. */
export const ALL_AGREE = 'All sheets agree.';

/** Whether two figures agree to half a thousandth; one that is no number never does. */
export function agreementFormula(one: string, other: string, within: string): string {
  return `IFERROR(IF(ABS(${one}-${other})<${within},"${AGREES}","${DIFFERS}"),"${DIFFERS}")`;
}

/** Verdicts in a column, and what each is of. */
interface Verdicts {
  readonly range: string;
  readonly labels: string;
  readonly count: number;
}

/** All verdicts in a sentence, which names the first that differs. */
export function verdictFormula({ range, labels, count }: Verdicts): string {
  const agreeing = `COUNTIF(${range},"${AGREES}")`;
  const first = `IFERROR(INDEX(${labels},MATCH("${DIFFERS}",${range},0)),"a verdict")`;
  return (
    `IF(${agreeing}=${count},"${ALL_AGREE}",` +
    `"The sheets differ in "&(${count}-${agreeing})&" of ${count} checks, first: "&${first}&". ` +
    `See What must agree on Office. Plan again before anybody cuts, buys or sells by them.")`
  );
}

/**
 * Adds the line that says whether the sheets agree, over columns of the sheet (from 0): quiet where
 * they do, and marked where they don't.
 *
 * @param beside What stands at the right of it.
 */
export function addVerdict(
  draft: SheetDraft,
  formula: string | (() => string),
  [from, to]: readonly [number, number],
  beside: SheetRow = { cells: [] },
): number {
  const row = draft.put(verdictRow(formula, [from, to], beside));
  markVerdict(draft, row, from);
  return row;
}

/** The same before it has its place; whoever puts it marks it. */
export function verdictRow(
  formula: string | (() => string),
  [from, to]: readonly [number, number],
  beside: SheetRow = { cells: [] },
): SheetRow {
  const verdict = sum(formula, ALL_AGREE, 'note');
  const cells = Array.from({ length: Math.max(to + 1, beside.cells.length) }, (_, at) =>
    at === from ? verdict : (beside.cells[at] ?? null),
  );
  return { cells, joins: [[from, to], ...(beside.joins ?? [])] };
}

export function markVerdict(draft: SheetDraft, row: number, column: number): void {
  const at = rangeAt(column, row, row);
  draft.highlight(at, `${at}<>"${ALL_AGREE}"`, 'caution');
}
