/**
 * Noisy traces of 100 points matched to a setting, beside the same given to a general least-squares library
 * (ml-levenberg-marquardt, slopes by differences). Both get the same distances, the same five starts and
 * the same limits; ours finds outliers besides, and goes on with the best two starts alone.
 */
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { computeOutline } from '../../build/core/cove/outline.js';
import { solveSetting } from '../../build/core/cove/set-up.js';
import { fitOutline } from '../../build/core/match/fit-outline.js';
import { outlineOf } from '../../build/core/match/outline-of.js';
import { bestOf, seededNumbers } from './seeded.mjs';

const COUNT = 40;
const GENERAL_COUNT = 8;
const POINTS = 100;
const NOISE_IN = 1 / 64;
const AIM_MS = 50;
const AIM_RATIO = 10;
const BLADE = { diameter: 10, kerf: 1 / 8 };
const LEANS = [0, 15, -15, 32, -32].map((each) => (each * Math.PI) / 180);

function traces() {
  const next = seededNumbers(11);
  const gauss = () =>
    Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()) * NOISE_IN;
  const list = [];
  while (list.length < COUNT) {
    const width = 2 + 2 * next();
    const cove = { width, depth: 0.4 + 0.5 * next(), offCenter: 0.2 * width * next() };
    const setting = solveSetting(cove, BLADE);
    if (setting === undefined || setting.tilt > 0.75) continue;
    const outline = computeOutline(BLADE, setting, POINTS / 2 - 1);
    const points = outline.map(({ u, depth }) => ({ u: u + gauss(), depth: depth + gauss() }));
    list.push({ points, width, depth: cove.depth });
  }
  return list;
}

function fitGenerally({ points, width, depth }) {
  const x = points.map((_, at) => at);
  const y = points.map(() => 0);
  const fits = LEANS.map((lean) => {
    const chord = 2 * Math.sqrt(depth * (BLADE.diameter - depth));
    const approach = Math.asin(Math.min(0.97, width / Math.hypot(chord, BLADE.kerf)));
    return levenbergMarquardt(
      { x, y },
      ([a, b, slopeHeight, shift]) => {
        const off = outlineOf(BLADE, { approach: a, lean: b, slopeHeight, shift });
        return (at) => off(points[Math.round(at)]).distance;
      },
      {
        initialValues: [approach, lean, depth / Math.cos(lean), 0],
        minValues: [0.005, -0.79, 0.005, -3],
        maxValues: [1.31, 0.79, 4.9, 3],
        damping: 1e-3,
        gradientDifference: 1e-6,
        centralDifference: true,
        maxIterations: 60,
        errorTolerance: 1e-12,
      },
    );
  });
  return Math.min(...fits.map(({ parameterError }) => parameterError));
}

export function bench() {
  const list = traces();
  const ours = bestOf(3, () => {
    for (const { points } of list) {
      fitOutline({ points, blade: BLADE, saw: {}, passes: 'one', loss: 'even' });
    }
  });
  const general = bestOf(1, () => {
    for (const one of list.slice(0, GENERAL_COUNT)) fitGenerally(one);
  });
  const perOurs = ours / COUNT;
  const perTheirs = general / GENERAL_COUNT;
  const ratio = perTheirs / perOurs;
  return [
    {
      what: `${COUNT} traces of ${POINTS} points`,
      'ms each': +perOurs.toFixed(2),
      aim: `under ${AIM_MS} ms: ${perOurs < AIM_MS ? 'met' : 'missed'}`,
    },
    {
      what: `general least squares, ${GENERAL_COUNT} of them`,
      'ms each': +perTheirs.toFixed(2),
      aim: `ratio ${ratio.toFixed(0)}, aim ${AIM_RATIO}: ${ratio >= AIM_RATIO ? 'met' : 'missed'}`,
    },
  ];
}
