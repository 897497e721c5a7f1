/** Whether files may be written where they are asked for: known before anything is planned. */
import { stat } from 'node:fs/promises';
import { dirname, extname } from 'node:path';
import { sayArgument, type Argument } from '../core/faults/argument.ts';
import { fault, type Fault } from '../core/faults/fault.ts';
import {
  compareFiles,
  identifyFile,
  placeOf,
  type FileIdentity,
} from '../hosts/file/file-place.ts';
import { systemCode, systemReason } from '../hosts/file/system-reason.ts';

export interface Target {
  /** What the argument or option is called. */
  readonly argument: Argument;
  readonly path: string;
  /** Of the file: .xlsx, say. */
  readonly ending: string;
}

export interface TargetRules {
  readonly force: boolean;
  /** What is read: none of it is ever written over, not even with --force. */
  readonly inputs?: readonly string[];
}

/**
 * Faults: file.ending, file.is-folder, file.exists, file.is-input, file.missing (the folder),
 * file.not-written (a place that can't be looked at), file.same and file.same-letters (two names of one
 * file: links, hard links, small and capital letters). Saving looks again (saveFiles).
 */
export async function checkTargets(
  targets: readonly Target[],
  { force, inputs = [] }: TargetRules,
): Promise<Fault[]> {
  const faults: Fault[] = [];
  const known: { readonly name: string | null; readonly identity: FileIdentity }[] = [];
  for (const input of inputs) {
    const read = await identityOf(input);
    if (read !== null) known.push({ name: null, identity: read });
  }
  for (const target of targets) {
    const own = await checkTarget(target, force);
    const identity = await identityOf(target.path);
    const twin = identity === null ? [] : compareWith(target, identity, known);
    faults.push(...(twin.length > 0 ? twin : own));
    if (identity !== null) known.push({ name: sayArgument(target.argument), identity });
  }
  return faults;
}

/** @param known The inputs, which have no name, and the targets before. */
function compareWith(
  { argument, path }: Target,
  identity: FileIdentity,
  known: readonly { readonly name: string | null; readonly identity: FileIdentity }[],
): Fault[] {
  for (const { name, identity: other } of known) {
    const how = compareFiles(identity, other);
    if (how === null) continue;
    if (how === 'letters') {
      const details = { other: name === null ? 'the input' : `that of ${name}` };
      return [fault('file.same-letters', argument, path, { details })];
    }
    if (name === null) return [fault('file.is-input', argument, path)];
    return [fault('file.same', argument, path, { details: { other: name } })];
  }
  return [];
}

async function checkTarget({ argument, path, ending }: Target, force: boolean): Promise<Fault[]> {
  if (extname(path).toLowerCase() !== ending) {
    return [fault('file.ending', argument, path, { limit: ending })];
  }
  try {
    const place = await placeOf(path);
    if ('missing' in place) return [fault('file.missing', 'folder', place.missing)];
    const there = await kindAt(place.path);
    if (there === 'folder') {
      return [fault('file.is-folder', 'file', path, { details: { wanted: 'a file in it' } })];
    }
    if (there === 'file') return force ? [] : [fault('file.exists', 'file', path)];
    const folder = dirname(place.path);
    return (await kindAt(folder)) === 'folder' ? [] : [fault('file.missing', 'folder', folder)];
  } catch (error) {
    return [fault('file.not-written', 'file', path, { details: { why: systemReason(error) } })];
  }
}

/** Null for what can't be looked at, which is said elsewhere. */
async function identityOf(path: string): Promise<FileIdentity | null> {
  try {
    return await identifyFile(path);
  } catch (error) {
    systemReason(error);
    return null;
  }
}

async function kindAt(path: string): Promise<'file' | 'folder' | null> {
  try {
    return (await stat(path)).isDirectory() ? 'folder' : 'file';
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return null;
    throw error;
  }
}
