/** What work is counted by in metres: every count is in feet inside, and a metre holds so many of them. */
import type { LengthUnit } from '../../core/units/length-unit.ts';
import { BOARD_FEET_PER_CUBIC_METRE } from '../../core/lumber/board-feet.ts';
import { WORK_PER, type WorkPer } from './work-row.ts';

const FEET = 10_000 / 3048;

/** By what is counted in feet: the same in metres, and how many feet, square feet or board feet one of it holds. */
const IN_METRES = {
  foot: ['metre', FEET],
  'foot a pass': ['metre a pass', FEET],
  'foot a cut': ['metre a cut', FEET],
  'foot a rip': ['metre a rip', FEET],
  'square foot': ['square metre', FEET ** 2],
  'square foot a coat': ['square metre a coat', FEET ** 2],
  'board foot': ['cubic metre', BOARD_FEET_PER_CUBIC_METRE],
} as const satisfies Readonly<Partial<Record<WorkPer, readonly [word: string, holds: number]>>>;

export interface PerUnit {
  readonly per: WorkPer;
  /** As Per on Work has it. */
  readonly word: string;
  /** How many of what is counted inside one of it holds. */
  readonly holds: number;
}

/** Every word of Per on Work. */
export const PER_UNITS: readonly PerUnit[] = [
  ...WORK_PER.map((per) => ({ per, word: per, holds: 1 })),
  ...(Object.keys(IN_METRES) as (keyof typeof IN_METRES)[]).map((per) => {
    const [word, holds] = IN_METRES[per];
    return { per, word, holds };
  }),
];

/** As a shop of this unit counts it. */
export function perUnitIn(unit: LengthUnit, per: WorkPer): PerUnit {
  const all = PER_UNITS.filter((one) => one.per === per);
  const found = unit === 'mm' ? all.at(-1) : all[0];
  return found ?? { per, word: per, holds: 1 };
}
