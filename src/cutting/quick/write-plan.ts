import type { Draft } from './draft.ts';
import type { PlannedPiece, PlannedStick, StickPlan, StickProblem } from '../problem.ts';
import type { StickKind } from '../stick-kind.ts';

interface FilledStick {
  readonly kind: StickKind;
  readonly pieces: readonly PlannedPiece[];
  readonly used: number;
}

/** Writes a draft out as a plan: longest sticks first, like sticks beside each other. */
export function writePlan(
  problem: StickProblem,
  kinds: readonly StickKind[],
  draft: Draft,
): StickPlan {
  const filled = kinds.map((kind, place) => fill(draft, kind, place).sort(longestPiecesFirst));
  const longestFirst = filled
    .map((sticks, place) => ({ sticks, length: kinds[place]?.supply.length ?? 0, place }))
    .sort((a, b) => b.length - a.length || a.place - b.place);
  return {
    sticks: longestFirst.flatMap(({ sticks }) =>
      sticks.map((stick, at) => writeStick(problem, stick, at)),
    ),
    unserved: unservedOf(problem, draft),
    costCents: draft.costCents,
    creditCents: 0,
  };
}

function fill(draft: Draft, kind: StickKind, place: number): FilledStick[] {
  const sticks = new Map<number, { kind: StickKind; pieces: PlannedPiece[]; used: number }>();
  // Blocks stand heaviest first, and in that order they are cut.
  draft.list.blocks.forEach((block, at) => {
    const stick = draft.stickOf[at] ?? -1;
    if (stick < 0 || draft.kindOf[stick] !== place) return;
    const one = sticks.get(stick) ?? { kind, pieces: [], used: 0 };
    one.pieces.push(...block.pieces);
    one.used += block.weight;
    sticks.set(stick, one);
  });
  return [...sticks.values()];
}

function longestPiecesFirst(a: FilledStick, b: FilledStick): number {
  const differing = a.pieces.findIndex(({ length }, at) => length !== b.pieces[at]?.length);
  if (differing >= 0) {
    return (b.pieces[differing]?.length ?? 0) - (a.pieces[differing]?.length ?? 0);
  }
  return b.pieces.length - a.pieces.length;
}

function writeStick(
  problem: StickProblem,
  { kind, pieces, used }: FilledStick,
  at: number,
): PlannedStick {
  return {
    supplyId: kind.supply.id,
    profile: '',
    unit: Math.floor(at / kind.strips),
    rip: 0,
    strip: at % kind.strips,
    pieces,
    offcut: Math.max(0, kind.capacity - problem.kerf - used),
  };
}

function unservedOf(problem: StickProblem, draft: Draft): StickPlan['unserved'] {
  const left = new Set<number>();
  draft.list.blocks.forEach((block, at) => {
    if ((draft.stickOf[at] ?? -1) < 0) for (const demand of block.demands) left.add(demand);
  });
  const hopeless = new Map(draft.list.hopeless.map(({ demandId, why }) => [demandId, why]));
  return problem.demands.flatMap(({ id }, at) => {
    const why = left.has(at) ? 'stock used up' : hopeless.get(id);
    return why === undefined ? [] : [{ demandId: id, why }];
  });
}
