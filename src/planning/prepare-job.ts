/**
 * All that stands before the sticks: pieces, set-ups and what serves each profile. It is quick, so it
 * also tells as a job is typed what can't be made.
 */
import { own } from '../core/faults/argument.ts';
import { fault, placeFault, type Caution, type Fault, type Where } from '../core/faults/fault.ts';
import { carryOver, type CarriedOver } from './cut/carry-over.ts';
import type { CutAlready } from './cut/cut-already.ts';
import { spareId, spareLength } from './group-problem.ts';
import type { PreparedProfile } from './group-profiles.ts';
import { nameKey, sameName, type Job, type Profile } from './job.ts';
import type { Piece } from './piece.ts';
import { listPieces, type PieceList } from './pieces/list-pieces.ts';
import { planSetUp, type SetUp } from './plan-setup.ts';
import { findStock } from './stock-units.ts';
import { worksOf } from './work/works-of.ts';

export interface PreparedJob {
  readonly listed: PieceList;
  /** All pieces of the job; one that is cut counts, also where Runs marks it as done. */
  readonly pieces: readonly Piece[];
  readonly carried: CarriedOver;
  /** Every profile that has pieces to cut, or cut already, and stock to cut them from. */
  readonly profiles: readonly PreparedProfile[];
  readonly setUps: ReadonlyMap<Profile, SetUp>;
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/** @param cut sticks that are cut already: they stay as they are */
export function prepareJob(job: Job, cut: readonly CutAlready[] = []): PreparedJob {
  const listed = listPieces(job);
  const carried = carryOver(job, listed.pieces, cut, sparesOf(job));
  const { pieces } = carried;
  const { profiles, setUps, faults, cautions } = prepareProfiles(job, pieces, carried);
  return {
    listed,
    pieces,
    carried,
    profiles,
    setUps,
    faults: [...listed.faults, ...carried.faults, ...checkMatches(job, pieces), ...faults],
    cautions: [
      ...listed.cautions,
      ...spareCautions(job),
      ...carried.cautions,
      ...cautions,
      ...judgeCoves(job, 'unnamed').cautions,
    ],
  };
}

/**
 * Whether each cove can be set up, whatever else of the job is at fault. What stands against one that a
 * run or an opening names is a fault; one that nothing names stops nothing, and is cautioned.
 */
export function judgeCoves(
  job: Job,
  which: 'all' | 'unnamed' = 'all',
): {
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
} {
  const live = new Set(job.runs.flatMap((run) => (run.done ? [] : nameKey(run.profile))));
  const named = new Set([...live, ...job.runs.map(({ profile }) => nameKey(profile))]);
  // What an option names is judged with the job that has it.
  for (const { profile, instead } of job.options.flatMap(({ changes }) => changes)) {
    named.add(nameKey(profile)).add(nameKey(instead ?? profile));
  }
  for (const { casing, apron, stool } of job.openings) {
    for (const name of [casing, apron, stool]) {
      if (name !== undefined) live.add(nameKey(name));
    }
  }
  const faults: Fault[] = [];
  const cautions: Caution[] = [];
  for (const profile of job.profiles) {
    const key = nameKey(profile.name);
    const isLive = live.has(key);
    // What is named and not live is done already.
    const isLeft = named.has(key) && (which === 'unnamed' || !isLive);
    if (profile.make === 'buy' || isLeft || (isLive && which === 'unnamed')) continue;
    const against = planSetUp(profile, job.shop, job.shopCells).faults;
    (isLive ? faults : cautions).push(...against);
  }
  return { faults, cautions };
}

/** The set-up spares that the job asks for, of every cove that is planned. */
function sparesOf({ shop, profiles }: Job): ReadonlySet<string> {
  if (spareLength(shop) === undefined) return new Set();
  return new Set(profiles.filter(({ make }) => make !== 'buy').map(spareId));
}

/** Every profile that has pieces to cut, or cut already, and stock to cut them from; the set-ups of the coves among them. */
function prepareProfiles(
  job: Job,
  pieces: readonly Piece[],
  { sticks, served, partsLeft }: CarriedOver,
): {
  profiles: PreparedProfile[];
  setUps: ReadonlyMap<Profile, SetUp>;
  faults: Fault[];
  cautions: Caution[];
} {
  const profiles: PreparedProfile[] = [];
  const setUps = new Map<Profile, SetUp>();
  const faults: Fault[] = [];
  const cautions: Caution[] = [];
  const liveOf = new Map<string, Piece[]>();
  for (const piece of pieces) {
    if (piece.done) continue;
    const key = nameKey(piece.profile);
    const live = liveOf.get(key);
    if (live === undefined) liveOf.set(key, [piece]);
    else live.push(piece);
  }
  for (const profile of job.profiles) {
    const live = liveOf.get(nameKey(profile.name)) ?? [];
    const cut = sticks.filter((one) => one.profile === profile);
    if (live.length === 0 && cut.length === 0) continue;
    if (profile.make !== 'buy') {
      const found = planSetUp(profile, job.shop, job.shopCells);
      faults.push(...found.faults);
      cautions.push(...found.cautions);
      if (found.setUp !== undefined) setUps.set(profile, found.setUp);
    }
    const stock = findStock(profile, job);
    faults.push(...stock.faults);
    cautions.push(...stock.cautions);
    const passes = setUps.get(profile)?.passHeights.length ?? 0;
    if (stock.units.length === 0) continue;
    profiles.push({
      profile,
      pieces: live,
      toPlan: live.filter(({ id }) => !served.has(id)),
      partsLeft: partsLeft.filter(({ piece }) => sameName(piece.profile, profile.name)),
      cut,
      // Where all is cut, no set-up is tried any more.
      needsSpare: profile.make !== 'buy' && !served.has(spareId(profile)),
      units: stock.units,
      passes,
      works: worksOf(profile, job.work),
    });
  }
  return { profiles, setUps, faults, cautions };
}

/** A set-up spare shorter than the shop's least blank is planned as long as that. */
function spareCautions({ shop, profiles }: Job): Caution[] {
  const spare = spareLength(shop);
  const none = spare === undefined || profiles.every((one) => one.make === 'buy');
  if (none || !shop.setUpSpare.lt(shop.leastBlankLength)) return [];
  const limit = { inches: Number(spare) };
  return [
    fault('job.spare-below-least', 'setUpSpare', { inches: Number(shop.setUpSpare) }, { limit }),
  ];
}

/** Pieces of a matched group come from one stick, so they are of one profile. */
function checkMatches(job: Job, pieces: readonly Piece[]): Fault[] {
  const cells = new Map<Where, Where>(
    job.runs.map(({ where, cells: { match } }) => [where, match]),
  );
  const profileOf = new Map<string, string>();
  const faults: Fault[] = [];
  for (const piece of pieces) {
    if (piece.match === '' || piece.done) continue;
    const key = nameKey(piece.match);
    const first = profileOf.get(key) ?? piece.profile;
    profileOf.set(key, first);
    if (first === piece.profile) continue;
    const details = { other: first };
    const one = fault('job.match-of-two-profiles', own(piece.id), piece.match, { details });
    faults.push(placeFault(one, cells.get(piece.where) ?? piece.where));
  }
  return faults;
}
