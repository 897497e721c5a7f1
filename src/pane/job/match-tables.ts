/** Which place of the workbook stands for which table of the job. */
import type { TablePlace } from '../../hosts/host.ts';
import { recognizeTables } from '../../planning/input/recognize-tables.ts';
import { sayList } from './say-findings.ts';
import { isPlaceOf, type Choices } from './choices.ts';
import type { TableMatch } from './job-found.ts';

/** What the person chose goes first, while it is there; a chosen place is no other table too. */
export function matchTables(places: readonly TablePlace[], choices: Choices): TableMatch[] {
  const chosen = new Map<string, TablePlace>();
  for (const [name, choice] of Object.entries(choices)) {
    const place = places.find((one) => isPlaceOf(choice, one));
    if (place !== undefined) chosen.set(name, place);
  }
  const taken = new Set(chosen.values());
  const free = recognizeTables(places.filter((place) => !taken.has(place)));
  return free.map(({ name, required, chosen: found, alike }) => {
    const place = chosen.get(name);
    return place === undefined
      ? { name, required, place: found, alike, choice: undefined }
      : { name, required, place, alike: [], choice: choices[name] };
  });
}

/** `Trim list on sheet House`, or `sheet House`. */
export function sayPlace({ sheet, table }: TablePlace): string {
  return table === undefined || table === sheet ? `sheet ${sheet}` : `${table} on sheet ${sheet}`;
}

/** The tables that a job can't do without and that stand nowhere yet. */
export function missingTables(tables: readonly TableMatch[]): readonly string[] {
  return tables
    .filter(({ required, place }) => required && place === undefined)
    .map(({ name }) => name);
}

/** Why no plan can be made yet, or undefined when one can. */
export function whyNoPlan(tables: readonly TableMatch[], faultCount: number): string | undefined {
  const missing = missingTables(tables);
  if (missing.length > 0) {
    return `${sayList(missing)} ${missing.length === 1 ? 'is' : 'are'} not chosen yet: see Job.`;
  }
  if (faultCount === 0) return undefined;
  return faultCount === 1
    ? 'A problem in the tables stands in the way: see Job.'
    : `${faultCount} problems in the tables stand in the way: see Job.`;
}
