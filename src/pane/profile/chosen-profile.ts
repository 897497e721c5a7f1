/** Which profile is being worked on, and what comes of it. */
import type { CoveProfile } from '../../planning/job.ts';
import { sameName } from '../../planning/job.ts';
import { readShop } from '../../planning/input/read-shop.ts';
import type { Shop } from '../../planning/shop.ts';
import { INCHES_AND_POINT } from '../../core/units/length.ts';
import type { PaneState } from '../state/pane-state.ts';
import { OWN_COVE, usualCove, type TypedCove } from './cove-fields.ts';
import { answerProfile, answerTyped, type ProfileAnswer } from './answer-profile.ts';

export interface ChosenProfile {
  readonly coves: readonly CoveProfile[];
  /** A profile's name, or OWN_COVE. */
  readonly name: string;
  readonly shop: Shop;
  /** The cove of one's own, as typed or as it begins. */
  readonly typed: TypedCove;
  readonly answer: ProfileAnswer;
  /** The last that could be read, where what is typed can't. */
  readonly before: ProfileAnswer | undefined;
}

/** The job's first cove until somebody chooses; a cove of one's own where there is none. */
export function chosenProfile({ reading, profile }: PaneState): ChosenProfile {
  const shop = reading.found?.shop ?? usualShop();
  const coves = reading.found?.coves ?? [];
  const typed = profile.typed ?? usualCove(shop);
  const chosen =
    profile.chosen === undefined
      ? coves[0]
      : coves.find(({ name }) => profile.chosen !== undefined && sameName(name, profile.chosen));
  if (chosen !== undefined) {
    const answer = answerProfile(chosen, shop);
    return { coves, name: chosen.name, shop, typed, answer, before: undefined };
  }
  const answer = answerTyped(typed, shop);
  const isRead = answer.profile !== undefined || profile.drawn === undefined;
  const before = isRead ? undefined : answerTyped(profile.drawn, shop);
  return { coves, name: OWN_COVE, shop, typed, answer, before };
}

let usual: Shop | undefined;
/** Where no Shop has been read: all usual values. */
export function usualShop(): Shop {
  usual ??= readShop(undefined, INCHES_AND_POINT, { faults: [], cautions: [] }).shop;
  return usual;
}
