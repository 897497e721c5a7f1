/** What must agree between the sheets of a workbook, and how it is said that it does. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { agreementFormula, AGREES } from '../agreement.ts';
import { money, total } from '../grammar/figures.ts';
import { cell, sum, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { pieceNumbers } from '../numbered-pieces.ts';
import { onSheet, type PlanAnchors, type ProductionTotal } from '../plan-anchors.ts';
import { ADDING_NOISE_SHARE, AGREES_WITHIN_OF_A_FIGURE } from '../tolerance.ts';
import { VOLUME, volumeIn } from '../words/lumber-volume.ts';
import { numberIn } from '../words/print-length.ts';
import type { OfficeAnchors, TotalName } from './office-anchors.ts';
import { CHECKS } from './office-columns.ts';
import { CHECKS_NOTE, SECTIONS } from './office-words.ts';

/** A figure by formula, with what it comes to; or one that was planned, a number alone. */
type Figure = number | readonly [formula: () => string, value: number];

interface Check {
  readonly what: string;
  readonly one: Figure;
  readonly other: Figure;
  /** By how much they may differ; half a thousandth where absent. */
  readonly within?: string;
}

export function addChecks(
  draft: SheetDraft,
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  onThisSheet: OfficeAnchors,
): void {
  draft.spread(SECTIONS.checks, 'section');
  draft.spread(CHECKS_NOTE, 'note');
  draft.put(CHECKS.headings(plan.job.shop));
  const facts: Facts = { plan, acrossSheets, onThisSheet };
  const ofClient = clientChecks(facts);
  const others = [...cutChecks(facts), ...ownChecks(facts)];
  const checks = [...others, ...ofClient];
  const first = draft.next;
  for (const check of checks) putCheck(draft, check);
  const last = draft.next - 1;
  const verdicts = CHECKS.fixedRange('verdict', first, last);
  draft.highlight(
    CHECKS.area(first, last),
    `${CHECKS.inColumn('verdict', first)}<>"${AGREES}"`,
    'caution',
  );
  acrossSheets.place('verdictsOnOffice', {
    range: onSheet('office', verdicts),
    labels: onSheet('office', CHECKS.fixedRange('what', first, last)),
    count: checks.length,
  });
  acrossSheets.place('clientVerdicts', {
    range: onSheet('office', CHECKS.fixedRange('verdict', first + others.length, last)),
    count: ofClient.length,
  });
  draft.blank();
}

interface Facts {
  readonly plan: JobPlan;
  readonly acrossSheets: PlanAnchors;
  readonly onThisSheet: OfficeAnchors;
}

function putCheck(draft: SheetDraft, { what, one, other, within }: Check): void {
  const row = draft.next;
  const figure = (given: Figure): DraftCell =>
    typeof given === 'number' ? cell(given, 'rowNumber') : sum(given[0], given[1], 'rowNumber');
  const formula = agreementFormula(
    CHECKS.at('one', row),
    CHECKS.at('other', row),
    within ?? AGREES_WITHIN_OF_A_FIGURE,
  );
  draft.put(
    CHECKS.row({
      what: cell(what, 'row'),
      one: figure(one),
      other: figure(other),
      verdict: sum(formula, AGREES, 'row'),
    }),
  );
}

type Range =
  | 'lengthsOnPieces'
  | 'offOnPieces'
  | 'lengthsOffOnCutting'
  | 'sticksOffOnCutting'
  | 'picksOnCutting'
  | 'picksOffOnCutting';

/** What is cut is what is listed, and both are what sticks and lumber were planned for. */
function cutChecks({ plan, acrossSheets }: Facts): Check[] {
  const { unit } = plan.job.shop;
  const { pieces, lengthNet, lengthBought } = plan.totals;
  const over =
    (say: (range: string) => string, name: Range): (() => string) =>
    () =>
      say(acrossSheets.at(name));
  const zeros = (name: Range): (() => string) => over((range) => `COUNTIF(${range},0)`, name);
  const here =
    (name: ProductionTotal): (() => string) =>
    () =>
      acrossSheets.at('totalOnProduction', name);
  const count = plan.profiles.length;
  const kept = plan.profiles.flatMap(({ sticks }) => sticks.filter((one) => one.offcutKept));
  const uses = plan.groups.flatMap(({ stockUse }) => stockUse);
  const itemsOf = (name: 'fromRack' | 'bought'): number =>
    new Set(uses.flatMap((use) => (use[name] > 0 ? [use.item] : []))).size;
  const picks = itemsOf('fromRack') + itemsOf('bought');
  const lumber = total(uses.map(({ fromRack, bought }) => fromRack + bought));
  const net = numberIn(lengthNet, unit);
  const listed = over((range) => `COUNT(${range})`, 'lengthsOnPieces');
  return [
    {
      what: 'Pieces to cut: by room on Production, and listed on Pieces',
      one: [here('piecesByRoom'), pieces],
      other: [listed, pieces],
    },
    {
      what: 'Pieces to cut: listed on Pieces, and those of them that Cutting cuts to the same length',
      one: [listed, pieces],
      other: [zeros('offOnPieces'), pieces],
    },
    {
      what: `Net length (${unit}): by room on Production, and on Pieces`,
      one: [here('lengthByRoom'), net],
      other: [over((range) => `SUM(${range})`, 'lengthsOnPieces'), net],
    },
    plannedCheck(plan, acrossSheets),
    ...(count === 0
      ? []
      : [
          {
            what: 'Profiles: all, and those whose lengths on Cutting add up to those on Pieces',
            one: count,
            other: [zeros('lengthsOffOnCutting'), count] as const,
          },
          {
            what: 'Profiles: all, and those whose sticks on Cutting are as long as planned',
            one: count,
            other: [zeros('sticksOffOnCutting'), count] as const,
          },
        ]),
    {
      what: `Stick lengths (${unit}): by profile on Production, and together on Cutting`,
      one: [here('lengthBought'), numberIn(lengthBought, unit)],
      other: [() => acrossSheets.at('allLengthOnCutting'), numberIn(lengthBought, unit)],
    },
    {
      what: `Offcuts kept (${unit}): as credited, and on Cutting`,
      one: total(kept.map(({ offcut }) => numberIn(offcut, unit))),
      other: [
        () => acrossSheets.at('allKeptOnCutting'),
        total(kept.map(({ offcut }) => numberIn(offcut, unit))),
      ],
    },
    {
      what: 'Lengths of lumber to pull and buy: on Production, and on Cutting',
      one: [() => `${here('fromRack')()}+${here('toBuy')()}`, lumber],
      other: [over((range) => `SUM(${range})`, 'picksOnCutting'), lumber],
    },
    ...(picks === 0
      ? []
      : [
          {
            what: 'Rows of lumber to pull or buy: all, and those with the same count on Production and on Cutting',
            one: picks,
            other: [zeros('picksOffOnCutting'), picks] as const,
          },
        ]),
  ];
}

