/** Counts, board feet and weight of one profile's plan; its hours come from work. */
import Fraction from 'fraction.js';
import { allowanceFactor } from '../core/lumber/offcut-allowance.ts';
import { countedThickness } from '../core/lumber/board-feet.ts';
import { computeWeight } from '../core/lumber/weight.ts';
import { findThicknessClass } from '../core/lumber/thickness-class.ts';
import type { ExactInches } from '../core/units/length.ts';
import type { Profile } from './job.ts';
import type { CutStick, Tally } from './job-plan.ts';
import { countJoints } from './joints.ts';
import type { Piece } from './piece.ts';
import type { SetUp } from './plan-setup.ts';
import type { Shop } from './shop.ts';

const ZERO = new Fraction(0);

export function tallyProfile(
  profile: Profile,
  pieces: readonly Piece[],
  sticks: readonly CutStick[],
  setUp: SetUp | undefined,
  shop: Shop,
  boardFeetBought?: number,
): Omit<Tally, 'hours'> {
  const lengthNet = pieces.reduce((sum, piece) => sum.add(piece.cutLength), ZERO);
  const lengthBought = sticks.reduce((sum, stick) => sum.add(stick.length), ZERO);
  const allowance = profile.offcutAllowancePercent ?? shop.offcutAllowance;
  const eachInch = boardFeetPerInch(profile, shop);
  const net = eachInch === undefined ? undefined : eachInch * Number(lengthNet);
  const passCount = setUp?.passHeights.length ?? 0;
  return {
    pieces: pieces.length,
    sticks: sticks.length,
    lengthNet,
    lengthBought,
    ...(net === undefined
      ? {}
      : {
          boardFeetNet: net,
          boardFeetWithAllowance: net * allowanceFactor(allowance, shop.allowanceOf),
        }),
    ...(boardFeetBought === undefined ? {} : { boardFeetBought }),
    offcutAllowancePercent: allowance,
    passes: passCount * sticks.length,
    joints: countJoints(sticks),
    ...weightOf(profile, Number(lengthNet)),
  };
}

/**
 * The thickness that a profile's blanks are sold by: the class's, or the blank's own, under 1 in
 * counted as 1, but as it is in a shop that counts m³. Absent where neither is given.
 */
export function soldThickness(
  { blankThickness, thicknessClass }: Profile,
  { unit }: Pick<Shop, 'unit'>,
): ExactInches | undefined {
  const found = findThicknessClass(thicknessClass, 'thicknessClass');
  const thickness = found.ok ? found.value.rough : blankThickness;
  if (thickness === undefined) return undefined;
  return unit === 'mm' ? new Fraction(thickness) : countedThickness(new Fraction(thickness));
}

/**
 * Board feet of the blanks that an inch of net length takes: thickness as sold · blank width / 144.
 * Navy Engineering Aid manual 6-3. What is bought ready made is sold by the foot or the piece.
 */
export function boardFeetPerInch(profile: Profile, shop: Pick<Shop, 'unit'>): number | undefined {
  const thickness = soldThickness(profile, shop);
  if (profile.make === 'buy' || thickness === undefined) return undefined;
  return (Number(thickness) * Number(profile.blankWidth)) / 144;
}

/** Of the finished net length as whole blanks, the cove not taken off: what a helper lifts. */
function weightOf(profile: Profile, lengthInches: number): { pounds?: number } {
  const { blankWidth, blankThickness, species } = profile;
  if (blankWidth === undefined || blankThickness === undefined || !(lengthInches > 0)) return {};
  const cubicInches = Number(blankWidth) * Number(blankThickness) * lengthInches;
  const weight = computeWeight({ cubicInches, species });
  return weight.ok ? { pounds: weight.value.pounds } : {};
}
