/** One event after the other makes the next state. Pure: effects are in src/pane/actions. */
import { sayFault, type Fault } from '../../core/faults/fault.ts';
import type { WorkbookHost } from '../../hosts/host.ts';
import type { JobFound } from '../job/job-found.ts';
import { sayRead } from '../job/say-checks.ts';
import { sayWritten } from '../job/say-findings.ts';
import { sayCompared } from '../plan/say-compared.ts';
import { sayStale } from '../plan/say-stale.ts';
import { answerTyped } from '../profile/answer-profile.ts';
import { usualShop } from '../profile/chosen-profile.ts';
import { OWN_COVE, usualCove, type TypedCove } from '../profile/cove-fields.ts';
import { rowChosen } from './row-chosen.ts';
import { announce } from './announce.ts';
import type { PaneEvent } from './pane-event.ts';
import { hasList } from './next-step.ts';
import { INITIAL_STATE, type PaneState, type ProfileState, type Tab } from './pane-state.ts';
import { reducePlanning } from './reduce-planning.ts';
import { reducePrinting } from './reduce-printing.ts';

/** What comes back from a reading or a planning that another has followed changes nothing. */
export function reduce(state: PaneState, event: PaneEvent): PaneState {
  switch (event.type) {
    case 'tab chosen':
      return { ...state, tab: event.tab, isTabChosen: true, notice: undefined };
    case 'workbook missing':
      return { ...state, workbook: { kind: 'none', why: event.why } };
    case 'workbook opened':
      return workbookOpened(state, event.host);
    case 'reading begun':
      return {
        ...state,
        reading: { ...state.reading, turn: state.reading.turn + 1, busy: true },
      };
    case 'job read':
      return event.turn === state.reading.turn ? jobRead(state, event) : state;
    case 'reading failed':
      return event.turn === state.reading.turn ? readingFailed(state, event.faults) : state;
    case 'mapping begun':
      return { ...state, mapping: { ...NO_MAPPING, table: event.table } };
    case 'place chosen': {
      const { placeKey, columns } = event;
      return state.mapping === undefined
        ? state
        : { ...state, mapping: { ...state.mapping, placeKey, columns, raw: undefined } };
    }
    case 'place read':
      return placeRead(state, event);
    case 'column chosen':
      return columnChosen(state, event.heading, event.theirs);
    case 'mapping ended':
      return { ...state, mapping: undefined };
    case 'profile chosen':
      return { ...state, profile: { ...state.profile, chosen: event.name } };
    case 'room chosen':
      return { ...state, room: event.name };
    case 'row chosen':
      return rowChosen(state, event.row);
    case 'own cove typed':
      return { ...state, profile: ownCoveTyped(state, event.typed) };
    case 'list counted':
      return { ...state, counted: event.counted };
    case 'functions searched':
      return { ...state, functions: { ...state.functions, search: event.search } };
    case 'separator found':
      return { ...state, functions: { ...state.functions, separator: event.separator } };
    case 'example put': {
      const { id, text, ok } = event;
      return announce(
        { ...state, functions: { ...state.functions, outcome: { id, text, ok } } },
        text,
      );
    }
    case 'compared': {
      const { compared } = event;
      const next = { ...state, compared, comparisonRefused: undefined, trouble: [] };
      return announce(next, sayCompared(compared));
    }
    case 'comparison refused': {
      const { name, faults } = event;
      const next = { ...state, compared: undefined, comparisonRefused: { name, faults } };
      return announce(next, faults.map(sayFault).join(' '));
    }
    case 'comparison put away':
      return { ...state, compared: undefined, comparisonRefused: undefined };
    case 'busy':
      return { ...state, busy: event.with };
    case 'trouble':
      return troubled(state, event.faults);
    case 'trouble put away':
      return { ...state, trouble: [] };
    case 'done':
      return announce({ ...state, notice: event.notice, trouble: [] }, event.notice);
    case 'bug found':
      return { ...state, bug: event.what, busy: undefined };
    case 'written':
      return announce(reducePlanning(state, event), sayWritten(event.sheets, event.file));
    case 'formulas kept':
      return { ...state, keepsFormulas: event.keeps };
    case 'print begun':
    case 'print chosen':
    case 'print laid':
    case 'print put away':
      return reducePrinting(state, event);
    case 'planning seconds typed':
    case 'planning begun':
    case 'planning moved':
    case 'planning stopping':
    case 'planning stopped':
    case 'planning dropped':
    case 'planning ended':
    case 'planning broken off':
    case 'plans recalled':
    case 'ticks read':
    case 'writing asked':
    case 'writing begun':
    case 'writing moved':
    case 'writing dropped':
      return reducePlanning(state, event);
  }
}

