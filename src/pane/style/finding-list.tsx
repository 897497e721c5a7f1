import { Link, makeStyles, mergeClasses, tokens } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { sayWhere, type Fault } from '../../core/faults/fault.ts';
import { groupFindings, type Finding, type FoundCell } from '../job/group-findings.ts';
import { count } from '../../sheets/words/print-length.ts';
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
  why: { whiteSpace: 'nowrap' },
  others: { display: 'flex', flexWrap: 'wrap', columnGap: '8px', rowGap: '2px' },
});

/** More cells of one finding than these fill the pane. */
const MOST_CELLS = 60;

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
  const { cells, message, code } = finding;
  const [first, ...others] = cells;
  return (
    <li className={mergeClasses(styles.item, first === undefined && styles.whole)}>
      {first === undefined ? null : <CellLink cell={first} />}
      <span className={styles.message}>
        {message}{' '}
        <Link
          href={`help.html#${code}`}
          target="_blank"
          rel="noopener"
          className={styles.why}
          aria-label={`Why? ${code}`}
        >
          Why?
        </Link>
        {others.length === 0 ? null : (
          <span className={styles.others}>
            {`Also ${count(others.length, 'cell')}: `}
            {others.slice(0, MOST_CELLS).map((cell) => (
              <CellLink key={sayWhere(cell.where)} cell={cell} />
            ))}
            {others.length > MOST_CELLS ? `and ${others.length - MOST_CELLS} more` : null}
          </span>
        )}
      </span>
    </li>
  );
}

function CellLink({ cell }: { readonly cell: FoundCell }): ReactNode {
  const { state, actions } = usePane();
  const { name, where } = cell;
  if (openHostOf(state)?.can.showCells !== true) return <span>{name}</span>;
  return (
    <Link
      as="button"
      aria-label={`Show ${sayWhere(where)}`}
      onClick={() => void actions.show(where)}
    >
      {name}
    </Link>
  );
}
