/** Takes a table of the person's own for one of the job's: which of its columns stands for which. */
import {
  Button,
  Checkbox,
  makeStyles,
  mergeClasses,
  Select,
  tokens,
} from '@fluentui/react-components';
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
import { headNotUsed, saysNotUsed } from '../../planning/input/headings/meant-headings.ts';
import { sayUnit } from '../../planning/input/headings/unit-of-heading.ts';
import { leftOverColumns, previewRows } from './preview-rows.ts';
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
        onChange={(_, { value }) => void actions.choosePlace(value)}
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
          <LeftOver mapping={mapping} />
          <Preview mapping={mapping} />
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

/** Filled columns that stand for nothing: where one may be meant, it is asked about until it is said. */
function LeftOver({ mapping }: { readonly mapping: MappingState }): ReactNode {
  const shared = useSharedStyles();
  const { send } = usePane();
  const { raw, columns } = mapping;
  if (raw === undefined) return null;
  const said = Object.entries(columns).filter(([heading]) => saysNotUsed(heading));
  const names = [...said.map(([, theirs]) => theirs), ...leftOverColumns(raw, columns)];
  if (names.length === 0) return null;
  const isSaid = (theirs: string): boolean => said.some(([, one]) => one === theirs);
  return (
    <fieldset style={{ border: 0, margin: 0, padding: 0 }}>
      <legend className={shared.quiet}>Your columns that stand for none of ours</legend>
      {names.map((theirs) => (
        <Checkbox
          key={theirs}
          label={`${theirs} is not used`}
          checked={isSaid(theirs)}
          onChange={(_, { checked }) =>
            send({
              type: 'column chosen',
              heading: headNotUsed(theirs),
              theirs: checked === true ? theirs : '',
            })
          }
        />
      ))}
    </fieldset>
  );
}

/** The first rows as they will be read, as the choice changes. */
function Preview({ mapping }: { readonly mapping: MappingState }): ReactNode {
  const shared = useSharedStyles();
  const id = useId();
  const shop = usePane().state.reading.found?.shop;
  const { raw, table, columns } = mapping;
  if (raw === undefined || shop === undefined) return null;
  const rows = previewRows(raw, table, columns, shop);
  if (rows.length === 0) return null;
  return (
    <>
      <p id={id} className={shared.quiet} style={{ marginBlock: '8px 2px' }}>
        Your first rows, as they will be read
      </p>
      <ol className={shared.plainList} aria-labelledby={id} aria-live="polite">
        {rows.map(({ cells, messages }, at) => (
          <li key={at} className={shared.row}>
            {cells.map(({ heading, text }) => `${heading} ${text}`).join(' · ')}
            {messages.map((message) => (
              <p key={message} className={shared.quiet} style={{ margin: 0 }}>
                {message}
              </p>
            ))}
          </li>
        ))}
      </ol>
    </>
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
