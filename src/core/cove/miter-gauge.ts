/**
 * The rails' direction by the saw's own miter gauge, its slot parallel to the blade line. Derived:
 * square across, the head's face lies straight across the blade line and a square held to it along
 * that line. Fed left to right the rails run to the back and to the right, (cos a, sin a) in the
 * frame of cove.ts: the blade line turned clockwise by the approach a, seen from above. So the head
 * turned by a puts the square along the rails; turned the other way by the rest of a right angle it
 * lies along them itself. Right to left is the mirror image.
 */
import { radians, type Radians } from '../units/angle.ts';
import type { Feed } from './rails.ts';

export interface GaugeReading {
  /** Of the head, from square across. */
  readonly turn: Radians;
  /** Seen from above. */
  readonly way: 'clockwise' | 'counterclockwise';
  /** What then lies along the rails: a square's leg, held to the head, or the head's own face. */
  readonly along: 'square' | 'head';
}

/** Every gauge's head turns as far to either side. Common practice [C]: 50° to 60° at most. */
const MOST_TURN = Math.PI / 4;

/** How to turn the gauge's head, by 45° at most. */
export function readMiterGauge(approach: Radians, feed: Feed): GaugeReading {
  const leftToRight = feed === 'left to right';
  if (approach <= MOST_TURN) {
    return {
      turn: approach,
      way: leftToRight ? 'clockwise' : 'counterclockwise',
      along: 'square',
    };
  }
  return {
    turn: radians(Math.PI / 2 - approach),
    way: leftToRight ? 'counterclockwise' : 'clockwise',
    along: 'head',
  };
}
