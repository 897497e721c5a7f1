/** Saves files whole or not at all, and those that belong together all or none. */
import { chmod, chown, copyFile, link, open, rename, rm, stat } from 'node:fs/promises';
import { dirname } from 'node:path';

import { failed, fault, ok, type Fault, type Outcome } from '../../core/faults/fault.ts';
import { placeOf } from './file-place.ts';
import { newPart, sweepParts } from './part-files.ts';
import { systemCode, systemReason } from './system-reason.ts';

export interface FileToSave {
  /** Where to; its folder must be there. */
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** A file on its way: all of it stands in `part`, beside `target`. */
interface Staged {
  readonly path: string;
  /** Where links lead: a link stays a link, and what it leads to is written. */
  readonly target: string;
  readonly part: string;
  /** What was at the target, kept until all are there; null where nothing was. */
  readonly before: string | null;
}

/** As a file's owner left it. */
interface Found {
  readonly mode: number;
  readonly uid: number;
  readonly gid: number;
}

/** Saves one file; see saveFiles. */
export async function saveFile(
  path: string,
  bytes: Uint8Array,
  options: { readonly replace: boolean },
): Promise<Outcome<string>> {
  const saved = await saveFiles([{ path, bytes }], options);
  return saved.ok ? ok(path) : saved;
}

/**
 * Saves files that belong together. All are written beside their places first, and moved there when all are
 * on the disk: nobody ever finds half a file, and a failure puts back what was there. A file that is replaced
 * keeps its mode, and where the system lets it its owner; other names of it (hard links) keep what it held.
 *
 * @param replace Whether files that are there already may be replaced.
 * @returns The paths; or the faults, nothing written then: file.exists, file.is-folder, file.missing (a
 *   folder), file.not-written.
 */
export async function saveFiles(
  files: readonly FileToSave[],
  { replace }: { readonly replace: boolean },
): Promise<Outcome<readonly string[]>> {
  const staged: Staged[] = [];
  const faults: Fault[] = [];
  try {
    for (const file of files) {
      const one = await stage(file, replace);
      if (one.ok) staged.push(one.value);
      else faults.push(...one.faults);
    }
    if (faults.length === 0) faults.push(...(await moveAll(staged, replace)));
  } finally {
    for (const { part, before } of staged) {
      await remove(part);
      if (before !== null) await remove(before);
    }
  }
  if (faults.length > 0) return failed(...faults);
  for (const folder of new Set(staged.map(({ target }) => dirname(target)))) {
    await syncFolder(folder);
    await sweepParts(folder);
  }
  return ok(files.map(({ path }) => path));
}

/** Writes a file beside its place, and keeps what stands there. */
async function stage({ path, bytes }: FileToSave, replace: boolean): Promise<Outcome<Staged>> {
  const made: string[] = [];
  try {
    const place = await placeOf(path);
    if ('missing' in place) return failed(fault('file.missing', 'folder', place.missing));
    const target = place.path;
    const found = await lookAt(target);
    if (found === 'folder') {
      return failed(fault('file.is-folder', 'file', path, { details: { wanted: 'a file in it' } }));
    }
    if (found !== null && !replace) return failed(fault('file.exists', 'file', path));
    const part = newPart(dirname(target));
    made.push(part);
    await writeAll(part, bytes, found);
    if (found === null) return ok({ path, target, part, before: null });
    const before = newPart(dirname(target));
    made.push(before);
    await keepAside(target, before);
    return ok({ path, target, part, before });
  } catch (error) {
    for (const one of made) await remove(one);
    return failed(notWritten(path, error));
  }
}

/** Moves each to its place; where one can't be, those before it are taken back. */
async function moveAll(staged: readonly Staged[], replace: boolean): Promise<Fault[]> {
  const moved: Staged[] = [];
  for (const one of staged) {
    try {
      await (replace ? rename(one.part, one.target) : putNew(one.part, one.target));
      moved.push(one);
    } catch (error) {
      const faults: Fault[] = [];
      if (!replace && systemCode(error) === 'EEXIST') {
        faults.push(fault('file.exists', 'file', one.path));
      } else faults.push(notWritten(one.path, error));
      for (const other of moved) faults.push(...(await takeBack(other)));
      return faults;
    }
  }
  return [];
}

async function takeBack({ path, target, before }: Staged): Promise<Fault[]> {
  try {
    await (before === null ? rm(target) : rename(before, target));
    return [];
  } catch (error) {
    return [fault('file.not-put-back', 'file', path, { details: { why: systemReason(error) } })];
  }
}

function notWritten(path: string, error: unknown): Fault {
  return fault('file.not-written', 'file', path, { details: { why: systemReason(error) } });
}

/** A link is made only where no file is, even when another call made one a moment ago. */
async function putNew(beside: string, target: string): Promise<void> {
  try {
    await link(beside, target);
  } catch (error) {
    if (!hasNoLinks(error)) throw error;
    await rename(beside, target);
  }
}

async function keepAside(target: string, before: string): Promise<void> {
  try {
    await link(target, before);
  } catch (error) {
    if (!hasNoLinks(error)) throw error;
    await copyFile(target, before);
  }
}

/** Some disks know no links, and some systems let nobody link to another's file. */
function hasNoLinks(error: unknown): boolean {
  return ['EPERM', 'ENOTSUP', 'ENOSYS', 'EOPNOTSUPP', 'EMLINK'].includes(systemCode(error) ?? '');
}

async function lookAt(path: string): Promise<Found | 'folder' | null> {
  try {
    const about = await stat(path);
    return about.isDirectory() ? 'folder' : { mode: about.mode, uid: about.uid, gid: about.gid };
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return null;
    throw error;
  }
}

async function writeAll(path: string, bytes: Uint8Array, like: Found | null): Promise<void> {
  const mode = like === null ? undefined : like.mode & 0o777;
  // Nobody else may read it before it has the mode of the one that it replaces.
  const file = await open(path, 'wx', mode === undefined ? undefined : mode & 0o700);
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
  if (like === null || mode === undefined) return;
  await chown(path, like.uid, like.gid).catch(() => undefined);
  await chmod(path, mode);
}

async function remove(path: string): Promise<void> {
  await rm(path, { force: true }).catch(() => undefined);
}

/** So that the new name outlasts a power failure; some systems open no folder. */
async function syncFolder(path: string): Promise<void> {
  try {
    const folder = await open(path, 'r');
    await folder.sync().finally(() => folder.close());
  } catch (error) {
    systemReason(error);
  }
}
