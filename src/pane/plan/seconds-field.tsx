import { Input, makeStyles } from '@fluentui/react-components';
import { useId, type ReactNode } from 'react';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';
import { SECONDS_LABEL } from './search-seconds.ts';

const useStyles = makeStyles({
  row: { marginBlockEnd: '8px' },
  input: { width: '96px', minWidth: 0, display: 'flex' },
});

/** @param isWrong What is typed is no such number; why not is said under the button. */
export function SecondsField(props: { readonly isWrong: boolean }): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const { state, send } = usePane();
  const id = useId();
  const { seconds, running } = state.planning;
  return (
    <div className={styles.row}>
      <label htmlFor={id}>{SECONDS_LABEL}</label>
      <Input
        id={id}
        className={styles.input}
        inputMode="decimal"
        autoComplete="off"
        value={seconds}
        readOnly={running !== undefined}
        aria-invalid={props.isWrong}
        aria-describedby={`${id}-hint`}
        onChange={(_, { value }) => send({ type: 'planning seconds typed', seconds: value })}
      />
      <span id={`${id}-hint`} className={shared.quiet}>
        At most, or until it is proven that none is cheaper; 0 is the quick plan alone.
      </span>
    </div>
  );
}
