/**
 * 100,000 tilted set-ups with a thick blade, beside the same problem given to a general-purpose root
 * finder (newton-raphson-method, derivatives by differences): two nested roots, the approach for the
 * width within the tilt for the off-center. The finder gets 1,000 of them and good first guesses.
 */
import newtonRaphson from 'newton-raphson-method';
import { computeCut } from '../../build/core/cove/cut.js';
import { solveSetting } from '../../build/core/cove/set-up.js';
import { bestOf, seededNumbers } from './seeded.mjs';

const COUNT = 100_000;
const GENERAL_COUNT = 1_000;
const AIM_SECONDS = 1;
const AIM_RATIO = 20;

function problems() {
  const next = seededNumbers(7);
  const list = [];
  while (list.length < COUNT) {
    const blade = { diameter: 8 + 4 * next(), kerf: 1 / 16 + next() / 8 };
    const setting = {
      approach: 0.25 + 0.6 * next(),
      tilt: 0.1 + 0.65 * next(),
      height: 0.25 + 0.75 * next(),
    };
    const { width, offCenter } = computeCut(blade, setting);
    list.push({ cove: { width, depth: setting.height, offCenter }, blade, setting });
  }
  return list;
}

function solveGenerally({ cove, blade, setting }) {
  const options = { tolerance: 1e-10, maxIterations: 60 };
  const approachAt = (tilt) =>
    newtonRaphson(
      (approach) => computeCut(blade, { approach, tilt, height: cove.depth }).width - cove.width,
      setting.approach + 0.05,
      options,
    );
  const tilt = newtonRaphson(
    (at) => {
      const approach = approachAt(at);
      return (
        computeCut(blade, { approach, tilt: at, height: cove.depth }).offCenter - cove.offCenter
      );
    },
    setting.tilt - 0.05,
    options,
  );
  return { approach: approachAt(tilt), tilt };
}

export function bench() {
  const list = problems();
  let worst = 0;
  const ours = bestOf(3, () => {
    for (const { cove, blade } of list) {
      const found = solveSetting(cove, blade);
      if (found === undefined) throw new Error('A cove that was cut is not found again.');
    }
  });
  for (const { cove, blade } of list) {
    const cut = computeCut(blade, solveSetting(cove, blade));
    worst = Math.max(
      worst,
      Math.abs(cut.width - cove.width),
      Math.abs(cut.offCenter - cove.offCenter),
    );
  }
  if (!(worst < 1e-9)) throw new Error(`The worst set-up is ${worst} off.`);
  let agreed = 0;
  const few = list.slice(0, GENERAL_COUNT);
  const theirs = bestOf(3, () => {
    agreed = 0;
    for (const problem of few) {
      const { approach, tilt } = solveGenerally(problem);
      const same = (one, other) => Math.abs(one - other) < 1e-6;
      if (same(approach, problem.setting.approach) && same(tilt, problem.setting.tilt)) agreed++;
    }
  });
  const perOurs = (ours / COUNT) * 1000;
  const perTheirs = (theirs / GENERAL_COUNT) * 1000;
  return [
    {
      what: `${COUNT} tilted set-ups`,
      seconds: +(ours / 1000).toFixed(3),
      'µs each': +perOurs.toFixed(2),
      aim: `under ${AIM_SECONDS} s: ${ours < AIM_SECONDS * 1000 ? 'met' : 'missed'}`,
    },
    {
      what: `general root finder, ${GENERAL_COUNT} of them (${agreed} found)`,
      seconds: +(theirs / 1000).toFixed(3),
      'µs each': +perTheirs.toFixed(2),
      aim: `ratio ${(perTheirs / perOurs).toFixed(0)}, aim ${AIM_RATIO}: ${perTheirs / perOurs >= AIM_RATIO ? 'met' : 'missed'}`,
    },
  ];
}
