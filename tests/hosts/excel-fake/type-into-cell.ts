/** What becomes of a value that is put into a cell: Excel reads text as if it had been typed. */
import { readFormula } from './formula-text.ts';
import { invalid, MisuseError } from './office-error.ts';
import { typedNumber } from './typed-number.ts';
import type { FakeCell, FakeWorkbook } from './workbook-model.ts';

const LONGEST_TEXT = 32_767;
const ERRORS = /^#(?:VALUE!|REF!|N\/A|NAME\?|NULL!|DIV\/0!|NUM!|GETTING_DATA|SPILL!|CALC!)$/u;

export function typeIntoCell(cell: FakeCell, typed: unknown, workbook: FakeWorkbook): void {
  if (typed === null) return;
  const kind = typeof typed;
  if (kind !== 'string' && kind !== 'number' && kind !== 'boolean') {
    throw new MisuseError(`a cell can't hold a thing of type ${kind}`);
  }
  if (kind === 'number' && !Number.isFinite(typed)) throw invalid('a number that is none');
  Object.assign(cell, { value: null, isError: false, formula: null, told: false });
  if (typeof typed !== 'string') cell.value = typed as number | boolean;
  else typeText(cell, typed, workbook);
}

function typeText(cell: FakeCell, text: string, workbook: FakeWorkbook): void {
  if (text === '') return;
  if (text.length > LONGEST_TEXT) throw invalid('a text of more than 32,767 characters');
  if (cell.look.format === '@') {
    // Whether Excel keeps the apostrophe there differs, so nobody should count on either.
    if (text.startsWith("'")) throw new MisuseError('an apostrophe first, in a cell of text');
    cell.value = text;
  } else if (text.startsWith("'")) cell.value = text.slice(1);
  else if (text.startsWith('=')) cell.formula = readFormula(text, workbook);
  else if (typedNumber(text, workbook.dayFirst) !== null) {
    const { value = 0, format } = typedNumber(text, workbook.dayFirst) ?? {};
    cell.value = value;
    if (format !== undefined && cell.look.format === 'General') cell.look.format = format;
  } else if (/^[-+@]/u.test(text)) throw invalid(`no formula: ${text}`);
  else if (/^(?:true|false)$/iu.test(text)) cell.value = text.toLowerCase() === 'true';
  else if (ERRORS.test(text)) Object.assign(cell, { value: text, isError: true });
  else cell.value = text;
}
