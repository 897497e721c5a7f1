import { profilesOf } from './problem/profiles.ts';
import type { StickProblem, StickProfile, StickSupply, UnservedReason } from './problem/problem.ts';
import type { Block } from './quick/cut-list.ts';
import { isMatched } from './problem/splice-parts.ts';
import { capacityOf, countOf, stripsOf } from './problem/supplies.ts';
import type { WholeStick } from './whole-stick.ts';
import { countBoards } from './write-plan.ts';

interface Served {
  readonly sticks: readonly WholeStick[];
  readonly unserved: ReadonlyMap<string, UnservedReason>;
}

/**
 * Cuts what was left over from sticks that came free: a cheaper plan of the rest may need fewer of
 * those that run out. Each piece or matched group gets a fresh stick or board, the shortest that holds it.
 */
export function serveMore<Plan extends Served>(problem: StickProblem, plan: Plan): Plan {
  const { unserved } = plan;
  const short = [...unserved].some(([, why]) => why === 'stock used up');
  if (!short) return plan;
  const profiles = profilesOf(problem);
  let { sticks } = plan;
  const left = new Map(unserved);
  for (const block of leftBlocks(problem, left)) {
    const profile = profileOf(problem, profiles, block);
    const fresh =
      profile === undefined ? undefined : freshStick(problem, profiles, sticks, profile, block);
    if (fresh === undefined) continue;
    sticks = [...sticks, fresh];
    for (const { demandId } of block.pieces) left.delete(demandId);
  }
  return left.size === unserved.size ? plan : { ...plan, sticks, unserved: left };
}

/** Single pieces and whole matched groups, shortest first: so most pieces are served. */
function leftBlocks(problem: StickProblem, left: ReadonlyMap<string, UnservedReason>): Block[] {
  const blocks = new Map<string, { weight: number; pieces: Block['pieces']; demands: number[] }>();
  problem.demands.forEach((demand, at) => {
    if (left.get(demand.id) !== 'stock used up') return;
    const key = isMatched(demand) ? `match ${demand.match ?? ''}` : `piece ${demand.id}`;
    const one = blocks.get(key) ?? { weight: 0, pieces: [], demands: [] };
    blocks.set(key, {
      weight: one.weight + demand.length + problem.kerf,
      pieces: [...one.pieces, { demandId: demand.id, length: demand.length }],
      demands: [...one.demands, at],
    });
  });
  return [...blocks.values()].sort((a, b) => a.weight - b.weight);
}

function profileOf(
  problem: StickProblem,
  profiles: readonly StickProfile[],
  { demands }: Block,
): StickProfile | undefined {
  const named = problem.demands[demands[0] ?? -1]?.profile;
  return named === undefined ? profiles[0] : profiles.find(({ id }) => id === named);
}

function freshStick(
  problem: StickProblem,
  profiles: readonly StickProfile[],
  sticks: readonly WholeStick[],
  profile: StickProfile,
  block: Block,
): WholeStick | undefined {
  const used = new Map<StickSupply, number>();
  for (const { supply, boards } of countBoards(sticks, profiles)) {
    used.set(supply, (used.get(supply) ?? 0) + boards);
  }
  const fitting = problem.supplies
    .filter(
      (supply) =>
        capacityOf(problem, supply) >= block.weight && (used.get(supply) ?? 0) < countOf(supply),
    )
    .flatMap((supply) =>
      (supply.rips ?? [[]]).flatMap((_, rip) =>
        stripsOf(supply, rip, profile.blank) > 0 ? [{ supply, rip }] : [],
      ),
    )
    .sort((a, b) => a.supply.length - b.supply.length || a.supply.priceCents - b.supply.priceCents);
  const [lies] = fitting;
  return lies === undefined ? undefined : { profile: profile.id, ...lies, blocks: [block] };
}
