/** The one thing that a person does next, by what there is: it stands in the accent, in view. */
import type { Fault } from '../../core/faults/fault.ts';
import type { JobFound } from '../job/job-found.ts';
import { missingTables } from '../job/say-tables.ts';
import type { JobTableName } from '../../planning/input/read-job.ts';
import type { PaneState } from './pane-state.ts';

export type NextStep =
  /** No list is there yet: the doors stand open. */
  | { readonly kind: 'begin' }
  /** A list of the person's own stands there: they say which table it is, and what its columns are. */
  | { readonly kind: 'choose'; readonly table: JobTableName }
  | { readonly kind: 'mend'; readonly first: Fault; readonly more: number }
  | { readonly kind: 'plan' }
  | { readonly kind: 'write' }
  | { readonly kind: 'written' };

/** Tables that say what is to be made; the others say of what, and how. */
const LISTS: ReadonlySet<string> = new Set(['Runs', 'Walls', 'Trim', 'Openings']);

/** A list has at least so many columns: what, and how long. */
const LEAST_COLUMNS = 2;

/** Whether anything to be made is typed, or stands under headings of the person's own. */
export function hasList({ tables, survey }: Pick<JobFound, 'tables' | 'survey'>): boolean {
  const ofLists = tables.filter(({ name }) => LISTS.has(name));
  if (ofLists.some(({ place }) => place !== undefined)) {
    return ofLists.some(({ place }) => (place?.rowCount ?? 0) > 0);
  }
  return survey.places.some(
    ({ headings, rowCount }) =>
      rowCount > 0 && headings.filter((one) => one !== null).length >= LEAST_COLUMNS,
  );
}

/** Undefined while it isn't known yet, and where only the person can say: which table is Runs, for one. */
export function nextStepOf(state: PaneState): NextStep | undefined {
  const { reading, planning, writing, tab, isTabChosen, workbook } = state;
  const { found } = reading;
  if (workbook.kind === 'none') return undefined;
  if (found === undefined) {
    return tab === 'profile' && !isTabChosen ? { kind: 'begin' } : undefined;
  }
  if (!hasList(found)) return { kind: 'begin' };
  const runs = found.tables.find(({ name }) => name === 'Runs');
  if (runs !== undefined && runs.place === undefined && runs.alike.length === 0) {
    return state.mapping === undefined ? { kind: 'choose', table: runs.name } : undefined;
  }
  const [first, ...others] = found.faults;
  if (first !== undefined) return { kind: 'mend', first, more: others.length };
  if (missingTables(found.tables).length > 0 || planning.running !== undefined) return undefined;
  const isPlanned = planning.result?.fingerprint === found.fingerprint;
  if (writing.kind === 'written' || (isPlanned && found.writtenFrom === found.fingerprint)) {
    return isPlanned ? { kind: 'written' } : { kind: 'plan' };
  }
  return isPlanned ? { kind: 'write' } : { kind: 'plan' };
}
