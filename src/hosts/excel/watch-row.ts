/** Tells which row the person has gone to. */
import { parseRange } from '../../core/cells/cell-range.ts';
import type { ChosenRow } from '../host.ts';
import { runPatiently, type ExcelProgram } from './excel-program.ts';

export function watchRow(program: ExcelProgram, chosen: (row: ChosenRow) => void): () => void {
  let ended = false;
  const isEnded = (): boolean => ended;
  const tell = async (worksheetId: string, address: string): Promise<void> => {
    const range = parseRange(address);
    if (range === null) return;
    const name = await runPatiently(program, async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject(worksheetId);
      sheet.load('name');
      await context.sync();
      return sheet.isNullObject ? undefined : sheet.name;
    });
    if (name !== undefined && !isEnded()) chosen({ sheet: name, line: range.top + 1 });
  };
  const registered = runPatiently(program, async (context) => {
    const result = context.workbook.worksheets.onSelectionChanged.add(
      // Where it can't be looked up, nothing in the pane moves.
      ({ worksheetId, address }) => tell(worksheetId, address).catch(() => undefined),
    );
    await context.sync();
    return result;
  });
  registered.catch(() => undefined);
  return () => {
    ended = true;
    registered
      .then(async (result) => {
        result.remove();
        await result.context.sync();
      })
      .catch(() => undefined);
  };
}
