/**
 * The one place where the program writes to its output, its error output and a terminal's line. What is
 * written there may come from anybody's file: nothing in it steers a terminal or turns the order of letters.
 */
import { fault, sayFault } from '../core/faults/fault.ts';
import { systemCode, systemReason } from '../hosts/file/system-reason.ts';

/** Line ends and signs that steer a terminal (ECMA-48: C0, DEL, C1, and so ESC), as Unicode has them. */
const STEERING = /[\p{Cc}\p{Zl}\p{Zp}]+/gu;
/** Marks without a width, among them those that turn the order of letters (Unicode, UAX #9), and halves of pairs. */
const UNSEEN = /[\p{Cf}\p{Surrogate}]/gu;
/** Stands for a mark that nobody would see. */
const REPLACEMENT = '\uFFFD';
/** Back to the line's start, and wiping what stands behind it. */
const [START, WIPE] = ['\r', '\u001b[K'];
/** The output can't be written, as against a reader that stopped early. */
const UNWRITTEN_EXIT = 2;

/** Text from anywhere as one plain line: a space for what steers, a mark for what is unseen. */
export function onOneLine(text: string): string {
  return text.replace(STEERING, ' ').replace(UNSEEN, REPLACEMENT);
}

/** The same of each line of a text whose line ends are our own. */
export function onPlainLines(text: string): string {
  return text.split('\n').map(onOneLine).join('\n');
}

/** JSON that says the same in plain letters: what `onOneLine` takes out of a text is escaped. */
export function plainJson(value: unknown): string {
  const lines = JSON.stringify(value, null, 2).split('\n');
  return lines.map((line) => line.replace(STEERING, escaped).replace(UNSEEN, escaped)).join('\n');
}

function escaped(marks: string): string {
  const units = Array.from({ length: marks.length }, (_, at) => marks.charCodeAt(at));
  return units.map((unit) => `\\u${unit.toString(16).padStart(4, '0')}`).join('');
}

export function writeOutput(text: string): void {
  process.stdout.write(onPlainLines(text));
}

export function writeErrors(text: string): void {
  process.stderr.write(onPlainLines(text));
}

/**
 * From here on a reader who stops early (a pager, say) is no fault, and an output that can't be written,
 * on a full disk, say, is one line and an exit code. Where the error output itself fails nothing can be said.
 */
export function hearWriteFailures(): void {
  process.stdout.on('error', (error) => {
    if (systemCode(error) === 'EPIPE') return;
    const details = { why: systemReason(error) };
    writeErrors(`${sayFault(fault('output.not-written', 'output', null, { details }))}\n`);
    process.exitCode = UNWRITTEN_EXIT;
  });
  process.stderr.on('error', () => undefined);
}

/** What is needed of an output to write one line of it over and over. */
export interface Terminal {
  readonly isTTY?: boolean;
  readonly columns?: number;
  readonly write: (text: string) => unknown;
}

export function errorTerminal(): Terminal {
  return process.stderr;
}

/** Writes a line over the one before. @param room characters that it may have */
export function overwriteLine(terminal: Terminal, text: string, room: number): void {
  terminal.write(`${START}${onOneLine(text).slice(0, room)}${WIPE}`);
}

export function wipeLine(terminal: Terminal): void {
  terminal.write(`${START}${WIPE}`);
}
