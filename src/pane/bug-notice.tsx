import { Button } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { useLook } from './look/use-look.ts';

/** Says that the program itself is at fault, and offers to begin again. */
export function BugNotice({ what }: { readonly what: string }): ReactNode {
  const look = useLook();
  return (
    <main className={look.column}>
      <h1 className={look.heading} style={{ paddingInlineEnd: 36, marginBlockStart: 8 }}>
        A fault of this program
      </h1>
      <p className={look.text}>
        Something went wrong here that is not your doing. Your input sheets are as they were. Load
        the pane again; if it comes back, tell whoever looks after this add-in what stands below.
      </p>
      <p className={look.code}>{what}</p>
      <div className={look.buttons}>
        <Button appearance="primary" onClick={() => window.location.reload()}>
          Load the pane again
        </Button>
      </div>
    </main>
  );
}
