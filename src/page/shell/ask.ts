/** A question that must be answered first: the browser's own dialog keeps the focus and gives it back. */
import { choiceButtons, make, type ChoiceButton } from './element.ts';

export interface Question<Name extends string> {
  readonly title: string;
  /** A paragraph each. */
  readonly says: readonly (string | HTMLElement)[];
  readonly choices: readonly ChoiceButton<Name>[];
}

/** @returns The name of the choice; undefined for Escape. */
export function ask<Name extends string>(question: Question<Name>): Promise<Name | undefined> {
  const { title, says, choices } = question;
  const before = document.activeElement;
  const heading = make('h2', { id: 'asked' }, title);
  const paragraphs = says.map((one) => (typeof one === 'string' ? make('p', {}, one) : one));
  return new Promise((resolve) => {
    const finish = (answer: Name | undefined): void => {
      dialog.close();
      dialog.remove();
      if (before instanceof HTMLElement && before.isConnected) before.focus();
      resolve(answer);
    };
    const buttons = choiceButtons(choices, finish);
    const dialog = make('dialog', { className: 'ask' }, heading, ...paragraphs, buttons);
    dialog.setAttribute('aria-labelledby', heading.id);
    dialog.addEventListener('cancel', (event) => {
      event.preventDefault();
      finish(undefined);
    });
    // What is typed into a question is not for the sheet behind it.
    for (const type of ['keydown', 'keyup', 'paste', 'copy', 'cut'] as const) {
      dialog.addEventListener(type, (event) => event.stopPropagation());
    }
    document.body.append(dialog);
    dialog.showModal();
  });
}
