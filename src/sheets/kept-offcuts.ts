/** What is kept of a plan's sticks and boards: offcuts, and blanks that nothing was cut from. */
import {
  plansOf,
  type CuttingGroup,
  type CutStick,
  type JobPlan,
  type RippedBoard,
} from '../planning/job-plan.ts';
import type { ExactInches, LengthReading } from '../core/units/length.ts';
import { printExact } from './words/print-length.ts';
import { nameUnit, sayWhich, type LotLetters } from './stock-lots.ts';

export interface Kept {
  /** Not twice in a job: what is written on it. */
  readonly label: string;
  readonly length: ExactInches;
  /** Whose rest it is; absent for a whole blank. */
  readonly stick?: CutStick;
  /** Of a whole blank: its board. */
  readonly board?: Pick<RippedBoard, 'item' | 'unit'>;
  readonly what: string;
  readonly of: string;
  readonly wide: string;
  readonly thick: string;
  readonly from: string;
}

/** Stick by stick, then the whole blanks of the group's boards. */
export function listKept(plan: JobPlan, group: CuttingGroup, letters: LotLetters): Kept[] {
  const { shop } = plan.job;
  return [
    ...keptOffcuts(plan, group, letters),
    ...wholeBlanks(group, letters, shop, shop.offcutCredit > 0),
  ];
}

function keptOffcuts(plan: JobPlan, group: CuttingGroup, letters: LotLetters): Kept[] {
  const { shop } = plan.job;
  return plansOf(plan, group).flatMap(({ profile, sticks }) =>
    keptOf(sticks).map((stick): Kept => {
      const { blankWidth, blankThickness } = profile;
      return {
        label: `${stick.id} rest`,
        length: stick.offcut,
        stick,
        what: 'rest of a stick',
        of: profile.name,
        wide: blankWidth === undefined ? '' : printExact(blankWidth, shop),
        thick: blankThickness === undefined ? '' : printExact(blankThickness, shop),
        from: sayWhich(letters, stick),
      };
    }),
  );
}

/** Each by itself: `C4 blank 2`. */
function wholeBlanks(
  { boards }: CuttingGroup,
  letters: LotLetters,
  reading: LengthReading,
  isCredited: boolean,
): Kept[] {
  return boards.flatMap(({ item, unit: number, strips }) =>
    strips.flatMap(({ width, profile }, at): Kept[] => {
      if (profile !== undefined) return [];
      const name = nameUnit(letters, item, number);
      return [
        {
          label: `${name} blank ${at + 1}`,
          length: item.length,
          board: { item, unit: number },
          what: `whole blank${isCredited ? ', not credited' : ''}`,
          of: item.for,
          wide: printExact(width, reading),
          thick: item.thicknessClass,
          from: `board ${name}`,
        },
      ];
    }),
  );
}

export function keptOf(sticks: readonly CutStick[]): readonly CutStick[] {
  return sticks.filter((stick) => stick.offcutKept);
}
