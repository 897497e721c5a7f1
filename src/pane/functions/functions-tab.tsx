/** The reference of the worksheet functions. */
import { Button, Input, makeStyles, mergeClasses, tokens } from '@fluentui/react-components';
import { useId, type ReactNode } from 'react';
import { count } from '../../sheets/words/print-length.ts';
import { Disclosure } from '../style/disclosure.tsx';
import { Section } from '../style/section.tsx';
import { StandingCautions } from '../style/standing-cautions.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import type { FunctionReference } from '../services.ts';
import { openHostOf } from '../state/open-host.ts';
import { usePane } from '../use-pane.ts';
import { gistOf, searchFunctions, showCall, showExample } from './show-example.ts';

const useStyles = makeStyles({
  search: { width: '100%', minWidth: 0 },
  example: {
    display: 'block',
    backgroundColor: tokens.colorNeutralBackground3,
    borderRadius: tokens.borderRadiusSmall,
    padding: '6px 8px',
    marginBlock: '6px',
  },
  arguments: { margin: 0 },
  gist: { display: 'block', fontWeight: tokens.fontWeightRegular, paddingInlineStart: '15px' },
  name: { fontWeight: tokens.fontWeightSemibold },
  says: { marginInlineStart: 0, marginBlockEnd: '4px' },
});

export function FunctionsTab(): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const { state, send, services } = usePane();
  const id = useId();
  const { search } = state.functions;
  const found = searchFunctions(services.functions, search);
  return (
    <Section title="Worksheet functions">
      <label htmlFor={id} className={shared.quiet}>
        Search names, words and arguments
      </label>
      <Input
        id={id}
        type="search"
        className={styles.search}
        value={search}
        onChange={(_, { value }) => send({ type: 'functions searched', search: value })}
      />
      <p className={shared.quiet} role="status">
        {found.length === 0
          ? 'No function has all of these words.'
          : count(found.length, 'function')}
      </p>
      <ul className={shared.plainList} aria-label="Functions">
        {found.map((one) => (
          <li key={one.id} className={shared.row}>
            <FunctionEntry reference={one} />
          </li>
        ))}
      </ul>
      <StandingCautions />
    </Section>
  );
}

function FunctionEntry({ reference }: { readonly reference: FunctionReference }): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const { state } = usePane();
  const { separator } = state.functions;
  const { name, description, parameters, example } = reference;
  return (
    <Disclosure
      summary={
        <>
          {name}
          <span className={mergeClasses(shared.quiet, styles.gist)}>{gistOf(description)}</span>
        </>
      }
    >
      <p className={shared.text}>{description}</p>
      <p className={shared.code}>{showCall(reference, separator)}</p>
      <dl className={styles.arguments}>
        {parameters.map((one) => (
          <div key={one.name}>
            <dt className={styles.name}>
              {one.optional ? `${one.name} (may be left out)` : one.name}
            </dt>
            <dd className={styles.says}>{one.description}</dd>
          </div>
        ))}
      </dl>
      <code className={mergeClasses(shared.code, styles.example)}>
        {showExample(example, separator)}
      </code>
      <PutExample reference={reference} />
    </Disclosure>
  );
}

function PutExample({ reference }: { readonly reference: FunctionReference }): ReactNode {
  const shared = useSharedStyles();
  const reasonId = useId();
  const { state, actions } = usePane();
  const can = openHostOf(state)?.can.putFormulas === true;
  const { outcome } = state.functions;
  return (
    <>
      <Button
        size="small"
        disabledFocusable={!can}
        aria-describedby={can ? undefined : reasonId}
        onClick={() => void actions.putExample(reference)}
      >
        Put example into the selected cell
      </Button>
      {can ? null : (
        <p id={reasonId} className={shared.quiet}>
          Only where the workbook itself stands beside this pane.
        </p>
      )}
      {outcome?.id === reference.id ? (
        <p className={shared.text}>{outcome.ok ? outcome.text : `Not done: ${outcome.text}`}</p>
      ) : null}
    </>
  );
}
