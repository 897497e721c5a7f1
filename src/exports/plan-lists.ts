/** Lists of what the plan comes to: by room, by profile, what to pull and buy, what to mind. */
import { sayWhere } from '../core/faults/fault.ts';
import type { LengthUnit } from '../core/units/length-unit.ts';
import { countCutStock, listCutStock } from '../planning/cut/cut-stock.ts';
import { countToBuy } from '../planning/grade-yield.ts';
import { plansOf, type JobPlan } from '../planning/job-plan.ts';
import { hoursOf } from '../planning/work/hours.ts';
import { VOLUME, volumeIn } from '../sheets/words/lumber-volume.ts';
import { numberIn } from '../sheets/words/print-length.ts';
import { sayStock } from '../sheets/words/say-stock.ts';
import type { List, ListValue } from './csv-list.ts';

export function listRooms({ rooms, job, totals }: JobPlan): List {
  const { unit } = job.shop;
  return {
    name: 'rooms',
    headings: ['Room', 'Profile', 'Pieces', `Net length (${unit})`, `Price (${totals.currency})`],
    rows: rooms.map((line) => [
      line.room,
      line.profile,
      line.pieces,
      numberIn(line.lengthNet, unit),
      line.priceCents / 100,
    ]),
  };
}

export function listProfiles({ profiles, job, totals }: JobPlan): List {
  const { unit } = job.shop;
  const { currency } = totals;
  const volume = VOLUME[unit].name;
  return {
    name: 'by-profile',
    headings: [
      'Profile',
      'Make',
      'Species',
      'Pieces',
      'Sticks',
      `Net length (${unit})`,
      `${volume} net`,
      `${volume} with allowance`,
      `${volume} as bought`,
      'Passes',
      'Hours',
      `Lumber (${currency})`,
      `Cost (${currency})`,
      `Price (${currency})`,
    ],
    rows: profiles.map(({ profile, tally, money }): ListValue[] => [
      profile.name,
      profile.make,
      profile.species,
      tally.pieces,
      tally.sticks,
      numberIn(tally.lengthNet, unit),
      volumeOf(tally.boardFeetNet, unit),
      volumeOf(tally.boardFeetWithAllowance, unit),
      volumeOf(tally.boardFeetBought, unit),
      tally.passes,
      hoursOf(tally.hours),
      money.lumberCents / 100,
      money.costCents / 100,
      money.priceCents / 100,
    ]),
  };
}

export function listStock(plan: JobPlan): List {
  const { groups, job, totals } = plan;
  const { unit } = job.shop;
  return {
    name: 'stock',
    headings: [
      'For',
      'Stock of',
      'What',
      `Length (${unit})`,
      'From the rack',
      'To buy',
      'To order, by its yield',
      `Each (${totals.currency})`,
      `Cost (${totals.currency})`,
      'Cut already, of the rack',
      'Cut already, bought',
    ],
    rows: groups.flatMap((group) => {
      const cut = listCutStock(plansOf(plan, group));
      return group.stockUse.map((use): ListValue[] => [
        group.name,
        use.item.for,
        sayStock(use.item, job.shop),
        numberIn(use.item.length, unit),
        use.fromRack,
        use.bought,
        countToBuy(use.item, use.bought),
        use.priceCents / 100,
        use.costCents / 100,
        countCutStock(cut, use.item, 'rack'),
        countCutStock(cut, use.item, 'buy'),
      ]);
    }),
  };
}

export function listCutAways({ cutAways, job }: JobPlan): List {
  const { unit } = job.shop;
  return {
    name: 'cut-aways',
    headings: ['Room', 'Wall', 'Out of', 'For', `Taken (${unit})`],
    rows: cutAways.map(({ room, wall, profile, opening, taken }): ListValue[] => [
      room,
      wall,
      profile,
      opening,
      numberIn(taken, unit),
    ]),
  };
}

export function listCautions({ cautions }: JobPlan): List {
  return {
    name: 'cautions',
    headings: ['Where', 'Caution'],
    rows: cautions.map((one) => [one.where === undefined ? '' : sayWhere(one.where), one.message]),
  };
}

function volumeOf(boardFeet: number | undefined, unit: LengthUnit): number | null {
  return boardFeet === undefined ? null : volumeIn(boardFeet, unit);
}
