/** Another beginning: the demo or a blank workbook in the place of what is there. */
import type { Desk } from './desk.ts';
import { ask } from '../shell/ask.ts';
import { blankWorkbook, demoWorkbook } from './make-workbook.ts';
import { mayReplace, put } from './open-file.ts';

type Beginning = 'demo' | 'blank' | 'metric';

/** Asks only where something would be lost. */
export async function showDemo(desk: Desk, save: () => Promise<void>): Promise<void> {
  if (await mayReplace(desk, 'See the demo?', 'See the demo', save)) {
    put(desk, await demoWorkbook());
  }
}

/** Says what goes, and asks in any case. */
export async function startOver(desk: Desk, save: () => Promise<void>): Promise<void> {
  const lost = desk.touched()
    ? 'It was changed since it was last downloaded.'
    : 'It was not changed since it was opened, made or downloaded.';
  const answer = await ask({
    title: 'Begin a new workbook?',
    says: [
      `“${desk.name()}” and all its sheets, those written here among them, then go from this browser: nothing else keeps them. ${lost} Files on your disk stay.`,
    ],
    choices: [
      { name: 'save', label: 'Download it first', first: true },
      { name: 'blank', label: 'Start with a blank workbook' },
      { name: 'metric', label: 'Start with a blank one in mm' },
      { name: 'demo', label: 'Start with the demo' },
      { name: 'cancel', label: 'Cancel' },
    ],
  });
  if (answer === 'save') {
    await save();
    await startOver(desk, save);
  } else if (answer === 'blank' || answer === 'metric' || answer === 'demo') {
    put(desk, await make(answer));
  }
}

async function make(kind: Beginning): ReturnType<typeof demoWorkbook> {
  return kind === 'demo' ? demoWorkbook() : blankWorkbook(kind === 'metric' ? 'mm' : 'in');
}
