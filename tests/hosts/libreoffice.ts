/**
 * A real spreadsheet program opens what was written: LibreOffice recalculates every formula and
 * saves the workbook anew, so that its values can be held against ours.
 */
import { spawn, spawnSync } from 'node:child_process';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

import type { WorkbookView } from './workbook-view.ts';

const PROGRAM = 'soffice';
const LONGEST_RUN_MS = 120_000;

/** Recalculate on load: 0 is always; LibreOffice otherwise trusts the values that a file brings. */
const ALWAYS = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry"><item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item></oor:items>`;

export function libreOfficeIsHere(): boolean {
  return spawnSync(PROGRAM, ['--version'], { timeout: LONGEST_RUN_MS }).status === 0;
}

/**
 * Has LibreOffice open .xlsx files, recalculate and save them, all in one run.
 *
 * @param files Bytes by a name without an ending, such as plan.
 * @returns The bytes of the .xlsx files that it saved, by the same names.
 */
export function recalculate(
  files: Readonly<Record<string, Uint8Array>>,
): Promise<Record<string, Uint8Array>> {
  return convert(files, 'xlsx');
}

/** How many pages LibreOffice prints each .xlsx file on, by the files' names. */
export async function printedPages(
  files: Readonly<Record<string, Uint8Array>>,
): Promise<Record<string, number>> {
  const printed = await convert(files, 'pdf');
  const counts = Object.entries(printed).map(([name, bytes]) => {
    // PDF 1.7 (ISO 32000-1), 7.7.3.3: each page is an object of the type Page.
    const pages = Buffer.from(bytes)
      .toString('latin1')
      .match(/\/Type\s*\/Page\b/gu);
    return [name, pages?.length ?? 0] as const;
  });
  return Object.fromEntries(counts);
}

/** All files in one run of the program, which takes as long as one file. */
export async function convert(
  files: Readonly<Record<string, Uint8Array>>,
  ending: 'xlsx' | 'pdf',
): Promise<Record<string, Uint8Array>> {
  const folder = await mkdtemp(join(tmpdir(), 'coveledger-office-'));
  try {
    const profile = join(folder, 'profile');
    await mkdir(join(profile, 'user'), { recursive: true });
    await writeFile(join(profile, 'user', 'registrymodifications.xcu'), ALWAYS);
    const names = Object.keys(files);
    const paths = names.map((name) => join(folder, `${name}.xlsx`));
    await Promise.all(names.map((name, index) => writeFile(paths[index]!, files[name]!)));
    const out = join(folder, 'out');
    await run([
      '--headless',
      `-env:UserInstallation=${pathToFileURL(profile).href}`,
      '--convert-to',
      ending,
      '--outdir',
      out,
      ...paths,
    ]);
    const saved = names.map(
      async (name) => [name, await readFile(join(out, `${name}.${ending}`))] as const,
    );
    return Object.fromEntries(await Promise.all(saved));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/**
 * Where recalculated values of formulas differ from the cached ones, numbers by more than 1e-9 of
 * the larger (or of 1, below it).
 *
 * @returns One line for each; and how many formulas were compared, so that none compared is seen.
 */
export function differingFormulas(
  cached: WorkbookView,
  recalculated: WorkbookView,
): { readonly compared: number; readonly differing: readonly string[] } {
  const differing: string[] = [];
  let compared = 0;
  for (const sheet of cached.sheets) {
    const other = recalculated.sheets.find(({ name }) => name === sheet.name);
    for (const [at, { formula, value }] of Object.entries(sheet.cells)) {
      if (formula === null) continue;
      compared += 1;
      const now = other?.cells[at]?.value ?? null;
      if (!same(value, now)) differing.push(`${sheet.name}!${at} =${formula}: ${value}, ${now}`);
    }
  }
  return { compared, differing };
}

type Value = string | number | boolean | null;

function same(one: Value, other: Value): boolean {
  if (typeof one === 'number' && typeof other === 'number') {
    return Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one), Math.abs(other));
  }
  return one === other;
}

function run(options: readonly string[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const office = spawn(PROGRAM, options, { timeout: LONGEST_RUN_MS, stdio: 'pipe' });
    let said = '';
    office.stderr.on('data', (chunk: Buffer) => (said += chunk.toString()));
    office.stdout.on('data', (chunk: Buffer) => (said += chunk.toString()));
    office.on('error', reject);
    office.on('close', (status) => {
      if (status === 0) resolve();
      else reject(new Error(`${PROGRAM} ended with ${status ?? 'a signal'}: ${said}`));
    });
  });
}
