/** Title and text alternative of a stick's bar: every number and every piece, in the order of the cuts. */
import { clipWords } from './stick-bar-labels.ts';
import type { EndShape, StickView } from './stick-view.ts';

/** Long enough to tell names apart; the shorter ones where a stick has many pieces. */
const NAME_LIMITS = [80, 30, 12];
/** A person has it read out. */
const LONGEST = 1_900;
const ID_LIMIT = 120;

export function titleStick({ id, said }: StickView): string {
  return `Stick ${clipWords(id, ID_LIMIT)}, ${said}`;
}

export function sayStick(view: StickView): string {
  for (const most of NAME_LIMITS) {
    const text = [head(view), ...sayPieces(view, most), tail(view)].join(' ');
    if (text.length <= LONGEST) return text;
  }
  return [head(view), ...sayBriefly(view), tail(view)].join(' ');
}

function head({ endTrim, endTrimSaid, kerf, kerfSaid, ...view }: StickView): string {
  const trim = endTrim > 0 ? ` ${endTrimSaid} is trimmed off either end.` : '';
  const cut = kerf > 0 ? ` Each cut takes ${kerfSaid}.` : '';
  const board = view.board === undefined ? '' : ` ${view.board.said}`;
  return `${titleStick({ endTrim, endTrimSaid, kerf, kerfSaid, ...view })}, as a bar to scale.${board}${trim}${cut}`;
}

function sayPieces({ pieces }: StickView, most: number): string[] {
  return pieces.map(({ label, said, left, right }, index) => {
    const ends = [sayEnd('left', left), sayEnd('right', right)].filter((one) => one !== '');
    const name = clipWords(label, most);
    return `${index + 1}: ${[name, said, ...ends].filter((one) => one !== '').join(', ')}.`;
  });
}

function sayEnd(side: string, end: EndShape): string {
  if (end === 'square') return '';
  return `${side} end long ${end === 'long behind' ? 'at the wall or outer edge' : 'at the face'}`;
}

/** Lengths alone, of as many pieces as can be said. */
function sayBriefly(view: StickView): string[] {
  const room = LONGEST - head(view).length - tail(view).length - 60;
  const said: string[] = [];
  let used = 0;
  for (const [index, { said: length }] of view.pieces.entries()) {
    const one = `${index + 1}: ${length}.`;
    used += one.length + 1;
    if (used > room) break;
    said.push(one);
  }
  const more = view.pieces.length - said.length;
  return more === 0 ? said : [...said, `${more} more pieces are in the list below it.`];
}

function tail({ offcut }: StickView): string {
  if (offcut.length === 0) return 'Nothing is left.';
  return `${offcut.said} is left: ${offcut.kept ? 'keep it' : 'waste'}.`;
}
