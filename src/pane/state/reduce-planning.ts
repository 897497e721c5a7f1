/** What planning and writing make of the state. */
import { sayFindings } from '../job/say-findings.ts';
import { sayStopped } from '../plan/say-progress.ts';
import { announce } from './announce.ts';
import type { PaneEvent } from './pane-event.ts';
import type { PaneState, PlanningState } from './pane-state.ts';

type PlanningEvent = Extract<
  PaneEvent,
  { readonly type: `${'planning' | 'writing'} ${string}` | 'written' }
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
      };
      return announce({ ...state, planning: begun, writing: { kind: 'idle' } }, 'Planning.');
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
      const { sheets, file, fingerprint, at } = event;
      const { found } = state.reading;
      const reading =
        found === undefined
          ? state.reading
          : { ...state.reading, found: { ...found, writtenFrom: fingerprint, writtenAt: at } };
      return { ...state, reading, writing: { kind: 'written', sheets, file }, trouble: [] };
    }
  }
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
  };
  const said =
    event.result === undefined
      ? `No plan: ${sayFindings(faults.length, cautions.length)}.`
      : `Planned: ${event.result.plan.totals.pieces} pieces from ${event.result.plan.totals.sticks} sticks, ${sayFindings(0, cautions.length)}.`;
  return announce({ ...state, planning }, said);
}
