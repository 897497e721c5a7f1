/** Where a file truly lies: two names of one file are one place. */
import { lstat, readlink, realpath, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { systemCode } from './system-reason.ts';

/** A chain of more is a circle to Linux, which stops at 40. */
const MOST_LINKS = 40;

/** A file's own path, its folder's links and its own resolved; or the folder on the way that isn't there. */
export type Place = { readonly path: string } | { readonly missing: string };

/**
 * The place where a file is read or written under a name, whether it is there or not: a link that leads to
 * nothing yet leads to where its file would be. Throws what the system says against it (ELOOP, EACCES).
 */
export async function placeOf(name: string): Promise<Place> {
  let at = resolve(name);
  for (let links = 0; links <= MOST_LINKS; links++) {
    const folder = await orNone(realpath(dirname(at)));
    // As it was typed, where it was typed.
    if (folder === null) return { missing: links === 0 ? dirname(name) : dirname(at) };
    at = join(folder, basename(at));
    const isLink = (await orNone(lstat(at)))?.isSymbolicLink() ?? false;
    if (!isLink) return { path: at };
    at = resolve(folder, await readlink(at));
  }
  // A circle: the system says so in its own way.
  return { path: await realpath(at) };
}

/** What tells a file from every other. */
export interface FileIdentity {
  /** Of the file that is there: its disk and its number on it. */
  readonly file: string | null;
  /** Of its folder, and its name in it. */
  readonly folder: string;
  readonly name: string;
}

/** Null where its folder isn't there. Throws as `placeOf` does. */
export async function identifyFile(name: string): Promise<FileIdentity | null> {
  const place = await placeOf(name);
  if ('missing' in place) return null;
  return {
    file: await numberOf(place.path),
    folder: (await numberOf(dirname(place.path))) ?? '',
    name: basename(place.path),
  };
}

/**
 * Whether two names are of one file, a hard link's too; or differ in small and capital letters (or in how
 * accents are stored) alone, which disks of Windows and Mac take for one.
 */
export function compareFiles(one: FileIdentity, other: FileIdentity): 'same' | 'letters' | null {
  if (one.file !== null && one.file === other.file) return 'same';
  if (one.folder !== other.folder) return null;
  if (one.name === other.name) return 'same';
  return folded(one.name) === folded(other.name) ? 'letters' : null;
}

function folded(name: string): string {
  return name.normalize('NFC').toLowerCase();
}

async function numberOf(path: string): Promise<string | null> {
  const about = await orNone(stat(path, { bigint: true }));
  return about === null ? null : `${about.dev}:${about.ino}`;
}

/** Null for what isn't there. */
async function orNone<T>(asked: Promise<T>): Promise<T | null> {
  try {
    return await asked;
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return null;
    throw error;
  }
}
