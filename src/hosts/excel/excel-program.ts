/** What is needed of Excel's and Office's globals, handed in so that another may stand in for them. */
import { fault, type Fault } from '../../core/faults/fault.ts';
import type { Drawing } from '../../drawings/drawing.ts';

export interface ExcelProgram {
  readonly excel: {
    run<T>(
      options: Excel.RunOptions,
      batch: (context: Excel.RequestContext) => Promise<T>,
    ): Promise<T>;
  };
  readonly office: {
    readonly context: {
      readonly requirements: { isSetSupported(name: string, version: string): boolean };
    };
  };
  /** Paints a drawing as a PNG. */
  readonly paint: (drawing: Drawing) => Promise<Uint8Array>;
}

const SET = 'ExcelApi';
/** Page set-up, pictures and changes of any sheet came with it (Microsoft's requirement sets). */
const LEAST_VERSION = 9;

/** Whether this Excel knows version 1.`minor` of its add-in interface. */
export function supports(program: ExcelProgram, minor: number): boolean {
  return program.office.context.requirements.isSetSupported(SET, `1.${minor}`);
}

/** host.too-old, where this Excel knows less than is needed everywhere here. */
export function tooOld(program: ExcelProgram): Fault | null {
  if (supports(program, LEAST_VERSION)) return null;
  let known = LEAST_VERSION - 1;
  while (known > 0 && !supports(program, known)) known -= 1;
  const given = known === 0 ? '' : `${SET} 1.${known}`;
  return fault('host.too-old', 'excel', given, { limit: `${SET} 1.${LEAST_VERSION}` });
}

/** Runs a batch that fails at once while a cell is being typed in. */
export function runNow<T>(
  { excel }: ExcelProgram,
  batch: (context: Excel.RequestContext) => Promise<T>,
): Promise<T> {
  return excel.run({ delayForCellEdit: false }, batch);
}

/** Runs a batch that waits while a cell is being typed in: once writing has begun. */
export function runPatiently<T>(
  { excel }: ExcelProgram,
  batch: (context: Excel.RequestContext) => Promise<T>,
): Promise<T> {
  return excel.run({ delayForCellEdit: true }, batch);
}
