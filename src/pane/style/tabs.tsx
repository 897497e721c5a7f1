/**
 * Tabs as WAI-ARIA's authoring practices describe them (Tabs pattern, automatic activation). Fluent's
 * own list puts hidden places to focus beside its tabs, which a check for accessibility rejects.
 */
import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components';
import { useRef, type KeyboardEvent, type ReactNode } from 'react';
import { nextTab } from './next-tab.ts';

const useStyles = makeStyles({
  list: {
    display: 'flex',
    columnGap: '2px',
    // Letters twice as large in a narrow pane.
    '@media (max-width: 240px)': { flexWrap: 'wrap' },
  },
  tab: {
    position: 'relative',
    border: 'none',
    backgroundColor: 'transparent',
    color: tokens.colorNeutralForeground2,
    font: 'inherit',
    padding: '5px 8px 7px',
    borderRadius: tokens.borderRadiusMedium,
    cursor: 'pointer',
    // Transparent lines are drawn where the system forces its colors, and the chosen tab has one more.
    borderBottom: '3px solid transparent',
    ':hover': { color: tokens.colorNeutralForeground1 },
    ':focus-visible': {
      outline: `2px solid ${tokens.colorStrokeFocus2}`,
      outlineOffset: '-2px',
    },
    // Room for the bold letters, so that nothing moves when a tab is chosen.
    '::after': {
      content: 'attr(data-title)',
      display: 'block',
      height: 0,
      overflow: 'hidden',
      visibility: 'hidden',
      fontWeight: tokens.fontWeightSemibold,
    },
  },
  chosen: {
    color: tokens.colorNeutralForeground1,
    fontWeight: tokens.fontWeightSemibold,
    borderBottomColor: tokens.colorCompoundBrandStroke,
    borderBottomLeftRadius: 0,
    borderBottomRightRadius: 0,
  },
  forced: {
    '@media (forced-colors: active)': {
      borderBottomColor: 'Canvas',
    },
  },
  forcedChosen: {
    '@media (forced-colors: active)': {
      borderBottomColor: 'Highlight',
    },
  },
});

export interface TabTitle<Name extends string> {
  readonly name: Name;
  readonly title: string;
}

export function Tabs<Name extends string>(props: {
  readonly label: string;
  readonly tabs: readonly TabTitle<Name>[];
  readonly chosen: Name;
  readonly onChoose: (name: Name) => void;
}): ReactNode {
  const styles = useStyles();
  const { label, tabs, chosen, onChoose } = props;
  const list = useRef<HTMLDivElement>(null);
  const onKeyDown = (event: KeyboardEvent): void => {
    const names = tabs.map(({ name }) => name);
    const next = nextTab(names, chosen, event.key);
    if (next === undefined) return;
    event.preventDefault();
    onChoose(next);
    list.current?.querySelector<HTMLElement>(`#${tabId(next)}`)?.focus();
  };
  return (
    <div ref={list} role="tablist" aria-label={label} className={styles.list} onKeyDown={onKeyDown}>
      {tabs.map(({ name, title }) => {
        const isChosen = name === chosen;
        return (
          <button
            key={name}
            type="button"
            role="tab"
            id={tabId(name)}
            aria-selected={isChosen}
            {...(isChosen ? { 'aria-controls': panelId(name) } : {})}
            tabIndex={isChosen ? 0 : -1}
            data-title={title}
            className={mergeClasses(
              styles.tab,
              styles.forced,
              isChosen && styles.chosen,
              isChosen && styles.forcedChosen,
            )}
            onClick={() => onChoose(name)}
          >
            {title}
          </button>
        );
      })}
    </div>
  );
}

export function TabPanel(props: {
  readonly name: string;
  readonly children: ReactNode;
}): ReactNode {
  return (
    <div
      role="tabpanel"
      id={panelId(props.name)}
      aria-labelledby={tabId(props.name)}
      // Takes the focus when what had it is gone.
      tabIndex={-1}
      style={{ outline: 'none' }}
    >
      {props.children}
    </div>
  );
}

function tabId(name: string): string {
  return `tab-${name}`;
}

export function panelId(name: string): string {
  return `panel-${name}`;
}
