/** Puts the answer beside the form, as it is typed. */
import { answerCove, FIELDS, type Field } from './answer-cove.ts';

const place = document.getElementById('answer');

function valueOf(field: Field): string {
  const input = document.getElementById(field);
  return input instanceof HTMLInputElement ? input.value : '';
}

function list(sentences: readonly string[], heading: string): HTMLElement[] {
  if (sentences.length === 0) return [];
  const title = document.createElement('h2');
  title.textContent = heading;
  const items = document.createElement('ul');
  for (const sentence of sentences) {
    items.append(Object.assign(document.createElement('li'), { textContent: sentence }));
  }
  return [title, items];
}

function show(): void {
  const typed = Object.fromEntries(FIELDS.map((field) => [field, valueOf(field)]));
  const answer = answerCove(typed as Record<Field, string>);
  const numbers = document.createElement('dl');
  for (const [label, value] of answer.numbers) {
    numbers.append(
      Object.assign(document.createElement('dt'), { textContent: label }),
      Object.assign(document.createElement('dd'), { textContent: value }),
    );
  }
  place?.replaceChildren(
    ...(answer.numbers.length > 0 ? [numbers] : []),
    ...list(answer.faults, 'Cannot be made as it stands'),
    ...list(answer.cautions, 'Cautions'),
  );
}

document.getElementById('cove')?.addEventListener('input', show);
show();
