/** What printing makes of the state. */
import type { PaneEvent } from './pane-event.ts';
import type { PaneState } from './pane-state.ts';

type PrintEvent = Extract<PaneEvent, { readonly type: `print ${string}` }>;

/** Pages of what is no longer chosen come too late. */
export function reducePrinting(state: PaneState, event: PrintEvent): PaneState {
  const { printing } = state;
  switch (event.type) {
    case 'print begun': {
      const { choices, reading } = event;
      return { ...state, printing: { choices, reading, chosen: '', pages: undefined } };
    }
    case 'print chosen':
      return printing === undefined
        ? state
        : { ...state, printing: { ...printing, chosen: event.key, pages: undefined } };
    case 'print laid':
      return printing?.chosen === event.key
        ? { ...state, printing: { ...printing, pages: event.pages } }
        : state;
    case 'print put away':
      return { ...state, printing: undefined };
  }
}
