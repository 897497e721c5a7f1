import { describe, expect, test } from '@jest/globals';
import { CATALOGUE } from '../../src/functions/catalogue.ts';
import { registerFunctions } from '../../src/functions/register.ts';
import { answer, column, one } from './calls.ts';

class SheetError extends Error {
  readonly code: string;
  constructor(code: string, message?: string) {
    super(message);
    this.code = code;
  }
}

/** What Excel offers, as far as it is used; its codes are these texts. */
function fakeRuntime() {
  const calls = new Map<string, (...given: unknown[]) => unknown>();
  const runtime = {
    associate: (id: string, call: (...given: never[]) => unknown): void => {
      calls.set(id, call as (...given: unknown[]) => unknown);
    },
    Error: SheetError,
    ErrorCode: { invalidValue: '#VALUE!', notAvailable: '#N/A' },
  };
  return { calls, runtime };
}

/** Calls as Excel does: all declared arguments, null where left out, then the invocation. */
function callAsExcel(id: string, ...given: unknown[]): unknown {
  const { calls, runtime } = fakeRuntime();
  registerFunctions(runtime);
  const entry = CATALOGUE.find((each) => each.id === id);
  const all = (entry?.parameters ?? []).map((_, at) => given[at] ?? null);
  return calls.get(id)?.(...all, { functionName: id, setResult: () => undefined });
}

function thrownBy(work: () => unknown): unknown {
  try {
    return work();
  } catch (thrown) {
    return thrown;
  }
}

describe('registering', () => {
  test('fits Excel’s own CustomFunctions', () => {
    const fits: (customFunctions: typeof CustomFunctions) => void = registerFunctions;
    expect(fits).toBe(registerFunctions);
  });

  test('associates every function of the catalogue by its id', () => {
    const { calls, runtime } = fakeRuntime();
    registerFunctions(runtime);
    expect([...calls.keys()]).toEqual(CATALOGUE.map(({ id }) => id));
  });

  test('never takes what Excel says about the call for a last argument', () => {
    for (const id of ['APPROACH', 'TILT', 'SETUP', 'FEASIBLE']) {
      const cells = callAsExcel(id, one('3 5/8'), one('7/8'), one('3/8')) as unknown[][];
      const wanted = CATALOGUE.find((each) => each.id === id)?.call(
        one('3 5/8'),
        one('7/8'),
        one('3/8'),
      );
      expect(cells).toEqual(wanted);
    }
  });

  test('puts Excel’s own errors into the cells at fault, with their messages', () => {
    const cells = callAsExcel('APPROACH', column(3, 'x', 9), one('3/4')) as unknown[][];
    expect(cells[0]?.[0]).toBe(answer('APPROACH', 3, '3/4'));
    expect(cells[1]?.[0]).toBeInstanceOf(SheetError);
    expect(cells[1]?.[0]).toMatchObject({ code: '#VALUE!' });
    expect(cells[2]?.[0]).toMatchObject({ code: '#N/A' });
    expect((cells[2]?.[0] as SheetError).message).toMatch(/^Width is 9 in; this blade cuts/u);
  });

  test('throws the error where it is the whole answer', () => {
    const thrown = thrownBy(() => callAsExcel('TILT', one(3), one('3/4')));
    expect(thrown).toBeInstanceOf(SheetError);
    expect(thrown).toMatchObject({ code: '#VALUE!' });
    expect((thrown as SheetError).message).toMatch(/^Off-center is empty\./u);
  });

  test('says a fault of ours plainly, and throws nothing but the sheet’s own error', () => {
    const broken = {
      get length(): number {
        throw new RangeError('a cell that bites');
      },
    };
    const bites = new Proxy([[3]], { get: () => broken.length });
    const thrown = thrownBy(() => callAsExcel('TILT', bites, one('3/4'), one('1/2')));
    expect(thrown).toBeInstanceOf(SheetError);
    expect((thrown as SheetError).message).toBe(
      'COVE.TILT failed by a fault of its own, not of your cells (“a cell that bites”). Please report it with the formula.',
    );
  });
});
