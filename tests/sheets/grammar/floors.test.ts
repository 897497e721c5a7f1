import { describe, expect, test } from '@jest/globals';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';

const sheets = join(import.meta.dirname, '..', '..', '..', 'src', 'sheets');
const posix = (path: string): string => path.split(sep).join('/');
const files = readdirSync(sheets, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map(posix);
const textOf = (file: string): string => readFileSync(join(sheets, file), 'utf8');

/** What a file of the sheets imports, as paths from src/sheets. */
function importsOf(file: string): string[] {
  return [...textOf(file).matchAll(/from '(\.[^']+)'/gu)].map(([, target = '']) =>
    posix(relative(sheets, resolve(sheets, dirname(file), target))),
  );
}

/** A column's letter as a formula would hold it: alone, before a row, or before a dollar sign. */
const LETTER =
  /'\$?[A-Z]{1,2}'|[`(:,+*/!=-]\$?[A-Z]{1,2}\$?\$\{|['"`(:,!]\$?[A-Z]{1,2}\$?\d+[:'"`)]/u;
const withoutComments = (text: string): string =>
  text.replace(/\/\*[\s\S]*?\*\//gu, '').replace(/^\s*\/\/.*$/gmu, '');

describe('The floors of the sheets', () => {
  test('are sheets on a grammar on core: the grammar knows no sheet, no plan and no trade', () => {
    const broken = files
      .filter((file) => file.startsWith('grammar/'))
      .flatMap((file) => importsOf(file).map((target) => ({ file, target })))
      .filter(({ target }) => !/^(?:grammar|\.\.\/(?:core|drawings))\//u.test(target));
    expect(broken).toEqual([]);
  });

  test('keep one sheet apart from another: they meet in words, in anchors and in the grammar', () => {
    const folderOf = (path: string): string => (path.includes('/') ? path.split('/')[0]! : '');
    const broken = files
      .filter((file) => folderOf(file) !== '' && folderOf(file) !== 'grammar')
      .flatMap((file) => importsOf(file).map((target) => ({ file, target })))
      .filter(({ file, target }) => {
        const to = folderOf(target);
        return !['', '..', 'grammar', 'words', folderOf(file)].includes(to);
      });
    expect(broken).toEqual([]);
  });

  test('write no column letter outside grammar/columns.ts', () => {
    const broken = files.filter(
      (file) => file !== 'grammar/columns.ts' && LETTER.test(withoutComments(textOf(file))),
    );
    expect(broken).toEqual([]);
  });

  test('find a letter where there is one', () => {
    const typed = [
      "'G'",
      '`G${row}`',
      '`SUM(F${row}:H${row})`',
      "'$A$2'",
      '`$H$${top}`',
      "'A1:D9'",
    ];
    expect(typed.filter((text) => !LETTER.test(text))).toEqual([]);
    expect(LETTER.test("ORDER.at('cuts', row)")).toBe(false);
  });
});
