import { useEffect, useLayoutEffect, useRef } from 'react';

/** When what has the focus leaves the page, the keyboard goes on from this part and not from the top. */
export function useKeptFocus(partId: string): void {
  const last = useRef<EventTarget | null>(null);
  useEffect(() => {
    const focused = ({ target }: FocusEvent): void => {
      last.current = target;
    };
    document.addEventListener('focusin', focused);
    return () => document.removeEventListener('focusin', focused);
  }, []);
  // After every change of the page.
  useLayoutEffect(() => {
    const had = last.current;
    if (document.activeElement !== document.body) return;
    if (!(had instanceof HTMLElement) || had.isConnected) return;
    last.current = null;
    document.getElementById(partId)?.focus({ preventScroll: true });
  });
}
