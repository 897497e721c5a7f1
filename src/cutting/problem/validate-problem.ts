import { own, phrase } from '../../core/faults/argument.ts';
import { fault, type Fault } from '../../core/faults/fault.ts';
import { FINEST_UNITS_PER_INCH, MOST_PLANNED_PIECES, MOST_UNITS } from './limits.ts';
import { idFaults, lengthFaults, wholeFaults, type SayLength } from './number-faults.ts';
import { blanksOf } from './profiles.ts';
import type { StickProblem } from './problem.ts';
import { ofProfileFaults, profileFaults, ruleFaults, spliceFaults } from './validate-profiles.ts';
import { supplyFaults } from './validate-supply.ts';

/**
 * Finds everything that keeps a stick problem from being planned, all at once.
 *
 * A piece longer than every stick, or a limited stock that runs out, is no fault: the plan lists
 * what it leaves unserved, with the reason.
 *
 * @returns the faults, empty where the problem is sound
 */
export function validateProblem(problem: StickProblem): readonly Fault[] {
  const inUnits = unitFaults(problem.unitsPerInch);
  // Without a sound unit a length can't be said in inches, so it is said as the bare count.
  const say: SayLength = (units) =>
    inUnits.length === 0 ? { inches: units / problem.unitsPerInch } : units;
  const blanks = blanksOf(problem);
  const ofKerf = lengthFaults('kerf', problem.kerf, 0, say);
  const ofSticks = [
    ...ofKerf,
    ...lengthFaults('endTrim', problem.endTrim, 0, say),
    ...problem.supplies.flatMap((supply) => supplyFaults(supply, problem.endTrim, blanks, say)),
  ];
  const isTooMany = problem.demands.length > MOST_PLANNED_PIECES;
  const ofDemands = demandFaults(problem, ofKerf.length === 0, say);
  const ofProfiles = [...profileFaults(problem), ...(isTooMany ? [] : ofProfileFaults(problem))];
  const ofRules = ruleFaults(problem, say);
  // Only sound numbers can be weighed against each other.
  const areSound = [ofSticks, ofDemands, ofProfiles, ofRules].every((some) => some.length === 0);
  return [
    ...inUnits,
    ...lengthFaults('keepOffcutsOver', problem.keepOffcutsOver, 0, say),
    ...ofSticks,
    ...idFaults('stick', problem.supplies),
    ...ofDemands,
    ...ofProfiles,
    ...ofRules,
    ...(areSound ? spliceFaults(problem, say) : []),
  ];
}

function unitFaults(unitsPerInch: number): readonly Fault[] {
  const argument = 'unitsPerInch';
  const faults = wholeFaults(argument, unitsPerInch, 1, MOST_UNITS);
  if (faults.length > 0 || unitsPerInch <= FINEST_UNITS_PER_INCH) return faults;
  return [fault('cutting.unit-too-fine', argument, unitsPerInch, { limit: FINEST_UNITS_PER_INCH })];
}

function demandFaults(
  problem: StickProblem,
  isKerfSound: boolean,
  say: SayLength,
): readonly Fault[] {
  const { demands, supplies, kerf } = problem;
  const faults: Fault[] = [];
  if (demands.length > 0 && supplies.length === 0) {
    faults.push(fault('cutting.no-sticks', 'thePieces', null));
  }
  if (demands.length > MOST_PLANNED_PIECES) {
    const limit = MOST_PLANNED_PIECES;
    return [...faults, fault('cutting.too-many-pieces', 'pieces', demands.length, { limit })];
  }
  for (const { id, length, joints = [] } of demands) {
    const argument = phrase('pieceOf', { id: own(id) });
    const ofLength = lengthFaults(argument, length, 1, say);
    faults.push(...ofLength, ...joints.flatMap((at) => lengthFaults(argument, at, 1, say)));
    if (isKerfSound && ofLength.length === 0 && kerf > length) {
      const limit = say(length);
      faults.push(fault('cutting.kerf-longer-than-piece', argument, say(kerf), { limit }));
    }
  }
  return [...faults, ...idFaults('piece', demands)];
}
