/** What stands above the sheet until it is dealt with. */
import { byId, choiceButtons, make, sayAll, type ChoiceButton } from './element.ts';

export interface Notice<Name extends string> {
  readonly kind: 'problem' | 'caution';
  readonly title?: string;
  readonly says: readonly string[];
  readonly choices?: readonly ChoiceButton<Name>[];
  readonly onChoose?: (name: Name) => void;
  /** Stays until whoever put it there takes it away. */
  readonly stays?: true;
}

const shown = new Map<string, { readonly element: HTMLElement; readonly text: string }>();

/**
 * Shows a notice; one of the same id goes. A screen reader hears it at once.
 *
 * @param id What it is about.
 */
export function showNotice<Name extends string>(id: string, notice: Notice<Name>): void {
  const { kind, title, says, choices = [], onChoose, stays } = notice;
  const text = JSON.stringify([kind, title, says]);
  // What stands there already is not said again.
  if (shown.get(id)?.text === text) return;
  dropNotice(id);
  const words = make(
    'div',
    {},
    ...(title === undefined ? [] : [make('p', {}, title)]),
    sayAll(says),
  );
  words.setAttribute('role', 'alert');
  const putAway = { name: '', label: 'Put away' };
  const buttons = choiceButtons<string>([...choices, ...(stays ? [] : [putAway])], (name) => {
    if (name === '') dropNotice(id);
    else onChoose?.(name as Name);
  });
  const element = make('div', { className: `notice ${kind}` }, words, buttons);
  shown.set(id, { element, text });
  byId('notices').append(element);
}

export function dropNotice(id: string): void {
  shown.get(id)?.element.remove();
  shown.delete(id);
}
