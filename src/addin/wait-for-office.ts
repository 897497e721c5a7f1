/** Waits for Microsoft's library, which the page asks for beside this script, but not for long. */

/** Where it is blocked, hangs, or stands in a page outside of Office, the pane goes on without it. */
export const OFFICE_WAIT_MS = 3000;

/** Which program the page runs in, as the library tells it. */
export type Surroundings =
  | { readonly kind: 'excel' }
  | { readonly kind: 'other program' }
  | { readonly kind: 'no library' }
  | { readonly kind: 'plain page' };

/** Calls back as soon as the library's script has run, which is before Office is ready. */
export function whenLibraryRuns(script: HTMLElement | null, then: () => void): void {
  if (typeof Office !== 'undefined') then();
  else script?.addEventListener('load', then, { once: true });
}

/** Never rejects. `script` is the library's script element. */
export async function waitForOffice(script: HTMLElement | null): Promise<Surroundings> {
  const late = new Promise<Surroundings>((resolve) => {
    setTimeout(() => resolve({ kind: 'no library' }), OFFICE_WAIT_MS);
    script?.addEventListener('error', () => resolve({ kind: 'no library' }), { once: true });
  });
  const told = new Promise<Surroundings>((resolve) => {
    whenLibraryRuns(script, () => {
      Office.onReady().then(
        ({ host }) => {
          if (host === Office.HostType.Excel) resolve({ kind: 'excel' });
          // The types leave it out, but in a plain page the host is null.
          else if ((host as unknown) === null) resolve({ kind: 'plain page' });
          else resolve({ kind: 'other program' });
        },
        () => resolve({ kind: 'no library' }),
      );
    });
  });
  return Promise.race([told, late]);
}
