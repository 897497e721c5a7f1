/** A list of one's own: pasted as text, opened as a file, or typed in the sheet. */
import { Button, Textarea } from '@fluentui/react-components';
import { useId, useState, type ReactNode } from 'react';
import type { PageDoors } from '../services.ts';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';

export function PasteList({ page }: { readonly page: PageDoors }): ReactNode {
  const shared = useSharedStyles();
  const { state, actions } = usePane();
  const [text, setText] = useState('');
  const id = useId();
  const runs = state.reading.found?.tables.find(({ name }) => name === 'Runs')?.place;
  return (
    <>
      <label htmlFor={id}>Paste the list here</label>
      <Textarea
        id={id}
        style={{ width: '100%' }}
        rows={4}
        resize="vertical"
        autoFocus
        value={text}
        placeholder="Room, Profile, Length, Quantity"
        aria-describedby={`${id}-how`}
        onChange={(_, { value }) => setText(value)}
      />
      <p id={`${id}-how`} className={shared.quiet} style={{ marginBlock: '4px 0' }}>
        Headings in the first line, in your own words; then a line a run, as a spreadsheet or a
        message has it.
      </p>
      <div className={shared.buttons}>
        <Button
          appearance="primary"
          disabledFocusable={text.trim() === ''}
          onClick={() => void page.openPasted(text)}
        >
          Read this list
        </Button>
        <Button onClick={page.openFile}>Open a file…</Button>
        {runs === undefined ? null : (
          <Button
            onClick={() =>
              void actions.show({ sheet: runs.sheet, cell: `A${runs.line + 1}` }, true)
            }
          >
            Type in the sheet
          </Button>
        )}
      </div>
    </>
  );
}
