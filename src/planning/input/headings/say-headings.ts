/** The columns of the input tables in words: for the How to sheet, README and the command line's help. */
import type { Heading, Holds } from './heading.ts';
import { TABLE_HEADINGS } from './table-headings.ts';

const HELD: Readonly<Record<Holds, string>> = {
  name: 'Text',
  length: 'Length',
  degrees: 'Degrees',
  slope: 'Degrees, or rise in 12',
  count: 'Whole number',
  number: 'Number',
  money: 'Money',
  percent: 'Percent',
  word: 'Word',
  'yes or no': 'Yes or no',
  day: 'Date',
  hours: 'Hours',
  note: 'Text',
};

/** `Length, needed. Of one stick or board. Also read: len, lengths.` */
export function sayHeading({ holds, allowed, required, meaning, also = [] }: Heading): string {
  const held = allowed === undefined ? HELD[holds] : `One of ${allowed.join(', ')}`;
  const others = also.length === 0 ? '' : ` Also read: ${also.join(', ')}.`;
  return `${held}${required === true ? ', needed' : ''}. ${meaning}${others}`;
}

/** For README: a list a table, every item in lines of at most `width`. */
export function describeHeadings(width: number): string {
  return Object.entries(TABLE_HEADINGS)
    .map(([name, headings]) => {
      const items = headings.map((one) =>
        wrapItem(`**${one.heading}**: ${sayHeading(one)}`, width),
      );
      return `#### ${name}\n\n${items.join('\n')}`;
    })
    .join('\n\n');
}

function wrapItem(text: string, width: number): string {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last === undefined) lines.push(`- ${word}`);
    else if (last.length + 1 + word.length > width) lines.push(`  ${word}`);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines.join('\n');
}
