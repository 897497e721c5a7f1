/** The last steps: sticks cut to length, those that leave no second try first, and offcuts kept. */
import { nameKey, type Run } from '../../planning/job.ts';
import type { CutStick, ProfilePlan } from '../../planning/job-plan.ts';
import { listSpliced } from '../../planning/joints.ts';
import { printExact } from '../words/print-length.ts';
import { cell, sum } from '../grammar/sheet-draft.ts';
import type { OrderFacts, Step } from './order-step.ts';
import { listLateWork } from './work-steps.ts';
import { QUANTITIES } from './production-columns.ts';
import { hoursOf } from './work-hours.ts';

/** Sticks named one by one; more are only counted. */
const MOST_NAMED = 6;

export function listCrosscutSteps(facts: OrderFacts): Step[] {
  const { profiles } = facts.plan;
  return [
    ...firstSteps(facts),
    ...profiles.map((planned) => crosscutStep(facts, planned)),
    ...profiles.flatMap((planned) => joinStep(facts, planned)),
    ...listLateWork(facts),
    ...keepSteps(facts),
  ];
}

type Named = Pick<Run, 'room' | 'run' | 'profile'>;

/** Matched pieces and runs in one piece need a long stick again when a cut fails. */
function firstSteps({ plan }: OrderFacts): Step[] {
  // Runs along one wall have its name, whatever their molding.
  const keyOf = ({ room, run, profile }: Named): string =>
    JSON.stringify([room, run, nameKey(profile)]);
  // A leg of a door's casing is in one piece anyhow: only runs of which it was asked count.
  const asked = new Set(plan.job.runs.flatMap((one) => (one.onePiece ? keyOf(one) : [])));
  const isParticular = ({ pieces }: CutStick): boolean =>
    pieces.some(
      ({ piece }) => piece?.kind === 'run' && (piece.match !== '' || asked.has(keyOf(piece))),
    );
  const sticks = plan.profiles.flatMap((one) => one.sticks.filter(isParticular));
  if (sticks.length === 0) return [];
  const named = sticks.slice(0, MOST_NAMED).map(({ id }) => id);
  const more = sticks.length - named.length;
  return [
    {
      work: 'First, matched pieces and runs in one piece',
      how: `${named.join(', ')}${more > 0 ? ` and ${more} more` : ''}: while there is stock for a second try`,
      count: () => cell(sticks.length, 'rowWhole'),
      of: sticks.length === 1 ? 'stick' : 'sticks',
      see: 'Cutting',
    },
  ];
}

function crosscutStep({ acrossSheets, onThisSheet }: OrderFacts, planned: ProfilePlan): Step {
  const { profile, sticks, tally } = planned;
  const quantity = (column: 'pieces' | 'sticks'): string =>
    QUANTITIES.inRow(column, onThisSheet.at('quantityRow', planned));
  const lengths = sticks.reduce((all, { pieces }) => all + pieces.length, 0);
  return {
    work: `Crosscut ${profile.name}`,
    how: 'room and run on the back',
    count: () => sum(() => quantity('pieces'), tally.pieces, 'rowWhole'),
    of: tally.pieces === 1 ? 'piece' : 'pieces',
    cuts: () => ({
      // One more than lengths for each stick: the first cut trims its end.
      formula: () => `${acrossSheets.at('cutsOnCutting', planned)}+${quantity('sticks')}`,
      value: lengths + sticks.length,
    }),
    ...hoursOf(planned, ['crosscuts'], acrossSheets),
    isCrosscut: true,
    see: 'Cutting',
    planned,
  };
}

/** Pieces named one by one; more are only counted. */
const MOST_SPLICED = 3;

function joinStep({ acrossSheets }: OrderFacts, planned: ProfilePlan): Step[] {
  const { profile, sticks, tally } = planned;
  const spliced = listSpliced(sticks);
  if (spliced.length === 0) return [];
  const named = spliced
    .slice(0, MOST_SPLICED)
    .map(({ id, parts }) => `${id}, ${parts.length} parts`);
  const more = spliced.length - named.length;
  return [
    {
      work: `Join ${profile.name}`,
      how: `${named.join(', ')}${more > 0 ? `, ${more} more` : ''}: scarfed, glued`,
      count: () => cell(spliced.length, 'rowWhole'),
      of: spliced.length === 1 ? 'piece' : 'pieces',
      cuts: () => ({ formula: () => String(tally.joints), value: tally.joints }),
      ...hoursOf(planned, ['joints'], acrossSheets),
      see: 'Cutting',
      planned,
    },
  ];
}

function keepSteps({ plan }: OrderFacts): Step[] {
  const { shop } = plan.job;
  const kept = plan.profiles.flatMap((one) => one.sticks.filter((stick) => stick.offcutKept));
  if (kept.length === 0) return [];
  return [
    {
      work: 'Keep the offcuts, and label them',
      how: `those over ${printExact(shop.keepOffcutsOver, shop)}`,
      count: () => cell(kept.length, 'rowWhole'),
      of: kept.length === 1 ? 'offcut' : 'offcuts',
      see: 'Cutting',
    },
  ];
}
