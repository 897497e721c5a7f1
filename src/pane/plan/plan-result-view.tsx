import type { ReactNode } from 'react';
import { printExact } from '../../sheets/words/print-length.ts';
import { CUT_AWAYS_TITLE, sayCutAway } from '../../sheets/words/say-cut-aways.ts';
import { Disclosure } from '../style/disclosure.tsx';
import { FindingList } from '../style/finding-list.tsx';
import { Message } from '../style/messages.tsx';
import { FourNumbers } from '../style/four-numbers.tsx';
import { NumberList } from '../style/number-list.tsx';
import { Section } from '../style/section.tsx';
import { StandingCautions } from '../style/standing-cautions.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import type { PlanResult } from '../state/pane-state.ts';
import { usePane } from '../use-pane.ts';
import { LearnedRates } from './learned-rates.tsx';
import { DROPPED, RECALLED } from './say-ticks.ts';
import { sayInFour, sayProfiles, sayResult } from './say-result.ts';
import { WriteSheets } from './write-sheets.tsx';

export function PlanResultView({ result }: { readonly result: PlanResult }): ReactNode {
  const shared = useSharedStyles();
  const { state } = usePane();
  const { plan, fingerprint, wrong } = result;
  const { shop } = plan.job;
  const isOld = state.reading.found?.fingerprint !== fingerprint;
  const cuts = plan.profiles.some(({ setUp }) => setUp !== undefined);
  if (wrong.length > 0) {
    return (
      <Message intent="error">
        This plan does not add up, which is a fault of this program: don’t cut by it, and nothing is
        written. {wrong.slice(0, 3).join(' ')}
      </Message>
    );
  }
  return (
    <Section title="What it comes to">
      {state.planning.recalled ? <p className={shared.text}>{RECALLED}</p> : null}
      {result.droppedCutKey === undefined ? null : <p className={shared.text}>{DROPPED}</p>}
      {plan.profiles.length === 0 ? (
        <>
          <p className={shared.text}>There is nothing left to plan: every run is marked as done.</p>
          <WriteSheets isOld={isOld} hasSetUps={cuts} />
        </>
      ) : (
        <>
          <FourNumbers rows={sayInFour(plan)} />
          {cuts ? <StandingCautions leastBlank={printExact(shop.leastBlankLength, shop)} /> : null}
          <WriteSheets isOld={isOld} hasSetUps={cuts} />
          <h3 className={shared.minorHeading}>All it comes to</h3>
          <NumberList rows={sayResult(plan)} />
          <Disclosure summary="Profile by profile">
            <ul className={shared.plainList}>
              {sayProfiles(plan).map(({ name, text, bound }) => (
                <li key={name} className={shared.row}>
                  <div className={shared.strong}>{name}</div>
                  <div>{text}</div>
                  <div className={shared.quiet}>{bound}</div>
                </li>
              ))}
            </ul>
          </Disclosure>
        </>
      )}
      {plan.cutAways.length === 0 ? null : (
        <Disclosure summary={CUT_AWAYS_TITLE}>
          <ul className={shared.plainList}>
            {plan.cutAways.map((one, at) => (
              <li key={at} className={shared.row}>
                {sayCutAway(one, shop)}
              </li>
            ))}
          </ul>
        </Disclosure>
      )}
      {isOld ? null : <LearnedRates plan={plan} />}
      <FindingList title="Cautions" faults={plan.cautions} problems={false} />
    </Section>
  );
}
