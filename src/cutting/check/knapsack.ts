/** Blocks of one weight and worth that a strip may hold so many of. */
export interface ValuedBlock {
  /** What it takes up with its kerfs, in the planner's units, 1 or more. */
  readonly weight: number;
  /** A whole number, 0 or more; all of them together stay a safe one. */
  readonly worth: number;
  readonly count: number;
}

/** Fills of one block or more, none of them both heavier and worth no more than another. */
export interface Fills {
  /** Rising. */
  readonly weights: ArrayLike<number>;
  /** Rising but for the first two, which may be alike. */
  readonly worths: ArrayLike<number>;
  /** False where weights had to be rounded down, so that a fill may be heavier than it says, or nothing was worked out. */
  readonly isExact: boolean;
}

/** Steps of a table, times packets, that are filled at once; more where nothing else does. */
const EASY_CELLS = 20_000_000;
const MOST_CELLS = 300_000_000;
const MOST_STEPS = 8_000_000;
/** Fills that are kept side by side; the fewer where there is no time. */
const MOST_FILLS = 100_000;
const QUICK_FILLS = 4_000;

/**
 * Every fill that matters of a strip, for all lengths up to the longest: a bounded knapsack, worked
 * through in a table over lengths where they are few, else as a list of fills from which those are
 * struck that another one beats (G. L. Nemhauser and Z. Ullmann, Discrete Dynamic Programming and
 * Capital Allocation, Management Science 15, 1969 [M]).
 *
 * @param longest what the blocks may weigh together at most, in the planner's units
 * @param isQuick works out nothing that would take long
 */
export function bestFills(blocks: readonly ValuedBlock[], longest: number, isQuick = false): Fills {
  const fitting = blocks.filter(({ weight, count }) => weight <= longest && count > 0);
  const packets = fitting.flatMap((block) => packetsOf(block, longest));
  const unit = fitting.reduce((common, { weight }) => gcd(common, weight), 0);
  const lightest = fitting.reduce((least, { weight }) => Math.min(least, weight), Infinity);
  if (packets.length === 0) return { weights: [], worths: [], isExact: true };
  const steps = Math.floor(longest / unit) + 1;
  if (steps * packets.length <= EASY_CELLS)
    return fromTable(packets, longest, unit, lightest, true);
  const listed = fromList(packets, longest, lightest, isQuick ? QUICK_FILLS : MOST_FILLS);
  if (listed !== undefined) return listed;
  if (isQuick) return { weights: [], worths: [], isExact: false };
  const most = Math.min(MOST_STEPS, Math.floor(MOST_CELLS / packets.length));
  const coarse = unit * Math.ceil(steps / most);
  return fromTable(packets, longest, coarse, lightest, coarse === unit);
}

/**
 * What a strip would be worth at most if blocks that fit it could be cut up at will, those worth most
 * by length first. That is never less than its best fill (G. B. Dantzig, Discrete-Variable Extremum
 * Problems, Operations Research 5, 1957 [M]).
 */
export function worthCutAtWill(blocks: readonly ValuedBlock[], capacity: number): number {
  const byLength = blocks
    .filter(({ weight }) => weight <= capacity)
    .sort((a, b) => b.worth / b.weight - a.worth / a.weight);
  let room = capacity;
  let worth = 0;
  for (const block of byLength) {
    const whole = Math.min(block.count, Math.floor(room / block.weight));
    worth += whole * block.worth;
    room -= whole * block.weight;
    if (whole === block.count) continue;
    // Too large for one number; rounded up.
    const rest = BigInt(block.worth) * BigInt(room);
    return worth + Number((rest + BigInt(block.weight) - 1n) / BigInt(block.weight));
  }
  return worth;
}

interface Packet {
  readonly weight: number;
  readonly worth: number;
  readonly copies: number;
}

/** So many that any number up to the count is a sum of some: 1, 2, 4 and so on, and a rest. */
function packetsOf({ weight, worth, count }: ValuedBlock, longest: number): readonly Packet[] {
  const packets: Packet[] = [];
  let left = Math.min(count, Math.floor(longest / weight));
  for (let copies = 1; left > 0; copies *= 2) {
    const taken = Math.min(copies, left);
    packets.push({ weight: weight * taken, worth: worth * taken, copies: taken });
    left -= taken;
  }
  return packets;
}

function fromTable(
  packets: readonly Packet[],
  longest: number,
  step: number,
  lightest: number,
  isExact: boolean,
): Fills {
  const steps = Math.floor(longest / step);
  const best = new Float64Array(steps + 1);
  for (const { weight, worth, copies } of packets) {
    // Rounded down block by block, as one of a packet's copies would be.
    const own = copies * Math.floor(weight / copies / step);
    for (let at = steps; at >= own; at -= 1) {
      const sum = (best[at - own] ?? 0) + worth;
      if (sum > (best[at] ?? 0)) best[at] = sum;
    }
  }
  const from = Math.floor(lightest / step);
  const weights: number[] = [];
  const worths: number[] = [];
  for (let at = from; at <= steps; at += 1) {
    if (at > from && (best[at] ?? 0) <= (best[at - 1] ?? 0)) continue;
    weights.push(at * step);
    worths.push(best[at] ?? 0);
  }
  return { weights, worths, isExact };
}

/** @returns undefined where they are too many */
function fromList(
  packets: readonly Packet[],
  longest: number,
  lightest: number,
  mostFills: number,
): Fills | undefined {
  let weights: readonly number[] = [0];
  let worths: readonly number[] = [0];
  for (const packet of packets) {
    const joined = join(weights, worths, packet, longest);
    if (joined.weights.length > mostFills) return undefined;
    ({ weights, worths } = joined);
  }
  // The empty fill is none, though it may have struck a lightest block that is worth nothing.
  const heavier = weights.findIndex((weight) => weight > lightest);
  const after = heavier < 0 ? weights.length : heavier;
  return {
    weights: [lightest, ...weights.slice(after)],
    worths: [worths[after - 1] ?? 0, ...worths.slice(after)],
    isExact: true,
  };
}

/** The fills with and without a packet, lightest first, each worth more than the one before it. */
function join(
  weights: readonly number[],
  worths: readonly number[],
  packet: Packet,
  longest: number,
): { weights: number[]; worths: number[] } {
  const joined = { weights: [] as number[], worths: [] as number[] };
  let highest = -1;
  const keep = (weight: number, worth: number): void => {
    if (worth <= highest || weight > longest) return;
    highest = worth;
    joined.weights.push(weight);
    joined.worths.push(worth);
  };
  const size = weights.length;
  for (let plain = 0, filled = 0; plain < size || filled < size;) {
    const own = weights[plain] ?? Infinity;
    const other = (weights[filled] ?? Infinity) + packet.weight;
    const ownWorth = worths[plain] ?? 0;
    const otherWorth = (worths[filled] ?? 0) + packet.worth;
    if (own < other || (own === other && ownWorth >= otherWorth)) {
      keep(own, ownWorth);
      plain += 1;
    } else {
      keep(other, otherWorth);
      filled += 1;
    }
  }
  return joined;
}

/** The checks' own, since they share no code with the planner. */
export function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}
