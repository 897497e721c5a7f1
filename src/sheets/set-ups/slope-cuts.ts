/** The part of a page about a molding that goes up a sloped ceiling: its cuts, and how its raked profile reaches. */
import type { Profile } from '../../planning/job.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { slopeFacts } from '../words/slope-facts.ts';
import { addParts, leftRow, leftText, rightFact, rightText } from './set-up-columns.ts';

/** Adds nothing for a molding that stays level. */
export function addSlope(draft: SheetDraft, profile: Profile, reading: LengthReading): void {
  const facts = slopeFacts(profile, reading);
  if (facts === undefined) return;
  const { title, turns, notes, raked, rakedTitle } = facts;
  const rows = turns.map(({ label, miter, bevel }) =>
    leftRow(cell(label, 'row'), cell(miter, 'figureRight'), cell(bevel, 'figureRight')),
  );
  const heads = leftRow(
    cell('Turn along the wall', 'heading'),
    cell('Miter, from square', 'headingRight'),
    cell('Bevel, from upright', 'headingRight'),
  );
  addParts(
    draft,
    [leftText(title, 'section'), heads, ...rows],
    [rightText(rakedTitle, 'fact'), ...raked.map(({ label, value }) => rightFact(label, value))],
  );
  for (const line of notes) draft.spread(line, 'small');
}
