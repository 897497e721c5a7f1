/** What comes next, at the top of Job and Plan: one button in the accent. */
import { Button, makeStyles, tokens } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { sayWhere, type Fault } from '../../core/faults/fault.ts';
import type { JobTableName } from '../../planning/input/read-job.ts';
import { count } from '../../sheets/words/print-length.ts';
import { nextStepOf } from '../state/next-step.ts';
import { openHostOf } from '../state/open-host.ts';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';
import { Doors } from './doors.tsx';

const useStyles = makeStyles({
  bar: {
    display: 'flex',
    flexWrap: 'wrap',
    alignItems: 'center',
    gap: '4px 10px',
    marginBlockEnd: '14px',
    padding: '8px 10px',
    borderRadius: tokens.borderRadiusMedium,
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    '& > button': { minHeight: '44px' },
  },
  says: { flex: '1 1 150px', minWidth: 0, overflowWrap: 'anywhere' },
});

/** Plan has its own buttons for what comes after the problems. */
export function NextStepBar(): ReactNode {
  const { state, send, actions } = usePane();
  const step = nextStepOf(state);
  const toPlan = (): void => send({ type: 'tab chosen', tab: 'plan' });
  if (step === undefined) return null;
  if (step.kind === 'begin') return <Doors />;
  if (step.kind === 'mend') return <Mend first={step.first} more={step.more} />;
  if (step.kind === 'choose') return <ChooseTable name={step.table} />;
  if (state.tab === 'plan') return null;
  switch (step.kind) {
    case 'plan':
      return (
        <Bar says="The list can be planned.">
          <Button
            appearance="primary"
            onClick={() => {
              toPlan();
              void actions.plan();
            }}
          >
            Plan the job
          </Button>
        </Bar>
      );
    case 'write':
      return (
        <Bar says="The job is planned; its sheets are not written.">
          <Button appearance="primary" onClick={toPlan}>
            See the plan
          </Button>
        </Bar>
      );
    case 'written':
      return (
        <Bar says="The sheets are written.">
          <Button appearance="primary" onClick={toPlan}>
            Print, or take it to the saw
          </Button>
        </Bar>
      );
  }
}

/** A list is there, under headings of one's own. */
function ChooseTable({ name }: { readonly name: JobTableName }): ReactNode {
  const { send, actions } = usePane();
  return (
    <Bar says={`Which of your tables is ${name}?`}>
      <Button
        appearance="primary"
        onClick={() => {
          send({ type: 'tab chosen', tab: 'job' });
          void actions.beginMapping(name);
        }}
      >
        Choose it
      </Button>
    </Bar>
  );
}

function Mend({ first, more }: { readonly first: Fault; readonly more: number }): ReactNode {
  const { state, send, actions } = usePane();
  const { where, message } = first;
  const canShow = openHostOf(state)?.can.showCells === true && where !== undefined;
  const others = more === 0 ? '' : ` ${count(more, 'more problem')} under Job.`;
  const place = where === undefined ? '' : `${sayWhere(where)}: `;
  return (
    <Bar says={`${place}${message}${others}`}>
      {canShow ? (
        <Button appearance="primary" onClick={() => void actions.show(where, true)}>
          Go to the cell
        </Button>
      ) : state.tab === 'job' ? null : (
        <Button appearance="primary" onClick={() => send({ type: 'tab chosen', tab: 'job' })}>
          Go to Job
        </Button>
      )}
    </Bar>
  );
}

function Bar(props: { readonly says: string; readonly children: ReactNode }): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  return (
    <section className={styles.bar} aria-label="Next step">
      <span className={styles.says}>
        <span className={shared.strong}>Next: </span>
        {props.says}
      </span>
      {props.children}
    </section>
  );
}
