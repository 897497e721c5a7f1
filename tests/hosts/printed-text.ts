/** The words on a PDF's pages, by poppler's pdftotext. */
import { spawn, spawnSync } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const PROGRAM = 'pdftotext';
const LONGEST_RUN_MS = 120_000;

export function pageTextIsHere(): boolean {
  return spawnSync(PROGRAM, ['-v'], { timeout: LONGEST_RUN_MS }).status === 0;
}

/** A line of text on a page, and its letters' size as they are laid out. */
export interface SizedText {
  readonly text: string;
  readonly points: number;
}

/** pdftohtml rounds sizes to whole units: a third of a point is the finest that it tells. */
const UNITS_TO_A_POINT = 3;

/** The sized lines of each page. */
export async function pageSizes(pdf: Uint8Array): Promise<SizedText[][]> {
  const folder = await mkdtemp(join(tmpdir(), 'coveledger-sizes-'));
  try {
    const path = join(folder, 'printed.pdf');
    await writeFile(path, pdf);
    const ran = spawnSync(
      'pdftohtml',
      ['-xml', '-i', '-stdout', '-zoom', String(UNITS_TO_A_POINT), path],
      { timeout: LONGEST_RUN_MS, encoding: 'utf8', maxBuffer: 1e9 },
    );
    if (ran.status !== 0) throw new Error(`pdftohtml ended with ${ran.status ?? 'a signal'}.`);
    const sizes = new Map<string, number>();
    return ran.stdout
      .split('<page ')
      .slice(1)
      .map((page) => {
        for (const [, id = '', size] of page.matchAll(/<fontspec id="(\d+)" size="(\d+)"/gu)) {
          sizes.set(id, Number(size) / UNITS_TO_A_POINT);
        }
        return [...page.matchAll(/<text [^>]*font="(\d+)">(.*?)<\/text>/gu)].map(
          ([, id = '', marked = '']) => ({
            text: plainText(marked),
            points: sizes.get(id) ?? NaN,
          }),
        );
      });
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

function plainText(marked: string): string {
  const signs = { '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#34;': '"', '&amp;': '&' } as const;
  return marked
    .replace(/<[^>]*>/gu, '')
    .replace(/&(?:lt|gt|quot|#34|amp);/gu, (sign) => signs[sign as keyof typeof signs]);
}

/** Text of each page in the order in which it was put there: the lines of one cell follow each other. */
export function pageTexts(pdf: Uint8Array): Promise<string[]> {
  return new Promise((resolve, reject) => {
    const poppler = spawn(PROGRAM, ['-raw', '-enc', 'UTF-8', '-', '-'], {
      timeout: LONGEST_RUN_MS,
      stdio: 'pipe',
    });
    const said: Buffer[] = [];
    let wrong = '';
    poppler.stdout.on('data', (chunk: Buffer) => said.push(chunk));
    poppler.stderr.on('data', (chunk: Buffer) => (wrong += chunk.toString()));
    poppler.on('error', reject);
    poppler.on('close', (status) => {
      if (status !== 0)
        reject(new Error(`${PROGRAM} ended with ${status ?? 'a signal'}: ${wrong}`));
      // Each page ends with a form feed.
      else resolve(Buffer.concat(said).toString('utf8').split('\f').slice(0, -1));
    });
    poppler.stdin.on('error', reject);
    poppler.stdin.end(pdf);
  });
}
