/** Why the system would not read or write a file, in a few words. */
const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'permission denied',
  EPERM: 'permission denied, or it is open in another program',
  EBUSY: 'it is open in another program',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk is full',
  ENAMETOOLONG: 'the name is too long',
  ENOTDIR: 'a part of the path is a file',
  ELOOP: 'a link leads back to itself',
  EMFILE: 'too many files are open',
};

/** The system's own code of an error (ENOENT, say); undefined for a bug of ours. */
export function systemCode(error: unknown): string | undefined {
  const code = typeof error === 'object' && error !== null && 'code' in error ? error.code : null;
  return typeof code === 'string' && /^E[A-Z0-9]+$/.test(code) ? code : undefined;
}

/** The reason in words, or the system's own code; a bug of ours is thrown on. */
export function systemReason(error: unknown): string {
  const code = systemCode(error);
  if (code === undefined) throw error;
  return REASONS[code] ?? code;
}
