/** What a trial cut says besides what to move, as cautions: wording.ts has the words. */
import { fault, type Caution } from '../faults/fault.ts';
import { degrees, toDegrees } from '../units/angle.ts';
import { MEASURED_TO_INCHES, type TrialAnswer } from './trial-cut.ts';

export function sayTrial(answer: TrialAnswer, measuredTo = MEASURED_TO_INCHES): Caution[] {
  const { cut, sure, likely, isRight } = answer;
  const said: Caution[] = [];
  if (cut.tilt < 0)
    said.push(fault('trial.other-side', 'tilt', { degrees: Math.abs(toDegrees(cut.tilt)) }));
  if (isRight) said.push(fault('trial.right', 'measured', { inches: measuredTo }));
  else said.push(...sayLikely(answer));
  if (!isRight || likely.length === 0) {
    const details = { tilt: { degrees: sure.tilt }, height: { inches: sure.height } };
    const limit = { inches: measuredTo };
    said.push(fault('trial.sure', 'measured', { degrees: sure.approach }, { limit, details }));
  }
  return said;
}

function sayLikely({ likely }: TrialAnswer): Caution[] {
  if (likely.length === 0) return [fault('trial.several', 'measured', null)];
  return likely.map(({ cause, by, left }) => {
    const isAngle = cause === 'approach' || cause === 'tilt';
    const size = Math.abs(by);
    const given = isAngle ? { degrees: degrees(size) } : { inches: Math.round(size * 128) / 128 };
    const details = { cause, more: by > 0 ? 'more' : 'less' };
    const limit = { inches: Math.ceil(left * 128) / 128 };
    return fault('trial.likely', 'measured', given, { limit, details });
  });
}
