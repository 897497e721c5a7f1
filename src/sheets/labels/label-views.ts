/** What a label says, in the words of the other sheets. */
import type { LabelView } from '../../drawings/label.ts';
import { printExact, sayOtherWay } from '../words/print-length.ts';
import type { Shop } from '../../planning/shop.ts';
import type { Label, OffcutLabel, PieceLabel } from './list-labels.ts';

/** @param names Rows of names that it has room for: room and run stand on one where it has two. */
export function viewOfLabel(label: Label, shop: Shop, names: number): LabelView {
  const said = printExact(label.length, shop);
  // A metric shop has no tape of inches.
  const other = shop.unit === 'mm' ? '' : sayOtherWay(label.length, shop);
  return { said, other, ...(label.kind === 'piece' ? ofPiece(label, names) : ofOffcut(label)) };
}

type Words = Omit<LabelView, 'said' | 'other'>;

function ofPiece({ piece, part, left, right, arrow }: PieceLabel, names: number): Words {
  const { room, run } = piece;
  const what = piece.kind === 'return' ? 'return' : part;
  const [ofRun, end] = splitRun(tidy(run));
  const whole = `${end}${what === '' ? '' : `, ${what}`}`;
  const place = names < 3 ? [joinNames(room, ofRun)] : [tidy(room), ofRun];
  const lines = [...place, tidy(piece.profile)].map((name) => ({ name }));
  const ofPart = place.length - 1;
  return {
    mark: piece.mark,
    lines: lines.map((one, at) => (at === ofPart ? { ...one, whole } : one)),
    arrow,
    bar: {
      fill: 'wood',
      left: left.shape,
      right: right.shape,
      names: ['left', 'right'],
      words: [endWord(left.brief), endWord(right.brief)],
    },
  };
}

/** What follows a name's last comma tells the legs of a door from its head: it is never cut, unless it is long. */
const LONGEST_END = 20;

function splitRun(run: string): readonly [name: string, end: string] {
  const at = run.lastIndexOf(', ');
  if (at <= 0 || run.length - at > LONGEST_END) return [run, ''];
  return [run.slice(0, at), run.slice(at)];
}

/** Signs of a room's name beside a run's, which needs as many. */
const MOST_OF_ROOM = 16;

function joinNames(room: string, run: string): string {
  const names = [tidy(room), tidy(run)].filter((name) => name !== '');
  const [first = '', ...rest] = names;
  const signs = Array.from(first);
  const isLong = rest.length > 0 && signs.length > MOST_OF_ROOM;
  const shown = isLong
    ? `${signs
        .slice(0, MOST_OF_ROOM - 1)
        .join('')
        .trimEnd()}…`
    : first;
  return [shown, ...rest].join(' / ');
}

/** The label has the angle, the saw's other numbers stand where they are set. */
function endWord(brief: string): string {
  return brief.replace(/: see Set-ups$/u, '');
}

function ofOffcut({ kept }: OffcutLabel): Words {
  const { label, of, wide, thick, what, from } = kept;
  // The end of the name tells it from the others.
  const named = /^(.*?)( \S+ rest| blank \S+)$/su.exec(label);
  const [name, number] = [named?.[1] ?? label, named?.[2] ?? ''];
  const size = [wide, thick].filter((one) => one !== '').join(' × ');
  return {
    mark: 'Keep',
    lines: [
      { name: tidy(name), whole: number },
      { name: tidy(of), whole: size === '' ? '' : `, ${size}` },
    ],
    bar: {
      fill: 'rail',
      left: 'square',
      right: 'square',
      names: ['', ''],
      words: [what, from],
    },
  };
}

function tidy(text: string): string {
  return text.replace(/\s+/gu, ' ').trim();
}
