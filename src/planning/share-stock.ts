/** The rows of Stock and the blanks that the profiles of a group have in common, and how boards are ripped. */
import { own, phrase } from '../core/faults/argument.ts';
import { fault, placeFault, type Caution } from '../core/faults/fault.ts';
import { listRips } from '../core/lumber/rips.ts';
import type { ExactInches } from '../core/units/length.ts';
import type { Rip } from '../cutting/problem/problem.ts';
import type { PreparedGroup } from './group-profiles.ts';
import type { Profile, StockItem } from './job.ts';

/** More ways to rip one board than this help no plan and make it slow. */
export const MOST_RIPS = 2_000;

/** A row of Stock at one price. A row without Class may have two prices, for profiles of two thicknesses. */
export interface SharedStock {
  /** Of its supply in the problem. */
  readonly id: string;
  readonly item: StockItem;
  /** Of one stick or one whole board, in whole cents. */
  readonly priceCents: number;
  /** Of one whole stick or board, clear or not. */
  readonly eachCents: number;
  /** Of one stick or board, the thickest of its profiles'; absent where it is known of none. */
  readonly boardFeet?: number;
  /** The profiles that it serves, each with the blanks of it alone that it gives. */
  readonly strips: ReadonlyMap<Profile, number>;
}

/** What is ripped for one profile, or for several of one blank width that the same rows serve. */
export interface Blank {
  /** In the problem. */
  readonly id: string;
  /** Absent where Profiles gives none for a molding that is bought. */
  readonly width?: ExactInches;
  readonly profiles: readonly Profile[];
}

export function shareStock(group: PreparedGroup): {
  readonly supplies: readonly SharedStock[];
  readonly blanks: readonly Blank[];
} {
  const shared: (SharedStock & { strips: Map<Profile, number>; boardFeet?: number })[] = [];
  const rows = new Map<StockItem, typeof shared>();
  for (const { profile, units } of group) {
    for (const { item, priceCents, eachCents, strips, boardFeet } of units) {
      const ofRow = rows.get(item) ?? [];
      rows.set(item, ofRow);
      let stock = ofRow.find((one) => one.priceCents === priceCents);
      if (stock === undefined) {
        stock = { id: String(shared.length), item, priceCents, eachCents, strips: new Map() };
        ofRow.push(stock);
        shared.push(stock);
      }
      stock.strips.set(profile, strips);
      if (boardFeet !== undefined) stock.boardFeet = Math.max(stock.boardFeet ?? 0, boardFeet);
    }
  }
  const blanks = new Map<string, Blank & { profiles: Profile[] }>();
  for (const { profile } of group) {
    const serve = shared.filter(({ strips }) => strips.has(profile)).map(({ id }) => id);
    const { blankWidth: width } = profile;
    const key = `${width?.toFraction() ?? profile.name} from ${serve.join(', ')}`;
    const id = String(blanks.size);
    const blank = blanks.get(key) ?? {
      id,
      ...(width === undefined ? {} : { width }),
      profiles: [],
    };
    blanks.set(key, blank);
    blank.profiles.push(profile);
  }
  return { supplies: shared, blanks: [...blanks.values()] };
}

/**
 * The ways to rip a board for these blanks, none within another; a stick is one strip of any one of
 * them. A caution where there are so many ways that some are left out.
 *
 * @param blanks those of the whole group
 */
export function planRips(
  stock: SharedStock,
  blanks: readonly Blank[],
  kerf: ExactInches,
): { readonly rips: readonly Rip[]; readonly caution?: Caution } {
  const { item, strips } = stock;
  const fitting = blanks.flatMap(({ id, width, profiles: [first] }) => {
    const count = first === undefined ? undefined : strips.get(first);
    return count === undefined ? [] : [{ blank: id, width, count }];
  });
  const widths = fitting.flatMap(({ width }) => width ?? []);
  const boardWidth = item.kind === 'board' ? item.width : undefined;
  if (boardWidth === undefined || widths.length < fitting.length) {
    return { rips: fitting.map(({ blank, count }) => [{ blank, count }]) };
  }
  const listed = listRips({ boardWidth, blankWidths: widths, kerf, most: MOST_RIPS });
  const rips = listed.rips.map((counts) =>
    fitting.flatMap(({ blank }, at) => {
      const count = counts[at] ?? 0;
      return count === 0 ? [] : [{ blank, count }];
    }),
  );
  if (!listed.isLimited) return { rips };
  const wide = { inches: Number(boardWidth) };
  const details = { blanks: fitting.length };
  const one = fault('job.rips-limited', phrase('stockFor', { name: own(item.for) }), wide, {
    limit: MOST_RIPS,
    details,
  });
  return { rips, caution: placeFault(one, item.where) };
}

export function countStrips(rip: Rip): number {
  return rip.reduce((sum, { count }) => sum + count, 0);
}
