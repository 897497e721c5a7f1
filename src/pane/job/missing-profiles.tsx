/** Profiles that are named and not listed, and the button that adds them. */
import { Button } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { missingProfiles } from '../../planning/input/missing-profiles.ts';
import { count } from '../../sheets/words/print-length.ts';
import { Message } from '../style/messages.tsx';
import { openHostOf } from '../state/open-host.ts';
import { usePane } from '../use-pane.ts';
import type { JobFound } from './job-found.ts';
import { sayList } from './say-findings.ts';

/** More names than these fill the pane; each has its own line below. */
const MOST_NAMES = 5;

export function MissingProfiles({ found }: { readonly found: JobFound }): ReactNode {
  const { actions, state } = usePane();
  const names = missingProfiles(found.faults);
  if (names.length === 0 || openHostOf(state)?.can.appendRows !== true) return null;
  const isBusy = state.busy !== undefined || state.reading.busy;
  return (
    <div style={{ marginBlockStart: '8px' }}>
      <Message
        intent="warning"
        actions={
          <Button
            size="small"
            disabledFocusable={isBusy}
            onClick={() => void actions.addMissingProfiles()}
          >
            Add the missing profiles
          </Button>
        }
      >
        {sayMissing(names)}
      </Message>
    </div>
  );
}

function sayMissing(names: readonly string[]): string {
  const more = names.length - MOST_NAMES;
  const said = more > 0 ? [...names.slice(0, MOST_NAMES), `${more} more`] : names;
  const what = names.length === 1 ? 'A profile is' : `${count(names.length, 'profile')} are`;
  return `${what} named and not listed in Profiles: ${sayList(said)}.`;
}
