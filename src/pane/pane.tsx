/** The whole pane: its title, the four tabs, and what is said above them. */
import { FluentProvider, mergeClasses } from '@fluentui/react-components';
import { useEffect, type ReactNode } from 'react';
import { BugNotice } from './bug-notice.tsx';
import { ErrorBoundary } from './error-boundary.tsx';
import { FunctionsTab } from './functions/functions-tab.tsx';
import { JobTab } from './job/job-tab.tsx';
import { Announcer } from './style/announcer.tsx';
import { Messages } from './style/messages.tsx';
import { PageColors } from './style/page-colors.tsx';
import { DARK_THEME, LIGHT_THEME } from './style/pane-theme.ts';
import { panelId, TabPanel, Tabs, type TabTitle } from './style/tabs.tsx';
import { useSharedStyles } from './style/shared-styles.ts';
import { PlanTab } from './plan/plan-tab.tsx';
import { PrintDialog } from './print/print-dialog.tsx';
import { ProfileTab } from './profile/profile-tab.tsx';
import type { Tab } from './state/pane-state.ts';
import { useDark } from './use-dark.ts';
import { useKeptFocus } from './use-kept-focus.ts';
import { usePane } from './use-pane.ts';

const TITLES: readonly TabTitle<Tab>[] = [
  { name: 'job', title: 'Job' },
  { name: 'profile', title: 'Profile' },
  { name: 'plan', title: 'Plan' },
  { name: 'functions', title: 'Functions' },
];

export function Pane(): ReactNode {
  const { services } = usePane();
  const dark = useDark(services.darkTheme);
  const shared = useSharedStyles();
  // For measuring how soon the pane stands after the page's script began.
  useEffect(() => {
    performance.mark('pane shown');
  }, []);
  return (
    <FluentProvider theme={dark ? DARK_THEME : LIGHT_THEME} className={shared.page}>
      <PageColors dark={dark} />
      <ErrorBoundary>
        <PaneBody />
      </ErrorBoundary>
    </FluentProvider>
  );
}

function PaneBody(): ReactNode {
  const shared = useSharedStyles();
  const { state, send, services } = usePane();
  useKeptFocus(panelId(state.tab));
  if (state.bug !== undefined) return <BugNotice what={state.bug} />;
  const choose = (tab: Tab): void => {
    send({ type: 'tab chosen', tab });
    window.scrollTo(0, 0);
    document.getElementById('pane')?.scrollTo(0, 0);
    services.preferences.set('tab', tab);
  };
  const isWhole = services.page === undefined;
  const [Header, Main] = isWhole ? (['header', 'main'] as const) : (['div', 'div'] as const);
  return (
    <>
      <Header className={shared.header}>
        <div className={shared.column}>
          {isWhole ? (
            <div className={shared.titleRow}>
              <h1 className={shared.title}>Coveledger</h1>
            </div>
          ) : null}
          <Tabs label="Parts of the pane" tabs={TITLES} chosen={state.tab} onChoose={choose} />
        </div>
      </Header>
      <Main className={mergeClasses(shared.column, shared.main)}>
        <Messages />
        <TabPanel name={state.tab}>
          <TabContent tab={state.tab} />
        </TabPanel>
      </Main>
      <PrintDialog />
      <Announcer />
    </>
  );
}

function TabContent({ tab }: { readonly tab: Tab }): ReactNode {
  switch (tab) {
    case 'job':
      return <JobTab />;
    case 'profile':
      return <ProfileTab />;
    case 'plan':
      return <PlanTab />;
    case 'functions':
      return <FunctionsTab />;
  }
}
