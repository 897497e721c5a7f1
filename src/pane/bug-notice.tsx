import { Button } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { useSharedStyles } from './style/shared-styles.ts';

/** Says that the program itself is at fault, and offers to begin again. */
export function BugNotice({ what }: { readonly what: string }): ReactNode {
  const shared = useSharedStyles();
  return (
    <main className={shared.column}>
      <h1 className={shared.heading} style={{ paddingInlineEnd: 36, marginBlockStart: 8 }}>
        A fault of this program
      </h1>
      <p className={shared.text}>
        Something went wrong here that is not your doing. Your input sheets are as they were. Load
        the pane again; if it comes back, tell whoever looks after this add-in what stands below.
      </p>
      <p className={shared.code}>{what}</p>
      <div className={shared.buttons}>
        <Button appearance="primary" onClick={() => window.location.reload()}>
          Load the pane again
        </Button>
      </div>
    </main>
  );
}
