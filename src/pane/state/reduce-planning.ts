/** What planning and writing make of the state. */
import { sayFindings } from '../job/say-findings.ts';
import { sayStopped } from '../plan/say-progress.ts';
import { BROKEN_OFF, sayTicks, TICKS_LOST } from '../plan/say-ticks.ts';
import { announce } from './announce.ts';
import type { PaneEvent } from './pane-event.ts';
import type { PaneState, PlanningState, TicksNow } from './pane-state.ts';

type PlanningEvent = Extract<
  PaneEvent,
  {
    readonly type:
      `${'planning' | 'writing'} ${string}` | 'written' | 'plans recalled' | 'ticks read';
  }
>;

export function reducePlanning(state: PaneState, event: PlanningEvent): PaneState {
  const { planning } = state;
  switch (event.type) {
    case 'planning seconds typed':
      return { ...state, planning: { ...planning, seconds: event.seconds } };
    case 'planning begun': {
      const running = {
        done: 0,
        of: event.of,
        profile: '',
        phase: '',
        costCents: undefined,
        boundCents: undefined,
        stopping: false,
      };
      const begun: PlanningState = {
        ...planning,
        turn: planning.turn + 1,
        running,
        stopped: false,
        brokenOff: false,
      };
      // What was compared is of the plan that goes.
      const none = { compared: undefined, comparisonRefused: undefined };
      const next: PaneState = { ...state, ...none, planning: begun, writing: { kind: 'idle' } };
      return announce(next, 'Planning.');
    }
    case 'planning moved': {
      if (event.turn !== planning.turn || planning.running === undefined) return state;
      const running = { ...planning.running, ...event.progress };
      return { ...state, planning: { ...planning, running } };
    }
    case 'planning stopping':
      return planning.running === undefined
        ? state
        : {
            ...state,
            planning: { ...planning, running: { ...planning.running, stopping: true } },
          };
    case 'planning stopped':
      return event.turn === planning.turn
        ? announce(
            { ...state, planning: { ...planning, running: undefined, stopped: true } },
            sayStopped(planning),
          )
        : state;
    case 'planning dropped':
      return event.turn === planning.turn
        ? { ...state, planning: { ...planning, running: undefined } }
        : state;
    case 'planning ended':
      return event.turn === planning.turn ? planningEnded(state, event) : state;
    case 'planning broken off':
      return announce({ ...state, planning: { ...planning, brokenOff: true } }, BROKEN_OFF);
    case 'plans recalled':
      return plansRecalled(state, event);
    case 'ticks read':
      return ticksRead(state, event.ticks);
    case 'writing asked':
      return { ...state, writing: { kind: 'asking', question: event.question } };
    case 'writing begun':
      return { ...state, writing: { kind: 'writing', done: 0, of: event.of } };
    case 'writing moved':
      return state.writing.kind === 'writing'
        ? { ...state, writing: { kind: 'writing', done: event.done, of: event.of } }
        : state;
    case 'writing dropped':
      return { ...state, writing: { kind: 'idle' } };
    case 'written': {
      const { sheets, file, from, at } = event;
      const { fingerprint } = from;
      const { found } = state.reading;
      const reading =
        found === undefined
          ? state.reading
          : { ...state.reading, found: { ...found, writtenFrom: fingerprint, writtenAt: at } };
      const now: PlanningState = { ...planning, written: from, ticks: undefined };
      const writing = { kind: 'written', sheets, file } as const;
      return { ...state, reading, planning: now, writing, trouble: [] };
    }
  }
}

/** A plan that was made in the meantime stays. */
function plansRecalled(
  state: PaneState,
  { written, result, faults }: PaneEvent & { type: 'plans recalled' },
): PaneState {
  const { planning } = state;
  const isFree = planning.result === undefined && planning.running === undefined;
  const recalled = isFree && result !== undefined;
  const next: PlanningState = {
    ...planning,
    written: planning.written ?? written,
    ...(recalled ? { result, recalled } : {}),
    keptFaults: isFree ? faults : [],
  };
  const said = isFree ? faults.map(({ message }) => message).join(' ') : '';
  const all = { ...state, planning: next };
  return said === '' ? all : announce(all, said);
}

/** Said when there are others than before: a screen reader isn't to repeat itself. */
function ticksRead(state: PaneState, ticks: TicksNow | undefined): PaneState {
  const { ticks: before, ticksLost } = state.planning;
  const isLost = ticks === undefined;
  const next = { ...state, planning: { ...state.planning, ticks, ticksLost: isLost } };
  if (isLost) return ticksLost ? next : announce(next, TICKS_LOST);
  const isSame = before?.cutKey === ticks.cutKey || (before === undefined && ticks.sticksCut === 0);
  return isSame ? next : announce(next, sayTicks(ticks));
}

/** A planning without a plan leaves the earlier result where it is, its reasons beside it. */
function planningEnded(state: PaneState, event: PaneEvent & { type: 'planning ended' }): PaneState {
  const { result = state.planning.result, faults, cautions } = event;
  const planning: PlanningState = {
    ...state.planning,
    running: undefined,
    result,
    faults,
    cautions,
    failedFrom: event.result === undefined ? event.fingerprint : undefined,
    stopped: false,
    recalled: event.result === undefined && state.planning.recalled,
    keptFaults: event.result === undefined ? state.planning.keptFaults : [],
  };
  const said =
    event.result === undefined
      ? `No plan: ${sayFindings(faults.length, cautions.length)}.`
      : `Planned: ${event.result.plan.totals.pieces} pieces from ${event.result.plan.totals.sticks} sticks, ${sayFindings(0, cautions.length)}.`;
  return announce({ ...state, planning }, said);
}
