/** Help as text of a fixed width: paragraphs, and two columns side by side. */

export const WIDTH = 88;

/** Two columns, the second wrapped under itself. */
export function columns(rows: readonly (readonly [string, string])[]): string {
  const first = Math.max(...rows.map(([name]) => name.length));
  return rows
    .map(([name, says]) => {
      const [top = '', ...more] = wrap(says, WIDTH - first - 4).split('\n');
      const indent = ' '.repeat(first + 4);
      return [`  ${name.padEnd(first)}  ${top}`, ...more.map((line) => indent + line)].join('\n');
    })
    .join('\n');
}

export function wrap(text: string, width = WIDTH): string {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < width) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else {
      lines.push(word);
    }
  }
  return lines.join('\n');
}

export function join(paragraphs: readonly string[]): string {
  return `${paragraphs.join('\n\n')}\n`;
}
