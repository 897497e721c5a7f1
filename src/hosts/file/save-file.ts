/** Saves a file whole or not at all. */
import { randomUUID } from 'node:crypto';
import { link, open, realpath, rename, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';

import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import { systemCode, systemReason } from './system-reason.ts';

/**
 * Saves bytes at a path. They are written beside it first and moved there when they are all on the
 * disk, so that nobody ever finds half a file and a failure leaves what was there.
 *
 * @param path Where to; its folder must be there.
 * @param replace Whether a file that is there already may be replaced.
 * @returns The path; or one fault: file.exists, file.is-folder, file.missing (its folder),
 *   file.not-written.
 */
export async function saveFile(
  path: string,
  bytes: Uint8Array,
  { replace }: { readonly replace: boolean },
): Promise<Outcome<string>> {
  let beside: string | null = null;
  try {
    const there = await kindAt(path);
    if (there === 'folder') {
      return failed(fault('file.is-folder', 'file', path, { details: { wanted: 'a file in it' } }));
    }
    if (there === 'file' && !replace) return failed(fault('file.exists', 'file', path));
    if ((await kindAt(dirname(path))) === null) {
      return failed(fault('file.missing', 'folder', dirname(path)));
    }
    // A link stays a link: what it leads to is replaced.
    const target = there === 'file' ? await realpath(path) : path;
    beside = join(dirname(target), `.${randomUUID()}.part`);
    await writeAll(beside, bytes);
    await (replace ? rename(beside, target) : putNew(beside, target));
    return ok(path);
  } catch (error) {
    if (beside !== null) await rm(beside, { force: true }).catch(() => undefined);
    if (!replace && systemCode(error) === 'EEXIST') {
      return failed(fault('file.exists', 'file', path));
    }
    const why = systemReason(error);
    return failed(fault('file.not-written', 'file', path, { details: { why } }));
  }
}

/** A link is made only where no file is, even when another call made one a moment ago. */
async function putNew(beside: string, target: string): Promise<void> {
  try {
    await link(beside, target);
  } catch (error) {
    // Some disks know no links.
    if (!['EPERM', 'ENOTSUP', 'ENOSYS', 'EOPNOTSUPP'].includes(systemCode(error) ?? ''))
      throw error;
    await rename(beside, target);
    return;
  }
  await rm(beside, { force: true });
}

async function kindAt(path: string): Promise<'file' | 'folder' | null> {
  try {
    return (await stat(path)).isDirectory() ? 'folder' : 'file';
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return null;
    throw error;
  }
}

async function writeAll(path: string, bytes: Uint8Array): Promise<void> {
  const file = await open(path, 'wx');
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}
