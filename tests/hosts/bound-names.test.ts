import { describe, expect, test } from '@jest/globals';

import { formulaForFile, formulaFromFile } from '../../src/hosts/formulas/file-formulas.ts';

describe('Names that a formula binds', () => {
  // [MS-XLSX] section 2.2.2.2: future functions carry _xlfn., what LET and LAMBDA bind carries _xlpm.
  test.each([
    ['LET(w,A1,w*2)', '_xlfn.LET(_xlpm.w,A1,_xlpm.w*2)'],
    [
      'LET(w, A1, d, w/2, COVE.TILT(w,d))',
      '_xlfn.LET(_xlpm.w, A1, _xlpm.d, _xlpm.w/2, _xldudf_COVE_TILT(_xlpm.w,_xlpm.d))',
    ],
    ['w+LET(w,"w",W&Sheet1!w)&w', 'w+_xlfn.LET(_xlpm.w,"w",_xlpm.W&Sheet1!w)&w'],
    ['LAMBDA(a,b,a+b)(1,2)', '_xlfn.LAMBDA(_xlpm.a,_xlpm.b,_xlpm.a+_xlpm.b)(1,2)'],
    [
      'LET(f,LAMBDA(x,x+1),f(2)+SUM({1,2;3,4}))',
      '_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.x,_xlpm.x+1),_xlpm.f(2)+SUM({1,2;3,4}))',
    ],
    ['MAP(A1:A3,LAMBDA(x,x*2))', '_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.x,_xlpm.x*2))'],
    ['SUM(let,lambda)', 'SUM(let,lambda)'],
    ['LET(A1,2', '_xlfn.LET(A1,2'],
  ])('are marked in a file where %s says them, and read back as written', (written, stored) => {
    expect(formulaForFile(written)).toBe(stored);
    expect(formulaFromFile(stored)).toBe(written);
  });
});
