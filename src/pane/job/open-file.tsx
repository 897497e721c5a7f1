import { Button } from '@fluentui/react-components';
import { useRef, type ReactNode } from 'react';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';

/** A button that asks for an .xlsx, and opens it in the pane unless something else is to be done with it. */
export function OpenFile(props: {
  readonly label: string;
  readonly primary?: boolean;
  readonly disabled?: boolean;
  readonly onFile?: (file: File) => void;
}): ReactNode {
  const shared = useSharedStyles();
  const { actions } = usePane();
  const input = useRef<HTMLInputElement>(null);
  return (
    <div className={shared.buttons}>
      <input
        ref={input}
        type="file"
        accept=".xlsx,.xlsm"
        hidden
        aria-hidden="true"
        tabIndex={-1}
        onChange={({ target }) => {
          const file = target.files?.[0];
          // The same file chosen again is to be read again.
          target.value = '';
          if (file === undefined) return;
          if (props.onFile === undefined) void actions.openFile(file);
          else props.onFile(file);
        }}
      />
      <Button
        appearance={props.primary === true ? 'primary' : 'secondary'}
        disabledFocusable={props.disabled === true}
        onClick={() => input.current?.click()}
      >
        {props.label}
      </Button>
    </div>
  );
}
