import { ProgressBar } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { useLook } from '../look/use-look.ts';
import type { PlanProgress } from '../state/pane-state.ts';
import { usePane } from '../use-pane.ts';
import { sayProgress } from './say-progress.ts';

const BOUND = { currency: '', decimalSign: '.' } as const;

export function PlanProgressView({ progress }: { readonly progress: PlanProgress }): ReactNode {
  const look = useLook();
  const { found } = usePane().state.reading;
  const { share, phase, cost } = sayProgress(progress, found?.shop ?? BOUND);
  return (
    <div>
      <p className={look.text}>{phase}</p>
      <ProgressBar value={share} max={1} aria-label="Planning" thickness="large" />
      <p className={look.quiet}>{cost ?? ' '}</p>
    </div>
  );
}
