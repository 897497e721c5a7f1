/** The catalogue's functions for the grid: what they answer, error cells as the grid's own. */
import { CATALOGUE } from '../functions/catalogue.ts';
import { registerFunctions } from '../functions/register.ts';
import { GridError, type GridCell, type GridFunctionEntry } from '../hosts/grid/grid-function.ts';

/** Functions whose answers are angles in degrees, and nothing else. */
export const ANSWER_DEGREES: ReadonlySet<string> = new Set([
  'APPROACH',
  'TILT',
  'CROWNMITER',
  'CROWNBEVEL',
  'CROWNSLOPEMITER',
  'CROWNSLOPEBEVEL',
  'CROWNNESTEDMITER',
]);

type Call = (...given: readonly unknown[]) => unknown;

export function gridFunctions(): GridFunctionEntry[] {
  const calls = new Map<string, Call>();
  registerFunctions<string>({
    Error: GridError,
    ErrorCode: { invalidValue: '#VALUE!', notAvailable: '#N/A' },
    associate: (id, call) => calls.set(id, call as Call),
  });
  return CATALOGUE.map(({ id, name, description, parameters }) => {
    const call = calls.get(id);
    if (call === undefined) throw new RangeError(`${name} is not registered.`);
    return {
      name,
      description,
      answersDegrees: ANSWER_DEGREES.has(id),
      parameters,
      call: (...given) => answer(call, given),
    };
  });
}

/** An error of the whole call is thrown, as a spreadsheet's runtime wants it. */
function answer(call: Call, given: readonly unknown[]): GridCell[][] {
  try {
    return call(...given) as GridCell[][];
  } catch (error) {
    return [[error instanceof GridError ? error : new GridError('#VALUE!')]];
  }
}
