/** Takes a table of the person's own for one of the job's: which of its columns stands for which. */
import { Button, makeStyles, mergeClasses, Select, tokens } from '@fluentui/react-components';
import { useId, type ReactNode } from 'react';
import type { TablePlace } from '../../hosts/host.ts';
import { TABLE_HEADINGS } from '../../planning/input/headings/table-headings.ts';
import { count } from '../../sheets/words/print-length.ts';
import { Disclosure } from '../style/disclosure.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import type { MappingState } from '../state/pane-state.ts';
import { usePane } from '../use-pane.ts';
import type { TableMatch } from './job-found.ts';
import { otherUnit } from '../../planning/input/heading-units.ts';
import { sayUnit } from '../../planning/input/headings/unit-of-heading.ts';
import { listColumnChoices, unfilledColumns } from './column-choices.ts';
import { sayList } from './say-findings.ts';
import { sayPlace } from './say-tables.ts';

const useStyles = makeStyles({
  panel: {
    marginBlockStart: '8px',
    padding: '10px',
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    borderRadius: tokens.borderRadiusMedium,
  },
  pair: {
    display: 'grid',
    gridTemplateColumns: 'repeat(auto-fit, minmax(min(96px, 100%), 1fr))',
    columnGap: '8px',
    alignItems: 'center',
    paddingBlock: '3px',
  },
  unit: { gridColumn: '1 / -1', textAlign: 'end' },
  // Fluent gives a select a width of its own, too wide for half a narrow pane.
  choice: { minWidth: 0, '& select': { minWidth: 0, width: '100%', textOverflow: 'ellipsis' } },
});

export function MapTable(props: {
  readonly mapping: MappingState;
  readonly places: readonly TablePlace[];
  readonly standing: TableMatch;
  readonly close: () => void;
}): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const { actions, state } = usePane();
  const id = useId();
  const { mapping, places, standing, close } = props;
  const shopUnit = sayUnit(state.reading.found?.shop.unit ?? 'in');
  const { table, placeKey, columns } = mapping;
  const place = places.find(({ key }) => key === placeKey);
  const headings = TABLE_HEADINGS[table];
  const unfilled = unfilledColumns(table, columns);
  return (
    <div className={styles.panel} role="group" aria-label={`A table for ${table}`}>
      <label htmlFor={id} className={shared.text}>
        {`Which table is ${table}?`}
      </label>
      <Select
        id={id}
        className={styles.choice}
        value={placeKey ?? ''}
        onChange={(_, { value }) => actions.choosePlace(value)}
      >
        <option value="" disabled>
          Choose a table
        </option>
        {places.map((one) => (
          <option key={one.key} value={one.key}>
            {`${sayPlace(one)} (${count(one.rowCount, 'row')})`}
          </option>
        ))}
      </Select>
      {place === undefined ? null : (
        <>
          <p className={shared.quiet} style={{ marginBlock: '8px 4px' }}>
            {`Which of your columns stands for which of ours? Guessed where it can be; your table stays as it is. Bare numbers are lengths in ${shopUnit}, but where a heading names another unit.`}
          </p>
          {headings
            .filter(({ required }) => required === true)
            .map(({ heading }) => (
              <ColumnPair
                key={heading}
                heading={heading}
                required
                mapping={mapping}
                place={place}
              />
            ))}
          <Disclosure summary="Columns that may be left out">
            {headings
              .filter(({ required }) => required !== true)
              .map(({ heading }) => (
                <ColumnPair
                  key={heading}
                  heading={heading}
                  required={false}
                  mapping={mapping}
                  place={place}
                />
              ))}
          </Disclosure>
          {unfilled.length === 0 ? null : (
            <p className={shared.text}>{`${sayList(unfilled)} still needed.`}</p>
          )}
        </>
      )}
      <div className={shared.buttons} style={{ marginBlockEnd: 0 }}>
        <Button
          appearance="primary"
          disabledFocusable={place === undefined || unfilled.length > 0}
          onClick={() => void actions.keepMapping()}
        >
          Use this table
        </Button>
        {standing.choice === undefined ? null : (
          <Button onClick={() => void actions.forgetChoice(table)}>Forget my choice</Button>
        )}
        <Button onClick={close}>Cancel</Button>
      </div>
    </div>
  );
}

function ColumnPair(props: {
  readonly heading: string;
  readonly required: boolean;
  readonly mapping: MappingState;
  readonly place: TablePlace;
}): ReactNode {
  const styles = useStyles();
  const shared = useSharedStyles();
  const { send, state } = usePane();
  const id = useId();
  const { heading, required, mapping, place } = props;
  const shopUnit = state.reading.found?.shop.unit ?? 'in';
  const unit = otherUnit(heading, mapping.columns[heading] ?? '', shopUnit);
  return (
    <div className={styles.pair}>
      <label htmlFor={id}>{required ? `${heading} (needed)` : heading}</label>
      <Select
        id={id}
        size="small"
        className={styles.choice}
        value={mapping.columns[heading] ?? ''}
        onChange={(_, { value }) => send({ type: 'column chosen', heading, theirs: value })}
      >
        <option value="">none</option>
        {listColumnChoices(place.headings).map((theirs) => (
          <option key={theirs} value={theirs}>
            {theirs}
          </option>
        ))}
      </Select>
      {unit === undefined ? null : (
        <span className={mergeClasses(shared.quiet, styles.unit)}>
          {`Its bare numbers are read as ${sayUnit(unit)}.`}
        </span>
      )}
    </div>
  );
}
