/** What a printer would be given: a workbook's pages as PDF by LibreOffice, then as pixels by poppler. */
import { spawn, spawnSync } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { convert, libreOfficeIsHere } from './libreoffice.ts';

const PROGRAM = 'pdftoppm';
const LONGEST_RUN_MS = 120_000;

/** Whether pages can be looked at on this machine: LibreOffice prints them, pdftoppm shows them. */
export function printingIsHere(): boolean {
  const poppler = spawnSync(PROGRAM, ['-v'], { timeout: LONGEST_RUN_MS });
  return poppler.status === 0 && libreOfficeIsHere();
}

/** Where CI lacks the programs the checks run, and fail: a check that can't run there is no check. */
export function printingMustRun(): boolean {
  return printingIsHere() || process.env['CI'] !== undefined;
}

/**
 * Has LibreOffice print .xlsx files as PDF, all in one run.
 *
 * @param files Bytes by a name without an ending, such as plan.
 * @returns The bytes of the PDFs, by the same names.
 */
export function toPdf(
  files: Readonly<Record<string, Uint8Array>>,
): Promise<Record<string, Uint8Array>> {
  return convert(files, 'pdf');
}

/** A page in pixels from its top left corner, a byte each: how light it is, 255 where the paper is bare. */
export interface PageRaster {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/**
 * The pages of a PDF, in their order.
 *
 * @param dpi Pixels to the inch of paper.
 * @param pages First and last of those wanted, from 1; all where absent.
 */
export async function rasterPages(
  pdf: Uint8Array,
  dpi: number,
  pages?: readonly [first: number, last: number],
): Promise<PageRaster[]> {
  const folder = await mkdtemp(join(tmpdir(), 'coveledger-pages-'));
  try {
    const path = join(folder, 'printed.pdf');
    await writeFile(path, pdf);
    const some = pages === undefined ? [] : ['-f', String(pages[0]), '-l', String(pages[1])];
    await run(['-gray', '-r', String(dpi), ...some, path, join(folder, 'page')]);
    // Page numbers are padded alike, so names sort as pages do.
    const names = (await readdir(folder)).filter((name) => name.endsWith('.pgm')).sort();
    const rasters: PageRaster[] = [];
    for (const name of names) rasters.push(readGrays(await readFile(join(folder, name))));
    return rasters;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** What pdftoppm writes quickest: a head of the words P5, width, height and 255, then the bytes as they are. */
function readGrays(file: Buffer): PageRaster {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/u.exec(file.toString('latin1', 0, 64));
  if (head === null) throw new Error(`${PROGRAM} wrote no map of a byte for each pixel.`);
  const [width, height] = [Number(head[1]), Number(head[2])];
  const data = file.subarray(head[0].length);
  if (data.length !== width * height) throw new Error(`${PROGRAM} wrote half a page.`);
  return { width, height, data };
}

function run(options: readonly string[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const poppler = spawn(PROGRAM, options, { timeout: LONGEST_RUN_MS, stdio: 'pipe' });
    let said = '';
    poppler.stderr.on('data', (chunk: Buffer) => (said += chunk.toString()));
    poppler.on('error', reject);
    poppler.on('close', (status) => {
      if (status === 0) resolve();
      else reject(new Error(`${PROGRAM} ended with ${status ?? 'a signal'}: ${said}`));
    });
  });
}
