/** The heights of the passes, from the first light one to the depth. */
import { fault, type Caution, type Fault } from '../faults/fault.ts';
import { inchesGiven } from '../faults/quantity.ts';
import { LIMIT_SLACK_INCHES, PASS_COUNT_SLACK } from '../units/tolerance.ts';
import type { Blade, Setting } from './cove.ts';
import { COVE_SIZES } from './cove-sizes.ts';
import { computeSectionArea } from './outline.ts';

export interface PassRules {
  /** Height of the first pass; inches. */
  readonly first: number;
  /** Most that any later pass takes. */
  readonly step: number;
  /** The light pass at the end; 0 for none. */
  readonly last: number;
  /** What heights on the way are whole multiples of, where first pass and step are; inches. */
  readonly grid?: number;
}

/** Half a millimetre: what a metric rule is marked to. */
export const METRIC_GRID_INCHES = 0.5 / 25.4;

/**
 * First pass 1/16 in: common practice [C]. No more than 1/16 in a pass: woodshoptips.com tip 28;
 * woodsmith.com, "Table Saw Cove Molding". A shallow last pass for smoothing: ShopNotes 83, p. 43.
 */
export const USUAL_PASSES: PassRules = { first: 1 / 16, step: 1 / 16, last: 1 / 32 };
/** Never more than 1/8 in a pass: common practice [C]. */
export const MOST_PASS_INCHES = 1 / 8;
export const MOST_PASSES = 1000;

export interface PassPlan {
  /** Rising heights of the highest tooth; the last is the depth exactly. Empty where faults stand. */
  readonly heights: readonly number[];
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/**
 * Even steps: the first pass, equal steps no larger than the rule's, then the light last pass.
 * Equal steps spread the remainder instead of leaving a sliver. A cove deeper than the first pass is
 * never cut in one, however much the last pass may take: where first and last pass together reach
 * the depth, they share it. On a grid each height on the way lies on it, no step
 * larger than the rule's.
 *
 * @returns heights of which the first is never above the rule's first pass
 */
export function planPasses(depth: number, rules: PassRules = USUAL_PASSES): PassPlan {
  const { faults, cautions } = checkRules(depth, rules);
  if (faults.length > 0) return { heights: [], faults, cautions };
  if (depth <= rules.first + LIMIT_SLACK_INCHES) return { heights: [depth], faults, cautions };
  const beforeLast = depth - rules.last;
  if (beforeLast < rules.first) {
    // All but nothing as the first pass would leave the whole first bite to the last one.
    const first = Math.min(rules.first, Math.max(beforeLast, depth / 2));
    return { heights: [first, depth], faults, cautions };
  }
  const { first } = rules;
  const count = Math.max(0, Math.ceil((beforeLast - first - LIMIT_SLACK_INCHES) / rules.step));
  if (count > MOST_PASSES) return { heights: [], faults: [tooMany(count)], cautions };
  const even = [first];
  for (let step = 1; step < count; step++) {
    even.push(first + ((beforeLast - first) * step) / count);
  }
  if (count > 0) even.push(beforeLast);
  const heights = onGrid(even, rules);
  if (rules.last > LIMIT_SLACK_INCHES) heights.push(depth);
  else heights[heights.length - 1] = depth;
  return { heights, faults, cautions };
}

/**
 * Even load: after the first pass each takes the same area off the section, in as few passes as
 * keep every step within the rule's; then the light last pass. More passes than even steps, since
 * a cove widens as it deepens and the first of them sets the area.
 */
export function planEvenLoad(blade: Blade, setting: Setting, rules: PassRules): PassPlan {
  const even = planPasses(setting.height, rules);
  const beforeLast = setting.height - rules.last;
  if (even.heights.length < 3 || beforeLast <= rules.first) return even;
  const areaAt = (height: number): number => computeSectionArea(blade, { ...setting, height });
  const start = areaAt(rules.first);
  const rest = areaAt(beforeLast) - start;
  // Removed area per height grows with height, so the first of the equal shares has the tallest step.
  const share = Math.min(rest, areaAt(Math.min(beforeLast, rules.first + rules.step)) - start);
  const count = Math.ceil(rest / share - PASS_COUNT_SLACK);
  if (count > MOST_PASSES) return { ...even, heights: [], faults: [tooMany(count)] };
  const heights = [rules.first];
  for (let pass = 1; pass < count; pass++) {
    const wanted = start + (rest * pass) / count;
    heights.push(heightWhere(areaAt, wanted, heights.at(-1) ?? rules.first, beforeLast));
  }
  heights.push(beforeLast);
  if (rules.last > 0) heights.push(setting.height);
  return { ...even, heights };
}

/**
 * Rising heights brought down to the grid, but for the first and the last; as they are where the rules don't
 * lie on it. One that would leave the next step too large goes up instead.
 */
function onGrid(heights: readonly number[], { first, step, grid }: PassRules): number[] {
  const isOn = (length: number, of: number): boolean =>
    Math.abs(length / of - Math.round(length / of)) * of < LIMIT_SLACK_INCHES;
  if (grid === undefined || !isOn(first, grid) || !isOn(step, grid)) return [...heights];
  const lying = [...heights];
  for (let at = lying.length - 2; at > 0; at--) {
    const down = Math.floor(((lying[at] ?? 0) + LIMIT_SLACK_INCHES) / grid);
    const least = Math.ceil(((lying[at + 1] ?? 0) - step - LIMIT_SLACK_INCHES) / grid);
    lying[at] = Math.max(down, least) * grid;
  }
  return lying;
}

function heightWhere(
  areaAt: (height: number) => number,
  wanted: number,
  least: number,
  most: number,
): number {
  let low = least;
  let high = most;
  for (let halving = 0; halving < 40; halving++) {
    const middle = (low + high) / 2;
    if (areaAt(middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function checkRules(depth: number, rules: PassRules): { faults: Fault[]; cautions: Caution[] } {
  const faults: Fault[] = [];
  const cautions: Caution[] = [];
  const limit = { inches: MOST_PASS_INCHES };
  if (!(depth > 0) || !Number.isFinite(depth)) {
    faults.push(fault('cove.size-missing', COVE_SIZES.depth.key, inchesGiven(depth)));
  }
  for (const [argument, inches, least] of [
    ['firstPass', rules.first, 'positive'],
    ['step', rules.step, 'positive'],
    ['lastPass', rules.last, 'zero'],
  ] as const) {
    if (least === 'positive' ? !(inches > 0) : !(inches >= 0)) {
      const code = least === 'positive' ? 'length.not-positive' : 'length.negative';
      faults.push(fault(code, argument, inchesGiven(inches)));
    } else if (inches > MOST_PASS_INCHES + LIMIT_SLACK_INCHES) {
      faults.push(fault('cove.step-too-high', argument, inchesGiven(inches), { limit }));
    } else if (inches > USUAL_PASSES.step + LIMIT_SLACK_INCHES) {
      cautions.push(
        fault('cove.step-high', argument, inchesGiven(inches), {
          limit: { inches: USUAL_PASSES.step },
        }),
      );
    }
  }
  return { faults, cautions };
}

function tooMany(count: number): Fault {
  return fault('cove.too-many-passes', 'step', count, { limit: MOST_PASSES });
}
