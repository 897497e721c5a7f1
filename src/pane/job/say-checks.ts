/** What a reading of the workbook has found, in words to be seen and to be heard. */
import type { JobFound } from './job-found.ts';
import { sayFindings, sayList } from './say-findings.ts';
import { missingTables } from './say-tables.ts';

type Checked = Pick<JobFound, 'tables' | 'faults' | 'cautions'>;

/** What is missing goes first: no problems in what is there would sound as if all were well. */
export function sayChecks({ tables, faults, cautions }: Checked): string {
  if (!tables.some(({ place }) => place !== undefined)) return 'Nothing to check yet';
  const open = new Set<string>(
    tables.filter(({ alike }) => alike.length > 0).map(({ name }) => name),
  );
  const missing = missingTables(tables);
  const parts = [
    { names: missing.filter((name) => !open.has(name)), what: 'missing' },
    { names: missing.filter((name) => open.has(name)), what: 'to be chosen' },
  ];
  const lacking = parts
    .filter(({ names }) => names.length > 0)
    .map(({ names, what }) => `${sayList(names)} ${what}`);
  const found = sayFindings(faults.length, cautions.length);
  const said = lacking.length === 0 ? found : `${lacking.join(', ')}; ${found} in the others`;
  return said.charAt(0).toUpperCase() + said.slice(1);
}

/** The same as a sentence, to be heard. */
export function sayRead(found: Checked): string {
  const isNone = !found.tables.some(({ place }) => place !== undefined);
  if (isNone && missingTables(found.tables).length > 0) {
    return 'The workbook was read: no input tables are chosen yet.';
  }
  const said = sayChecks(found);
  return `The tables were read: ${said.charAt(0).toLowerCase()}${said.slice(1)}.`;
}
