/** What is made of a plan: the sheets, in the workbook or as a file; the client's copy; files for other programs. */
import { Button, Checkbox, ProgressBar } from '@fluentui/react-components';
import { useId, type ReactNode } from 'react';
import { sayWritten } from '../job/say-findings.ts';
import { Message } from '../style/messages.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { isOccupied } from '../state/is-occupied.ts';
import { nextStepOf } from '../state/next-step.ts';
import { openHostOf } from '../state/open-host.ts';
import { usePane } from '../use-pane.ts';
import { sayNewTicks } from './say-ticks.ts';
import { WriteDialog } from './write-dialog.tsx';

/** @param props.isOld Whether the inputs have changed since the plan. */
export function WriteSheets({
  isOld,
  hasSetUps,
}: {
  readonly isOld: boolean;
  readonly hasSetUps: boolean;
}): ReactNode {
  const shared = useSharedStyles();
  const { state, send, actions, services } = usePane();
  const { writing, busy, keepsFormulas } = state;
  const reasonId = useId();
  const ticksId = useId();
  const newTicks = sayNewTicks(state.planning);
  const inPlace = openHostOf(state)?.can.writeInPlace !== false;
  const isWritten = nextStepOf(state)?.kind === 'written';
  const blocked = {
    disabledFocusable: isOccupied(state) || busy !== undefined || isOld,
    ...(isOld ? { 'aria-describedby': reasonId } : {}),
  };
  return (
    <>
      <div className={shared.buttons}>
        <Button
          appearance={isWritten ? 'secondary' : 'primary'}
          {...blocked}
          {...(newTicks === undefined || isOld
            ? {}
            : { disabledFocusable: true, 'aria-describedby': ticksId })}
          onClick={() => void actions.askToWrite()}
        >
          {inPlace ? 'Write the sheets' : 'Save the sheets as a file'}
        </Button>
        <Button
          appearance={isWritten ? 'primary' : 'secondary'}
          {...blocked}
          onClick={() => void actions.printPlan()}
        >
          Print by choice
        </Button>
        {services.showSawView === undefined ? null : (
          <Button {...blocked} onClick={() => void actions.showShopView()}>
            At the saw
          </Button>
        )}
        <Button {...blocked} onClick={() => void actions.saveShopView()}>
          Save a page for the saw
        </Button>
        <Button {...blocked} onClick={() => void actions.saveClient()}>
          Save the client’s copy
        </Button>
        <Button {...blocked} onClick={() => void actions.saveExports()}>
          Save drawings and lists
        </Button>
      </div>
      {hasSetUps ? (
        <Checkbox
          checked={keepsFormulas}
          onChange={(_, { checked }) => send({ type: 'formulas kept', keeps: checked === true })}
          label="Keep the set-up numbers as formulas"
        />
      ) : null}
      {newTicks === undefined || isOld ? null : (
        <p id={ticksId} className={shared.text}>
          {newTicks}
        </p>
      )}
      {isOld ? (
        <p id={reasonId} className={shared.text}>
          This plan is of inputs that have changed since: plan again, then it can be written.
        </p>
      ) : null}
      {writing.kind === 'writing' ? (
        <ProgressBar
          {...(writing.of === 0 ? {} : { value: writing.done / writing.of })}
          aria-label="Writing the sheets"
          thickness="large"
        />
      ) : null}
      {writing.kind === 'written' && !isOld ? (
        <Message intent="success">{sayWritten(writing.sheets, writing.file)}</Message>
      ) : null}
      <WriteDialog />
    </>
  );
}
