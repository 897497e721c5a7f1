import { useEffect, useState, type ReactNode } from 'react';
import { useSharedStyles } from '../style/shared-styles.ts';
import type { ProfileAnswer } from './answer-profile.ts';
import { sayAnswer } from './say-answer.ts';

/** A screen reader hears the answer when the typing rests, not at every key. */
const REST_MS = 900;

export function SpokenAnswer({ answer }: { readonly answer: ProfileAnswer }): ReactNode {
  const shared = useSharedStyles();
  const text = sayAnswer(answer);
  const [spoken, setSpoken] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => setSpoken(text), REST_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return (
    <div role="status" aria-live="polite" className={shared.hidden}>
      {spoken}
    </div>
  );
}
