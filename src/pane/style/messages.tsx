import {
  Button,
  makeStyles,
  MessageBar,
  MessageBarActions,
  MessageBarBody,
} from '@fluentui/react-components';
import { useEffect, useRef, type ReactNode } from 'react';
import { sayFault } from '../../core/faults/fault.ts';
import { usePane } from '../use-pane.ts';

const useStyles = makeStyles({
  bar: { marginBlockEnd: '10px' },
  body: { whiteSpace: 'normal', overflowWrap: 'anywhere', paddingBlock: '0 6px' },
});

/** A sentence in a bar of its own; the word before it says what color says too. */
export function Message(props: {
  readonly intent: 'error' | 'warning' | 'success' | 'info';
  readonly children: ReactNode;
  readonly actions?: ReactNode;
}): ReactNode {
  const styles = useStyles();
  return (
    <MessageBar intent={props.intent} layout="multiline" className={styles.bar}>
      <MessageBarBody className={styles.body}>{props.children}</MessageBarBody>
      {props.actions === undefined ? null : <MessageBarActions>{props.actions}</MessageBarActions>}
    </MessageBar>
  );
}

/** What the workbook's program could not do, what has gone well, and what is going on. */
export function Messages(): ReactNode {
  const { state, send } = usePane();
  const { trouble, notice, busy } = state;
  const all = useRef<HTMLDivElement>(null);
  const isSaid = trouble.length > 0 || notice !== undefined;
  // What was asked for far below is answered here, where nobody would look.
  useEffect(() => {
    if (isSaid) all.current?.scrollIntoView({ block: 'nearest' });
  }, [isSaid, trouble, notice]);
  return (
    <div ref={all}>
      {trouble.length === 0 ? null : (
        <Message
          intent="error"
          actions={
            <Button size="small" onClick={() => send({ type: 'trouble put away' })}>
              Put away
            </Button>
          }
        >
          {trouble.map((one, index) => (
            <div key={index}>{sayFault(one)}</div>
          ))}
        </Message>
      )}
      {notice === undefined ? null : <Message intent="success">{notice}</Message>}
      {busy === undefined ? null : <Message intent="info">{`${busy}…`}</Message>}
    </div>
  );
}
