/** The sizes of a cove of one's own: what is typed is answered at once. */
import { Input, makeStyles, tokens } from '@fluentui/react-components';
import { useId, type ReactNode } from 'react';
import { COVE_SIZES, type SizeKey } from '../../core/cove/cove-sizes.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';
import type { ProfileAnswer } from './answer-profile.ts';
import { COVE_FIELDS, type TypedCove } from './cove-fields.ts';

const useStyles = makeStyles({
  grid: {
    display: 'grid',
    gridTemplateColumns: 'repeat(auto-fill, minmax(min(112px, 100%), 1fr))',
    columnGap: '10px',
    rowGap: '6px',
  },
  input: { width: '100%', minWidth: 0 },
  invalid: { color: tokens.colorStatusDangerForeground3 },
});

const HINTS: Readonly<Partial<Record<SizeKey, string>>> = {
  nearFlat: 'blank: midway',
};

export function CoveForm(props: {
  readonly typed: TypedCove;
  readonly answer: ProfileAnswer;
  readonly unit: LengthUnit;
}): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const unit = props.unit === 'mm' ? 'millimetres' : 'inches';
  return (
    <>
      <p className={shared.quiet} style={{ marginBlock: '0 6px' }}>
        {`Lengths such as 3 1/2" or 90 mm; a bare number is in ${unit}. Tried here only: what is to be made stands in Profiles.`}
      </p>
      <div className={styles.grid}>
        {COVE_FIELDS.map((field) => (
          <CoveInput key={field} field={field} typed={props.typed} answer={props.answer} />
        ))}
      </div>
    </>
  );
}

function CoveInput(props: {
  readonly field: SizeKey;
  readonly typed: TypedCove;
  readonly answer: ProfileAnswer;
}): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const { send } = usePane();
  const id = useId();
  const { field, typed, answer } = props;
  const wrong = answer.atFault[field];
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
        aria-invalid={wrong !== undefined}
        aria-describedby={wrong === undefined ? undefined : `${id}-wrong`}
        onChange={(_, { value }) =>
          send({ type: 'own cove typed', typed: { ...typed, [field]: value } })
        }
      />
      {wrong === undefined ? null : (
        <>
          <span className={styles.invalid} aria-hidden="true">
            see below
          </span>
          <span id={`${id}-wrong`} className={shared.hidden}>
            {wrong}
          </span>
        </>
      )}
    </div>
  );
}
