/** Rates that the job's Hours have otherwise than Work: each to be taken over by a click, or in its cell. */
import { Button } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import type { JobPlan } from '../../planning/job-plan.ts';
import type { WorkLearned } from '../../planning/work/learn-from-hours.ts';
import { sayLearned } from '../../sheets/words/say-bid.ts';
import { HOURS_ARE_NOT_IN_PRICE, sayHome, sayKind } from '../../sheets/words/say-hours.ts';
import { openHostOf } from '../state/open-host.ts';
import { Disclosure } from '../style/disclosure.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';
import { isNewRow, learnedNow } from './learned-now.ts';

/** @param props.plan of the job as it is read now, but for its Hours */
export function LearnedRates({ plan }: { readonly plan: JobPlan }): ReactNode {
  const shared = useSharedStyles();
  const { state, actions } = usePane();
  const job = state.reading.found?.job;
  if (job === undefined || job.hours.length === 0) return null;
  const { works } = learnedNow(plan, job);
  const canTake = openHostOf(state)?.can.appendRows === true;
  const isBusy = state.busy !== undefined || state.reading.busy;
  const home = (one: WorkLearned): ReactNode => {
    const kind = sayKind(one);
    if (!isNewRow(job, one) || !canTake) {
      return <div className={shared.quiet}>{`To take it over: ${sayHome(one, job)}`}</div>;
    }
    return (
      <Button
        size="small"
        aria-label={`Take over ${kind}`}
        disabledFocusable={isBusy}
        onClick={() => void actions.takeOverRate(kind)}
      >
        Take over
      </Button>
    );
  };
  return (
    <Disclosure summary={`Rates as the hours have them (${works.length})`}>
      <p className={shared.quiet}>{HOURS_ARE_NOT_IN_PRICE}</p>
      <ul className={shared.plainList}>
        {works.map((one) => {
          const kind = sayKind(one);
          const { value, note } = sayLearned(kind, one.rate, job.shop.decimalSign);
          return (
            <li key={kind} className={shared.row}>
              <div className={shared.strong}>{`${kind}: ${value}`}</div>
              <div className={shared.quiet}>{note}</div>
              {home(one)}
            </li>
          );
        })}
      </ul>
    </Disclosure>
  );
}