/** Nothing of the one before stays, and what is still on its way from it is dropped. */
function workbookOpened(state: PaneState, host: WorkbookHost): PaneState {
  const { chosen } = state.profile;
  const before = state.reading.found;
  return {
    ...state,
    isTabChosen: state.isTabChosen && (before === undefined || hasList(before)),
    workbook: { kind: 'open', host },
    reading: { ...INITIAL_STATE.reading, turn: state.reading.turn + 1 },
    mapping: undefined,
    // A cove of one's own is of no workbook: whoever is typing one goes on.
    profile: { ...state.profile, chosen: chosen === OWN_COVE ? chosen : undefined },
    room: undefined,
    counted: undefined,
    planning: {
      ...INITIAL_STATE.planning,
      turn: state.planning.turn + 1,
      brokenOff: state.planning.brokenOff,
    },
    writing: { kind: 'idle' },
    printing: undefined,
    compared: undefined,
    comparisonRefused: undefined,
    trouble: [],
  };
}

/** Only what has changed is said: a screen reader isn't to repeat itself at every keystroke. */
function jobRead(state: PaneState, { found }: PaneEvent & { type: 'job read' }): PaneState {
  const { turn, failed } = state.reading;
  const trouble = state.trouble === failed ? [] : state.trouble;
  const reading = { turn, busy: false, found, failed: undefined };
  const read = { ...state, trouble, reading, tab: tabAfter(state, found) };
  const sayAll = (one: PaneState): readonly string[] =>
    one.reading.found === undefined ? [] : [sayRead(one.reading.found), sayStale(one) ?? ''];
  const before = sayAll(state);
  const news = sayAll(read).filter((text, index) => text !== '' && text !== before[index]);
  return news.length === 0 ? read : announce(read, news.join(' '));
}

function ownCoveTyped({ profile, reading }: PaneState, typed: TypedCove): ProfileState {
  const shop = reading.found?.shop ?? usualShop();
  const isRead = answerTyped(typed, shop).profile !== undefined;
  // The one that it begins with was never typed.
  const before = profile.drawn ?? profile.typed ?? usualCove(shop);
  return { chosen: OWN_COVE, typed, drawn: isRead ? typed : before };
}

/** A cove to size stands first where there is no list yet; once one comes, the job does. */
function tabAfter({ tab, isTabChosen, reading }: PaneState, found: JobFound): Tab {
  if (!hasList(found)) return isTabChosen ? tab : 'profile';
  const isNew = reading.found === undefined ? !isTabChosen : !hasList(reading.found);
  return isNew && tab === 'profile' ? 'job' : tab;
}

/** What it failed of before is not said again, since some of it is tried again by itself. */
function readingFailed(state: PaneState, faults: readonly Fault[]): PaneState {
  const { reading } = state;
  const say = (all: readonly Fault[]): string => all.map(({ message }) => message).join(' ');
  const isSame = reading.failed !== undefined && say(reading.failed) === say(faults);
  if (isSame) return { ...state, reading: { ...reading, busy: false } };
  return troubled({ ...state, reading: { ...reading, busy: false, failed: faults } }, faults);
}

function troubled(state: PaneState, faults: readonly Fault[]): PaneState {
  const text = faults.map(({ message }) => message).join(' ');
  return announce({ ...state, trouble: faults, notice: undefined, busy: undefined }, text);
}

const NO_MAPPING = { placeKey: undefined, columns: {}, raw: undefined };

function placeRead(
  state: PaneState,
  { placeKey, raw, guess }: Extract<PaneEvent, { readonly type: 'place read' }>,
): PaneState {
  const { mapping } = state;
  if (mapping?.placeKey !== placeKey) return state;
  const columns = mapping.columns === guess?.first ? guess.better : mapping.columns;
  return { ...state, mapping: { ...mapping, columns, raw } };
}

/** One of their columns stands for one of ours only: it is taken from where it was chosen before. */
function columnChosen(state: PaneState, heading: string, theirs: string): PaneState {
  if (state.mapping === undefined) return state;
  const kept = Object.entries(state.mapping.columns).filter(
    ([ours, column]) => ours !== heading && column !== theirs,
  );
  const chosen = theirs === '' ? [] : [[heading, theirs] as const];
  const columns = Object.fromEntries([...kept, ...chosen]);
  return { ...state, mapping: { ...state.mapping, columns } };
}
