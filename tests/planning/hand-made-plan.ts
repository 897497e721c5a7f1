/** Answers written by hand in place of the stick planner's. */
import type { planSticks } from '../../src/cutting/plan-sticks.ts';
import type { PlannedStick, StickProblem } from '../../src/cutting/problem/problem.ts';

/** A stick as a person would write it down; lengths follow from the problem. */
export interface HandStick {
  readonly profile: string;
  readonly supply?: number;
  readonly unit: number;
  readonly strip: number;
  /** The rip of its board, as strips of each blank in the order of the blanks' ids. */
  readonly rip: readonly number[];
  readonly pieces: readonly string[];
}

/** A planner that gives these sticks for any problem, with no bound to speak of; each call is noted. */
export function planByHand(sticks: readonly HandStick[]): {
  plan: typeof planSticks;
  problems: StickProblem[];
} {
  const problems: StickProblem[] = [];
  const plan: typeof planSticks = (problem) => {
    problems.push(problem);
    const planned = sticks.map((stick) => writeStick(problem, stick));
    const units = new Map(planned.map((one) => [`${one.supplyId} ${one.unit}`, one.supplyId]));
    const price = new Map(problem.supplies.map(({ id, priceCents }) => [id, priceCents]));
    const costCents = [...units.values()].reduce((sum, id) => sum + price.get(id)!, 0);
    const creditCents = planned.reduce((sum, one) => sum + creditOf(problem, one), 0);
    return Promise.resolve({
      ok: true,
      value: {
        plan: { sticks: planned, unserved: [], costCents, creditCents, laborCents: 0 },
        bound: { costCents: 0, duals: [], credits: [] },
        status: 'gap',
      },
    });
  };
  return { plan, problems };
}

function writeStick(problem: StickProblem, stick: HandStick): PlannedStick {
  const supply = problem.supplies[stick.supply ?? 0]!;
  const wanted = JSON.stringify(
    stick.rip.flatMap((count, at) => (count === 0 ? [] : [{ blank: String(at), count }])),
  );
  const rip = supply.rips!.findIndex((one) => JSON.stringify(one) === wanted);
  if (rip < 0) throw new Error(`There is no rip ${wanted} in ${JSON.stringify(supply.rips)}.`);
  const pieces = stick.pieces.map((demandId) => {
    const { length } = problem.demands.find(({ id }) => id === demandId)!;
    return { demandId, length };
  });
  const used = pieces.reduce((sum, { length }) => sum + length + problem.kerf, 0);
  return {
    supplyId: supply.id,
    profile: stick.profile,
    unit: stick.unit,
    rip,
    strip: stick.strip,
    pieces,
    offcut: Math.max(0, supply.length - 2 * problem.endTrim - used),
  };
}

function creditOf(
  { profiles, supplies, keepOffcutsOver }: StickProblem,
  stick: PlannedStick,
): number {
  const credit = profiles!.find(({ id }) => id === stick.profile)!.offcutCredit;
  if (credit === undefined || stick.offcut < keepOffcutsOver) return 0;
  const { priceCents, rips } = supplies.find(({ id }) => id === stick.supplyId)!;
  const strips = rips![stick.rip]!.reduce((sum, { count }) => sum + count, 0);
  const halfStrip = Math.floor(priceCents / strips / 2);
  return Math.min(credit.mostCents, halfStrip, Math.floor(credit.centsPerUnit * stick.offcut));
}
