/** Faults and cautions grouped by where they stand, no more than a pane can show. */
import { sayWhere, type Fault, type FaultCode, type Where } from '../../core/faults/fault.ts';
import { groupFaults, type FaultGroup } from '../../core/faults/group-faults.ts';

export interface FindingGroup {
  /** A sheet's or file's name; `The workbook` for what stands in no cell. */
  readonly title: string;
  readonly findings: readonly Finding[];
}

export interface Finding {
  /** Stays the same from reading to reading, so that a focused line stays focused. */
  readonly key: string;
  /** The cells that it is said of, each once; none where it is of no cell. */
  readonly cells: readonly FoundCell[];
  readonly message: string;
  /** By which the help page knows it. */
  readonly code: FaultCode;
}

export interface FoundCell {
  /** The cell alone, D7, since its sheet stands above. */
  readonly name: string;
  readonly where: Where;
}

export interface FindingGroups {
  readonly groups: readonly FindingGroup[];
  /** How many more there are than are shown. */
  readonly more: number;
}

/** More than this many lines help nobody at once. */
export const MOST_FINDINGS = 200;

/** What is said of several cells of a sheet is one finding with all of them. */
export function groupFindings(faults: readonly Fault[], most = MOST_FINDINGS): FindingGroups {
  const groups = new Map<string, Fault[]>();
  for (const one of inOrder(faults)) {
    const title = titleOf(one.where);
    groups.set(title, [...(groups.get(title) ?? []), one]);
  }
  let left = most;
  let more = 0;
  const found = [...groups].map(([title, own]): FindingGroup => {
    const all = groupFaults(own);
    const shown = all.slice(0, left);
    left -= shown.length;
    more += all.length - shown.length;
    return { title, findings: shown.map(findingOf) };
  });
  return { groups: found.filter(({ findings }) => findings.length > 0), more };
}

function findingOf({ code, message, places }: FaultGroup): Finding {
  const [first] = places;
  const place = first === undefined ? '' : sayWhere(first);
  const cells = places.map((where) => ({ name: cellOf(where), where }));
  return { key: `${place} ${message}`, cells, message, code };
}

/** Sheet after sheet as they first come, each from its top to its bottom, as a person goes through it. */
function inOrder(faults: readonly Fault[]): readonly Fault[] {
  const titles = [...new Set(faults.map(({ where }) => titleOf(where)))];
  return titles.flatMap((title) =>
    faults
      .filter(({ where }) => titleOf(where) === title)
      .sort((one, other) => lineOf(one.where) - lineOf(other.where)),
  );
}

function lineOf(where: Where | undefined): number {
  if (where === undefined) return 0;
  return 'line' in where ? where.line : Number(/\d+$/u.exec(where.cell)?.[0] ?? 0);
}

function titleOf(where: Where | undefined): string {
  if (where === undefined) return 'The workbook';
  return 'sheet' in where ? where.sheet : where.file;
}

function cellOf(where: Where): string {
  return 'sheet' in where ? where.cell : `line ${where.line}`;
}
