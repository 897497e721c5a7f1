/**
 * The service worker: keeps the files of the page, or those of saw.html alone where it is asked for with
 * `?saw`, and answers for them where there is no network. The build puts the lists of files before it;
 * whatever is in none of them goes to the network as ever.
 */
import { cleanupOutdatedCaches, precacheAndRoute } from 'workbox-precaching';
import { SAW_PART, TAKE_OVER } from './words.ts';

interface OfflineFile {
  readonly url: string;
  /** Null where the name changes with the content. */
  readonly revision: string | null;
}

/** As much of a service worker's own world as is called here. */
declare const self: {
  readonly location: Location;
  readonly OFFLINE_FILES: Readonly<Record<'page' | 'saw', readonly OfflineFile[]>>;
  addEventListener(kind: 'message', hear: (event: MessageEvent<unknown>) => void): void;
  skipWaiting(): Promise<void>;
};

const part = self.location.search === `?${SAW_PART}` ? 'saw' : 'page';
// What is kept under a name is what was built: no sign after it makes it another file.
precacheAndRoute([...self.OFFLINE_FILES[part]], { cleanURLs: false });
cleanupOutdatedCaches();

// A new version waits until the page asks for it.
self.addEventListener('message', ({ data }) => {
  if (data === TAKE_OVER) void self.skipWaiting();
});
