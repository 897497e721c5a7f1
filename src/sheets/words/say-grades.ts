/** What is printed of hardwood grades: usual values that nobody fills in for a person. */
import type { LengthReading } from '../../core/units/length.ts';
import { GRADES } from '../../core/lumber/grades.ts';

/** Both kinds of figures with their sources; for the order and the How to sheet. A metric shop reads no thirds. */
export function sayGrades({ unit, decimalSign }: Partial<LengthReading> = {}): string {
  const say = (percent: string): string =>
    unit === 'mm'
      ? percent.replace(
          / ([12])\/3/u,
          (_, thirds) => `${decimalSign ?? '.'}${thirds === '1' ? 3 : 7}`,
        )
      : percent;
  const promised = GRADES.flatMap(({ name, leastClear }) =>
    leastClear === undefined ? [] : [`${name} ${say(leastClear)}`],
  );
  const milled = GRADES.flatMap(({ name, ripYieldPercent }) =>
    ripYieldPercent === undefined ? [] : [`${name} ${ripYieldPercent}`],
  );
  return `Least clear face that the rules promise, in percent: ${promised.join(', ')} (American Hardwood Export Council). Ripped for moldings from yellow-poplar 4/4, in percent of what went in: ${milled.join(', ')} (West Virginia University, thesis 8857); these hold what goes with the saw and the edges too, which the plan counts by itself.`;
}
