/** The part of a page about a molding that goes up a sloped ceiling: its cuts, and how its raked profile reaches. */
import type { Profile } from '../../planning/job.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { slopeFacts } from '../words/slope-facts.ts';
import {
  addParts,
  leftRow,
  leftText,
  rightFact,
  rightText,
  type Spacing,
} from './set-up-columns.ts';

/** Adds nothing for a molding that stays level. */
export function addSlope(
  draft: SheetDraft,
  profile: Profile,
  reading: LengthReading,
  spacing: Spacing = 'roomy',
): void {
  const facts = slopeFacts(profile, reading);
  if (facts === undefined) return;
  const { title, turns, notes, raked, rakedTitle } = facts;
  const rows = turns.map(({ label, miter, bevel }) =>
    leftRow(cell(label, 'row'), cell(miter, 'rowRight'), cell(bevel, 'rowRight')),
  );
  const heads = leftRow(
    cell('Turn along the wall', 'heading'),
    cell('Miter, from square', 'headingRight'),
    cell('Bevel, from upright', 'headingRight'),
  );
  addParts(
    draft,
    [leftText(title, 'section'), heads, ...rows],
    [rightText(rakedTitle, 'section'), ...raked.map(({ label, value }) => rightFact(label, value))],
    spacing,
  );
  const lines = spacing === 'close' ? [notes.join(' ')] : notes;
  for (const line of lines) draft.spread(line, 'wrapped');
}
