/** What an earlier plan had of the pieces that are still to be cut, where it can be cut so again. */
import { checkPlan } from '../../cutting/check/check-plan.ts';
import { creditCap, offcutCents } from '../../cutting/problem/offcut-credit.ts';
import type { PlannedPiece, PlannedStick, StickPlan } from '../../cutting/problem/problem.ts';
import { laborCents } from '../../cutting/problem/strip-labor.ts';
import { partId, spareId, type StatedGroup, type StatedSupply } from '../group-problem.ts';
import type { PreparedGroup } from '../group-profiles.ts';
import { sameName, type Profile } from '../job.ts';
import type { CutPiece, CutStick, JobPlan } from '../job-plan.ts';
import { isSameRow, rowOfStock } from '../same-row.ts';
import { boardsOf, type Boards } from './boards-of.ts';

/**
 * The earlier plan's sticks for what the problem asks for, as an answer to it.
 *
 * @param earlier those of its sticks that are cut since are left out
 * @returns undefined where it is no plan of this problem: a piece is new or gone, or stock is
 */
export function startFrom(
  earlier: JobPlan | undefined,
  prepared: PreparedGroup,
  stated: StatedGroup,
): StickPlan | undefined {
  if (earlier === undefined) return undefined;
  const boards = boardsOf(earlier);
  const cut = new Set(prepared.flatMap((own) => own.cut.map(({ stick }) => stick.id)));
  const places = new Map<StatedSupply, Map<string, number>>();
  const sticks: PlannedStick[] = [];
  for (const { profile, toPlan, partsLeft, needsSpare } of prepared) {
    const wanted = new Set([
      ...toPlan.map(({ id }) => id),
      ...partsLeft.map(({ piece, part }) => partId(piece.id, part)),
      ...(needsSpare ? [spareId(profile)] : []),
    ]);
    const left = new Set(partsLeft.map(({ piece, part }) => partId(piece.id, part)));
    const before = earlier.profiles.find((one) => sameName(one.profile.name, profile.name));
    for (const stick of before?.sticks ?? []) {
      if (cut.has(stick.id)) continue;
      const pieces = stick.pieces.flatMap((one) => pieceOf(one, wanted, left, stated));
      if (pieces.length === 0) continue;
      const planned = stickOf(stick, profile, pieces, stated, places, boards);
      if (planned === undefined) return undefined;
      sticks.push(planned);
    }
  }
  const plan = priced(stated, inOrder(stated, sticks));
  return checkPlan(stated.problem, plan).length === 0 ? plan : undefined;
}

function pieceOf(
  { id, length, part }: CutPiece,
  wanted: ReadonlySet<string>,
  left: ReadonlySet<string>,
  { problem }: StatedGroup,
): PlannedPiece[] {
  const units = Number(length.mul(problem.unitsPerInch));
  if (part !== undefined && left.has(partId(id, part))) {
    return [{ demandId: partId(id, part), length: units }];
  }
  if (!wanted.has(id)) return [];
  return [{ demandId: id, length: units, ...(part === undefined ? {} : { part: part - 1 }) }];
}

/** On a blank that is ripped already where it is one of those; else on a stick or board of its row. */
function stickOf(
  stick: CutStick,
  profile: Profile,
  pieces: readonly PlannedPiece[],
  stated: StatedGroup,
  places: Map<StatedSupply, Map<string, number>>,
  boards: Boards,
): PlannedStick | undefined {
  const { problem } = stated;
  const blank = problem.profiles?.find(({ id }) => id === profile.name)?.blank ?? '';
  const rows = [...stated.supplies.values()].filter(
    ({ item, strips }) =>
      strips.has(profile) &&
      isSameRow(rowOfStock(item), rowOfStock(stick.item)) &&
      item.price === stick.item.price &&
      item.yieldPercent === stick.item.yieldPercent,
  );
  const { unit, strip, strips } = stick;
  for (const supply of rows) {
    const at = supply.ripped?.findIndex((one) => one.unit === unit && one.strip === strip) ?? -1;
    const rip = supply.rips.findIndex((one) => one.some((given) => given.blank === blank));
    if (at < 0 || rip < 0) continue;
    return write(stated, supply, profile, { unit: at, rip, strip: 0 }, pieces);
  }
  const supply = rows.find(({ ripped }) => ripped === undefined);
  const widths =
    boards
      .get(stick.item)
      ?.get(unit)
      ?.strips.map(({ width }) => width) ?? [];
  const rip =
    supply?.rips.findIndex((one) => {
      const blanks = one.flatMap((given) => Array.from({ length: given.count }, () => given.blank));
      if (blanks.length !== strips || blanks[strip - 1] !== blank) return false;
      return widths.every((width, at) => {
        const own = stated.blanks.get(blanks[at] ?? '')?.width;
        return own === undefined || own.equals(width);
      });
    }) ?? -1;
  if (supply === undefined || rip < 0) return undefined;
  const units = places.get(supply) ?? new Map<string, number>();
  places.set(supply, units);
  const place = units.get(String(unit)) ?? units.size;
  units.set(String(unit), place);
  return write(stated, supply, profile, { unit: place, rip, strip: strip - 1 }, pieces);
}

function write(
  { problem }: StatedGroup,
  { id }: StatedSupply,
  { name }: Profile,
  place: Pick<PlannedStick, 'unit' | 'rip' | 'strip'>,
  pieces: readonly PlannedPiece[],
): PlannedStick {
  const length = problem.supplies.find((one) => one.id === id)?.length ?? 0;
  const used = pieces.reduce((sum, piece) => sum + piece.length + problem.kerf, 0);
  const offcut = Math.max(0, length - 2 * problem.endTrim - used);
  return { supplyId: id, profile: name, ...place, pieces, offcut };
}

function inOrder({ problem }: StatedGroup, sticks: readonly PlannedStick[]): PlannedStick[] {
  const lengths = new Map(problem.supplies.map(({ id, length }) => [id, length]));
  const places = new Map(problem.profiles?.map(({ id }, at) => [id, at]));
  const place = (profile: string): number => places.get(profile) ?? 0;
  const long = ({ supplyId }: PlannedStick): number => lengths.get(supplyId) ?? 0;
  return [...sticks].sort(
    (one, other) => place(one.profile) - place(other.profile) || long(other) - long(one),
  );
}

function priced({ problem }: StatedGroup, sticks: readonly PlannedStick[]): StickPlan {
  const supplies = new Map(problem.supplies.map((one) => [one.id, one]));
  const profiles = new Map(problem.profiles?.map((one) => [one.id, one]));
  const opened = new Map<string, number>();
  let creditCents = 0;
  let labor = 0;
  for (const { supplyId, profile, unit, rip, offcut } of sticks) {
    const supply = supplies.get(supplyId);
    const own = profiles.get(profile);
    if (supply === undefined || own === undefined) continue;
    opened.set(JSON.stringify([supplyId, unit]), supply.priceCents);
    labor += laborCents(own.labor, supply.length);
    creditCents += offcutCents(
      offcut,
      problem.keepOffcutsOver,
      own.offcutCredit,
      creditCap(supply, rip),
    );
  }
  const costCents = [...opened.values()].reduce((sum, cents) => sum + cents, 0);
  return { sticks, unserved: [], costCents, creditCents, laborCents: labor };
}
