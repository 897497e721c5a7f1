/** The screens that a molding has at the saw before it is cut to length: its cove, its corners, its slope. */
import { rewordFault } from '../../core/faults/fault.ts';
import { formatInches } from '../../core/units/format-length.ts';
import { PAGE_PALETTE } from '../../drawings/palette.ts';
import { toSvg } from '../../drawings/to-svg.ts';
import type { CovePlan, JobPlan, ProfilePlan } from '../../planning/job-plan.ts';
import type { CoveProfile } from '../../planning/job.ts';
import type { SetUp } from '../../planning/plan-setup.ts';
import type { SawShop } from '../../planning/shop.ts';
import { sayEdgeChoice } from '../../sheets/cutting/cutting-words.ts';
import { edgeMark } from '../../sheets/cutting/how-it-lies.ts';
import { drawSetUp } from '../../sheets/set-ups/set-up-drawings.ts';
import { sayCove } from '../../sheets/set-ups/set-up-page.ts';
import { CORNER_TITLE, cornerFacts } from '../../sheets/words/corner-facts.ts';
import { printDecimal } from '../../sheets/words/print-length.ts';
import { markLabel, RAIL_PLACES, sayAlong, sayMark } from '../../sheets/words/say-marks.ts';
import { NO_TABLE, setUpFacts, type Fact } from '../../sheets/words/set-up-facts.ts';
import { slopeFacts } from '../../sheets/words/slope-facts.ts';
import { MANUAL_CAUTION } from '../../sheets/words/standing-cautions.ts';
import { escapeHtml, figure, paragraph, tickBox } from './markup.ts';
import type { Screen } from './screen.ts';

/** Narrower than on paper, so that its letters are larger on a phone. */
const DRAWING_MM = 92;
const FINEST_FRACTION = 64;

/** A cove's numbers, each with what it is measured from and its side, and its passes to tap off. */
export function setUpScreen(
  shop: SawShop,
  { profile, setUp }: Pick<CovePlan, 'profile' | 'setUp'>,
  blanks: number,
): Screen {
  const { approach, approachFromFront, tilt, height, diameter, kerf, feed } = setUpFacts(
    setUp,
    shop,
  );
  const drawings = drawSetUp(setUp, shop, DRAWING_MM).map(
    (drawing) => `<figure>${toSvg(drawing, PAGE_PALETTE)}</figure>`,
  );
  const [section = '', table = ''] = drawings;
  const edge = edgeChoice(profile);
  const cautions = setUp.cautions.map(
    (one) => rewordFault(one, shop.unit, shop.decimalSign).message,
  );
  return {
    title: `${profile.name}: at the saw`,
    body: [
      paragraph(MANUAL_CAUTION, 'caution'),
      ...[...new Set(cautions)].map((message) => paragraph(message, 'caution')),
      paragraph(sayCove(profile, blanks, shop)),
      ...(profile.note === '' ? [] : [paragraph(profile.note, 'note')]),
      section,
      '<h3>Set the saw</h3>',
      figures([approach, approachFromFront, withSide(tilt), height, feed]),
      figures([diameter, kerf]),
      '<h3>Set the rails</h3>',
      table,
      rails(setUp, shop),
      passes(profile.name, setUp.passHeights, shop),
      ...edge.markup,
    ].join(''),
    ticks: setUp.passHeights.length + edge.ticks,
    done: 0,
  };
}

/** Which edge goes up the wall: decided once, and then alike for every stick. */
function edgeChoice(profile: CoveProfile): {
  readonly markup: readonly string[];
  readonly ticks: number;
} {
  const mark = edgeMark(profile);
  if (mark === undefined) return { markup: [], ticks: 0 };
  const boxes = ['upper edge', 'lower edge'].map((value) =>
    tickBox({
      name: `${value} of ${profile.name}`,
      value,
      notes: [],
      isDone: false,
      isOneOf: true,
    }),
  );
  return {
    markup: [
      '<h3>Which edge goes up the wall</h3>',
      paragraph(sayEdgeChoice(profile, mark)),
      `<ul class="ticks words">${boxes.join('')}</ul>`,
    ],
    ticks: 1,
  };
}

