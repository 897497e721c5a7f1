/** Title and text alternative of the table: every number that the drawing shows. */
import type { Rail, RailMark } from '../core/cove/rails.ts';
import { toDegrees } from '../core/units/angle.ts';
import { formatDegrees } from '../core/units/format-mark.ts';
import { marksNothing, sayAngle, sayMark } from './say.ts';
import type { TablePlan } from './table-plan.ts';

export function titleTable({ view, layout }: TablePlan): string {
  return `Saw table from above, rails at ${sayAngle(view.setting.approach, view.decimalSign)} from the blade line, fed ${layout.feed}`;
}

export function sayTable(plan: TablePlan): string {
  const { view, layout, hasMarks } = plan;
  const { approach, tilt } = view.setting;
  const front = formatDegrees(90 - toDegrees(approach), view.decimalSign);
  const lean =
    tilt === 0
      ? 'The blade stands upright.'
      : `The blade leans to the ${view.tiltSide}, ${sayAngle(tilt, view.decimalSign)} from upright.`;
  return [
    'Saw table seen from above, its front edge below.',
    `Two rails cross it at ${sayAngle(approach, view.decimalSign)} from the blade line, ${front} from the front edge; the board is fed between them from front to back, ${layout.feed}.`,
    lean,
    ...(hasMarks
      ? [sayRail('near', layout.near, plan), sayRail('far', layout.far, plan), ...saySides(plan)]
      : []),
    ...(view.table === undefined
      ? ['The size of the table is not given: a usual one is drawn dashed, without marks.']
      : []),
    ...(view.flats === undefined ? ['The blank is not given, so the rails have no marks.'] : []),
  ].join(' ');
}

function sayRail(name: string, { front, back }: Rail, plan: TablePlan): string {
  const edge = (which: string, mark: RailMark): string =>
    `on the ${which} edge ${sayPlace(mark, plan)}`;
  return `Face of the ${name} rail: ${edge('front', front)}; ${edge('back', back)}.`;
}

function sayPlace({ fromBlade, fromSlot, onTable }: RailMark, { view }: TablePlan): string {
  if (!onTable) return 'off the table';
  const from = (inches: number, line: string): string => {
    if (marksNothing(inches, view)) return `on ${line}`;
    return `${sayMark(inches, view)} ${inches < 0 ? 'left' : 'right'} of ${line}`;
  };
  const blade = from(fromBlade, 'the blade line');
  return fromSlot === undefined ? blade : `${blade}, ${from(fromSlot, 'the left miter slot')}`;
}

function saySides({ sideMarks, view }: TablePlan): string[] {
  return sideMarks.map(({ rail, side, along }) => {
    const place = marksNothing(along, view)
      ? 'level with'
      : `${sayMark(along, view)} ${along < 0 ? 'in front of' : 'behind'}`;
    return `On the ${side} edge the ${rail} rail lies ${place} the middle of the blade.`;
  });
}
