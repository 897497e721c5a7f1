import { fault, type Fault } from '../core/faults/fault.ts';
import type { Quantity } from '../core/faults/quantity.ts';
import {
  FINEST_UNITS_PER_INCH,
  MOST_PIECES,
  MOST_PRICE_CENTS,
  MOST_STICKS,
  MOST_STRIPS,
  MOST_UNITS,
} from './limits.ts';
import type { StickProblem, StickSupply } from './problem.ts';
import { fewestParts, longestPartOf, maySplice } from './splice-parts.ts';
import { longestPiece, stickKinds } from './stick-kind.ts';

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
  const say = (units: number): Quantity =>
    inUnits.length === 0 ? { inches: units / problem.unitsPerInch } : units;
  const ofSticks = [
    ...lengthFaults('Kerf', problem.kerf, 0, say),
    ...lengthFaults('End trim', problem.endTrim, 0, say),
    ...problem.supplies.flatMap((supply) => supplyFaults(supply, problem.endTrim, say)),
  ];
  const ofDemands = demandFaults(problem, say);
  return [
    ...inUnits,
    ...lengthFaults('Keep offcuts over', problem.keepOffcutsOver, 0, say),
    ...ofSticks,
    ...idFaults('Stick', problem.supplies),
    ...ofDemands,
    // Only sound numbers can be weighed against each other.
    ...spliceFaults(problem, ofSticks.length === 0, ofDemands.length === 0, say),
  ];
}

type Say = (units: number) => Quantity;

function unitFaults(unitsPerInch: number): readonly Fault[] {
  const argument = 'Units per inch';
  const faults = wholeFaults(argument, unitsPerInch, 1, MOST_UNITS);
  if (faults.length > 0 || unitsPerInch <= FINEST_UNITS_PER_INCH) return faults;
  return [fault('cutting.unit-too-fine', argument, unitsPerInch, { limit: FINEST_UNITS_PER_INCH })];
}

function supplyFaults(supply: StickSupply, endTrim: number, say: Say): readonly Fault[] {
  const { id, length, buyMost } = supply;
  const ofLength = lengthFaults(`Stick ${id}`, length, 1, say);
  const usedUp = ofLength.length === 0 && Number.isFinite(endTrim) && length <= 2 * endTrim;
  return [
    ...ofLength,
    ...(usedUp
      ? [
          fault('cutting.stick-shorter-than-trim', `Stick ${id}`, say(length), {
            limit: say(2 * endTrim),
          }),
        ]
      : []),
    ...wholeFaults(`Price of stick ${id}`, supply.priceCents, 0, MOST_PRICE_CENTS),
    ...wholeFaults(`Strips of stick ${id}`, supply.strips, 1, MOST_STRIPS),
    ...wholeFaults(`Sticks ${id} on the rack`, supply.have, 0, MOST_STICKS),
    ...(buyMost === null ? [] : wholeFaults(`Sticks ${id} to buy`, buyMost, 0, MOST_STICKS)),
  ];
}

function demandFaults(problem: StickProblem, say: Say): readonly Fault[] {
  const { demands, supplies } = problem;
  const faults: Fault[] = [];
  if (demands.length > 0 && supplies.length === 0) {
    faults.push(fault('cutting.no-sticks', 'the pieces', null));
  }
  if (demands.length > MOST_PIECES) return [...faults, tooMany(demands.length)];
  for (const { id, length } of demands) {
    faults.push(...lengthFaults(`Piece ${id}`, length, 1, say));
  }
  return [...faults, ...idFaults('Piece', demands)];
}

function spliceFaults(
  problem: StickProblem,
  soundSticks: boolean,
  soundDemands: boolean,
  say: Say,
): readonly Fault[] {
  if (problem.splice === undefined) return [];
  const { overlap } = problem.splice;
  const faults = lengthFaults('Splice overlap', overlap, 0, say);
  const kinds = soundSticks ? stickKinds(problem) : [];
  if (faults.length > 0 || kinds.length === 0) return faults;
  const longest = longestPartOf(problem, longestPiece(problem, kinds));
  if (overlap >= longest) {
    return [
      fault('cutting.splice-too-short', 'Splice overlap', say(overlap), { limit: say(longest) }),
    ];
  }
  const pieces = soundDemands ? piecesWithParts(problem, longest, overlap) : 0;
  return pieces > MOST_PIECES ? [tooMany(pieces)] : [];
}

function piecesWithParts(problem: StickProblem, longest: number, overlap: number): number {
  return problem.demands.reduce(
    (sum, demand) => sum + (maySplice(demand) ? fewestParts(demand.length, longest, overlap) : 1),
    0,
  );
}

function tooMany(pieces: number): Fault {
  return fault('cutting.too-many-pieces', 'Pieces', pieces, { limit: MOST_PIECES });
}

function idFaults(noun: string, entries: readonly { readonly id: string }[]): readonly Fault[] {
  const seen = new Set<string>();
  const twice = new Set<string>();
  for (const { id } of entries) {
    if (seen.has(id)) twice.add(id);
    seen.add(id);
  }
  const faults = [...twice].map((id) => fault('cutting.id-twice', noun, id));
  return seen.has('')
    ? [fault('text.missing', `Id of a ${noun.toLowerCase()}`, ''), ...faults]
    : faults;
}

/** A length in the planner's units, whole, from `least` (0 or 1) up. */
function lengthFaults(argument: string, units: number, least: 0 | 1, say: Say): readonly Fault[] {
  if (!Number.isFinite(units)) return [fault('number.unreadable', argument, String(units))];
  if (least === 1 && units <= 0) return [fault('length.not-positive', argument, say(units))];
  if (units < 0) return [fault('length.negative', argument, say(units))];
  if (units > MOST_UNITS) {
    return [fault('length.too-long', argument, say(units), { limit: say(MOST_UNITS) })];
  }
  return Number.isInteger(units) ? [] : [fault('number.not-whole', argument, units)];
}

/** A bare count or price, whole, from `least` to `most`. */
function wholeFaults(
  argument: string,
  value: number,
  least: 0 | 1,
  most: number,
): readonly Fault[] {
  if (!Number.isFinite(value)) return [fault('number.unreadable', argument, String(value))];
  if (value < 0) return [fault('number.negative', argument, value)];
  if (value < least) return [fault('number.too-small', argument, value, { limit: least })];
  if (value > most) return [fault('number.too-large', argument, value, { limit: most })];
  return Number.isInteger(value) ? [] : [fault('number.not-whole', argument, value)];
}
