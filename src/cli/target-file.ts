/** Whether a file may be written where it is asked for: known before anything is planned. */
import { realpath, stat } from 'node:fs/promises';
import { dirname, extname } from 'node:path';
import { fault, type Fault } from '../core/faults/fault.ts';
import { systemCode, systemReason } from '../hosts/file/system-reason.ts';

export interface TargetRules {
  /** What the argument or option is called. */
  readonly argument: string;
  readonly force: boolean;
  /** Of the file; .xlsx where absent. */
  readonly ending?: string;
  /** What is read: it is never written over, not even with --force. */
  readonly input?: string;
}

/**
 * Faults: file.ending, file.is-folder, file.exists, file.is-input, file.missing (the folder),
 * file.not-written (a place that can't be looked at). Saving looks again (saveFile).
 */
export async function checkTarget(path: string, rules: TargetRules): Promise<Fault[]> {
  const { ending = '.xlsx' } = rules;
  if (extname(path).toLowerCase() !== ending) {
    return [fault('file.ending', rules.argument, path, { limit: ending })];
  }
  try {
    const there = await kindAt(path);
    if (there === 'folder') {
      return [fault('file.is-folder', 'file', path, { details: { wanted: 'a file in it' } })];
    }
    if (there === 'file') return await checkReplacing(path, rules);
    if ((await kindAt(dirname(path))) === 'folder') return [];
    return [fault('file.missing', 'folder', dirname(path))];
  } catch (error) {
    return [fault('file.not-written', 'file', path, { details: { why: systemReason(error) } })];
  }
}

async function checkReplacing(path: string, rules: TargetRules): Promise<Fault[]> {
  const { argument, force, input } = rules;
  if (input !== undefined && (await kindAt(input)) !== null) {
    if ((await realpath(input)) === (await realpath(path))) {
      return [fault('file.is-input', argument, path)];
    }
  }
  return force ? [] : [fault('file.exists', 'file', path)];
}

async function kindAt(path: string): Promise<'file' | 'folder' | null> {
  try {
    return (await stat(path)).isDirectory() ? 'folder' : 'file';
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return null;
    throw error;
  }
}
