/**
 * The cutting planner: the published classes against their optima, houses' worth of trim against
 * their bounds, and the ratio against the plain arc-flow model (J. M. Valério de Carvalho, Exact
 * solution of bin-packing problems using column generation and branch-and-bound, Annals of
 * Operations Research 86, 1999) given whole to HiGHS in the same run.
 */
import loadHighs from 'highs';
import { checkPlan } from '../../build/cutting/check/check-plan.js';
import { planSticks } from '../../build/cutting/plan-sticks.js';
import { solveArcFlow } from './arc-flow.mjs';
import { areAtHand, makeTriplets, readClass, readHard28 } from './published-cutting.mjs';
import { seededNumbers } from './seeded.mjs';

const highs = await loadHighs({});

async function planWithin(problem, seconds, aimPercent) {
  const begun = performance.now();
  const elapsed = () => (performance.now() - begun) / 1000;
  let reached = Infinity;
  const outcome = await planSticks(problem, {
    loadSolver: async () => highs,
    budget: { milliseconds: 1000 * seconds },
    now: () => performance.now(),
    onProgress: ({ costCents, boundCents }) => {
      if ((costCents / boundCents - 1) * 100 <= aimPercent) reached = Math.min(reached, elapsed());
    },
  });
  if (!outcome.ok) throw new Error(outcome.faults[0].message);
  const { plan, bound, status } = outcome.value;
  const wrong = checkPlan(problem, plan);
  if (wrong.length > 0) throw new Error(wrong[0]);
  if (bound.costCents > plan.costCents) throw new Error('A plan undercuts its bound.');
  const gap = (plan.costCents / bound.costCents - 1) * 100;
  return { plan, status, gap, seconds: elapsed(), reached };
}

const oneLength = ({ capacity, sizes }) => ({
  unitsPerInch: 1,
  kerf: 0,
  endTrim: 0,
  keepOffcutsOver: 0,
  demands: sizes.map((length, at) => ({ id: `p${at}`, length, onePiece: true })),
  supplies: [{ id: 's', length: capacity, priceCents: 100, strips: 1, have: 0, buyMost: null }],
});

async function benchClass(name, instances, seconds, aim) {
  let optimal = 0;
  let proven = 0;
  const times = [];
  for (const instance of instances) {
    const planned = await planWithin(oneLength(instance), seconds, 0);
    if (planned.plan.sticks.length < instance.optimum)
      throw new Error(`${instance.name}: too few.`);
    if (planned.plan.sticks.length === instance.optimum) optimal += 1;
    if (planned.status === 'proven') proven += 1;
    times.push(planned.seconds);
  }
  const mean = times.reduce((sum, time) => sum + time, 0) / times.length;
  const all = instances.length;
  const met = aim === 'found' ? optimal === all : optimal === all && proven === all && mean < 1;
  return {
    what: name,
    instances: all,
    'at the optimum': optimal,
    proven,
    'mean s': +mean.toFixed(2),
    'most s': +Math.max(...times).toFixed(2),
    aim: `${aim === 'found' ? `all found in ${seconds} s each` : 'all proven, mean under 1 s'}: ${met ? 'met' : 'missed'}`,
  };
}

/** Lengths like a house's: many short, some at door height, some along walls; nearly all distinct. */
function makeTrim(count, seed) {
  const next = seededNumbers(seed);
  const inches = () => {
    const kind = next();
    if (kind < 0.35) return 20 + 30 * next();
    return kind < 0.6 ? 60 + 36 * next() : 30 + 150 * next();
  };
  const dollarsAFoot = { 8: 2.05, 10: 2.1, 12: 2.15, 16: 2.32 };
  return {
    unitsPerInch: 16,
    kerf: 2,
    endTrim: 16,
    keepOffcutsOver: 24 * 16,
    demands: Array.from({ length: count }, (_, at) => ({
      id: `p${at}`,
      length: Math.round(16 * inches()),
      onePiece: false,
    })),
    supplies: Object.entries(dollarsAFoot).map(([feet, dollars]) => ({
      id: `${feet} ft`,
      length: feet * 12 * 16,
      priceCents: Math.round(feet * dollars * 100),
      strips: 1,
      have: 0,
      buyMost: null,
    })),
  };
}

async function benchTrim(count, seeds, seconds, aimPercent) {
  const gaps = [];
  const reached = [];
  for (const seed of seeds) {
    const planned = await planWithin(makeTrim(count, seed), seconds, aimPercent);
    gaps.push(planned.gap);
    reached.push(planned.reached);
  }
  const megabytes = Math.round(process.memoryUsage().rss / 1e6);
  const worst = Math.max(...gaps);
  const met = worst <= aimPercent && (count < 10_000 || megabytes <= 500);
  return {
    what: `${count} pieces, four lengths`,
    instances: seeds.length,
    'gap % at most': +worst.toFixed(4),
    's to the aim': +Math.max(...reached).toFixed(2),
    MB: megabytes,
    aim: `${aimPercent} % in ${seconds} s${count < 10_000 ? '' : ' and 500 MB'}: ${met ? 'met' : 'missed'}`,
  };
}

async function benchAgainstArcFlow(name, instance) {
  const planned = await planWithin(oneLength(instance), 60, 0);
  const flow = solveArcFlow(highs, instance, 60);
  if (flow.sticks !== undefined && flow.isOptimal && flow.sticks < planned.plan.sticks.length) {
    throw new Error(`${name}: arc-flow found fewer sticks.`);
  }
  return {
    what: `${name} against plain arc-flow`,
    instances: 1,
    'mean s': +planned.seconds.toFixed(2),
    'arc-flow s': +flow.seconds.toFixed(2),
    'times as long': +(flow.seconds / planned.seconds).toFixed(1),
    aim: flow.isOptimal ? 'both to the end' : 'arc-flow stopped at 60 s',
  };
}

export async function bench() {
  const rows = [];
  const begun = { 400: [1, 2, 3, 4, 5], 2000: [1, 2], 10000: [1] };
  rows.push(await benchTrim(400, begun[400], 2, 0.02));
  rows.push(await benchTrim(2000, begun[2000], 8, 0.01));
  rows.push(await benchTrim(10000, begun[10000], 20, 0.01));
  const [small, , large] = rows;
  large['times 400 pieces'] = +(large['s to the aim'] / small['s to the aim']).toFixed(1);
  const triplets = Array.from({ length: 10 }, (_, at) => makeTriplets(20, at + 1));
  rows.push(await benchClass('triplets made here', triplets, 20, 'proven'));
  if (areAtHand()) {
    const names = ['u120', 'u250', 'u500', 'u1000', 't60', 't120', 't249', 't501'];
    for (const [at, name] of names.entries()) {
      rows.push(await benchClass(name, readClass(at + 1), 20, 'proven'));
    }
    rows.push(await benchClass('Hard28', readHard28(), 60, 'found'));
    rows.push(await benchAgainstArcFlow('u120_00', readClass(1)[0]));
    rows.push(await benchAgainstArcFlow('t60_00', readClass(5)[0]));
  }
  rows.push(await benchAgainstArcFlow('20 triplets', makeTriplets(20, 1)));
  return rows;
}
