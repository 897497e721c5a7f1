/** The circle that lies nearest to a trace: what a true arc would miss of it. By orthogonal least squares. */
import type { OutlinePoint } from '../cove/outline.ts';
import { fitLeastSquares } from './least-squares.ts';

export interface TrueArc {
  /** Inches. */
  readonly radius: number;
  /** Of the points' distances from it; inches. */
  readonly rms: number;
  readonly worst: number;
}

/** @param points of the cove alone, without the flats; three or more */
export function fitTrueArc(points: readonly OutlinePoint[]): TrueArc {
  const us = points.map(({ u }) => u);
  const depth = Math.max(...points.map((point) => point.depth));
  const [left, right] = [Math.min(...us), Math.max(...us)];
  const half = (right - left) / 2;
  const radius = (half ** 2 + depth ** 2) / (2 * depth);
  const { unknowns, residuals } = fitLeastSquares(
    {
      residualsAt: ([middle = 0, deep = 0, long = 0]) =>
        points.map((point) => {
          const [du, dz] = [point.u - middle, point.depth - deep];
          const away = Math.hypot(du, dz);
          return { value: away - long, slopes: [-du / away, -dz / away, -1] };
        }),
      confine: (each) => [...each],
      weigh: () => 1,
      cost: (miss) => miss ** 2 / 2,
    },
    [(left + right) / 2, depth - radius, radius],
  );
  return { radius: unknowns[2] ?? radius, ...sizeOfMisses(residuals.map(({ value }) => value)) };
}

/** Root of the mean square, and the largest; inches. Of none, 0. */
export function sizeOfMisses(misses: readonly number[]): { rms: number; worst: number } {
  const squares = misses.reduce((sum, miss) => sum + miss ** 2, 0);
  return {
    rms: Math.sqrt(squares / Math.max(1, misses.length)),
    worst: misses.reduce((most, miss) => Math.max(most, Math.abs(miss)), 0),
  };
}
