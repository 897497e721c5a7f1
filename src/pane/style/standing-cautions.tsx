import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import {
  JUDGMENT_CAUTION,
  MANUAL_CAUTION,
  standingCautions,
} from '../../sheets/words/standing-cautions.ts';
import { Disclosure } from './disclosure.tsx';
import { useSharedStyles } from './shared-styles.ts';

const useStyles = makeStyles({
  box: {
    border: `1px solid ${tokens.colorStatusWarningBorder2}`,
    borderLeftWidth: '4px',
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground1,
    padding: '8px 10px',
    marginBlock: '10px',
  },
  list: { margin: 0, paddingInlineStart: '20px' },
  item: { marginBlockEnd: '4px' },
});

/** What holds for every set-up: the first line always in sight, the others one click away. */
export function StandingCautions(props: { readonly leastBlank?: string }): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const others = standingCautions(props.leastBlank).filter((one) => one !== MANUAL_CAUTION);
  return (
    <aside className={styles.box} aria-label="Cautions for every set-up">
      <p className={mergeClasses(shared.text, shared.strong)}>{MANUAL_CAUTION}</p>
      <Disclosure summary="Before and while you cut">
        <ul className={styles.list}>
          {others
            .filter((one) => one !== JUDGMENT_CAUTION)
            .map((one) => (
              <li key={one} className={styles.item}>
                {one}
              </li>
            ))}
        </ul>
      </Disclosure>
      <p className={shared.text} style={{ marginBlockEnd: 0 }}>
        {JUDGMENT_CAUTION}
      </p>
    </aside>
  );
}
