/**
 * Stands in the page for Microsoft's library: a strict fake of Excel, with the same globals. What a
 * person does in Excel is done through `testExcel`.
 */
import { FakeExcel } from '../hosts/excel-fake/fake-excel.ts';

const testExcel = new FakeExcel();
const registered: Record<string, unknown> = {};

class FunctionError {
  readonly code: string;
  readonly message: string | undefined;
  constructor(code: string, message?: string) {
    this.code = code;
    this.message = message;
  }
}

Object.assign(globalThis, {
  testExcel,
  registered,
  Excel: testExcel.program.excel,
  Office: {
    HostType: { Excel: 'Excel' },
    context: testExcel.program.office.context,
    onReady: () => Promise.resolve({ host: 'Excel', platform: 'PC' }),
  },
  CustomFunctions: {
    associate: (id: string, call: unknown) => Object.assign(registered, { [id]: call }),
    Error: FunctionError,
    ErrorCode: { invalidValue: '#VALUE!', notAvailable: '#N/A' },
  },
});
