/** Of several tabs with this page only one keeps its work. */

const LOCK = 'coveledger work';

/**
 * @param onFree Called when the tab that had it is closed, and this one has it.
 * @returns Whether this tab has it now, or another. A browser without such locks can't tell: there
 *   the turns of the kept record do.
 */
export async function takeTurn(onFree: () => void): Promise<'here' | 'elsewhere' | 'unknown'> {
  const locks = (navigator as Partial<Navigator>).locks;
  if (locks === undefined) return 'unknown';
  const isTaken = await take(locks, { ifAvailable: true });
  if (isTaken === undefined) return 'unknown';
  if (isTaken) return 'here';
  void take(locks, {}).then(onFree);
  return 'elsewhere';
}

/** Has it, once it does, as long as the page stands; undefined where the browser gives none. */
function take(locks: LockManager, options: LockOptions): Promise<boolean | undefined> {
  return new Promise((resolve) => {
    const hold = (lock: Lock | null): Promise<void> | undefined => {
      resolve(lock !== null);
      return lock === null ? undefined : new Promise(() => undefined);
    };
    locks.request(LOCK, options, hold).catch(() => resolve(undefined));
  });
}
