/** Our worksheet functions as the grid calls them. */
import { CATALOGUE } from '../functions/catalogue.ts';
import { registerFunctions, type CustomFunctionsRuntime } from '../functions/register.ts';
import type { GridFunctionEntry } from '../hosts/grid/start-grid.ts';

/** The grid knows a cell's error by its text. */
class GridError {
  readonly text: string;
  constructor(code: string) {
    this.text = code;
  }
}

export function gridFunctions(): GridFunctionEntry[] {
  const entries: GridFunctionEntry[] = [];
  const runtime: CustomFunctionsRuntime<string> = {
    Error: GridError,
    ErrorCode: { invalidValue: '#VALUE!', notAvailable: '#N/A' },
    associate: (id, call) => {
      const entry = CATALOGUE.find((one) => one.id === id);
      if (entry === undefined) return;
      const { name, description } = entry;
      entries.push({ name, description, call: (...given) => guarded(call, given) });
    },
  };
  registerFunctions(runtime);
  return entries;
}

/** A call that throws would stop the whole calculation: it gives its error's text instead. */
function guarded(call: (...given: never[]) => unknown, given: readonly unknown[]): unknown {
  try {
    const ranges = given.map((one) => (Array.isArray(one) || one === undefined ? one : [[one]]));
    const answer = call(...(ranges as never[])) as unknown[][];
    return answer.map((row) => row.map(shown));
  } catch (error) {
    return shown(error);
  }
}

function shown(value: unknown): unknown {
  return value instanceof GridError ? value.text : value;
}
