/** What the pane says to a cove as typed: plain text, no document yet. */
import type { Blade, Cove } from '../core/cove/cove.ts';
import { checkCove } from '../core/cove/feasibility.ts';
import { planPasses } from '../core/cove/passes.ts';
import { toDegrees } from '../core/units/angle.ts';
import { parseLength } from '../core/units/length.ts';

export const FIELDS = ['width', 'depth', 'off-center', 'diameter', 'kerf'] as const;
export type Field = (typeof FIELDS)[number];

const LABELS: Readonly<Record<Field, string>> = {
  width: 'Cove width',
  depth: 'Cove depth',
  'off-center': 'Off-center',
  diameter: 'Blade diameter',
  kerf: 'Kerf',
};

export interface Answer {
  /** Label and value; each angle says from what it is measured. Empty where faults stand. */
  readonly numbers: readonly (readonly [string, string])[];
  readonly faults: readonly string[];
  readonly cautions: readonly string[];
}

/** The set-up for the five fields as typed, or every reason against it. */
export function answerCove(typed: Readonly<Record<Field, string>>): Answer {
  const faults: string[] = [];
  const sizes = FIELDS.map((field) => {
    const parsed = parseLength(typed[field], LABELS[field]);
    if (!parsed.ok) faults.push(...parsed.faults.map((one) => one.message));
    return parsed.ok ? Number(parsed.value) : Number.NaN;
  });
  if (faults.length > 0) return { numbers: [], faults, cautions: [] };
  const [width = Number.NaN, depth = Number.NaN, offCenter = Number.NaN] = sizes;
  const [, , , diameter = Number.NaN, kerf = Number.NaN] = sizes;
  const cove: Cove = { width, depth, offCenter };
  const blade: Blade = { diameter, kerf };
  const { setting, ...judged } = checkCove(cove, blade);
  const passes = planPasses(depth);
  const cautions = [...judged.cautions, ...passes.cautions].map((one) => one.message);
  const against = [...new Set([...judged.faults, ...passes.faults].map((one) => one.message))];
  if (setting === undefined || against.length > 0)
    return { numbers: [], faults: against, cautions };
  const approach = toDegrees(setting.approach);
  return {
    numbers: [
      ['Approach, from the blade line', `${approach.toFixed(1)}°`],
      ["Approach, from the table's front edge", `${(90 - approach).toFixed(1)}°`],
      ['Tilt, from upright', `${toDegrees(setting.tilt).toFixed(1)}°`],
      ['Passes of at most 1/16 in', String(passes.heights.length)],
    ],
    faults: [],
    cautions,
  };
}
