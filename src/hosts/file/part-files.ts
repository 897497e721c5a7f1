/** Files that stand beside another for a moment, while it is written or replaced. */
import { randomUUID } from 'node:crypto';
import { lstat, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';

/** No other program names its files so. */
const PART = /^\.[\da-f]{8}-[\da-f]{4}-4[\da-f]{3}-[89ab][\da-f]{3}-[\da-f]{12}\.part$/u;
/** Nobody writes that long. */
const LEFT_OVER_MS = 24 * 60 * 60 * 1000;

export function newPart(folder: string): string {
  return join(folder, `.${randomUUID()}.part`);
}

/** Takes away what a program that was killed left in a folder a day ago or longer. What can't be, stays. */
export async function sweepParts(folder: string): Promise<void> {
  const names = await readdir(folder).catch(() => []);
  for (const name of names.filter((one) => PART.test(one))) {
    const path = join(folder, name);
    try {
      const { mtimeMs, ctimeMs, isFile } = await age(path);
      if (isFile && Date.now() - Math.max(mtimeMs, ctimeMs) > LEFT_OVER_MS) await rm(path);
    } catch {
      // Another call took it away, or it is somebody else's.
    }
  }
}

/** The later of both times counts: one that was put aside keeps the time of its last change. */
async function age(path: string) {
  const about = await lstat(path);
  return { mtimeMs: about.mtimeMs, ctimeMs: about.ctimeMs, isFile: about.isFile() };
}
