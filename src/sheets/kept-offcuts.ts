/** What is kept of a plan's sticks and boards: offcuts, and blanks that nothing was cut from. */
import { plansOf, type CuttingGroup, type CutStick, type JobPlan } from '../planning/job-plan.ts';
import type { RippedBoard } from '../planning/opened-stock.ts';
import type { ExactInches, LengthReading } from '../core/units/length.ts';
import { centsOfStretch } from '../planning/clear-stretches.ts';
import type { StockItem } from '../planning/job.ts';
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
  /** A clear stretch that nothing is cut from, of a board of which another is used; what it bears of the board's price. */
  readonly unused?: { readonly item: StockItem; readonly cents: number };
  /** Empty where Stock says none. */
  readonly grade: string;
  readonly what: string;
  readonly of: string;
  readonly wide: string;
  readonly thick: string;
  readonly from: string;
}

/** Stick by stick, then the whole blanks of the group's boards, and what is left of boards with defects. */
export function listKept(plan: JobPlan, group: CuttingGroup, letters: LotLetters): Kept[] {
  const { shop } = plan.job;
  return [
    ...keptOffcuts(plan, group, letters),
    ...wholeBlanks(group, letters, shop, shop.offcutCredit > 0),
    ...unusedStretches(plan, group, letters),
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
        grade: stick.item.grade ?? '',
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
          grade: item.grade ?? '',
        },
      ];
    }),
  );
}

/** Each is listed with the first stretch of its board, in the order of Stock, that anything is cut from. */
function unusedStretches(
  { job, groups }: JobPlan,
  group: CuttingGroup,
  letters: LotLetters,
): Kept[] {
  const used = new Set(groups.flatMap(({ stockUse }) => stockUse.map(({ item }) => item)));
  return job.stock.flatMap((item): Kept[] => {
    const { stretch } = item;
    if (stretch === undefined || used.has(item)) return [];
    const other = job.stock.find((one) => one.where === item.where && used.has(one));
    const use = group.stockUse.find((one) => one.item === other);
    if (other === undefined || use === undefined) return [];
    const from = `${item.kind} ${nameUnit(letters, other, 1)}`;
    return [
      {
        label: `${nameUnit(letters, other, 1)} from ${printExact(stretch.from, job.shop)}`,
        length: item.length,
        unused: { item, cents: centsOfStretch(use.eachCents, stretch) },
        what: 'clear stretch, not paid for',
        of: item.for,
        wide: item.width === undefined ? '' : printExact(item.width, job.shop),
        thick: item.thicknessClass,
        from: `the other part of ${from}`,
        grade: item.grade ?? '',
      },
    ];
  });
}

export function keptOf(sticks: readonly CutStick[]): readonly CutStick[] {
  return sticks.filter((stick) => stick.offcutKept);
}
