/** Makes every function of the catalogue known to the spreadsheet. */
import { syntax } from '../core/faults/argument.ts';
import { fault } from '../core/faults/fault.ts';
import type { CatalogueEntry } from './catalogue-entry.ts';
import { CATALOGUE } from './catalogue.ts';
import { cellError } from './cell-error.ts';
import type { CellError, Range, Results } from './cell.ts';

/** What is used of Excel's global CustomFunctions; a grid in the browser offers the same. */
export interface CustomFunctionsRuntime<Code> {
  associate(id: string, call: (...given: never[]) => unknown): void;
  readonly Error: new (code: Code, message?: string) => unknown;
  readonly ErrorCode: { readonly invalidValue: Code; readonly notAvailable: Code };
}

/** Associates each function's id with it; an error cell becomes the spreadsheet's own error. */
export function registerFunctions<Code>(customFunctions: CustomFunctionsRuntime<Code>): void {
  for (const entry of CATALOGUE) {
    customFunctions.associate(entry.id, (...given: unknown[]) =>
      handOver(answerCall(entry, given), customFunctions),
    );
  }
}

/**
 * The call without what the spreadsheet adds: as many arguments as are declared, then an object about
 * the call itself, which must not pass for a last, optional argument.
 */
function answerCall(entry: CatalogueEntry, given: unknown[]): Results {
  try {
    return entry.call(...(given.slice(0, entry.parameters.length) as Range[]));
  } catch (bug) {
    const why = bug instanceof Error ? bug.message : String(bug);
    return [[cellError([fault('function.bug', syntax(entry.name), why)])]];
  }
}

/** Errors stand in their cells; where there is nothing else the whole call fails with it. */
function handOver<Code>(
  results: Results,
  { Error: SheetError, ErrorCode }: CustomFunctionsRuntime<Code>,
): unknown[][] {
  const toSheet = ({ code, message }: CellError): unknown =>
    new SheetError(code === '#N/A' ? ErrorCode.notAvailable : ErrorCode.invalidValue, message);
  const [[only] = []] = results;
  if (results.length === 1 && results[0]?.length === 1 && isCellError(only)) {
    throw toSheet(only);
  }
  return results.map((row) => row.map((cell) => (isCellError(cell) ? toSheet(cell) : cell)));
}

function isCellError(cell: unknown): cell is CellError {
  return typeof cell === 'object' && cell !== null && 'kind' in cell && cell.kind === 'cell error';
}
