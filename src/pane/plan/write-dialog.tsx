/** Asks before sheets are replaced: which, what points into them, and whether it can be undone. */
import { Button } from '@fluentui/react-components';
import { useState, type ReactNode } from 'react';
import { sayList } from '../job/say-findings.ts';
import { Modal } from '../style/modal.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import type { WriteQuestion } from '../state/pane-state.ts';
import { openHostOf } from '../state/open-host.ts';
import { usePane } from '../use-pane.ts';
import { sayReplaced } from './ask-writing.ts';

const NOTHING_ASKED: WriteQuestion = { replaced: [], added: [], pointing: [] };

export function WriteDialog(): ReactNode {
  const { state, send, actions } = usePane();
  const { writing } = state;
  const asked = writing.kind === 'asking' ? writing.question : undefined;
  // What was asked stays in sight while the dialog goes away.
  const [shown, setShown] = useState(NOTHING_ASKED);
  if (asked !== undefined && asked !== shown) setShown(asked);
  return (
    <Modal
      title="Replace the sheets?"
      open={asked !== undefined}
      onDrop={() => send({ type: 'writing dropped' })}
      buttons={
        <>
          <Button onClick={() => send({ type: 'writing dropped' })}>Leave them</Button>
          <Button appearance="primary" onClick={() => void actions.write()}>
            Replace
          </Button>
        </>
      }
    >
      <Question question={shown} />
    </Modal>
  );
}

function Question({ question }: { readonly question: WriteQuestion }): ReactNode {
  const shared = useSharedStyles();
  const { state } = usePane();
  const canUndo = openHostOf(state)?.can.undoWrites === true;
  const { pointing } = question;
  return (
    <>
      <p className={shared.text}>{sayReplaced(question, state.planning)}</p>
      {pointing.map(({ sheet, cells }) => (
        <p key={sheet} className={shared.text}>
          {`${sayList(cells)} ${cells.length === 1 ? 'points' : 'point'} into ${sheet} and will lose ${cells.length === 1 ? 'its value' : 'their values'}.`}
        </p>
      ))}
      <p className={shared.text}>
        {canUndo ? (
          'Undo brings the sheets back as they were.'
        ) : (
          <strong>This can’t be undone.</strong>
        )}{' '}
        Your input sheets stay as they are.
      </p>
    </>
  );
}
