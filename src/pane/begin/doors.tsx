/** Where nothing is typed yet: size a cove, plan a list, or look at the demo. */
import { Button, makeStyles, tokens } from '@fluentui/react-components';
import { useState, type ReactNode } from 'react';
import { openHostOf } from '../state/open-host.ts';
import { Section } from '../style/section.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';
import { PasteList } from './paste-list.tsx';

const useStyles = makeStyles({
  doors: {
    display: 'grid',
    gridTemplateColumns: 'repeat(auto-fit, minmax(104px, 1fr))',
    gap: '6px',
    '& > button': { minWidth: 0, minHeight: '44px', paddingInline: '6px' },
  },
  here: { borderBottom: `3px solid ${tokens.colorCompoundBrandStroke}` },
});

export function Doors(): ReactNode {
  const styles = useStyles();
  const { state, send, services } = usePane();
  const [isPasting, setPasting] = useState(false);
  const { page } = services;
  const isHere = state.tab === 'profile';
  return (
    <Section title="Begin" hiddenTitle>
      <div className={styles.doors}>
        <Button
          {...(isHere ? { className: styles.here, 'aria-current': 'true' } : {})}
          onClick={() => send({ type: 'tab chosen', tab: 'profile' })}
        >
          Size a cove
        </Button>
        {page === undefined ? (
          <MakeSheets />
        ) : (
          <>
            <Button
              appearance="primary"
              aria-expanded={isPasting}
              onClick={() => setPasting(!isPasting)}
            >
              Plan a list
            </Button>
            <Button onClick={page.showDemo}>See the demo</Button>
          </>
        )}
      </div>
      {page !== undefined && isPasting ? <PasteList page={page} /> : null}
    </Section>
  );
}

/** Beside a workbook of Excel's: its own sheets are made, or chosen under Job. */
function MakeSheets(): ReactNode {
  const shared = useSharedStyles();
  const { state, actions } = usePane();
  const tables = state.reading.found?.tables ?? [];
  const isWaiting = openHostOf(state) === undefined || state.busy !== undefined;
  const isThere = tables.some(({ place }) => place !== undefined);
  if (isThere) {
    return <p className={shared.text}>Plan a list: type it on the sheet Runs, a row each.</p>;
  }
  return (
    <>
      <Button
        appearance="primary"
        disabledFocusable={isWaiting}
        onClick={() => void actions.makeInput('blank')}
      >
        Make blank input sheets
      </Button>
      <Button disabledFocusable={isWaiting} onClick={() => void actions.makeInput('demo')}>
        {"Make the demo's sheets"}
      </Button>
    </>
  );
}
