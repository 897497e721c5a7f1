import { phrase } from '../../core/faults/argument.ts';
import { failed, fault, ok, type Fault, type Outcome } from '../../core/faults/fault.ts';
import { matchCove } from '../../core/match/match-cove.ts';
import { cautionsOfMatch } from '../../core/match/say-of-match.ts';
import type { TracePoint } from '../../core/match/trace.ts';
import { LONGEST_RUN_INCHES } from '../../core/units/plausible-length.ts';
import { toDegrees } from '../../core/units/angle.ts';
import type { ArgumentTable } from '../argument.ts';
import { answerRows } from '../answer.ts';
import type { Range } from '../cell.ts';
import { BLADE } from '../cove-arguments.ts';
import { readArgument } from '../read-argument.ts';
import { blockOf, isBlankCell } from '../shape.ts';

export const ARGUMENTS = {
  points: {
    name: 'points',
    kind: 'length',
    least: 'any',
    blank: 'refused',
    most: LONGEST_RUN_INCHES,
  },
  ...BLADE,
  painted: { name: 'painted', kind: 'word', allowed: ['no', 'yes'] },
} as const satisfies ArgumentTable;

const { points: POINT, ...SINGLES } = ARGUMENTS;
const NUMBERS = 7;
/** How far across, how far from there. */
const COLUMNS = 2;

/**
 * The setting whose cove comes nearest to points traced off an existing molding: approach in degrees from
 * the blade line, tilt in degrees from upright, height of the highest tooth, width, depth and off-center of
 * the cove that it cuts, the farthest miss, all in inches, and what is to be said of it in words. The
 * first and last point lie on the face. Read your saw's manual first: some forbid this cut.
 * @customfunction MATCH
 * @helpurl functions.html#match
 * @param points The points, a range of two columns, in order along the profile: how far across, and how
 * far into the wood from there; inches, or texts such as 1 3/8 or 35 mm. The first and last lie on the
 * flats. Rows that are blank are skipped.
 * @param [bladeDiameter] Diameter of the blade as measured: inches, or a text such as 9 7/8 or
 * 250 mm; 10 in when left out or 0.
 * @param [kerf] Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.
 * @param [painted] The word yes where paint lies on the molding, which only adds to it; no, or left out,
 * for bare wood.
 * @example =COVE.MATCH({0,0;0.4,0;0.7,0.36;1.1,0.62;1.6,0.74;2.1,0.74;2.6,0.62;3,0.36;3.3,0;3.7,0})
 */
export function match(
  points: any[][],
  bladeDiameter?: any[][],
  kerf?: any[][],
  painted?: any[][],
): any[][] {
  return answerRows(SINGLES, { bladeDiameter, kerf, painted }, NUMBERS, (given) => {
    const trace = readPoints(points);
    if (!trace.ok) return { numbers: [], faults: trace.faults, cautions: [] };
    const matched = matchCove({
      points: trace.value,
      blades: [{ diameter: given.bladeDiameter, kerf: given.kerf }],
      loss: given.painted === 'yes' ? 'paint' : 'even',
    });
    const answer = matched.ok ? matched.value : undefined;
    const [only] = answer?.best.settings ?? [];
    const faults = matched.ok ? matched.value.faults : matched.faults;
    if (answer === undefined || only === undefined || faults.length > 0) {
      return { numbers: [], faults, cautions: [] };
    }
    const { setting, width, depth, offCenter } = only;
    const numbers = [
      toDegrees(setting.approach),
      toDegrees(setting.tilt),
      setting.height,
      width,
      depth,
      offCenter,
      Math.abs(answer.best.worst.inches),
    ];
    return { numbers, faults: [], cautions: cautionsOfMatch(answer) };
  });
}

function readPoints(range: Range): Outcome<TracePoint[]> {
  const block = blockOf(range);
  if (block.columns !== COLUMNS) {
    return failed(fault('match.two-columns', POINT.name, block.columns, { limit: COLUMNS }));
  }
  const points: TracePoint[] = [];
  const faults: Fault[] = [];
  for (let row = 0; row < block.rows; row++) {
    const cells = [block.at(row, 0), block.at(row, 1)] as const;
    const blanks = cells.filter(isBlankCell).length;
    if (blanks === 2) continue;
    const name = phrase('pointAt', { row: row + 1 });
    if (blanks === 1) {
      faults.push(fault('match.point-half', name, null));
      continue;
    }
    const [across, out] = cells.map((cell) => readArgument({ ...POINT, name }, cell));
    if (across?.ok === true && out?.ok === true)
      points.push({ across: across.value, out: out.value });
    for (const one of [across, out]) if (one?.ok === false) faults.push(...one.faults);
  }
  // What some Excel hands over for blank rows at a range's end: no trace comes back to its own 0.
  while (points.length > 1 && points.at(-1)?.across === 0 && points.at(-1)?.out === 0) points.pop();
  return faults.length > 0 ? failed(...faults) : ok(points);
}
