import { makeStyles, tokens } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import type { Fact } from '../../sheets/words/set-up-facts.ts';

const useStyles = makeStyles({
  list: {
    display: 'grid',
    gridTemplateColumns: 'repeat(2, minmax(0, 1fr))',
    gap: '8px 12px',
    margin: 0,
    marginBlockEnd: '10px',
  },
  label: { color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
  value: {
    margin: 0,
    fontSize: tokens.fontSizeBase500,
    lineHeight: tokens.lineHeightBase500,
    fontWeight: tokens.fontWeightSemibold,
    fontVariantNumeric: 'tabular-nums',
    overflowWrap: 'anywhere',
  },
});

/** Totals at a glance, two a line. */
export function FourNumbers({ rows }: { readonly rows: readonly Fact[] }): ReactNode {
  const styles = useStyles();
  return (
    <dl className={styles.list}>
      {rows.map(({ label, value }) => (
        <div key={label}>
          <dt className={styles.label}>{label}</dt>
          <dd className={styles.value}>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
