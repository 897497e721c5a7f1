/** What the list comes to as it is typed. */
import { makeStyles } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { isTooLong } from '../actions/count-list.ts';
import type { PlanningState } from '../state/pane-state.ts';
import { FindingList } from '../style/finding-list.tsx';
import { Section } from '../style/section.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';
import type { JobFound } from './job-found.ts';
import { sayCounted } from './say-counted.ts';

const useStyles = makeStyles({
  line: { display: 'flex', columnGap: '10px', justifyContent: 'space-between' },
  name: { minWidth: 0, overflowWrap: 'anywhere' },
  price: { fontVariantNumeric: 'tabular-nums', whiteSpace: 'nowrap' },
});

export function CountedList({ found }: { readonly found: JobFound }): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const { counted, planning } = usePane().state;
  if (found.job === undefined) return null;
  const isNow = (one: { readonly fingerprint: string } | undefined): boolean =>
    one?.fingerprint === found.fingerprint;
  const planned = isNow(planning.result) ? planning.result?.plan : undefined;
  const plan = planned ?? (isNow(counted) ? counted?.plan : undefined);
  const faults = isNow(counted) && planned === undefined ? (counted?.faults ?? []) : [];
  return (
    <Section title="What it comes to so far">
      {plan === undefined ? (
        faults.length === 0 ? (
          <p className={shared.quiet}>{whyNotCounted(found, planning)}</p>
        ) : (
          <FindingList title="Problems" faults={faults} problems />
        )
      ) : (
        <>
          <ul className={shared.plainList} aria-label="Totals by profile">
            {sayCounted(plan).map(({ name, price, amount }, at) => (
              <li key={at} className={shared.row}>
                <div className={styles.line}>
                  <span className={`${styles.name} ${shared.strong}`}>{name}</span>
                  <span className={`${styles.price} ${shared.strong}`}>{price}</span>
                </div>
                <div className={shared.quiet}>{amount}</div>
              </li>
            ))}
          </ul>
          <p className={shared.quiet}>
            {planned === undefined
              ? 'By the quick plan, not proven: Plan may find it cheaper. Net lengths.'
              : 'As planned. Net lengths.'}
          </p>
        </>
      )}
    </Section>
  );
}

function whyNotCounted(found: JobFound, { ticks }: PlanningState): string {
  if (isTooLong(found))
    return 'Too many pieces to be counted while they are typed: Plan counts them.';
  return ticks !== undefined && ticks.sticksCut > 0
    ? 'Some of it is cut already: Plan counts it with the rest.'
    : 'Counted when the typing rests.';
}
