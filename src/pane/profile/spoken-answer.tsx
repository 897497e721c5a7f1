import { useEffect, useState, type ReactNode } from 'react';
import { useLook } from '../look/use-look.ts';
import type { ProfileAnswer } from './answer-profile.ts';
import { sayAnswer } from './say-answer.ts';

/** A screen reader hears the answer when the typing rests, not at every key. */
const REST_MS = 900;

export function SpokenAnswer({ answer }: { readonly answer: ProfileAnswer }): ReactNode {
  const look = useLook();
  const text = sayAnswer(answer);
  const [spoken, setSpoken] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => setSpoken(text), REST_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return (
    <div role="status" aria-live="polite" className={look.hidden}>
      {spoken}
    </div>
  );
}
