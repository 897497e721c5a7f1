/** Takes the cove that was tried into the job, under a name. */
import { Button, Input } from '@fluentui/react-components';
import { useId, useState, type ReactNode } from 'react';
import { openHostOf } from '../state/open-host.ts';
import { Section } from '../style/section.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';
import type { TypedCove } from './cove-fields.ts';

export function AddCove({ typed }: { readonly typed: TypedCove }): ReactNode {
  const shared = useSharedStyles();
  const { state, actions } = usePane();
  const [name, setName] = useState('');
  const id = useId();
  if (openHostOf(state)?.can.appendRows !== true) return null;
  const isBlocked = name.trim() === '' || state.busy !== undefined || state.reading.busy;
  return (
    <Section title="Add it to the job" hiddenTitle>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if (!isBlocked) void actions.addCove(name.trim(), typed);
        }}
      >
        <label htmlFor={id}>Name of this cove in the job</label>
        <div className={shared.buttons} style={{ marginBlockStart: 0 }}>
          <Input
            id={id}
            style={{ flex: '1 1 120px', minWidth: 0, minHeight: '44px' }}
            autoComplete="off"
            value={name}
            onChange={(_, { value }) => setName(value)}
          />
          <Button type="submit" disabledFocusable={isBlocked}>
            Add to the job
          </Button>
        </div>
      </form>
    </Section>
  );
}
