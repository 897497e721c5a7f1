/** The words on a PDF's pages, by poppler's pdftotext. */
import { spawn, spawnSync } from 'node:child_process';

const PROGRAM = 'pdftotext';
const LONGEST_RUN_MS = 120_000;

export function pageTextIsHere(): boolean {
  return spawnSync(PROGRAM, ['-v'], { timeout: LONGEST_RUN_MS }).status === 0;
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
