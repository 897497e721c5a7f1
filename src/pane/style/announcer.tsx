import type { ReactNode } from 'react';
import { usePane } from '../use-pane.ts';
import { useSharedStyles } from './shared-styles.ts';

/** Where a screen reader hears of what has changed; nothing else in the pane speaks by itself. */
export function Announcer(): ReactNode {
  const shared = useSharedStyles();
  const { turn, text } = usePane().state.announcement;
  return (
    <div role="status" aria-live="polite" className={shared.hidden}>
      <span key={turn}>{text}</span>
    </div>
  );
}
