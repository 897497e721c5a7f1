import { Link, makeStyles, mergeClasses, tokens } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { sayWhere, type Fault } from '../../core/faults/fault.ts';
import { groupFindings, type Finding } from '../job/group-findings.ts';
import { openHostOf } from '../state/open-host.ts';
import { usePane } from '../use-pane.ts';
import { useSharedStyles } from './shared-styles.ts';

const useStyles = makeStyles({
  list: {
    listStyleType: 'none',
    margin: 0,
    padding: 0,
    borderLeft: `3px solid ${tokens.colorStatusWarningBorderActive}`,
  },
  problems: { borderLeftColor: tokens.colorStatusDangerBorderActive },
  item: {
    display: 'grid',
    gridTemplateColumns: 'minmax(34px, max-content) minmax(0, 1fr)',
    columnGap: '8px',
    alignItems: 'baseline',
    paddingBlock: '4px',
    paddingInlineStart: '8px',
  },
  whole: { gridTemplateColumns: 'minmax(0, 1fr)' },
  message: { overflowWrap: 'anywhere' },
});

/** Faults or cautions by sheet, each with its cell; where the workbook can, the cell is shown. */
export function FindingList(props: {
  readonly title: string;
  readonly faults: readonly Fault[];
  readonly problems: boolean;
  /** Without the names of sheets: what is said is about one thing that stands right there. */
  readonly bare?: boolean;
}): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const { title, faults, problems, bare = false } = props;
  if (faults.length === 0) return null;
  const { groups, more } = groupFindings(faults);
  return (
    <>
      <h3 className={shared.minorHeading}>{`${title} (${faults.length})`}</h3>
      {groups.map((group) => (
        <div key={group.title}>
          {bare ? null : (
            <p
              className={mergeClasses(shared.quiet, shared.text)}
              style={{ marginBlock: '4px 2px' }}
            >
              {group.title}
            </p>
          )}
          <ul
            className={mergeClasses(styles.list, problems && styles.problems)}
            aria-label={bare ? title : `${title}: ${group.title}`}
          >
            {group.findings.map((finding) => (
              <FindingItem key={finding.key} finding={finding} />
            ))}
          </ul>
        </div>
      ))}
      {more === 0 ? null : <p className={shared.text}>{`and ${more} more`}</p>}
    </>
  );
}

function FindingItem({ finding }: { readonly finding: Finding }): ReactNode {
  const styles = useStyles();
  const { state, actions } = usePane();
  const { cell, where, message } = finding;
  const canShow = openHostOf(state)?.can.showCells === true;
  const inCell = cell !== undefined && where !== undefined;
  return (
    <li className={mergeClasses(styles.item, !inCell && styles.whole)}>
      {!inCell ? null : canShow ? (
        <Link
          as="button"
          aria-label={`Show ${sayWhere(where)}`}
          onClick={() => void actions.show(where)}
        >
          {cell}
        </Link>
      ) : (
        <span>{cell}</span>
      )}
      <span className={styles.message}>{message}</span>
    </li>
  );
}
