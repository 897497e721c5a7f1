/** What is said of two plans against each other, on the sheet Changes and on the terminal alike. */
import type {
  Comparison,
  CutBefore,
  ProfilePair,
  RunPair,
} from '../../planning/compare/comparison.ts';
import { count } from '../words/print-length.ts';

export const NOTHING_OTHERWISE = 'No run is added, gone or otherwise.';
export const CUT_TITLE = 'Already cut or done, and not asked for as it is';
export const OFFICE_NOTE =
  'For the office: hours and costs stand here. Before and after are as each was planned; a difference is after less before.';

const NEEDS: Readonly<Record<CutBefore['need'], string>> = {
  same: 'the very same',
  changed: 'one of its name, of another length, profile or end',
  gone: 'none of its name',
};

export function sayNeed({ need }: CutBefore): string {
  return NEEDS[need];
}

/** What becomes of a run: in a word. */
export function sayWhat({ before, after }: RunPair): 'added' | 'gone' | 'changed' {
  return before === undefined ? 'added' : after === undefined ? 'gone' : 'changed';
}

export function sayProfile({ profile, isMadeOtherwise }: ProfilePair): string {
  return isMadeOtherwise ? `${profile}, made otherwise` : profile;
}

/** `2 runs added, 1 gone, 3 changed, 40 as they were.` */
export function sayCounts({ added, gone, changed, same }: Comparison): string {
  const as = same === 1 ? 'as it was' : 'as they were';
  return `${count(added.length, 'run')} added, ${gone.length} gone, ${changed.length} changed, ${same} ${as}.`;
}

/** What can't come back; of what the job still asks for as it is only the number. */
export function sayCut({ cut, sticksBegun }: Comparison): string | undefined {
  if (cut.length === 0) return undefined;
  const lost = cut.filter(({ need }) => need !== 'same').length;
  const begun =
    sticksBegun === 0
      ? ''
      : ` ${count(sticksBegun, 'stick or blank was', 'sticks or blanks were')} cut or begun: what they cost is spent.`;
  const most =
    lost === 0
      ? 'the job still asks for all of them as they are.'
      : `the job no longer asks for ${lost} of them as ${lost === 1 ? 'it is' : 'they are'}.`;
  return `${count(cut.length, 'piece was', 'pieces were')} cut or done before; ${most}${begun}`;
}

/** @param say money in words */
export function sayOpen(
  { openCents: { before, after } }: Comparison,
  say: (cents: number) => string,
): string | undefined {
  if (before + after === 0) return undefined;
  return `At the sticks a cheaper plan isn't ruled out: by ${say(before)} at most before, ${say(after)} after. So much of a difference may be the search's, not the change's.`;
}

/** The runs that are not as they were: gone and changed in the order of the plan before, then what is new. */
export function listOtherwise({ gone, changed, added }: Comparison): readonly RunPair[] {
  return [...changed, ...gone, ...added];
}

export function listLost({ cut }: Comparison): readonly CutBefore[] {
  return cut.filter(({ need }) => need !== 'same');
}
