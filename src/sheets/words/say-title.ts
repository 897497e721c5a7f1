/** What names the job, as pages and files say it. */
import type { TitleBlock } from '../../planning/title-block.ts';

/** Beside it a header has its codes: 255 characters is the most that a workbook holds. */
const MOST_OF_HEADER = 200;

/** `Reading room trim, 26-014, revision B, for the Town Library`; empty where Job says none of it. */
export function sayTitle({ job, number, revision, client }: TitleBlock): string {
  const parts = [
    job,
    number,
    revision === '' ? '' : `revision ${revision}`,
    client === '' ? '' : `for ${client}`,
  ];
  return parts
    .map(oneLine)
    .filter((part) => part !== '')
    .join(', ');
}

/** The same in one line over every page, cut short where it is longer than a header may be. */
export function headerOf(title: TitleBlock): string {
  const signs = Array.from(sayTitle(title));
  return signs.length <= MOST_OF_HEADER
    ? signs.join('')
    : `${signs
        .slice(0, MOST_OF_HEADER - 1)
        .join('')
        .trimEnd()}…`;
}

/** What a file tells of the job, under names of their own: none for what Job doesn't say. */
export function titleProperties({
  job,
  number,
  revision,
}: TitleBlock): Readonly<Record<string, string>> {
  const all = { Job: job, 'Job number': number, Revision: revision };
  return Object.fromEntries(
    Object.entries(all)
      .map(([name, text]) => [name, oneLine(text)] as const)
      .filter(([, text]) => text !== ''),
  );
}

/** What a file is called where programs list files: `Production workbook, Reading room trim`. */
export function fileTitle(what: string, { job }: TitleBlock): string {
  const name = oneLine(job);
  return name === '' ? what : `${what}, ${name}`;
}

function oneLine(text: string): string {
  return text.replace(/\s+/gu, ' ').trim();
}
