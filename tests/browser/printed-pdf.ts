/** What a printed page holds, read back by poppler's tools. */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface PrintedPdf {
  readonly pages: number;
  /** Of the first page, in points. */
  readonly size: readonly [width: number, height: number];
  /** Page by page. */
  readonly texts: readonly string[];
  readonly pictures: readonly PrintedPicture[];
}

export interface PrintedPicture {
  readonly page: number;
  /** In millimetres on paper. */
  readonly width: number;
  readonly height: number;
}

const MM_PER_INCH = 25.4;

/** With CI set the tests that need them fail where they are missing. */
export const printTestsRun =
  spawnSync('pdfimages', ['-v']).status === 0 || process.env['CI'] !== undefined;

export function readPdf(bytes: Uint8Array): PrintedPdf {
  const folder = mkdtempSync(join(tmpdir(), 'coveledger-pdf-'));
  try {
    const file = join(folder, 'printed.pdf');
    writeFileSync(file, bytes);
    const run = (program: string, ...args: string[]): string =>
      execFileSync(program, args, { encoding: 'utf8' });
    const info = run('pdfinfo', file);
    const [, width = '', height = ''] = /^Page size: +([\d.]+) x ([\d.]+)/mu.exec(info) ?? [];
    const texts = run('pdftotext', '-layout', file, '-').split('\f').slice(0, -1);
    return {
      pages: Number(/^Pages: +(\d+)/mu.exec(info)?.[1]),
      size: [Number(width), Number(height)],
      texts,
      pictures: readPictures(run('pdfimages', '-list', file)),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Words of a text as they come back from paper, where a cell's line may end after any of them. */
export function wordsOf(text: string): string[] {
  return text
    .normalize('NFKC')
    .split(/[\s-]+/u)
    .filter((word) => word !== '');
}

/** @returns Words that stand fewer times on paper than they should; cells side by side may run together there. */
export function wordsMissing(wanted: string, printed: string): string[] {
  const [all, there] = [wordsOf(wanted), wordsOf(printed)].map((words) => words.join(' ')) as [
    string,
    string,
  ];
  const times = (text: string, word: string): number => text.split(word).length - 1;
  return [...new Set(wordsOf(wanted))].filter((word) => times(there, word) < times(all, word));
}

/** Their sizes follow from their pixels and the pixels of an inch, which are rounded to whole ones. */
function readPictures(list: string): PrintedPicture[] {
  const rows = list.split('\n').map((line) => line.trim().split(/\s+/u));
  const [heads = [], , ...others] = rows;
  const at = (name: string): number => heads.indexOf(name);
  return others
    .filter((row) => row[at('type')] === 'image')
    .map((row) => {
      const number = (name: string): number => Number(row[at(name)]);
      return {
        page: number('page'),
        width: (number('width') / number('x-ppi')) * MM_PER_INCH,
        height: (number('height') / number('y-ppi')) * MM_PER_INCH,
      };
    });
}
