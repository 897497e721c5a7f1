/** Has the browser keep the page's files, so that it opens without a network; where it won't, all is as before. */
import { SAW_PART, TAKE_OVER } from './words.ts';

const WORKER = 'offline.js';

export interface NewVersion {
  /** A newer version waits: `load` has it take over and loads the page again. */
  readonly onWaiting: (load: () => void) => void;
  /** Another tab has had a newer version take over. */
  readonly onReplaced: () => void;
}

/** Never rejects: a browser without such workers, or one that refuses them, keeps nothing. */
export async function keepOffline(part: 'page' | 'saw', tell?: NewVersion): Promise<void> {
  try {
    // Absent where the page came over plain http from elsewhere.
    if (!('serviceWorker' in navigator)) return;
    const workers = navigator.serviceWorker;
    const kept =
      part === 'saw'
        ? await workers.register(`${WORKER}?${SAW_PART}`, { scope: 'saw.html' })
        : await workers.register(WORKER);
    if (tell !== undefined) watch(workers, kept, tell);
  } catch {
    return;
  }
}

function watch(
  workers: ServiceWorkerContainer,
  kept: ServiceWorkerRegistration,
  { onWaiting, onReplaced }: NewVersion,
): void {
  // The first version of all has nobody to wait for.
  let hasVersion = workers.controller !== null;
  let isAsked = false;
  const say = (): void => {
    const { waiting } = kept;
    if (waiting === null || !hasVersion) return;
    onWaiting(() => {
      isAsked = true;
      waiting.postMessage(TAKE_OVER);
    });
  };
  workers.addEventListener('controllerchange', () => {
    if (isAsked) window.location.reload();
    else if (hasVersion) onReplaced();
    hasVersion = true;
  });
  say();
  kept.addEventListener('updatefound', () => {
    const { installing } = kept;
    installing?.addEventListener('statechange', () => {
      if (installing.state === 'installed') say();
    });
  });
}
