/** Holds the plan against the written sheets, an earlier workbook or a client's copy, and shows what differs. */
import { Button } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { sayFault } from '../../core/faults/fault.ts';
import { sayMoney } from '../../core/units/say-money.ts';
import type { Comparison } from '../../planning/compare/comparison.ts';
import type { Shop } from '../../planning/shop.ts';
import { listLost, sayCut, sayNeed, sayOpen } from '../../sheets/changes/changes-words.ts';
import { COUNTS_NOTE, sayAccepted, sayOtherwise } from '../../sheets/words/say-copy.ts';
import type { ReturnedCopy } from '../../planning/compare/returned-copy.ts';
import { OpenFile } from '../job/open-file.tsx';
import { isOccupied } from '../state/is-occupied.ts';
import { openHostOf } from '../state/open-host.ts';
import type { Compared } from '../state/pane-state.ts';
import { Disclosure } from '../style/disclosure.tsx';
import { Message } from '../style/messages.tsx';
import { NumberList } from '../style/number-list.tsx';
import { Section } from '../style/section.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';
import {
  sayCompared,
  sayCopyLines,
  sayCopyTotals,
  sayProfilesCompared,
  sayRuns,
  sayTotals,
  type ChangedRow,
} from './say-compared.ts';

export function ComparePlans(): ReactNode {
  const shared = useSharedStyles();
  const { state, send, actions } = usePane();
  const { compared, comparisonRefused, planning } = state;
  const blocked = isOccupied(state) || state.busy !== undefined;
  const { written, result } = planning;
  const isOther = written !== undefined && written.plan !== result?.plan;
  return (
    <Section title="Compare">
      <p className={shared.text}>
        With an earlier workbook that carries its plan, or with a client’s copy that came back.
      </p>
      <OpenFile
        label="Compare with a file…"
        disabled={blocked}
        onFile={(file) => void actions.compareFile(file)}
      />
      {isOther ? (
        <div className={shared.buttons}>
          <Button disabledFocusable={blocked} onClick={() => void actions.compareWritten()}>
            Compare with the written sheets
          </Button>
        </div>
      ) : null}
      {comparisonRefused === undefined ? null : (
        <>
          <Message intent="error">{`${comparisonRefused.name} can’t be compared with.`}</Message>
          <Told title="Problems" texts={comparisonRefused.faults.map(sayFault)} />
        </>
      )}
      {compared === undefined ? null : (
        <>
          <ComparedView compared={compared} />
          <div className={shared.buttons}>
            {openHostOf(state)?.can.writeInPlace === true ? (
              <Button disabledFocusable={blocked} onClick={() => void actions.writeChanges()}>
                Write the sheet Changes
              </Button>
            ) : null}
            <Button disabledFocusable={blocked} onClick={() => void actions.saveChanges()}>
              Save the changes as a file
            </Button>
            <Button onClick={() => send({ type: 'comparison put away' })}>Put away</Button>
          </div>
        </>
      )}
    </Section>
  );
}

function ComparedView({ compared }: { readonly compared: Compared }): ReactNode {
  const shared = useSharedStyles();
  const { files, job } = compared;
  return (
    <>
      <p className={shared.text}>
        <strong>{sayCompared(compared)}</strong>
      </p>
      {compared.kind === 'plans' ? (
        <PlansView comparison={compared.comparison} shop={job.shop} />
      ) : (
        <CopyView copy={compared.returned} shop={job.shop} />
      )}
      <p className={shared.quiet}>
        {compared.kind === 'plans'
          ? `Before: ${files.before} After: ${files.after}`
          : `Plan: ${files.before} Client’s copy: ${files.after}`}
      </p>
    </>
  );
}

function PlansView(props: { readonly comparison: Comparison; readonly shop: Shop }): ReactNode {
  const shared = useSharedStyles();
  const { comparison, shop } = props;
  const cut = sayCut(comparison);
  const open = sayOpen(comparison, (cents) => sayMoney(cents, shop.currency, shop.decimalSign));
  const runs = sayRuns(comparison, shop);
  return (
    <>
      <NumberList rows={sayTotals(comparison, shop)} />
      {runs.length === 0 ? null : (
        <Disclosure summary={`Run by run (${runs.length})`}>
          <Rows rows={runs} />
        </Disclosure>
      )}
      <Disclosure summary="Profile by profile">
        <Rows rows={sayProfilesCompared(comparison, shop)} />
      </Disclosure>
      {cut === undefined ? null : <p className={shared.text}>{cut}</p>}
      <Told
        title="Cut or done, and not asked for as it is"
        texts={listLost(comparison).map((one) => `${one.id}, ${one.profile}: ${sayNeed(one)}`)}
      />
      {open === undefined ? null : <p className={shared.text}>{open}</p>}
    </>
  );
}

function CopyView(props: { readonly copy: ReturnedCopy; readonly shop: Shop }): ReactNode {
  const shared = useSharedStyles();
  const { copy, shop } = props;
  const lines = sayCopyLines(copy, shop);
  const otherwise = sayOtherwise(copy);
  return (
    <>
      <NumberList rows={sayCopyTotals(copy, shop)} />
      {lines.length === 0 ? null : (
        <>
          <Rows rows={lines} />
          <p className={shared.quiet}>{COUNTS_NOTE}</p>
        </>
      )}
      <p className={shared.text}>{sayAccepted(copy)}</p>
      {otherwise === undefined ? null : <Message intent="warning">{otherwise}</Message>}
      {/* Their cells are the copy's: none of the workbook beside can be shown for them. */}
      <Told title="Not as handed over" texts={copy.findings.map(sayFault)} />
    </>
  );
}

function Rows({ rows }: { readonly rows: readonly ChangedRow[] }): ReactNode {
  const shared = useSharedStyles();
  return (
    <ul className={shared.plainList}>
      {rows.map(({ name, text }, at) => (
        <li key={at} className={shared.row} style={{ overflowWrap: 'anywhere' }}>
          <div className={shared.strong}>{name}</div>
          <div>{text}</div>
        </li>
      ))}
    </ul>
  );
}

function Told(props: { readonly title: string; readonly texts: readonly string[] }): ReactNode {
  const shared = useSharedStyles();
  if (props.texts.length === 0) return null;
  return (
    <>
      <h3 className={shared.minorHeading}>{`${props.title} (${props.texts.length})`}</h3>
      <ul className={shared.plainList} aria-label={props.title}>
        {props.texts.map((text, at) => (
          <li key={at} className={shared.row} style={{ overflowWrap: 'anywhere' }}>
            {text}
          </li>
        ))}
      </ul>
    </>
  );
}
