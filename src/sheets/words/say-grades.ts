/** What is printed of hardwood grades: usual values that nobody fills in for a person. */
import { GRADES } from '../../core/lumber/grades.ts';

/** Both kinds of figures with their sources; for the order and the How to sheet. */
export function sayGrades(): string {
  const promised = GRADES.flatMap(({ name, leastClear }) =>
    leastClear === undefined ? [] : [`${name} ${leastClear}`],
  );
  const milled = GRADES.flatMap(({ name, ripYieldPercent }) =>
    ripYieldPercent === undefined ? [] : [`${name} ${ripYieldPercent}`],
  );
  return `Least clear face that the rules promise, in percent: ${promised.join(', ')} (American Hardwood Export Council). Ripped for moldings from yellow-poplar 4/4, in percent of what went in: ${milled.join(', ')} (West Virginia University, thesis 8857); these hold what goes with the saw and the edges too, which the plan counts by itself.`;
}