/** To which side the blade leans stands in the same large figures as how far. */
function withSide({ label, value, note }: Required<Fact>): Fact {
  return { label, value: `${value}, ${note}` };
}

function figures(facts: readonly Fact[]): string {
  return `<dl>${facts.map(({ label, value, note }) => figure(label, value, note)).join('')}</dl>`;
}

function rails(setUp: SetUp, shop: SawShop): string {
  const { rails: layout } = setUp;
  const { spacing, railLength } = setUpFacts(setUp, shop);
  if (layout === undefined) return `${figures([spacing])}${paragraph(NO_TABLE, 'note')}`;
  const marks = (['near', 'far'] as const).flatMap((which): Fact[] => {
    const rail = layout[which];
    const place = `its face, ${RAIL_PLACES[which]}`;
    const ends = (['front', 'back'] as const).map((edge) => ({
      label: markLabel(which, edge),
      value: sayMark(rail[edge], shop),
      note: place,
    }));
    if (rail.front.onTable && rail.back.onTable) return ends;
    // A rail that leaves the table at its side is marked there.
    const sides = (['left', 'right'] as const).flatMap((side) => {
      const along = rail[side];
      if (along === undefined) return [];
      return [{ label: markLabel(which, side), value: sayAlong(along, shop), note: place }];
    });
    return [...ends, ...sides];
  });
  return figures([...marks, spacing, ...(railLength === undefined ? [] : [railLength])]);
}

function passes(profile: string, heights: readonly number[], shop: SawShop): string {
  const boxes = heights.map((height, at) => {
    const decimal = printDecimal(height, shop);
    const fraction = formatInches(height, { denominator: FINEST_FRACTION, marks: 'inch mark' });
    const isLast = at === heights.length - 1;
    return tickBox({
      name: `pass ${at + 1} of ${profile}`,
      value: shop.unit === 'mm' ? decimal : `${fraction} (${decimal})`,
      notes: [
        `Pass ${at + 1} of ${heights.length}: highest tooth above the table${isLast ? ', the last' : ''}`,
      ],
      isDone: false,
    });
  });
  return `<h3>Passes: highest tooth above the table</h3><ul class="ticks">${boxes.join('')}</ul>`;
}

/** How a saw stands for the corners of a molding that leans, and for a slope; undefined where it does neither. */
export function cornersScreen(plan: JobPlan, { profile }: ProfilePlan): Screen | undefined {
  const corners = cornerFacts(plan, profile);
  const slope = slopeFacts(profile, plan.job.shop);
  if (corners === undefined && slope === undefined) return undefined;
  const body = [
    ...(corners === undefined
      ? []
      : [
          `<h3>${escapeHtml(CORNER_TITLE)}</h3>`,
          turns(corners.corners),
          ...(corners.nested === undefined ? [] : [paragraph(corners.nested, 'strong')]),
        ]),
    ...(slope === undefined
      ? []
      : [
          `<h3>${escapeHtml(slope.title)}</h3>`,
          turns(slope.turns),
          ...slope.notes.map((note) => paragraph(note)),
        ]),
  ];
  return {
    title: `${profile.name}: its corners`,
    body: body.join(''),
    ticks: 0,
    done: 0,
  };
}

/** A saw's two angles for each turn. */
function turns(
  all: readonly { readonly label: string; readonly miter: string; readonly bevel: string }[],
): string {
  return all
    .map(
      ({ label, miter, bevel }) =>
        `<h4>${escapeHtml(label)}</h4><dl>${figure('Miter, from square', miter)}${figure('Bevel, from upright', bevel)}</dl>`,
    )
    .join('');
}
