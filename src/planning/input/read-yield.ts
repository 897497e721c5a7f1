/** Grade and yield of a row of Stock. */
import { fault } from '../../core/faults/fault.ts';
import { findGrade, type Grade } from '../../core/lumber/grades.ts';
import type { StockItem } from '../job.ts';
import type { RowReader } from './row-reader.ts';

/** Below, a share was meant (0.8 for 80 %), or no board is worth its money. */
const LEAST_PERCENT = 1;
/** `83 1/3`, as it is printed. */
const WITH_FRACTION = /^(\d{1,3})[ -](\d)\/([1-9])\s*%?$/u;

/**
 * Undefined where boards come clear, or where it is at fault, which is in the row's findings. Of sticks, and
 * of what is on the rack, there is none.
 */
export function readYield(
  row: RowReader,
  { kind, have, buyMost }: Pick<StockItem, 'kind' | 'have' | 'buyMost'>,
): number | undefined {
  const grade = findGrade(row.text('grade'));
  if (row.isBlank('yieldPercent')) {
    if (kind === 'board' && buyMost !== 0 && grade !== undefined) {
      const details = { printed: sayPrinted(grade) };
      row.caution(
        'yieldPercent',
        fault('job.grade-no-yield', 'yieldPercent', grade.name, { details }),
      );
    }
    return undefined;
  }
  const percent = percentIn(row);
  if (percent === undefined || percent === 100) return undefined;
  const refuse = (code: Parameters<typeof fault>[0], details = {}): undefined =>
    row.refuse('yieldPercent', fault(code, 'yieldPercent', percent, { details }));
  if (!(percent >= LEAST_PERCENT && percent < 100)) return refuse('job.yield-no-share');
  if (kind === 'stick') return refuse('job.yield-of-stick');
  if (have > 0) return refuse('job.yield-on-rack', { have });
  return percent;
}

function percentIn(row: RowReader): number | undefined {
  const raw = row.raw('yieldPercent');
  if (!raw.ok || raw.value === null) return undefined;
  if (typeof raw.value !== 'string') {
    return row.number('yieldPercent', -Infinity, Infinity, { percent: true });
  }
  const said = raw.value.trim();
  const [, whole, over, under] = WITH_FRACTION.exec(said) ?? [];
  if (whole !== undefined) return Number(whole) + Number(over) / Number(under);
  const grade = findGrade(said);
  // A bare 1 is a number, and a grade's name too.
  if (grade === undefined || /^\d+$/u.test(said)) {
    return row.number('yieldPercent', -Infinity, Infinity, { percent: true });
  }
  const printed = sayPrinted(grade);
  const details = { printed: printed === '' ? '' : ` (${printed.replace(/\.$/u, '')})` };
  return row.refuse('yieldPercent', fault('job.yield-is-grade', 'yieldPercent', said, { details }));
}

/** What print gives for a grade: a promise of the rules, and what a mill had. */
function sayPrinted({ name, leastClear, ripYieldPercent }: Grade): string {
  const promised =
    leastClear === undefined
      ? []
      : [`The rules promise ${leastClear} % of the face of ${name} clear, at least`];
  const milled =
    ripYieldPercent === undefined
      ? []
      : [`a molding mill had ${ripYieldPercent} % of it, ripped from yellow-poplar 4/4`];
  const said = [...promised, ...milled].join('; ');
  return said === '' ? '' : `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}
