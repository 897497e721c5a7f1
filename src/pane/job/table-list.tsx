/** The job's five tables: where each stands, and what to do where one doesn't. */
import { Button, makeStyles, mergeClasses, Select, tokens } from '@fluentui/react-components';
import { useEffect, useId, useRef, type ReactNode } from 'react';
import { sayArgument } from '../../core/faults/argument.ts';
import { sameName } from '../../planning/job.ts';
import { count } from '../../sheets/words/print-length.ts';
import { nextStepOf } from '../state/next-step.ts';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';
import type { JobFound, TableMatch } from './job-found.ts';
import { MapTable } from './map-table.tsx';
import { sayList } from './say-findings.ts';
import { sayPlace } from './say-tables.ts';

const useStyles = makeStyles({
  // Where letters are large and the pane is narrow, what doesn't fit goes to the next line.
  line: { display: 'flex', flexWrap: 'wrap', columnGap: '6px', alignItems: 'center' },
  name: { flex: '0 0 78px' },
  stand: { flex: '1 1 60px' },
  button: { minWidth: 0 },
  missing: { color: tokens.colorStatusDangerForeground3, fontWeight: tokens.fontWeightSemibold },
});

export function TableList({ found }: { readonly found: JobFound }): ReactNode {
  const shared = useSharedStyles();
  return (
    <>
      <ul className={shared.plainList} aria-label="Tables of the job">
        {found.tables.map((standing) => (
          <TableRow key={standing.name} standing={standing} found={found} />
        ))}
      </ul>
      <MakeSheets tables={found.tables} />
    </>
  );
}

function TableRow(props: { readonly standing: TableMatch; readonly found: JobFound }): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const { state, send, actions } = usePane();
  const opener = useRef<HTMLButtonElement | null>(null);
  const { standing, found } = props;
  const { name, place, alike, required } = standing;
  const missing = place === undefined && (required || standing.choice !== undefined);
  const mapping = state.mapping?.table === name ? state.mapping : undefined;
  const places = found.survey.places;
  const lacking = lackingColumns(standing, found);
  const close = (): void => send({ type: 'mapping ended' });
  // However it is closed, the keyboard goes back to the button that opened it.
  const wasOpen = useRef(false);
  const isClosed = state.mapping === undefined;
  useEffect(() => {
    if (wasOpen.current && isClosed) opener.current?.focus();
    wasOpen.current = mapping !== undefined;
  }, [mapping, isClosed]);
  return (
    <li className={shared.row}>
      <div className={styles.line}>
        <span className={mergeClasses(shared.strong, styles.name)}>{name}</span>
        <span className={mergeClasses(shared.quiet, styles.stand, missing && styles.missing)}>
          {sayStand(standing)}
        </span>
        {places.length === 0 ? null : (
          <Button
            ref={(button: HTMLButtonElement | null) => {
              opener.current = button;
            }}
            size="small"
            appearance="subtle"
            className={styles.button}
            aria-expanded={mapping !== undefined}
            aria-label={`${place === undefined ? 'Choose a table for' : 'Change the table for'} ${name}`}
            onClick={() => (mapping === undefined ? void actions.beginMapping(name) : close())}
          >
            {place === undefined ? 'Choose' : 'Change'}
          </Button>
        )}
      </div>
      {alike.length > 0 && place === undefined ? <Alike standing={standing} /> : null}
      {lacking.length > 0 && mapping === undefined ? (
        <p className={shared.quiet} style={{ margin: 0 }}>
          {`Has no column headed ${sayList(lacking)}. Headed otherwise? Say under Change which of its columns is meant.`}
        </p>
      ) : null}
      {mapping === undefined ? null : (
        <MapTable mapping={mapping} places={places} standing={standing} close={close} />
      )}
    </li>
  );
}

/** Needed columns that the table has under no heading of ours, or no longer under the chosen one. */
function lackingColumns({ place }: TableMatch, { faults }: JobFound): readonly string[] {
  return faults
    .filter(({ code, where }) => {
      const isHere = where !== undefined && 'sheet' in where && where.sheet === place?.sheet;
      return code === 'table.heading-missing' && isHere;
    })
    .map(({ argument }) => sayArgument(argument));
}

function sayStand({ name, required, place, alike, choice }: TableMatch): string {
  if (place !== undefined) {
    const chosen = choice?.columns === undefined ? '' : ', by your choice of columns';
    const rows = count(place.rowCount, 'row');
    // On the sheet that is named for it the name needs no saying twice.
    return `${sameName(place.sheet, name) ? rows : `${sayPlace(place)}, ${rows}`}${chosen}`;
  }
  if (choice !== undefined) return `${sayPlace(choice)}, by your choice, is gone`;
  if (alike.length > 0) return 'which one?';
  return required ? 'missing' : 'none (may be left out)';
}

/** Several tables could be this one: the person says which. */
function Alike({ standing }: { readonly standing: TableMatch }): ReactNode {
  const shared = useSharedStyles();
  const { actions } = usePane();
  const id = useId();
  const { name, alike } = standing;
  return (
    <>
      <label htmlFor={id} className={shared.quiet}>
        {`${alike.length} tables could be ${name}. Which one is it?`}
      </label>
      <Select
        id={id}
        size="small"
        value=""
        onChange={(_, { value }) => void actions.takeAsItIs(name, value)}
      >
        <option value="" disabled>
          Choose one
        </option>
        {alike.map((place) => (
          <option key={place.key} value={place.key}>
            {`${sayPlace(place)} (${count(place.rowCount, 'row')})`}
          </option>
        ))}
      </Select>
    </>
  );
}

/** Offers the sheets that aren't there; the demo only where nothing of the person's own is. */
function MakeSheets({ tables }: { readonly tables: readonly TableMatch[] }): ReactNode {
  const shared = useSharedStyles();
  const { actions, state } = usePane();
  const absent = tables.filter(
    ({ place, alike, choice }) => place === undefined && alike.length === 0 && choice === undefined,
  );
  const none = absent.length === tables.length;
  const isBegun = nextStepOf(state)?.kind !== 'begin';
  // Where there is no list, the doors make the sheets.
  if (absent.length === 0 || (none && !isBegun)) return null;
  const needed = absent.some(({ required }) => required);
  const names = sayList(absent.map(({ name }) => name));
  const working = state.busy !== undefined;
  return (
    <>
      {needed ? (
        <p className={shared.text} style={{ marginBlockStart: 8 }}>
          {none
            ? 'There are no input tables here yet. Make sheets to fill in, or choose tables that you have.'
            : 'Make the missing sheets, or choose tables that you have.'}
        </p>
      ) : null}
      <div className={shared.buttons}>
        <Button
          appearance={needed ? 'primary' : 'secondary'}
          {...(needed ? {} : { size: 'small' })}
          disabledFocusable={working}
          onClick={() => void actions.makeInput('blank')}
        >
          {none
            ? 'Make blank input sheets'
            : `Make ${absent.length === 1 ? 'a sheet' : 'sheets'} for ${names}`}
        </Button>
        {none ? (
          <>
            <Button disabledFocusable={working} onClick={() => void actions.makeInput('metric')}>
              Make blank ones in mm
            </Button>
            <Button disabledFocusable={working} onClick={() => void actions.makeInput('demo')}>
              {"Make the demo's sheets"}
            </Button>
          </>
        ) : null}
      </div>
    </>
  );
}
