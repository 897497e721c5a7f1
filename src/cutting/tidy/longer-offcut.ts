import type { StickProblem } from '../problem/problem.ts';
import { capacityOf } from '../problem/supplies.ts';
import { weightOf, type WholeStick } from '../whole-stick.ts';

/**
 * Empties the stick with the most to spare as far as the other sticks have room for its pieces, so
 * that one long offcut is left rather than several short ones; a stick that comes out empty is gone.
 *
 * @returns the sticks, for the same money or less
 */
export function longerOffcut(
  problem: StickProblem,
  sticks: readonly WholeStick[],
): readonly WholeStick[] {
  const room = (stick: WholeStick): number => capacityOf(problem, stick.supply) - weightOf(stick);
  const [emptiest] = [...sticks].sort((a, b) => room(b) - room(a));
  if (emptiest === undefined) return sticks;
  const others = sticks
    .filter((stick) => stick !== emptiest)
    .map((stick) => ({ stick, blocks: [...stick.blocks], room: room(stick) }));
  const left = emptiest.blocks.filter((block) => {
    const fitting = others
      .filter((one) => one.stick.profile === emptiest.profile && one.room >= block.weight)
      .sort((a, b) => a.room - b.room);
    const [tightest] = fitting;
    if (tightest === undefined) return true;
    tightest.blocks.push(block);
    tightest.blocks.sort((a, b) => b.weight - a.weight);
    tightest.room -= block.weight;
    return false;
  });
  if (left.length === emptiest.blocks.length) return sticks;
  const moved = others.map(({ stick, blocks }) => ({ ...stick, blocks }));
  return left.length === 0 ? moved : [...moved, { ...emptiest, blocks: left }];
}
