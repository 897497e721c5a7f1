import { makeStyles, tokens } from '@fluentui/react-components';
import type { ReactNode } from 'react';

const useStyles = makeStyles({
  summary: {
    cursor: 'pointer',
    paddingBlock: '4px',
    fontWeight: tokens.fontWeightSemibold,
    borderRadius: tokens.borderRadiusSmall,
    ':focus-visible': { outline: `2px solid ${tokens.colorStrokeFocus2}` },
  },
  content: { paddingBlock: '2px 6px' },
});

/** Something to open where it is wanted; the browser's own element, so any keyboard can. */
export function Disclosure(props: {
  readonly summary: ReactNode;
  /** To begin with. */
  readonly open?: boolean;
  readonly children: ReactNode;
}): ReactNode {
  const styles = useStyles();
  return (
    <details open={props.open === true}>
      <summary className={styles.summary}>{props.summary}</summary>
      <div className={styles.content}>{props.children}</div>
    </details>
  );
}
