/** What the page is made of: elements with their text, and those that stand in it from the start. */

/** @throws RangeError where the page hasn't got it: a bug of ours. */
export function byId(id: string): HTMLElement {
  const element = document.getElementById(id);
  if (element === null) throw new RangeError(`The page has no #${id}.`);
  return element;
}

/** Text stays text: nothing in it is read as HTML. */
export function make<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  properties: Partial<HTMLElementTagNameMap[Tag]> = {},
  ...content: readonly (Node | string)[]
): HTMLElementTagNameMap[Tag] {
  const element = Object.assign(document.createElement(tag), properties);
  element.append(...content);
  return element;
}

/** One sentence as a paragraph, several as a list. */
export function sayAll(sentences: readonly string[]): HTMLElement {
  const [only] = sentences;
  if (only !== undefined && sentences.length === 1) return make('p', {}, only);
  return make('ul', {}, ...sentences.map((sentence) => make('li', {}, sentence)));
}

export interface ChoiceButton<Name extends string> {
  readonly name: Name;
  readonly label: string;
  /** The one that is meant when nothing else is. */
  readonly first?: true;
}

export function choiceButtons<Name extends string>(
  choices: readonly ChoiceButton<Name>[],
  onChoose: (name: Name) => void,
): HTMLElement {
  const buttons = choices.map(({ name, label, first }) => {
    const button = make('button', { type: 'button' }, label);
    if (first === true) button.className = 'first-choice';
    button.addEventListener('click', () => onChoose(name));
    return button;
  });
  return make('div', { className: 'choices' }, ...buttons);
}
