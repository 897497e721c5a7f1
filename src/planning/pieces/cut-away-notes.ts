/** What must be said about openings on walls: each thing once, at the cell that would change it. */
import { sayArgument } from '../../core/faults/argument.ts';
import { fault, placeFault, type Caution } from '../../core/faults/fault.ts';
import { nameKey, sameName, type Profile, type Run } from '../job.ts';
import { type WallRow } from '../room-rows.ts';
import { runArgument, sideArgument, type OpeningSide } from './opening-sides.ts';
import type { Verdict } from './what-it-cuts.ts';

interface Cut {
  readonly run: Run;
  readonly profile: Profile;
}

/** What the trade calls moldings that run below the ceiling. */
const BELOW_THE_CEILING = /\b(?:rails?|base|baseboards?|skirtings?|wainscot\w*)\b/iu;

/** A cove without a spring angle may be a rail too, and some are called so. */
function isNamedBelow({ make, spring, name }: Profile): boolean {
  return make === 'cove' && spring === undefined && BELOW_THE_CEILING.test(name);
}

export class CutAwayNotes {
  readonly #runsOf = new Map<string, Run[]>();
  readonly #sides: readonly OpeningSide[];
  readonly #profileAt: (run: Run) => Profile | undefined;
  readonly #walls: ReadonlySet<string>;
  readonly #said = new Map<string, Caution>();
  readonly #cutsOf = new Map<OpeningSide, Cut[]>();

  constructor(
    runs: readonly Run[],
    sides: readonly OpeningSide[],
    profileAt: (run: Run) => Profile | undefined,
    walls: readonly WallRow[],
  ) {
    for (const run of runs) {
      const known = this.#runsOf.get(nameKey(run.room));
      if (known === undefined) this.#runsOf.set(nameKey(run.room), [run]);
      else known.push(run);
    }
    this.#walls = new Set(walls.map(({ room, wall }) => wallKey(room, wall)));
    this.#sides = sides;
    this.#profileAt = profileAt;
    for (const side of sides) this.#noteWall(side);
  }

  add(...cautions: readonly Caution[]): void {
    for (const one of cautions) this.#once(one, String(this.#said.size));
  }

  /** What an opening leaves whole, though it may be meant to cut it. */
  note(run: Run, profile: Profile, side: OpeningSide, verdict: Verdict): void {
    const { place, name } = profile;
    if (verdict.is === 'unknown') {
      const needed = sayArgument(verdict.needed);
      const details = { profile: name, needed };
      const code = verdict.needed === 'height' ? 'job.cuts-unknown' : 'job.window-cuts-unknown';
      const one = fault(code, sideArgument(side), run.run, { details });
      this.#once(placeFault(one, verdict.cell), needed, JSON.stringify(verdict.cell));
    } else if (verdict.is === 'lapped') {
      const details = { profile: name, wall: run.run };
      const by = { inches: Number(verdict.by) };
      const code = place.at === 'floor' ? 'job.window-laps-floor' : 'job.opening-laps-rail';
      const one = fault(code, sideArgument(side), by, { details });
      this.#once(placeFault(one, side.opening.cells.sill), sayArgument(sideArgument(side)), name);
    } else if (place.at === 'ceiling' && !place.isSaid && isNamedBelow(profile)) {
      const one = fault('job.taken-for-ceiling', sideArgument(side), name, {
        details: { run: run.run },
      });
      this.#once(placeFault(one, place.cell), name);
    } else if (
      place.at === 'opening' &&
      !place.isSaid &&
      side.opening.kind !== 'window' &&
      run.measuredAs === 'wall'
    ) {
      const one = fault('job.taken-for-casing', sideArgument(side), name, {
        details: { run: run.run },
      });
      this.#once(placeFault(one, place.cell), name);
    }
  }

