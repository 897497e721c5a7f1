/**
 * What a person quotes from: prices by length, by opening, by room and by joint. All are parts of the
 * moldings' price: minimum charge, delivery, rounding up and tax are of the whole job and not in them.
 */
import Fraction from 'fraction.js';
import type { LengthUnit } from '../core/units/length-unit.ts';
import type { ExactInches } from '../core/units/length.ts';
import { nameKey, OPENING_KINDS, type Opening, type OpeningKind } from './job.ts';
import type { JobPlan, ProfilePlan, RoomLine } from './job-plan.ts';
import { cents } from './money.ts';
import type { Piece } from './piece.ts';
import type { Shop } from './shop.ts';
import type { ProfilePer, WorkLine } from './work/work-row.ts';

/** How much more of a molding is asked about, in inches: 10 ft, or 3 m. */
export const MORE_LENGTH: Readonly<Record<LengthUnit, ExactInches>> = {
  in: new Fraction(120),
  mm: new Fraction(3000).mul(5, 127),
};

/**
 * Which work a longer run asks more of, pieces and ends staying as many. Passes and boards do: more
 * length takes more blanks. The set-up, ends, crosscuts and joints don't. Derived from what each count is.
 */
const GROWS_WITH_LENGTH: Readonly<Record<ProfilePer, boolean>> = {
  'set-up': false,
  pass: true,
  'foot a pass': true,
  foot: true,
  'foot a cut': true,
  'foot a rip': true,
  'square foot': true,
  'square foot a coat': true,
  piece: false,
  crosscut: false,
  miter: false,
  'compound miter': false,
  cope: false,
  return: false,
  joint: false,
  'board foot': true,
  board: true,
};

export function setUpLines({ work }: Pick<ProfilePlan, 'work'>): WorkLine[] {
  return work.filter(({ row }) => row.per === 'set-up');
}

export function growingLines({ work }: Pick<ProfilePlan, 'work'>): WorkLine[] {
  return work.filter(
    ({ row: { per } }) => per in GROWS_WITH_LENGTH && GROWS_WITH_LENGTH[per as ProfilePer],
  );
}

export function jointLines({ work }: Pick<ProfilePlan, 'work'>): WorkLine[] {
  return work.filter(({ row }) => row.per === 'joint');
}

/**
 * What one of the currency spent on lumber (less credit), or on labor, makes of the price:
 * ((1 + overhead) · (1 + contingency) + markup) / (1 - margin). Derived from priceLines, whose lines are
 * in proportion to these two but for their rounding.
 */
export function priceFactors(shop: Shop): { readonly material: number; readonly labor: number } {
  const cost = (1 + shop.overhead / 100) * (1 + shop.contingency / 100);
  const factor = (markup: number): number => (cost + markup / 100) / (1 - shop.margin / 100);
  return { material: factor(shop.materialMarkup), labor: factor(shop.laborMarkup) };
}

/** What lines of work cost, hours at the rate and money beside them; unrounded, in the currency. */
export function laborOf(
  lines: readonly WorkLine[],
  { hourlyRate }: Pick<Shop, 'hourlyRate'>,
): number {
  return lines.reduce((sum, { hours, money }) => sum + hours * hourlyRate + money, 0);
}

/** What some lines of work are in the price, to the cent. */
export function priceOfWork(lines: readonly WorkLine[], shop: Shop): number {
  return cents(laborOf(lines, shop) * priceFactors(shop).labor * 100);
}

/**
 * What so much more of a profile would cost in longer runs, in cents: lumber less credit at what it costs
 * by net length as planned, waste and set-up spare included, and the work that grows with length. No
 * set-up, and no more pieces and ends. An average: whether one stick more is opened, a plan says.
 *
 * @param more Inches.
 * @returns undefined where the plan has no length to go by
 */
