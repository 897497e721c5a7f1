/** The ends of a piece in the words of the shop, each angle with what it is measured from. */
import type { Profile } from '../../planning/job.ts';
import type { Joint } from '../../planning/joint-places.ts';
import type { PieceEnd } from '../../planning/piece.ts';
import type { Shop } from '../../planning/shop.ts';
import { formatDegrees } from '../../core/units/format-mark.ts';
import type { DecimalSign } from '../../core/units/format-number.ts';
import type { EndShape } from '../../drawings/stick-view.ts';

/** What an end is and how the saw stands for it, and the point that the length is measured to. */
export interface EndWords {
  readonly end: string;
  /** The same in a column whose heading says that angles are from square. */
  readonly brief: string;
  readonly point: string;
  /** The same beside a glyph, which tells an inside corner from an outside one: `miter 45°`. */
  readonly least: string;
  /** Which side runs long. */
  readonly shape: EndShape;
}

/**
 * An end seen from above, the side to the wall (or a casing's outer edge) up: its wood is filled. So it
 * shows which side runs long, and which end it is.
 */
const GLYPHS: Readonly<Record<'left' | 'right', Readonly<Record<EndShape, string>>>> = {
  left: { square: '▐', 'long behind': '◥', 'long in front': '◢' },
  right: { square: '▌', 'long behind': '◤', 'long in front': '◣' },
};

/** What the glyphs mean. */
export const GLYPHS_MEAN = `Ends as seen from above, wall (or a casing's outer edge) up: ${GLYPHS.left['long behind']} ${GLYPHS.right['long behind']} long at the wall, ${GLYPHS.left['long in front']} ${GLYPHS.right['long in front']} long at the face, ${GLYPHS.left.square} ${GLYPHS.right.square} square.`;

/** The same with what the angles are of, for a sheet that has neither of a crown's two. */
export const GLYPH_LEGEND = `${GLYPHS_MEAN} A miter's angle is from square, a cope's is the corner of the walls; the two angles of a corner stand on Set-ups.`;

/** `◥ miter 45°`. */
export function drawEnd(side: 'left' | 'right', { shape, least }: EndWords): string {
  return `${GLYPHS[side][shape]} ${least}`;
}

const SQUARE_END: EndWords = {
  end: 'square',
  brief: 'square',
  least: 'square',
  point: 'square end',
  shape: 'square',
};

/**
 * A miter of an upright or flat molding halves the wall's corner C: derived, the saw turns 90 - C / 2
 * from a square cut. A molding at a spring angle takes two angles, which stand on Set-ups. A return
 * turns a right angle, whatever the wall does.
 */
export function sayEnd(
  end: PieceEnd,
  profile: Profile | undefined,
  decimalSign: DecimalSign,
): EndWords {
  const { point } = end;
  const said = sayKind(end, profile?.spring !== undefined, decimalSign);
  if (end.kind === 'square') return { ...SQUARE_END, point };
  const inFront = point === 'long point at the face' || point === 'long point of the return miter';
  return { ...said, point, shape: inFront ? 'long in front' : 'long behind' };
}

type Said = Pick<EndWords, 'end' | 'brief' | 'least'>;

function sayKind({ kind, cornerDeg }: PieceEnd, sprung: boolean, decimalSign: DecimalSign): Said {
  if (kind === 'square') return SQUARE_END;
  const corner = formatDegrees(kind === 'return' ? 90 : cornerDeg, decimalSign);
  if (kind === 'cope' || sprung) {
    const end = `${kind}, ${corner} corner${kind === 'cope' ? '' : ': see Set-ups'}`;
    return { end, brief: end, least: kind === 'cope' ? `cope ${corner}` : `${corner} corner` };
  }
  return fromSquare(kind, 90 - (kind === 'return' ? 90 : cornerDeg) / 2, decimalSign);
}

/** `inside miter, 45° from square`. */
function fromSquare(kind: string, angleDeg: number, decimalSign: DecimalSign): Said {
  const angle = formatDegrees(angleDeg, decimalSign);
  const least = `${kind.replace(/^(?:in|out)side /u, '')} ${angle}`;
  return { end: `${kind}, ${angle} from square`, brief: `${kind} ${angle}`, least };
}

/**
 * Ends of one part of a spliced piece: the piece's own at its outer ends, a scarf at each joint. The two
 * sides of a joint lap: the part in front runs long at the face, the other at the back.
 *
 * @param part from 1, from the left
 */
export function sayPartEnds(
  ends: { readonly left: EndWords; readonly right: EndWords },
  part: number,
  joints: readonly Pick<Joint, 'front'>[],
  { spliceAngle, decimalSign }: Pick<Shop, 'spliceAngle' | 'decimalSign'>,
): { left: EndWords; right: EndWords } {
  const scarf = (isInFront: boolean): EndWords => ({
    ...fromSquare('scarf', spliceAngle, decimalSign),
    point: `long point of the scarf at the ${isInFront ? 'face' : 'back'}`,
    shape: isInFront ? 'long in front' : 'long behind',
  });
  const [atLeft, atRight] = [joints[part - 2], joints[part - 1]];
  return {
    left: atLeft === undefined ? ends.left : scarf(atLeft.front === 'right'),
    right: atRight === undefined ? ends.right : scarf(atRight.front === 'left'),
  };
}

export const SPARE_ENDS = { left: SQUARE_END, right: SQUARE_END } as const;
