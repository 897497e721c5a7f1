/** A file that the person chooses, or drops anywhere on the page. */
import { byId, make } from './element.ts';

const ENDINGS = '.xlsx,.xlsm,.csv,.tsv,.txt';

/** Opens the browser's own choice of a file. */
export function chooseFile(onFile: (file: File) => void): void {
  const input = make('input', { type: 'file', accept: ENDINGS });
  input.addEventListener('change', () => {
    const [file] = input.files ?? [];
    if (file !== undefined) onFile(file);
  });
  input.click();
}

/** The grid gets to see nothing of it: it would take a picture's file for a picture. */
export function takeDroppedFiles(onFile: (file: File) => void): void {
  const isFile = ({ dataTransfer }: DragEvent): boolean =>
    dataTransfer?.types.includes('Files') === true;
  const mark = (on: boolean): void => {
    byId('work').classList.toggle('dropping', on);
  };
  const handle = (event: DragEvent): void => {
    if (!isFile(event)) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    // Without a place to go to, the pointer has left the window.
    mark(event.type === 'dragover');
    const [file] = event.type === 'drop' ? (event.dataTransfer?.files ?? []) : [];
    if (file !== undefined) onFile(file);
  };
  for (const type of ['dragover', 'drop'] as const) window.addEventListener(type, handle, true);
  window.addEventListener(
    'dragleave',
    (event) => {
      if (isFile(event) && event.relatedTarget === null) mark(false);
    },
    true,
  );
}
