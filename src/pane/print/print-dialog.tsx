/** What comes out of the printer, seen before: chosen, printed, or kept as a page. */
import { Button, makeStyles, Select, tokens } from '@fluentui/react-components';
import { useId, useLayoutEffect, useRef, useState, type ReactNode } from 'react';
import { count } from '../../sheets/words/print-length.ts';
import type { PrintedPages } from '../services.ts';
import { Modal } from '../style/modal.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';
import type { PrintChoice } from './print-choices.ts';

const PIXELS_PER_INCH = 96;
const GROUPS = ['One set-up', 'One room', 'One sheet'] as const;

const useStyles = makeStyles({
  preview: {
    height: '46vh',
    overflowY: 'auto',
    overflowX: 'hidden',
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    marginBlock: '8px',
  },
  frame: { display: 'block', border: 'none', transformOrigin: '0 0' },
});

export function PrintDialog(): ReactNode {
  const shared = useSharedStyles();
  const { state, send, services } = usePane();
  const frame = useRef<HTMLIFrameElement>(null);
  const [isRefused, setRefused] = useState(false);
  const { printing } = state;
  if (printing === undefined) return null;
  const { choices, chosen, pages } = printing;
  const name = choices.find(({ key }) => key === chosen)?.label ?? '';
  const isEmpty = pages === undefined || pages.blocks === 0;
  const close = (): void => {
    setRefused(false);
    send({ type: 'print put away' });
  };
  const print = (): void => {
    try {
      frame.current?.contentWindow?.focus();
      frame.current?.contentWindow?.print();
    } catch {
      setRefused(true);
    }
  };
  const save = (): void => {
    if (pages === undefined) return;
    const file = `${name.replace(/[^\p{Letter}\p{Number} _-]+/gu, ' ').trim() || 'Pages'}.html`;
    services.saveFile(file, new TextEncoder().encode(pages.html));
  };
  return (
    <Modal
      title="Print"
      open
      onDrop={close}
      buttons={
        <>
          <Button appearance="primary" disabledFocusable={isEmpty} onClick={print}>
            Print
          </Button>
          <Button disabledFocusable={isEmpty} onClick={save}>
            Save as a page
          </Button>
          <Button onClick={close}>Close</Button>
        </>
      }
    >
      {choices.length < 2 ? null : <Choice choices={choices} chosen={chosen} />}
      {pages === undefined ? (
        <p className={shared.text}>Laying the pages out…</p>
      ) : isEmpty ? (
        <p className={shared.text}>Nothing of it would be printed.</p>
      ) : (
        <Preview pages={pages} name={name} frame={frame} />
      )}
      <p className={shared.quiet} style={{ margin: 0 }}>
        {isRefused
          ? 'This program prints nothing itself: save the page, and print it from a browser.'
          : 'Leave the printer’s scale at 100 %. Where nothing comes, save the page and print it from a browser.'}
      </p>
    </Modal>
  );
}

function Choice(props: {
  readonly choices: readonly PrintChoice[];
  readonly chosen: string;
}): ReactNode {
  const shared = useSharedStyles();
  const { actions } = usePane();
  const id = useId();
  const { choices, chosen } = props;
  return (
    <div>
      <label htmlFor={id}>What is printed</label>
      <Select
        id={id}
        className={shared.select}
        value={chosen}
        onChange={(_, { value }) => {
          const choice = choices.find(({ key }) => key === value);
          if (choice !== undefined) void actions.choosePrint(choice);
        }}
      >
        {GROUPS.map((group) => {
          const ofGroup = choices.filter((one) => one.group === group);
          if (ofGroup.length === 0) return null;
          return (
            <optgroup key={group} label={group}>
              {ofGroup.map(({ key, label }) => (
                <option key={key} value={key}>
                  {label}
                </option>
              ))}
            </optgroup>
          );
        })}
      </Select>
    </div>
  );
}

/** The document itself, as wide as there is room: what is printed is what is seen. */
function Preview(props: {
  readonly pages: PrintedPages;
  readonly name: string;
  readonly frame: React.RefObject<HTMLIFrameElement | null>;
}): ReactNode {
  const styles = useStyles();
  const place = useRef<HTMLDivElement>(null);
  const [room, setRoom] = useState(240);
  const [height, setHeight] = useState(0);
  const { pages, name, frame } = props;
  useLayoutEffect(() => {
    if (place.current !== null) setRoom(place.current.clientWidth);
  }, []);
  const width = pages.width * PIXELS_PER_INCH;
  const scale = room / width;
  return (
    <div
      ref={place}
      className={styles.preview}
      role="region"
      aria-label={`Preview: ${count(pages.blocks, 'part')}, each on a new page`}
      tabIndex={0}
    >
      <div style={{ height: height * scale, overflow: 'hidden' }}>
        <iframe
          ref={frame}
          className={styles.frame}
          title={`${name}, as it is printed`}
          tabIndex={-1}
          // Nothing in it runs; its dialog for printing may open.
          sandbox="allow-same-origin allow-modals"
          srcDoc={pages.html}
          style={{ width, height, transform: `scale(${scale})` }}
          onLoad={({ currentTarget }) =>
            setHeight(currentTarget.contentDocument?.documentElement.scrollHeight ?? 0)
          }
        />
      </div>
    </div>
  );
}
