/**
 * How a sheet prints, what may be typed into it, and what is highlighted: in our own words, which
 * descriptions and the grid have, and as a file has it.
 */
import type { Sheet } from 'hucre/xlsx';

import { parseRange } from '../../core/cells/cell-range.ts';
import type {
  HighlightDescription,
  PrintDescription,
  ValidationDescription,
} from '../../sheets/grammar/description.ts';

export interface SheetPage {
  readonly print: PrintDescription;
  readonly validations: readonly ValidationDescription[];
  /** Of a sheet that was described. */
  readonly highlights?: readonly HighlightDescription[];
  /** Of a sheet that came with a file: all of it as it stood there, for saving. */
  readonly file?: FileExtras;
}

/** Nothing but whoever reads and writes files looks in. */
export type FileExtras = Pick<
  Sheet,
  'dataValidations' | 'conditionalRules' | 'pageSetup' | 'headerFooter' | 'rowBreaks' | 'colBreaks'
>;

export function pageFromFile(file: FileExtras): SheetPage {
  return { print: printOf(file), validations: validationsOf(file), file };
}

/** In our own few words: letter where it says no paper that we know. */
function printOf({
  pageSetup = {},
  headerFooter = {},
  rowBreaks = [],
}: FileExtras): PrintDescription {
  const titles = /^\$?(\d+):\$?(\d+)$/u.exec(pageSetup.printTitlesRow ?? '');
  return {
    paper: pageSetup.paperSize === 'a4' ? 'a4' : 'letter',
    orientation: pageSetup.orientation ?? 'portrait',
    fitWidth: pageSetup.fitToPage === true,
    ...startOf(pageSetup.margins),
    ...(titles === null ? {} : { titleRows: [Number(titles[1]), Number(titles[2])] as const }),
    ...printedOf(pageSetup.printArea),
    ...(rowBreaks.length === 0 ? {} : { breaksAfter: rowBreaks.map((row) => row + 1) }),
    header: plainPart(headerFooter.oddHeader, 'C'),
    footer: plainPart(headerFooter.oddFooter, 'L'),
  };
}

/** Of an area of whole columns from the first one, as we write it; any other stays the file's own. */
function printedOf(area = ''): Pick<PrintDescription, 'printedColumns'> {
  const [, last = ''] = /^\$A:\$([A-Z]{1,3})$/u.exec(area) ?? [];
  const column = last === '' ? undefined : parseRange(`${last}1`)?.left;
  return column === undefined ? {} : { printedColumns: column + 1 };
}

/** Of a page that keeps nothing free at its right and its foot. */
function startOf(
  margins: NonNullable<FileExtras['pageSetup']>['margins'],
): Pick<PrintDescription, 'start'> {
  const { left, top, right, bottom } = margins ?? {};
  if (left === undefined || top === undefined || right !== 0 || bottom !== 0) return {};
  return { start: { left, top } };
}

/** Those that our descriptions know, for a sheet that shows what may be typed. */
function validationsOf({ dataValidations = [] }: FileExtras): ValidationDescription[] {
  return dataValidations.flatMap((one): ValidationDescription[] => {
    const allow = allowedBy(one);
    if (allow === null || /\s/u.test(one.range)) return [];
    return [
      {
        range: one.range,
        allow,
        strict: (one.errorStyle ?? 'stop') === 'stop',
        title: one.errorTitle ?? '',
        message: one.errorMessage ?? '',
      },
    ];
  });
}

function allowedBy(
  one: NonNullable<FileExtras['dataValidations']>[number],
): ValidationDescription['allow'] | null {
  const { type, operator = 'between', values, formula1 = '', formula2 = '' } = one;
  if (type === 'list' && values !== undefined) return { kind: 'list', values };
  if (type === 'list' && formula1 !== '') return { kind: 'list from', formula: formula1 };
  const [least, most] = [Number(formula1), Number(formula2)];
  const whole = type === 'whole' && operator === 'between' && formula1 !== '' && formula2 !== '';
  return whole && Number.isInteger(least) && Number.isInteger(most)
    ? { kind: 'whole', least, most }
    : null;
}

/** ECMA-376 part 1, 18.3.1.46: &L, &C and &R begin its parts, && is an ampersand; other codes are passed over. */
function plainPart(text: string | undefined, part: 'L' | 'C' | 'R'): string {
  let current = 'C';
  let found = '';
  for (const [piece] of (text ?? '').matchAll(/&&|&"[^"]*"|&\d+|&.|[^&]+/gsu)) {
    const code = /^&([LCR])$/u.exec(piece)?.[1];
    if (code !== undefined) current = code;
    else if (current === part && piece === '&&') found += '&';
    else if (current === part && !piece.startsWith('&')) found += piece;
  }
  return found;
}
