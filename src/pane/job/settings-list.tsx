import { Link, makeStyles, tokens } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { Disclosure } from '../style/disclosure.tsx';
import { Section } from '../style/section.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { openHostOf } from '../state/open-host.ts';
import { usePane } from '../use-pane.ts';
import type { JobFound, SettingRow } from './job-found.ts';

const useStyles = makeStyles({
  row: {
    display: 'grid',
    gridTemplateColumns: 'minmax(0, 1fr) auto',
    columnGap: '8px',
    alignItems: 'baseline',
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    paddingBlock: '4px',
  },
  value: { textAlign: 'end', fontVariantNumeric: 'tabular-nums' },
});

/** The settings in force. They live in the Shop sheet and are changed there. */
export function SettingsList({ found }: { readonly found: JobFound }): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const { settings } = found;
  return (
    <Section title="Shop settings">
      <p className={shared.text}>{sayUsualCount(found)}</p>
      <Disclosure summary="Settings in force">
        <ul className={shared.plainList}>
          {settings.map((setting) => (
            <li key={setting.name} className={styles.row}>
              <SettingName setting={setting} />
              <span className={styles.value}>
                {setting.value}
                {setting.usual ? <span className={shared.quiet}> usual value</span> : null}
              </span>
            </li>
          ))}
        </ul>
      </Disclosure>
    </Section>
  );
}

const CHANGED_THERE = 'They are changed in the Shop sheet.';

function sayUsualCount({ settings, tables }: JobFound): string {
  const usual = settings.filter((one) => one.usual).length;
  const isThere = tables.some(({ name, place }) => name === 'Shop' && place !== undefined);
  if (!isThere)
    return 'There is no Shop table, so all stand at their usual values. Make one above, and give your own.';
  if (usual === 0) return `None of them is left to its usual value. ${CHANGED_THERE}`;
  return `${usual} of ${settings.length} stand at their usual value, since the Shop sheet leaves them open. ${CHANGED_THERE}`;
}

function SettingName({ setting }: { readonly setting: SettingRow }): ReactNode {
  const { state, actions } = usePane();
  const { name, where } = setting;
  if (where === undefined || openHostOf(state)?.can.showCells !== true) return <span>{name}</span>;
  return (
    <Link
      as="button"
      aria-label={`${name}: show its cell`}
      onClick={() => void actions.show(where)}
    >
      {name}
    </Link>
  );
}
