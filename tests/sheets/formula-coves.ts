/** Random coves that a saw can cut, as blocks of the sheet of formulas. */
import type { Blade, Cove, OffCenterTo, Setting } from '../../src/core/cove/cove.ts';
import { checkCove } from '../../src/core/cove/feasibility.ts';
import { computeCut } from '../../src/core/cove/cut.ts';
import { checkRails } from '../../src/core/cove/rail-hold.ts';
import { planPasses } from '../../src/core/cove/passes.ts';
import { layOutRails, type TiltSide } from '../../src/core/cove/rails.ts';
import { toDegrees } from '../../src/core/units/angle.ts';
import type { FormulaCove } from '../../src/sheets/formulas/set-up-formulas.ts';
import { seededNumbers } from '../seeded-numbers.ts';

export interface RandomCove {
  readonly cove: Cove;
  readonly blade: Blade;
  readonly setting: Setting;
  readonly block: FormulaCove;
}

export const TABLE = { front: 8.25, back: 10.5 };
const WEB = 0.5;
const FLATS = { near: 0.5, far: 0.75 };
const PASSES = { first: 1 / 16, step: 1 / 16, last: 1 / 32 };

/** Blades of 7 to 12 in, kerfs from none to 1/4 in; three in ten upright, some near the extremes. */
export function randomCoves(
  count: number,
  seed: number,
  perInch = 1,
  side: TiltSide = 'left',
  offCenterTo: OffCenterTo = 'deepest line',
): RandomCove[] {
  const next = seededNumbers(seed);
  const found: RandomCove[] = [];
  while (found.length < count) {
    const blade = {
      diameter: 7 + 5 * next(),
      kerf: next() < 0.1 ? 0 : 0.0625 + 0.1875 * next(),
    };
    const depth = 0.1 + next() * Math.min(2.5, blade.diameter / 4);
    const chord = 2 * Math.sqrt(depth * (blade.diameter - depth));
    const width = blade.kerf + (chord - blade.kerf) * next();
    const off = next() < 0.5 ? (width / 2) * next() : Math.min(width / 2, depth * next());
    const cove: Cove = { width, depth, offCenter: next() < 0.3 ? 0 : off, offCenterTo };
    const stock = {
      blankWidth: width + FLATS.near + FLATS.far,
      blankThickness: depth + WEB,
      nearFlat: FLATS.near,
    };
    const { setting, faults } = checkCove(cove, blade, {}, stock);
    if (setting === undefined || faults.length > 0) continue;
    const flats = { ...FLATS, midway: false };
    const cut = computeCut(blade, setting);
    if (checkRails(blade, setting, cut, flats, TABLE).length > 0) continue;
    found.push({ cove, blade, setting, block: blockOf(cove, blade, setting, perInch, side) });
  }
  return found;
}

export function blockOf(
  cove: Cove,
  blade: Blade,
  setting: Setting,
  perInch: number,
  side: TiltSide,
): FormulaCove {
  const rails = layOutRails(setting.approach, computeCut(blade, setting), FLATS, TABLE, side);
  return {
    name: `Cove ${cove.width.toFixed(3)} by ${cove.depth.toFixed(3)}`,
    sizes: {
      width: cove.width * perInch,
      depth: cove.depth * perInch,
      offCenter: cove.offCenter * perInch,
      ...(cove.offCenterTo === undefined ? {} : { offCenterTo: cove.offCenterTo }),
      diameter: blade.diameter * perInch,
      kerf: blade.kerf * perInch,
      blankWidth: (cove.width + FLATS.near + FLATS.far) * perInch,
      blankThickness: (cove.depth + WEB) * perInch,
      nearFlat: FLATS.near * perInch,
      front: TABLE.front * perInch,
      back: TABLE.back * perInch,
      tiltStopDeg: 45,
      steepestDeg: 75,
      leastWeb: 0.25 * perInch,
      leastFlat: 0.125 * perInch,
      firstPass: PASSES.first * perInch,
      step: PASSES.step * perInch,
      lastPass: PASSES.last * perInch,
    },
    planned: {
      approachDeg: toDegrees(setting.approach),
      tiltDeg: toDegrees(setting.tilt),
      passes: planPasses(cove.depth, PASSES).heights.length,
      nearFlat: FLATS.near * perInch,
      farFlat: FLATS.far * perInch,
      marks: {
        nearFront: rails.near.front.fromBlade * perInch,
        nearBack: rails.near.back.fromBlade * perInch,
        farFront: rails.far.front.fromBlade * perInch,
        farBack: rails.far.back.fromBlade * perInch,
      },
    },
  };
}

export const RANDOM_FLATS = FLATS;
