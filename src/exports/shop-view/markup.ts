/** Markup of the shop view, in which whatever a person typed stays text. */

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** A text as it stands between tags, or in an attribute in double quotes. */
export function escapeHtml(text: string): string {
  return text
    .replace(/\p{Surrogate}/gu, '\uFFFD')
    .replace(/[&<>"]/gu, (sign) => ENTITIES[sign] ?? sign);
}

export function paragraph(text: string, look = ''): string {
  return `<p${look === '' ? '' : ` class="${look}"`}>${escapeHtml(text)}</p>`;
}

/** As many signs as stand on two lines of a phone in the largest figures. */
const LONG = 24;

/** A name, and in large figures what it comes to; below it, of what. */
export function figure(label: string, value: string, note = ''): string {
  const below = note === '' ? '' : `<dd class="note">${escapeHtml(note)}</dd>`;
  const look = value.length > LONG ? 'big long' : 'big';
  return `<div><dt>${escapeHtml(label)}</dt><dd class="${look}">${escapeHtml(value)}</dd>${below}</div>`;
}

/** Something to tap off, of which the name is its own through the whole file. */
export interface Tick {
  readonly name: string;
  /** What is done, in large figures. */
  readonly value: string;
  readonly notes: readonly string[];
  /** Done before the file was made: it stays. */
  readonly isDone: boolean;
  /** One of two that shut each other out: the list's others come off. */
  readonly isOneOf?: boolean;
}

/** A box with all of its words to press on. */
export function tickBox({ name, value, notes, isDone, isOneOf = false }: Tick): string {
  const words = notes
    .filter((note) => note !== '')
    .map((note) => `<span class="note">${escapeHtml(note)}</span>`);
  const state = `${isDone ? ' checked disabled' : ''}${isOneOf ? ' data-one-of' : ''}`;
  return (
    `<li><label class="tick"><input type="checkbox" data-tick="${escapeHtml(name)}"${state}>` +
    `<span class="words"><span class="big">${escapeHtml(value)}</span>${words.join('')}</span></label></li>`
  );
}