/**
 * The lengths that lumber and sticks were planned for, against those on Pieces now. Each counts as often
 * as its No., so that a change on one piece can't be made up for by another.
 */
function plannedCheck(plan: JobPlan, acrossSheets: PlanAnchors): Check {
  const numbers = pieceNumbers(plan);
  const weighted = total(
    plan.pieces.map(({ id, done, cutLength }) =>
      done ? 0 : (numbers.get(id) ?? 0) * numberIn(cutLength, plan.job.shop.unit),
    ),
  );
  const noise = weighted * ADDING_NOISE_SHARE;
  return {
    what: 'Lengths that sticks and lumber are planned for, and on Pieces now (each times its No.)',
    one: weighted,
    other: [
      () =>
        `SUMPRODUCT(${acrossSheets.at('numbersOnPieces')},${acrossSheets.at('lengthsOnPieces')})`,
      weighted,
    ],
    ...(noise > Number(AGREES_WITHIN_OF_A_FIGURE) ? { within: noise.toFixed(6) } : {}),
  };
}

/** The tables of one sheet among themselves. */
function ownChecks({ plan, acrossSheets, onThisSheet }: Facts): Check[] {
  const { totals, profiles } = plan;
  const { unit } = plan.job.shop;
  const volume = VOLUME[unit].name;
  const on = (name: ProductionTotal): string => acrossSheets.at('totalOnProduction', name);
  const check = (
    what: string,
    one: ProductionTotal,
    other: ProductionTotal,
    value: number,
  ): Check => ({
    what,
    one: [() => on(one), value],
    other: [() => on(other), value],
  });
  const passes = total(profiles.map(({ tally }) => tally.passes));
  const prices = money(totals.linesCents + totals.jobWorkCents);
  const byRoom = (what: string): string => `${what}: by room, and by profile`;
  return [
    check(byRoom('Pieces'), 'piecesByRoom', 'pieces', totals.pieces),
    check(
      byRoom(`${volume}, net`),
      'boardFeetByRoom',
      'boardFeetNet',
      volumeIn(totals.boardFeetNet, unit),
    ),
    check(byRoom('Passes'), 'passesByRoom', 'passes', passes),
    // No room bears the work for the whole job.
    {
      ...check(byRoom('Hours'), 'hoursByRoom', 'hours', totals.hours),
      one: [() => `${on('hoursByRoom')}+${acrossSheets.at('jobHoursOnProduction')}`, totals.hours],
    },
    check('Hours: in the order of work, and by profile', 'hoursInOrder', 'hours', totals.hours),
    {
      what: byRoom('Price'),
      one: [() => `${onThisSheet.at('total priceByRoom')}+${onThisSheet.at('jobPrice')}`, prices],
      other: [() => onThisSheet.at('total lines'), prices],
    },
    ...(totals.boardFeetBought === undefined
      ? []
      : [
          check(
            `${volume} as bought: by profile, and of the lumber`,
            'boardFeetBought',
            'boardFeetOfStock',
            volumeIn(totals.boardFeetBought, unit),
          ),
        ]),
  ];
}

/** What a client is told is what the shop's sheets come to. */
function clientChecks({ plan, acrossSheets, onThisSheet }: Facts): Check[] {
  const { unit } = plan.job.shop;
  const { pieces, lengthNet, priceCents, taxCents } = plan.totals;
  const check = (
    what: string,
    one: () => string,
    other: 'piecesOnClient' | 'lengthOnClient' | 'priceOnClient' | 'toPayOnClient',
    value: number,
  ): Check => ({ what, one: [one, value], other: [() => acrossSheets.at(other), value] });
  const made =
    (name: ProductionTotal): (() => string) =>
    () =>
      acrossSheets.at('totalOnProduction', name);
  const paid =
    (name: TotalName): (() => string) =>
    () =>
      onThisSheet.at(`total ${name}`);
  const length = numberIn(lengthNet, unit);
  const withTax = money(priceCents + taxCents);
  return [
    check('Pieces: on Production, and on Client', made('pieces'), 'piecesOnClient', pieces),
    check(
      `Net length (${unit}): on Production, and on Client`,
      made('lengthNet'),
      'lengthOnClient',
      length,
    ),
    check('Price: here, and on Client', paid('price'), 'priceOnClient', money(priceCents)),
    check('Price with tax: here, and on Client', paid('priceWithTax'), 'toPayOnClient', withTax),
  ];
}
