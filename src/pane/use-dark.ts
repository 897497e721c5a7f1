import { useEffect, useState } from 'react';

const DARK = '(prefers-color-scheme: dark)';

/** The program's own look where it tells, else what the browser prefers, also as that changes. */
export function useDark(told: Promise<boolean | undefined>): boolean {
  const [own, setOwn] = useState<boolean | undefined>(undefined);
  const [preferred, setPreferred] = useState(() => window.matchMedia(DARK).matches);
  useEffect(() => {
    let gone = false;
    void told.then((dark) => {
      if (!gone) setOwn(dark);
    });
    return () => {
      gone = true;
    };
  }, [told]);
  useEffect(() => {
    const query = window.matchMedia(DARK);
    const changed = (): void => setPreferred(query.matches);
    query.addEventListener('change', changed);
    return () => query.removeEventListener('change', changed);
  }, []);
  return own ?? preferred;
}
