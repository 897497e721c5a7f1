/** What comes through a pipe in the place of a file: read once, and known by its bytes, since it has no name. */
import { syntax, sayArgument } from '../core/faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../core/faults/fault.ts';
import { fileKind } from '../hosts/tables/file-kind.ts';
import { largerThanRead, LARGEST_FILE_MB } from '../hosts/tables/limits.ts';

/** As an argument, and as faults call it. */
export const STANDARD_INPUT = '-';
export const STANDARD_INPUT_NAME = sayArgument('standardInput');
const BYTES_PER_MB = 1_000_000;

/** Stops at the most that is read of any file. Fault: file.too-large. */
export async function readStandardInput(): Promise<Outcome<Uint8Array>> {
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of process.stdin) {
    const bytes = Buffer.from(part as Uint8Array);
    parts.push(bytes);
    length += bytes.length;
    if (length > LARGEST_FILE_MB * BYTES_PER_MB) break;
  }
  const tooLarge = largerThanRead('standardInput', length);
  return tooLarge === null ? ok(Buffer.concat(parts)) : failed(tooLarge);
}

/** What it may be read as: CSV, a workbook of whatever kind, or neither. */
export function inputKind(bytes: Uint8Array): 'text' | 'workbook' | 'neither' {
  const kind = fileKind(bytes);
  if (kind === 'binary') return 'neither';
  return kind === 'text' || kind === 'utf-16' ? 'text' : 'workbook';
}

/** The standard input is read once. */
export function checkInputOnce(names: readonly string[], command: string): Outcome<void> {
  const count = names.filter((name) => name === STANDARD_INPUT).length;
  return count < 2
    ? ok(undefined)
    : failed(fault('call.input-twice', syntax(command), STANDARD_INPUT));
}
