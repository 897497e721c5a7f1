import { describe, expect, test } from '@jest/globals';
import { pageFromFile } from '../../src/hosts/xlsx/sheet-page.ts';
import { pageRule } from '../../src/browser/print/page-rule.ts';
import type { PrintDescription } from '../../src/sheets/grammar/description.ts';

const PRINT: PrintDescription = {
  paper: 'letter',
  orientation: 'portrait',
  fitWidth: false,
  header: '',
  footer: 'Labels',
};

describe('A page that the browser prints', () => {
  test('has the usual margins, and says its footer', () => {
    const rule = pageRule(PRINT);
    expect(rule).toContain('margin: 0.55in 0.5in 0.65in 0.5in;');
    expect(rule).toContain('"Labels"');
    expect(rule).toContain('counter(page)');
  });

  test('begins where its sheet says, with nothing at its foot, and still warns at its head', () => {
    const rule = pageRule({ ...PRINT, header: 'BEHIND', start: { left: 0.25, top: 0.375 } });
    expect(rule).toContain('margin: 0.375in 0in 0in 0.25in;');
    expect(rule).not.toContain('@bottom');
    expect(rule).toContain('"BEHIND"');
  });

  test('begins there after its workbook was saved and opened again', () => {
    const margins = { left: 0.25, top: 0.375, right: 0, bottom: 0, header: 0, footer: 0 };
    expect(pageFromFile({ pageSetup: { margins } }).print.start).toEqual({
      left: 0.25,
      top: 0.375,
    });
    const usual = { ...margins, right: 0.5, bottom: 0.65 };
    expect(pageFromFile({ pageSetup: { margins: usual } }).print.start).toBeUndefined();
  });
});
