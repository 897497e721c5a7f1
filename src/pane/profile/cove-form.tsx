/** The sizes of a cove of one's own: what is typed is answered at once. */
import { Input, makeStyles, tokens } from '@fluentui/react-components';
import { useId, type ReactNode } from 'react';
import { COVE_SIZES, type SizeKey } from '../../core/cove/cove-sizes.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import { Disclosure } from '../style/disclosure.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';
import type { ProfileAnswer } from './answer-profile.ts';
import { COVE_FIELDS, type TypedCove } from './cove-fields.ts';

const useStyles = makeStyles({
  three: {
    display: 'grid',
    gridTemplateColumns: 'repeat(3, minmax(0, 1fr))',
    columnGap: '8px',
    alignItems: 'end',
  },
  others: {
    display: 'grid',
    gridTemplateColumns: 'repeat(auto-fill, minmax(min(112px, 100%), 1fr))',
    columnGap: '10px',
    rowGap: '6px',
    alignItems: 'end',
  },
  input: { width: '100%', minWidth: 0, minHeight: '44px' },
  wrong: {
    margin: 0,
    marginBlockStart: '4px',
    color: tokens.colorStatusDangerForeground3,
    overflowWrap: 'anywhere',
  },
});

const HINTS: Readonly<Partial<Record<SizeKey, string>>> = {
  nearFlat: 'blank: midway',
};

/** What makes a cove; the others say what it is cut from, and by which blade. */
const SIZES: readonly SizeKey[] = ['width', 'depth', 'offCenter'];
const OTHERS = COVE_FIELDS.filter((field) => !SIZES.includes(field));

interface Fields {
  readonly typed: TypedCove;
  readonly answer: ProfileAnswer;
}

export function CoveForm(props: Fields & { readonly unit: LengthUnit }): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const { typed, answer } = props;
  const unit = props.unit === 'mm' ? 'millimetres' : 'inches';
  const isOtherWrong = OTHERS.some((field) => answer.atFault[field] !== undefined);
  return (
    <>
      <CoveFields fields={SIZES} className={styles.three} typed={typed} answer={answer} />
      <Disclosure
        key={String(isOtherWrong)}
        open={isOtherWrong}
        summary={`Blank ${typed.blankWidth} by ${typed.blankThickness}, blade ${typed.bladeDiameter}`}
      >
        <CoveFields fields={OTHERS} className={styles.others} typed={typed} answer={answer} />
        <p className={shared.quiet} style={{ marginBlock: '6px 0' }}>
          {`Lengths such as 3 1/2" or 90 mm; a bare number is in ${unit}.`}
        </p>
      </Disclosure>
    </>
  );
}

function CoveFields(
  props: Fields & { readonly fields: readonly SizeKey[]; readonly className: string },
): ReactNode {
  const styles = useStyles();
  const form = useId();
  const { fields, className, typed, answer } = props;
  return (
    <>
      <div className={className}>
        {fields.map((field) => (
          <CoveInput
            key={field}
            id={`${form}${field}`}
            field={field}
            typed={typed}
            answer={answer}
          />
        ))}
      </div>
      {fields.map((field) =>
        answer.atFault[field] === undefined ? null : (
          <p key={field} id={`${form}${field}-wrong`} className={styles.wrong}>
            {answer.atFault[field]}
          </p>
        ),
      )}
    </>
  );
}

function CoveInput(props: Fields & { readonly id: string; readonly field: SizeKey }): ReactNode {
  const styles = useStyles();
  const { send } = usePane();
  const { id, field, typed, answer } = props;
  const isWrong = answer.atFault[field] !== undefined;
  const hint = HINTS[field];
  return (
    <div>
      <label htmlFor={id}>{COVE_SIZES[field].label}</label>
      <Input
        id={id}
        className={styles.input}
        autoComplete="off"
        value={typed[field]}
        {...(hint === undefined ? {} : { placeholder: hint })}
        aria-invalid={isWrong}
        aria-describedby={isWrong ? `${id}-wrong` : undefined}
        onChange={(_, { value }) =>
          send({ type: 'own cove typed', typed: { ...typed, [field]: value } })
        }
      />
    </div>
  );
}
