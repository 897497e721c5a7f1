/** The profile that is being worked on: its drawings, its numbers, what speaks against it. */
import { Button, Select } from '@fluentui/react-components';
import { useId, type ReactNode } from 'react';
import { Doors } from '../begin/doors.tsx';
import { printExact } from '../../sheets/words/print-length.ts';
import { Disclosure } from '../style/disclosure.tsx';
import { FindingList } from '../style/finding-list.tsx';
import { NumberList } from '../style/number-list.tsx';
import { Section } from '../style/section.tsx';
import { StandingCautions } from '../style/standing-cautions.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { nextStepOf } from '../state/next-step.ts';
import { openHostOf } from '../state/open-host.ts';
import { usePane } from '../use-pane.ts';
import type { ProfileAnswer } from './answer-profile.ts';
import { AddCove } from './add-cove.tsx';
import { chosenProfile, type ChosenProfile } from './chosen-profile.ts';
import { CoveForm } from './cove-form.tsx';
import { OWN_COVE, typeProfile, type TypedCove } from './cove-fields.ts';
import { ProfileDrawings } from './profile-drawings.tsx';
import { sayProfile } from './say-profile.ts';
import { saySetUp, saySlope } from './say-set-up.ts';
import { SpokenAnswer } from './spoken-answer.tsx';

export function ProfileTab(): ReactNode {
  const shared = useSharedStyles();
  const { state, actions } = usePane();
  const chosen = chosenProfile(state);
  const { answer, before, shop, coves } = chosen;
  const isOwn = chosen.name === OWN_COVE;
  // What stands at its field needs no second line.
  const atField = new Set(isOwn ? Object.values(answer.atFault) : []);
  const others = answer.faults.filter(({ message }) => !atField.has(message));
  return (
    <>
      {nextStepOf(state)?.kind === 'begin' ? <Doors /> : null}
      <Section title={coves.length === 0 ? 'Size a cove' : 'Profile'}>
        {coves.length === 0 ? null : <Choice chosen={chosen} />}
        {isOwn ? (
          <CoveForm typed={chosen.typed} answer={answer} unit={shop.unit} />
        ) : (
          <Sizes chosen={chosen} />
        )}
        <FindingList title="Problems" faults={withoutPlace(others)} problems bare />
      </Section>
      <ProfileDrawings answer={before ?? answer} isBehind={before !== undefined} />
      <SetUpNumbers answer={answer} />
      {answer.setUp === undefined ? null : (
        <div className={shared.buttons}>
          <Button onClick={() => void actions.printCove(answer)}>Print this set-up…</Button>
        </div>
      )}
      {isOwn && answer.profile !== undefined ? <AddCove typed={chosen.typed} /> : null}
      <SpokenAnswer answer={answer} />
    </>
  );
}

/** In the profile's own tab a fault needs no cell: the Job tab has it with its place. */
function withoutPlace(faults: ProfileAnswer['faults']): ProfileAnswer['faults'] {
  return faults.map(({ code, argument, given, message }) => ({ code, argument, given, message }));
}

function Choice({ chosen }: { readonly chosen: ChosenProfile }): ReactNode {
  const shared = useSharedStyles();
  const { state, send } = usePane();
  const id = useId();
  const { coves, name } = chosen;
  return (
    <div className={shared.field}>
      <label htmlFor={id}>Profile being worked on</label>
      <Select
        id={id}
        className={shared.select}
        value={name}
        onChange={(_, { value }) =>
          value === OWN_COVE
            ? send({ type: 'own cove typed', typed: state.profile.typed ?? begin(chosen) })
            : send({ type: 'profile chosen', name: value })
        }
      >
        {coves.map((cove) => (
          <option key={cove.name} value={cove.name}>
            {cove.name}
          </option>
        ))}
        <option value={OWN_COVE}>A cove of your own</option>
      </Select>
    </div>
  );
}

/** The chosen profile's sizes, to go on from. What was typed before stays as it was. */
function begin({ answer, shop, typed }: ChosenProfile): TypedCove {
  return answer.profile === undefined ? typed : typeProfile(answer.profile, shop);
}

function Sizes({ chosen }: { readonly chosen: ChosenProfile }): ReactNode {
  const shared = useSharedStyles();
  const { state, send, actions } = usePane();
  const { profile, shop } = chosen.answer;
  if (profile === undefined) return null;
  return (
    <>
      <p className={shared.text}>{sayProfile(profile, shop)}</p>
      <div className={shared.buttons}>
        <Button
          size="small"
          onClick={() => send({ type: 'own cove typed', typed: typeProfile(profile, shop) })}
        >
          Try other sizes
        </Button>
        {openHostOf(state)?.can.showCells === true ? (
          <Button size="small" onClick={() => void actions.show(profile.where)}>
            Show its row
          </Button>
        ) : null}
      </div>
    </>
  );
}

/** The approach twice, tilt and height come first: what is set before anything is cut. */
const SET_ON_THE_SAW = 4;

function SetUpNumbers({ answer }: { readonly answer: ProfileAnswer }): ReactNode {
  const shared = useSharedStyles();
  const { setUp, shop } = answer;
  const cautions = (
    <>
      <StandingCautions leastBlank={printExact(shop.leastBlankLength, shop)} />
      <FindingList
        title="Mind with this cove"
        faults={withoutPlace(answer.cautions)}
        problems={false}
        bare
      />
    </>
  );
  if (setUp === undefined) {
    return (
      <Section title="Set-up">
        <p className={shared.text}>No set-up: this can’t be made as it stands.</p>
        {cautions}
      </Section>
    );
  }
  const words = saySetUp(setUp, shop);
  const slope = answer.profile && saySlope(answer.profile, shop);
  return (
    <Section title="Set-up">
      {cautions}
      <h3 className={shared.minorHeading}>The saw</h3>
      <NumberList rows={words.saw.slice(0, SET_ON_THE_SAW)} large />
      <NumberList rows={words.saw.slice(SET_ON_THE_SAW)} />
      <h3 className={shared.minorHeading}>The rails</h3>
      <NumberList rows={words.rails} />
      <h3 className={shared.minorHeading}>The passes</h3>
      <Disclosure summary={`Heights of the ${words.passes.length} passes`}>
        <ol style={{ margin: 0, paddingInlineStart: 28 }}>
          {words.passes.map((height, index) => (
            <li key={index}>{height}</li>
          ))}
        </ol>
        <p className={shared.quiet}>Highest tooth above the table.</p>
      </Disclosure>
      <h3 className={shared.minorHeading}>The blank</h3>
      <NumberList rows={words.blank} />
      {slope === undefined ? null : (
        <>
          <h3 className={shared.minorHeading}>{slope.title}</h3>
          <NumberList rows={slope.turns} />
          <p className={shared.quiet}>{slope.notes}</p>
          <h3 className={shared.minorHeading}>{slope.rakedTitle}</h3>
          <NumberList rows={slope.raked} />
        </>
      )}
    </Section>
  );
}
