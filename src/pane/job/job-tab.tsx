/** The workbook and its tables, what is wrong in them, and the shop's settings in force. */
import { Button } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { FindingList } from '../look/finding-list.tsx';
import { Section } from '../look/section.tsx';
import { useLook } from '../look/use-look.ts';
import { usePane } from '../use-pane.ts';
import type { JobFound } from './job-found.ts';
import { NoWorkbook } from './no-workbook.tsx';
import { OpenFile } from './open-file.tsx';
import { sayFindings, sayList } from './say-findings.ts';
import { SettingsList } from './settings-list.tsx';
import { missingTables } from './stand-tables.ts';
import { TableList } from './table-list.tsx';

export function JobTab(): ReactNode {
  const look = useLook();
  const { workbook, reading } = usePane().state;
  if (workbook.kind === 'awaited') return <p className={look.text}>Looking for the workbook…</p>;
  if (workbook.kind === 'none') return <NoWorkbook why={workbook.why} />;
  const { found } = reading;
  const isFile = workbook.host.kind === 'file';
  return (
    <>
      <Section
        title={found?.look.name === '' || found === undefined ? 'Workbook' : found.look.name}
      >
        {isFile ? (
          <p className={look.text}>
            Opened here as a file, which stays as it is: what is made goes into new files.
          </p>
        ) : null}
        {found === undefined ? (
          <p className={look.text}>{reading.busy ? 'Reading the tables…' : 'Not read yet.'}</p>
        ) : (
          <TableList found={found} />
        )}
        {isFile ? <OpenFile label="Open another file" /> : null}
      </Section>
      <Checks found={found} busy={reading.busy} />
      {found === undefined ? null : <SettingsList found={found} />}
    </>
  );
}

function Checks(props: {
  readonly found: JobFound | undefined;
  readonly busy: boolean;
}): ReactNode {
  const look = useLook();
  const { actions } = usePane();
  const { found, busy } = props;
  const isRead = found?.tables.some(({ place }) => place !== undefined) === true;
  return (
    <Section title="Checks">
      <div className={look.spread}>
        <span className={look.strong}>{isRead ? sayCounts(found) : 'Nothing to check yet'}</span>
        <Button size="small" disabledFocusable={busy} onClick={() => void actions.checkAgain()}>
          {busy ? 'Checking…' : 'Check again'}
        </Button>
      </div>
      {found === undefined ? null : (
        <>
          <FindingList title="Problems" faults={found.faults} problems />
          <FindingList title="Cautions" faults={found.cautions} problems={false} />
        </>
      )}
    </Section>
  );
}

/** What is missing goes first: no problems in what is there would sound as if all were well. */
function sayCounts({ tables, faults, cautions }: JobFound): string {
  const missing = missingTables(tables);
  const found = sayFindings(faults.length, cautions.length);
  const said = missing.length === 0 ? found : `${sayList(missing)} missing; ${found} in the others`;
  return said.charAt(0).toUpperCase() + said.slice(1);
}
