/** Plans the job, shows what it comes to, and writes it. */
import { Button } from '@fluentui/react-components';
import { useId, type ReactNode } from 'react';
import { sayFault } from '../../core/faults/fault.ts';
import { NextStepBar } from '../begin/next-step-bar.tsx';
import { whyNoPlan } from '../job/say-tables.ts';
import { FindingList } from '../style/finding-list.tsx';
import { Message } from '../style/messages.tsx';
import { Section } from '../style/section.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { nextStepOf } from '../state/next-step.ts';
import type { PaneState } from '../state/pane-state.ts';
import { usePane } from '../use-pane.ts';
import { isOccupied } from '../state/is-occupied.ts';
import { ComparePlans } from './compare-plans.tsx';
import { PlanProgressView } from './plan-progress-view.tsx';
import { PlanResultView } from './plan-result-view.tsx';
import { sayStopped } from './say-progress.ts';
import { readSeconds } from './search-seconds.ts';
import { SecondsField } from './seconds-field.tsx';
import { BROKEN_OFF, DROP_TICKS, sayTicks, TICKS_LOST } from './say-ticks.ts';
import { sayStale } from './say-stale.ts';

export function PlanTab(): ReactNode {
  const shared = useSharedStyles();
  const { state, actions } = usePane();
  const reasonId = useId();
  const { planning } = state;
  const { running, result, faults, stopped, failedFrom } = planning;
  const stale = sayStale(state);
  const { ticks, ticksLost, keptFaults, brokenOff } = planning;
  const isMended = failedFrom !== undefined && failedFrom !== state.reading.found?.fingerprint;
  // Then what comes next is to write it, or to print it.
  const step = nextStepOf(state)?.kind;
  const isPlanned = step === 'write' || step === 'written';
  const typed = readSeconds(planning.seconds, state.reading.found?.shop.decimalSign);
  const reason =
    running === undefined
      ? (whyBlocked(state) ?? (typed.ok ? undefined : typed.faults.map(sayFault).join(' ')))
      : undefined;
  const label =
    running === undefined ? (result === undefined ? 'Plan the job' : 'Plan again') : 'Stop';
  return (
    <>
      <NextStepBar />
      <Section title="Plan">
        {stale === undefined ? null : <Message intent="warning">{stale}</Message>}
        <SecondsField isWrong={!typed.ok} />
        <div className={shared.buttons}>
          {/* One button throughout, so that a keyboard stays where it is. */}
          <Button
            appearance={running === undefined && !isPlanned ? 'primary' : 'secondary'}
            disabledFocusable={reason !== undefined || running?.stopping === true}
            aria-describedby={reason === undefined ? undefined : reasonId}
            onClick={() => (running === undefined ? void actions.plan() : actions.stop())}
          >
            {label}
          </Button>
        </div>
        {reason === undefined ? null : (
          <p id={reasonId} className={shared.text}>
            {reason}
          </p>
        )}
        {ticks === undefined || ticks.sticksCut === 0 ? null : (
          <>
            <p className={shared.text}>{sayTicks(ticks)}</p>
            <div className={shared.buttons}>
              <Button
                disabledFocusable={reason !== undefined || running !== undefined}
                onClick={() => void actions.planAnew()}
              >
                {DROP_TICKS}
              </Button>
            </div>
          </>
        )}
        {ticksLost ? <Message intent="warning">{TICKS_LOST}</Message> : null}
        {brokenOff && running === undefined ? (
          <Message intent="warning">{BROKEN_OFF}</Message>
        ) : null}
        {keptFaults.length === 0 || running !== undefined ? null : (
          <Message intent="warning">{keptFaults.map(({ message }) => message).join(' ')}</Message>
        )}
        {running === undefined ? null : <PlanProgressView progress={running} />}
        {stopped && running === undefined ? (
          <Message intent="info">{sayStopped(planning)}</Message>
        ) : null}
        {running === undefined && faults.length > 0 ? (
          <>
            <Message intent="error">
              {isMended
                ? 'The job could not be made as it stood. The inputs have changed since: plan again'
                : 'The job can’t be made as it stands'}
              {result === undefined ? '' : '; the plan below is an earlier one'}.
            </Message>
            <FindingList title="Problems" faults={faults} problems />
            {result === undefined ? (
              <FindingList title="Cautions" faults={planning.cautions} problems={false} />
            ) : null}
          </>
        ) : null}
      </Section>
      {result === undefined ? null : <PlanResultView result={result} />}
      {result === undefined || result.wrong.length > 0 ? null : <ComparePlans />}
    </>
  );
}

function whyBlocked(state: PaneState): string | undefined {
  const { workbook, reading } = state;
  if (workbook.kind === 'awaited') return 'Looking for the workbook.';
  if (workbook.kind === 'none') return 'There is no workbook yet: open one under Job.';
  const { found } = reading;
  if (found === undefined) {
    return reading.failed === undefined
      ? 'The tables are not read yet.'
      : 'The workbook could not be read: see Job.';
  }
  if (isOccupied(state)) return 'The sheets are being written.';
  return whyNoPlan(found.tables, found.faults.length);
}
