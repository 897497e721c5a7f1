/** The workbook and its tables, what is wrong in them, and the shop's settings in force. */
import { Button } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { NextStepBar } from '../begin/next-step-bar.tsx';
import { FindingList } from '../style/finding-list.tsx';
import { Message } from '../style/messages.tsx';
import { Section } from '../style/section.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { sayStale } from '../plan/say-stale.ts';
import { usePane } from '../use-pane.ts';
import { CountedList } from './counted-list.tsx';
import type { JobFound } from './job-found.ts';
import { MissingProfiles } from './missing-profiles.tsx';
import { NoWorkbook } from './no-workbook.tsx';
import { OpenFile } from './open-file.tsx';
import { RoomView } from './room-view.tsx';
import { sayChecks } from './say-checks.ts';
import { SettingsList } from './settings-list.tsx';
import { TableList } from './table-list.tsx';

export function JobTab(): ReactNode {
  const shared = useSharedStyles();
  const { workbook, reading } = usePane().state;
  if (workbook.kind === 'awaited') return <p className={shared.text}>Looking for the workbook…</p>;
  if (workbook.kind === 'none') return <NoWorkbook why={workbook.why} />;
  const { found } = reading;
  const isFile = workbook.host.kind === 'file';
  return (
    <>
      <NextStepBar />
      {found === undefined ? null : <CountedList found={found} />}
      <Section
        title={found?.survey.name === '' || found === undefined ? 'Workbook' : found.survey.name}
      >
        {isFile ? (
          <p className={shared.text}>
            Opened here as a file, which stays as it is: what is made goes into new files.
          </p>
        ) : null}
        {found === undefined ? <NotRead /> : <TableList found={found} />}
        {isFile ? <OpenFile label="Open another file" /> : null}
      </Section>
      <Checks found={found} busy={reading.busy} />
      {found === undefined ? null : <RoomView found={found} />}
      {found === undefined ? null : <SettingsList found={found} />}
    </>
  );
}

/** Why nothing is read yet stands here too, since above it may have been put away. */
function NotRead(): ReactNode {
  const shared = useSharedStyles();
  const { reading, trouble } = usePane().state;
  const { failed, busy } = reading;
  if (failed === undefined || busy) {
    return <p className={shared.text}>{busy ? 'Reading the tables…' : 'Not read yet.'}</p>;
  }
  const isTooOld = failed.some(({ code }) => code === 'host.too-old');
  return (
    <>
      <p className={shared.text}>
        {trouble === failed
          ? 'The workbook could not be read.'
          : failed.map(({ message }) => message).join(' ')}
      </p>
      {isTooOld ? <OpenFile label="Open a saved workbook (.xlsx)" primary /> : null}
    </>
  );
}

function Checks(props: {
  readonly found: JobFound | undefined;
  readonly busy: boolean;
}): ReactNode {
  const shared = useSharedStyles();
  const { actions, state } = usePane();
  const { found, busy } = props;
  const stale = sayStale(state);
  return (
    <Section title="Checks">
      <div className={shared.spread}>
        <span className={shared.strong}>
          {found === undefined ? 'Nothing to check yet' : sayChecks(found)}
        </span>
        <Button size="small" disabledFocusable={busy} onClick={() => void actions.checkAgain()}>
          {busy ? 'Checking…' : 'Check again'}
        </Button>
      </div>
      {found === undefined ? null : (
        <>
          {stale === undefined ? null : <Message intent="warning">{stale}</Message>}
          <MissingProfiles found={found} />
          <FindingList title="Problems" faults={found.faults} problems />
          <FindingList title="Cautions" faults={found.cautions} problems={false} />
        </>
      )}
    </Section>
  );
}
