/** Title and text alternative of a cove's section: every number that the drawing shows. */
import { sayAngle, sayLength } from './say.ts';
import type { SectionPlan } from './section-plan.ts';

export function titleSection({ view, cut }: SectionPlan): string {
  const size = `${sayLength(cut.width, view)} by ${sayLength(cut.depth, view)}`;
  return view.view === 'face up'
    ? `Cove ${size}, face up, seen from its end`
    : `Cove ${size}, face down on the saw, seen along the feed`;
}

export function saySection(plan: SectionPlan): string {
  return plan.view.words === 'client' ? sayForClient(plan) : sayForShop(plan);
}

/** Sides as they lie in the drawing; nothing of saw and rails. */
function sayForClient({ view, cut, blank, flats, fits }: SectionPlan): string {
  const say = (inches: number): string => sayLength(inches, view);
  const far = (view.tiltSide === 'left') === (view.view !== 'face up') ? 'left' : 'right';
  const center = view.setting.tilt > 0 ? `deeper toward the ${far}` : 'the same on both sides';
  const cove = `Section of the molding, face up. The cove is ${say(cut.width)} wide and ${say(cut.depth)} deep, ${center}.`;
  if (blank === undefined) return cove;
  const board = `The molding is ${say(blank.width)} wide and ${say(blank.thickness)} thick.`;
  const [left, right] = far === 'left' ? [flats.far, flats.near] : [flats.near, flats.far];
  const flat = `Flats of ${say(left)} at the left and ${say(right)} at the right are left beside the cove.`;
  return `${cove} ${board}${fits ? ` ${flat}` : ''}`;
}

function sayForShop(plan: SectionPlan): string {
  const { view, cut, blank, flats, fits } = plan;
  const say = (inches: number): string => sayLength(inches, view);
  const far = (view.tiltSide === 'left') === (view.view !== 'face up') ? 'left' : 'right';
  const where =
    view.view === 'face up'
      ? `Section of the molding, face up; its far rail's side is at the ${far}.`
      : `Section of the board face down on the saw table, seen from the front of the saw along the feed; the far rail is at the ${far}.`;
  const tilted = view.setting.tilt > 0;
  const center = tilted
    ? `its deepest line ${say(cut.offCenter)} off center toward the far rail (blade tilted ${sayAngle(view.setting.tilt, view.decimalSign)} from upright)`
    : 'centered';
  const cove = `The cove is ${say(cut.width)} wide and ${say(cut.depth)} deep, ${center}.`;
  if (blank === undefined) return `${where} ${cove} The blank is not known.`;
  const board = `The blank is ${say(blank.width)} wide and ${say(blank.thickness)} thick.`;
  const left = `Flats of ${say(flats.near)} by the near rail and ${say(flats.far)} by the far rail ride on the table; the web over the cove is ${say(blank.thickness - cut.depth)}.`;
  return `${where} ${cove} ${board} ${fits ? left : 'The cove does not fit in this blank.'}`;
}
