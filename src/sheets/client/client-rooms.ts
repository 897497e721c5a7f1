/** What a client is shown of a plan: by room, a line for each molding and length to cut it to. */
import type { ExactInches } from '../../core/units/length.ts';
import type { Opening } from '../../planning/job.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import { shareCents } from '../../planning/money.ts';
import type { Piece } from '../../planning/piece.ts';
import { openingOfPiece } from '../../planning/pieces/opening-of-piece.ts';

export interface ClientLine {
  readonly molding: string;
  readonly length: ExactInches;
  /** Doors and windows that its pieces go around; none of what runs along walls. */
  readonly openings: ReadonlySet<Opening>;
  readonly quantity: number;
  /** As many as the quantity: what it counts. */
  readonly pieces: readonly Piece[];
  readonly priceCents: number;
}

export interface ClientRoom {
  readonly room: string;
  /** Moldings in the order of Profiles, each from its longest pieces on; empty where all is done. */
  readonly lines: readonly ClientLine[];
  /** Pieces that are done already and not in the price, by molding. */
  readonly done: ReadonlyMap<string, number>;
}

type GatheredLine = Pick<ClientLine, 'molding' | 'length'> & {
  readonly openings: Set<Opening>;
  readonly pieces: Piece[];
  quantity: number;
};

/** Of one molding in one room: its lines, alike in length and kind, and its pieces that are done. */
interface Gathered {
  readonly lines: Map<string, GatheredLine>;
  done: number;
}

/**
 * Rooms in the order in which they first come up. What the plan asks for a molding in a room is
 * shared over its lines by their length, so that the lines of a room sum to its price to the cent.
 */
export function clientRooms(plan: JobPlan): ClientRoom[] {
  const openingOf = openingOfPiece(plan.job.openings);
  const rooms = new Map<string, Map<string, Gathered>>();
  for (const piece of plan.pieces) {
    const moldings = rooms.get(piece.room) ?? new Map<string, Gathered>();
    rooms.set(piece.room, moldings);
    const gathered = moldings.get(piece.profile) ?? { lines: new Map(), done: 0 };
    moldings.set(piece.profile, gathered);
    if (piece.done) gathered.done += 1;
    else addPiece(gathered, piece, openingOf(piece));
  }
  const lines = new Map<string, ClientLine[]>();
  for (const { room, profile, priceCents } of plan.rooms) {
    const gathered = rooms.get(room)?.get(profile);
    if (gathered === undefined) throw new RangeError(`No piece of ${profile} is in ${room}.`);
    const before = lines.get(room);
    const more = priceLines(gathered, priceCents);
    if (before === undefined) lines.set(room, more);
    else before.push(...more);
  }
  return [...rooms].map(([room, moldings]) => ({
    room,
    lines: lines.get(room) ?? [],
    done: new Map(
      [...moldings].flatMap(([molding, { done }]) => (done === 0 ? [] : [[molding, done]])),
    ),
  }));
}

/**
 * Small pieces that turn back to the wall are told from those that run along it, and what goes around
 * doors and windows from what doesn't.
 */
function addPiece({ lines }: Gathered, piece: Piece, opening: Opening | undefined): void {
  const { profile, kind, cutLength } = piece;
  const key = `${kind} ${cutLength.toFraction()} ${opening === undefined ? 'wall' : 'opening'}`;
  const molding = kind === 'return' ? `${profile}, return to the wall` : profile;
  const line: GatheredLine = lines.get(key) ?? {
    molding,
    length: cutLength,
    openings: new Set(),
    pieces: [],
    quantity: 0,
  };
  lines.set(key, line);
  line.quantity += 1;
  line.pieces.push(piece);
  if (opening !== undefined) line.openings.add(opening);
}

function priceLines({ lines }: Gathered, priceCents: number): ClientLine[] {
  const sorted = [...lines.values()].sort((one, other) => other.length.compare(one.length));
  const weights = sorted.map(({ length, quantity }) => Number(length) * quantity);
  const shares = shareCents(priceCents, weights);
  return sorted.map((line, at) => ({ ...line, priceCents: shares[at] ?? 0 }));
}