export function priceMore(planned: ProfilePlan, more: ExactInches, shop: Shop): number | undefined {
  const { tally, money } = planned;
  if (tally.lengthNet.compare(0) <= 0) return undefined;
  const factors = priceFactors(shop);
  const material = ((money.lumberCents - money.offcutCreditCents) / 100) * factors.material;
  const labor = laborOf(growingLines(planned), shop) * factors.labor;
  return cents(((material + labor) / Number(tally.lengthNet)) * Number(more) * 100);
}

/** One molding round openings of one kind: its share of the molding's price, by net length. */
export interface OpeningMolding {
  readonly planned: ProfilePlan;
  /** How many openings it stands at. */
  readonly openings: number;
  readonly lengthNet: ExactInches;
  readonly priceCents: number;
}

export interface OpeningPrice {
  readonly kind: OpeningKind;
  /** Those that have pieces to cut. */
  readonly openings: number;
  /** In the order of Profiles. */
  readonly moldings: readonly OpeningMolding[];
}

/** By kind, what Openings makes: casing, aprons, stools. Kinds without pieces to cut are left out. */
export function priceOpenings({ job, pieces, profiles }: JobPlan): OpeningPrice[] {
  const byPlace = new Map<string, Opening>(
    job.openings.map((opening) => [JSON.stringify(opening.where), opening]),
  );
  const around = pieces.flatMap((piece) => {
    const opening = byPlace.get(JSON.stringify(piece.where));
    return opening === undefined || piece.made !== undefined || piece.done
      ? []
      : [{ opening, piece }];
  });
  return OPENING_KINDS.flatMap((kind): OpeningPrice[] => {
    const ofKind = around.filter(({ opening }) => opening.kind === kind);
    const moldings = profiles.flatMap((planned): OpeningMolding[] => {
      const own = ofKind.filter(({ piece }) => piece.profile === planned.profile.name);
      if (own.length === 0) return [];
      const lengthNet = own.reduce((sum, { piece }) => sum.add(piece.cutLength), new Fraction(0));
      const share = Number(lengthNet) / Number(planned.tally.lengthNet);
      return [
        {
          planned,
          openings: countOpenings(own),
          lengthNet,
          priceCents: cents(planned.money.priceCents * share),
        },
      ];
    });
    return moldings.length === 0 ? [] : [{ kind, openings: countOpenings(ofKind), moldings }];
  });
}

function countOpenings(
  around: readonly { readonly opening: Opening; readonly piece: Piece }[],
): number {
  const own = new Set(around.map(({ opening }) => opening));
  return [...own].reduce((sum, { quantity }) => sum + quantity, 0);
}

export interface RoomPrice {
  readonly room: string;
  /** Its lines, one at least. */
  readonly lines: readonly [RoomLine, ...RoomLine[]];
  readonly priceCents: number;
  /** Of all its walls together, trimmed or not; absent where Walls doesn't have it, or two rooms are called alike. */
  readonly wallLength?: ExactInches;
}

/** In the order of the plan's lines; they sum to the moldings' price. */
export function priceRooms({ job, rooms }: Pick<JobPlan, 'job' | 'rooms'>): RoomPrice[] {
  const byRoom = new Map<string, [RoomLine, ...RoomLine[]]>();
  for (const line of rooms) {
    const known = byRoom.get(line.room);
    if (known === undefined) byRoom.set(line.room, [line]);
    else known.push(line);
  }
  const keys = [...byRoom.keys()].map(nameKey);
  return [...byRoom].map(([room, lines]): RoomPrice => {
    const priceCents = lines.reduce((sum, line) => sum + line.priceCents, 0);
    const key = nameKey(room);
    const walls = job.walls.filter((wall) => nameKey(wall.room) === key);
    const isAlone = keys.filter((one) => one === key).length === 1;
    if (walls.length === 0 || !isAlone) return { room, lines, priceCents };
    const wallLength = walls.reduce((sum, { length }) => sum.add(length), new Fraction(0));
    return { room, lines, priceCents, wallLength };
  });
}
