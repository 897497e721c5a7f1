import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import type { Fact } from '../../sheets/words/set-up-facts.ts';

const useStyles = makeStyles({
  list: { margin: 0 },
  row: {
    // A value that doesn't fit beside its label goes below it.
    display: 'flex',
    flexWrap: 'wrap',
    columnGap: '10px',
    alignItems: 'baseline',
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    paddingBlock: '4px',
  },
  /** A long value takes a line of its own. */
  tall: { flexBasis: '100%' },
  label: { flex: '1 1 50%', color: tokens.colorNeutralForeground2 },
  value: { margin: 0, fontWeight: tokens.fontWeightSemibold, fontVariantNumeric: 'tabular-nums' },
  /** What the saw is set to, read from a step away. */
  large: { fontSize: tokens.fontSizeBase600, lineHeight: tokens.lineHeightBase600 },
  note: {
    margin: 0,
    flexBasis: '100%',
    color: tokens.colorNeutralForeground2,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
});

/** So many characters still stand beside a label at the narrowest. */
const LONGEST_BESIDE = 18;

/** Numbers with what they are, a row each. */
export function NumberList(props: {
  readonly rows: readonly Fact[];
  readonly large?: boolean;
}): ReactNode {
  const styles = useStyles();
  return (
    <dl className={styles.list}>
      {props.rows.map(({ label, value, note }) => (
        <div key={label} className={styles.row}>
          <dt className={styles.label}>{label}</dt>
          <dd
            className={mergeClasses(
              styles.value,
              value.length > LONGEST_BESIDE && styles.tall,
              props.large === true && styles.large,
            )}
          >
            {value}
          </dd>
          {note === undefined ? null : <dd className={styles.note}>{note}</dd>}
        </div>
      ))}
    </dl>
  );
}
