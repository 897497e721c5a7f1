/** Tells when cells of the person's sheets change, also by a recalculation. */
import { runPatiently, type ExcelProgram } from './excel-program.ts';
import { MADE, markText } from '../made-mark.ts';
import { isStagedName, STAGED } from './marks.ts';

/** Calls `changed` with a sheet's name, once for changes that come together; returns what ends it. */
export function watchSheets(program: ExcelProgram, changed: (sheet: string) => void): () => void {
  let ended = false;
  let waiting = new Set<string>();
  let telling = false;

  const tell = async (): Promise<void> => {
    if (telling) return;
    telling = true;
    try {
      while (waiting.size > 0 && !isEnded()) {
        const ids = [...waiting];
        waiting = new Set();
        for (const name of await theirNames(program, ids)) if (!isEnded()) changed(name);
      }
    } catch {
      // A change that can't be looked up is told with the next one.
    } finally {
      telling = false;
    }
  };
  const isEnded = (): boolean => ended;

  const registered = runPatiently(program, async (context) => {
    const { worksheets } = context.workbook;
    const note = ({ worksheetId }: { readonly worksheetId: string }): Promise<void> => {
      waiting.add(worksheetId);
      return tell();
    };
    // What a recalculation changes raises no change: a length may be a formula's answer.
    const results = [worksheets.onChanged.add(note), worksheets.onCalculated.add(note)];
    await context.sync();
    return results;
  });
  // Where Excel refuses to tell of changes, the person looks again themselves.
  registered.catch(() => undefined);
  return () => {
    ended = true;
    registered
      .then(async (results) => {
        for (const result of results) result.remove();
        await results[0]?.context.sync();
      })
      .catch(() => undefined);
  };
}

/** Names of those sheets that are there and are the person's. */
async function theirNames(program: ExcelProgram, ids: readonly string[]): Promise<string[]> {
  return runPatiently(program, async (context) => {
    const asked = ids.map((id) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject(id);
      sheet.load('name');
      return sheet;
    });
    await context.sync();
    const there = asked.filter((sheet) => !sheet.isNullObject);
    const marks = there.map((sheet) =>
      [MADE, STAGED].map((name) => {
        const found = sheet.names.getItemOrNullObject(name);
        found.load('formula');
        return found;
      }),
    );
    await context.sync();
    return there
      .filter((sheet, index) => {
        const [made, staged] = marks[index] ?? [];
        const ours = made?.isNullObject === false && made.formula === markText(sheet.name);
        return !ours && staged?.isNullObject !== false && !isStagedName(sheet.name);
      })
      .map((sheet) => sheet.name);
  });
}
