import type { ReactNode } from 'react';
import { usePane } from '../use-pane.ts';
import { useLook } from './use-look.ts';

/** Where a screen reader hears of what has changed; nothing else in the pane speaks by itself. */
export function Announcer(): ReactNode {
  const look = useLook();
  const { turn, text } = usePane().state.announcement;
  return (
    <div role="status" aria-live="polite" className={look.hidden}>
      <span key={turn}>{text}</span>
    </div>
  );
}
