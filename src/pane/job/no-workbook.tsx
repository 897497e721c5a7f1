import { Button, makeStyles, mergeClasses, tokens } from '@fluentui/react-components';
import { useEffect, useState, type DragEvent, type ReactNode } from 'react';
import { Section } from '../style/section.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import type { NoWorkbook as NoWorkbookReason } from '../services.ts';
import { usePane } from '../use-pane.ts';
import { OpenFile } from './open-file.tsx';

const useStyles = makeStyles({
  drop: {
    border: `1px dashed ${tokens.colorNeutralStrokeAccessible}`,
    borderRadius: tokens.borderRadiusMedium,
    padding: '12px',
  },
  over: { backgroundColor: tokens.colorNeutralBackground1Hover },
});

const WHY: Readonly<Record<NoWorkbookReason, string>> = {
  'plain page': 'No workbook stands beside this pane.',
  'other program': 'No workbook stands beside this pane: the program around it is not Excel.',
  'no library':
    'No workbook stands beside this pane. If that is Excel around it, its library did not come: check the connection to the network and load the pane again.',
};

/** No workbook stands beside the pane: a file is opened in its place, or made. */
export function NoWorkbook({ why }: { readonly why: NoWorkbookReason }): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const { actions, state } = usePane();
  const [over, setOver] = useState(false);
  const working = state.busy !== undefined;
  // A file that is dropped beside the frame would else take the pane's place in the window.
  useEffect(() => {
    const keep = (event: Event): void => event.preventDefault();
    const events = ['dragover', 'drop'] as const;
    for (const name of events) window.addEventListener(name, keep);
    return () => {
      for (const name of events) window.removeEventListener(name, keep);
    };
  }, []);
  const drop = (event: DragEvent): void => {
    event.preventDefault();
    setOver(false);
    const [file] = event.dataTransfer.files;
    if (file !== undefined) void actions.openFile(file);
  };
  return (
    <>
      <Section title="Open your trim list">
        <p className={shared.text}>
          {WHY[why]} A workbook saved as .xlsx can be opened here: it is read, checked and planned,
          and the sheets come as a file to keep.
        </p>
        {why === 'no library' ? (
          <div className={shared.buttons}>
            <Button size="small" onClick={() => window.location.reload()}>
              Load the pane again
            </Button>
          </div>
        ) : null}
        <div
          className={mergeClasses(styles.drop, over && styles.over)}
          onDragOver={(event) => {
            event.preventDefault();
            setOver(true);
          }}
          onDragLeave={() => setOver(false)}
          onDrop={drop}
        >
          <OpenFile label="Open a workbook (.xlsx)" primary />
          <p className={shared.quiet} style={{ margin: 0 }}>
            or drop it here
          </p>
        </div>
      </Section>
      <Section title="Begin with a new one">
        <p className={shared.text}>
          A workbook with the sheets Runs, Walls, Trim, Openings, Profiles, Shop, Stock and Work to
          fill in; or the same filled in, the trim of an invented library.
        </p>
        <div className={shared.buttons}>
          <Button disabledFocusable={working} onClick={() => void actions.makeInput('blank')}>
            Save a blank workbook
          </Button>
          <Button disabledFocusable={working} onClick={() => void actions.makeInput('metric')}>
            Save a blank one in mm
          </Button>
          <Button disabledFocusable={working} onClick={() => void actions.makeInput('demo')}>
            Try the demo
          </Button>
        </div>
      </Section>
    </>
  );
}
