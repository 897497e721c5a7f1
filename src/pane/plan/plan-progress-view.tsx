import { ProgressBar } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { useSharedStyles } from '../style/shared-styles.ts';
import type { PlanProgress } from '../state/pane-state.ts';
import { usePane } from '../use-pane.ts';
import { sayProgress } from './say-progress.ts';

const BOUND = { currency: '', decimalSign: '.' } as const;

export function PlanProgressView({ progress }: { readonly progress: PlanProgress }): ReactNode {
  const shared = useSharedStyles();
  const { found } = usePane().state.reading;
  const { share, phase, cost } = sayProgress(progress, found?.shop ?? BOUND);
  return (
    <div>
      <p className={shared.text}>{phase}</p>
      <ProgressBar value={share} max={1} aria-label="Planning" thickness="large" />
      <p className={shared.quiet}>{cost ?? ' '}</p>
    </div>
  );
}
