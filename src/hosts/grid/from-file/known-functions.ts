/** Which worksheet functions the grid can work out. */
import {
  functionArray,
  functionCompatibility,
  functionCube,
  functionDatabase,
  functionDate,
  functionEngineering,
  functionFinancial,
  functionInformation,
  functionLogical,
  functionLookup,
  functionMath,
  functionMeta,
  functionStatistical,
  functionText,
  functionUniver,
  functionWeb,
} from '@univerjs/engine-formula';
import type { PlainWorkbook } from '../../workbook/plain-workbook.ts';
import { callsOurs, functionsOf } from '../../formulas/file-formulas.ts';
import { cellName } from '../../../core/cells/cell-range.ts';

const KNOWN: ReadonlySet<string> = new Set(
  [
    functionArray,
    functionCompatibility,
    functionCube,
    functionDatabase,
    functionDate,
    functionEngineering,
    functionFinancial,
    functionInformation,
    functionLogical,
    functionLookup,
    functionMath,
    functionMeta,
    functionStatistical,
    functionText,
    functionUniver,
    functionWeb,
  ].flatMap((group) => group.map((entry) => String(entry[1]).toUpperCase())),
);

export interface UnknownFunctions {
  /** In capitals, each once. */
  readonly names: readonly string[];
  /** A formula that calls one of them, as Sheet!A1. */
  readonly first: string;
}

/** Null where the grid knows every function of every formula. */
export function unknownFunctions({ sheets }: PlainWorkbook): UnknownFunctions | null {
  const names = new Set<string>();
  let first: string | null = null;
  for (const sheet of sheets) {
    for (const [row, cells] of Object.entries(sheet.cells)) {
      for (const [column, { formula }] of Object.entries(cells)) {
        if (formula === undefined) continue;
        const unknown = functionsOf(formula).filter(
          (name) => !KNOWN.has(name) && !callsOurs(`${name}(`),
        );
        if (unknown.length === 0) continue;
        unknown.forEach((name) => names.add(name));
        first ??= `${sheet.name}!${cellName(Number(row), Number(column))}`;
      }
    }
  }
  return first === null ? null : { names: [...names].sort(), first };
}
