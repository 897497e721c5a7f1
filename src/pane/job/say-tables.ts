/** What the tables' places are called, and what stands in the way of a plan. */
import type { TablePlace } from '../../hosts/host.ts';
import { isGone } from '../../planning/input/match-tables.ts';
import { sayList } from './say-findings.ts';
import type { TableMatch } from './job-found.ts';

/** `Trim list on sheet House`, or `sheet House`. */
export function sayPlace({ sheet, table }: Pick<TablePlace, 'sheet' | 'table'>): string {
  return table === undefined || table === sheet ? `sheet ${sheet}` : `${table} on sheet ${sheet}`;
}

/** The tables that a job can't do without and that stand nowhere yet; a choice that is gone is a fault. */
export function missingTables(tables: readonly TableMatch[]): readonly string[] {
  return tables
    .filter((table) => table.required && table.place === undefined && !isGone(table))
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
