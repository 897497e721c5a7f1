/** Faults and cautions grouped by where they stand, no more than a pane can show. */
import { sayWhere, type Fault, type Where } from '../../core/faults/fault.ts';

export interface FindingGroup {
  /** A sheet's or file's name; `The workbook` for what stands in no cell. */
  readonly title: string;
  readonly findings: readonly Finding[];
}

export interface Finding {
  /** Stays the same from reading to reading, so that a focused line stays focused. */
  readonly key: string;
  /** The cell alone, D7, since its sheet stands above. */
  readonly cell: string | undefined;
  readonly where: Where | undefined;
  readonly message: string;
}

export interface FindingGroups {
  readonly groups: readonly FindingGroup[];
  /** How many more there are than are shown. */
  readonly more: number;
}

/** More than this many lines help nobody at once. */
export const MOST_FINDINGS = 200;

export function groupFindings(faults: readonly Fault[], most = MOST_FINDINGS): FindingGroups {
  const groups = new Map<string, Finding[]>();
  const seen = new Map<string, number>();
  for (const { where, message } of inOrder(faults).slice(0, most)) {
    const title = titleOf(where);
    const place = where === undefined ? '' : sayWhere(where);
    const base = `${place} ${message}`;
    const times = seen.get(base) ?? 0;
    seen.set(base, times + 1);
    const group = groups.get(title) ?? [];
    group.push({ key: `${base} ${times}`, cell: cellOf(where), where, message });
    groups.set(title, group);
  }
  return {
    groups: [...groups].map(([title, findings]) => ({ title, findings })),
    more: Math.max(0, faults.length - most),
  };
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

function cellOf(where: Where | undefined): string | undefined {
  if (where === undefined) return undefined;
  return 'sheet' in where ? where.cell : `line ${where.line}`;
}
