/** A blade's disc as points in space, turned by hand: shares nothing with the core's formulas. */
export interface Disc {
  readonly diameter: number;
  readonly kerf: number;
  /** From the blade line, and from upright; radians. */
  readonly approach: number;
  readonly tilt: number;
  /** Of the highest tooth. */
  readonly height: number;
}

/** Seen along the feed: across it, toward the far rail, and above the table. */
export interface Seen {
  readonly across: number;
  readonly level: number;
}

/** The rims of both faces of the disc, seen along the feed; `around` points each. */
export function seeDisc(disc: Disc, around: number): Seen[] {
  const { diameter, kerf, approach, tilt, height } = disc;
  const radius = diameter / 2;
  // The disc's middle plane passes through the blade line; its rim's highest corner is at the height.
  const top = (height - (kerf / 2) * Math.sin(tilt)) / Math.cos(tilt);
  const seen: Seen[] = [];
  for (const face of [-kerf / 2, kerf / 2]) {
    for (let at = 0; at < around; at++) {
      const angle = (2 * Math.PI * at) / around;
      const along = radius * Math.sin(angle);
      const up = top - radius + radius * Math.cos(angle);
      const toLean = up * Math.sin(tilt) + face * Math.cos(tilt);
      const level = up * Math.cos(tilt) - face * Math.sin(tilt);
      seen.push({ across: along * Math.sin(approach) + toLean * Math.cos(approach), level });
    }
  }
  return seen;
}
