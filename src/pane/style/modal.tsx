/** A question that must be answered first: the browser's own dialog keeps the focus and gives it back. */
import { makeStyles, tokens } from '@fluentui/react-components';
import { useEffect, useId, useRef, type ReactNode } from 'react';
import { useSharedStyles } from './shared-styles.ts';

const useStyles = makeStyles({
  modal: {
    boxSizing: 'border-box',
    width: 'calc(100vw - 24px)',
    maxWidth: '420px',
    maxHeight: 'calc(100vh - 24px)',
    overflowY: 'auto',
    padding: '16px',
    color: tokens.colorNeutralForeground1,
    backgroundColor: tokens.colorNeutralBackground1,
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    borderRadius: tokens.borderRadiusLarge,
    boxShadow: tokens.shadow64,
    '::backdrop': { backgroundColor: tokens.colorBackgroundOverlay },
  },
});

export function Modal(props: {
  readonly title: string;
  readonly open: boolean;
  /** Asked for by Escape. */
  readonly onDrop: () => void;
  readonly children: ReactNode;
  readonly buttons: ReactNode;
}): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const { title, open, onDrop, children, buttons } = props;
  const id = useId();
  const element = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (open) element.current?.showModal();
    else element.current?.close();
  }, [open]);
  return (
    <dialog
      ref={element}
      className={styles.modal}
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        onDrop();
      }}
    >
      <h2 id={id} className={shared.heading}>
        {title}
      </h2>
      {children}
      <div className={shared.buttons} style={{ marginBlockEnd: 0 }}>
        {buttons}
      </div>
    </dialog>
  );
}