  /** What openings cut out of a run. */
  noteCut(run: Run, profile: Profile, sides: readonly OpeningSide[]): void {
    for (const side of sides) {
      const cuts = this.#cutsOf.get(side);
      if (cuts === undefined) this.#cutsOf.set(side, [{ run, profile }]);
      else cuts.push({ run, profile });
    }
    if (run.quantity === 1) return;
    const each = fault('job.opening-in-each', runArgument(run), run.quantity);
    this.add(placeFault(each, run.where));
  }

  /** All of them, what came first said first. */
  cautions(): Caution[] {
    for (const side of this.#sides) {
      const here = this.#cutsOf.get(side) ?? [];
      this.#noteSeveralOnFloor(side, here);
      this.#noteSeveralRuns(side, here);
    }
    return [...this.#said.values()];
  }

  #once(one: Caution, ...key: readonly string[]): void {
    const whole = JSON.stringify([one.code, ...key]);
    if (!this.#said.has(whole)) this.#said.set(whole, one);
  }

  /** Whether there is anything to cut on the wall that is named, or that should be. */
  #noteWall(side: OpeningSide): void {
    const { room, wall, opening } = side;
    if (this.#walls.has(wallKey(room, wall))) return;
    const inRoom = this.#runsOf.get(nameKey(room)) ?? [];
    const isOther = side.side === 2;
    const wallCell = opening.cells[isOther ? 'otherWall' : 'wall'];
    if (isOther && inRoom.length === 0) {
      const unknown = fault('job.other-room-unknown', sideArgument(side), room);
      this.add(placeFault(unknown, opening.cells.otherRoom));
      return;
    }
    const placesOf = (runs: readonly Run[]): Profile['place']['at'][] =>
      runs.flatMap((run) => this.#profileAt(run)?.place.at ?? []);
    if (wall === '') {
      const some = placesOf(inRoom).some((at) => at === 'floor' || at === 'height');
      if (!isOther || !some) return;
      this.add(placeFault(fault('job.other-wall-open', sideArgument(side), room), wallCell));
      return;
    }
    const onWall = inRoom.filter((run) => sameName(run.run, wall));
    if (onWall.length === 0) {
      this.add(placeFault(fault('job.wall-unknown', sideArgument(side), wall), wallCell));
    } else if (
      opening.kind !== 'window' &&
      placesOf(inRoom).includes('floor') &&
      !placesOf(onWall).includes('floor')
    ) {
      const details = { profiles: [...new Set(onWall.map((run) => run.profile))].join(', ') };
      const none = fault('job.wall-without-base', sideArgument(side), wall, { details });
      this.add(placeFault(none, wallCell));
    }
  }

  /** One profile can stand on the floor, or several where that is said of each. */
  #noteSeveralOnFloor(side: OpeningSide, here: readonly Cut[]): void {
    const onFloor = [...new Set(here.map(({ profile }) => profile))].filter(
      ({ place }) => place.at === 'floor',
    );
    const unsaid = onFloor.filter(({ place }) => !place.isSaid);
    const last = unsaid[unsaid.length - 1];
    if (onFloor.length < 2 || last === undefined) return;
    const names = onFloor.map(({ name }) => name);
    const details = {
      profiles: names.join(', '),
      unsaid: unsaid.map((one) => one.name).join(', '),
    };
    const several = fault('job.several-on-floor', sideArgument(side), onFloor.length, { details });
    this.#once(placeFault(several, last.place.cell), ...names.map(nameKey).sort());
  }

  /** Runs of one profile and name: the opening is in one of them, and is cut out of each. */
  #noteSeveralRuns(side: OpeningSide, here: readonly Cut[]): void {
    for (const profile of new Set(here.map((one) => one.profile))) {
      const runs = here.filter((one) => one.profile === profile).map(({ run }) => run);
      const second = runs[1];
      if (second === undefined) continue;
      const details = { profile: profile.name };
      const several = fault('job.opening-in-several', sideArgument(side), runs.length, { details });
      this.#once(placeFault(several, second.where), JSON.stringify(second.where));
    }
  }
}

function wallKey(room: string, wall: string): string {
  return JSON.stringify([nameKey(room), nameKey(wall)]);
}
