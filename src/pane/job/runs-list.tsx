/** The runs of the job before it is planned, typed and made alike; a made one can be taken over. */
import { Button, makeStyles, tokens } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import type { ListedRun } from '../../planning/list-runs.ts';
import { keyOf } from '../../planning/rooms/typed-runs.ts';
import type { RoomFittings } from '../../planning/rooms/room-fittings.ts';
import type { Shop } from '../../planning/shop.ts';
import { sayFrom, sayParts, sayRunEnd, sayRunLength } from '../../sheets/words/say-runs.ts';
import { openHostOf } from '../state/open-host.ts';
import { Disclosure } from '../style/disclosure.tsx';
import { Section } from '../style/section.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';
import type { JobFound } from './job-found.ts';
import {
  isMade,
  marksOf,
  MOST_LISTED,
  placeKey,
  runsIn,
  sayRunCount,
  TYPE_IT_THERE,
} from './say-runs.ts';

const useStyles = makeStyles({
  run: {
    display: 'grid',
    gridTemplateColumns: 'minmax(0, 1fr) auto',
    columnGap: '8px',
    alignItems: 'start',
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    paddingBlock: '6px',
  },
  name: { display: 'flex', flexWrap: 'wrap', columnGap: '8px', overflowWrap: 'anywhere' },
  length: { fontVariantNumeric: 'tabular-nums' },
});

/** @param props.fittings of the room that is drawn */
export function RunsList(props: {
  readonly found: JobFound;
  readonly room: string;
  readonly fittings: RoomFittings | undefined;
}): ReactNode {
  const shared = useSharedStyles();
  const { state, actions } = usePane();
  const { found, room, fittings } = props;
  const here = runsIn(found.runs, room);
  const made = here.filter(isMade);
  const canTake = openHostOf(state)?.can.appendRows === true;
  const isBusy = state.busy !== undefined || state.reading.busy;
  const marks = marksOf(fittings);
  return (
    <Section title={`Runs of ${room}`}>
      <div className={shared.spread}>
        <span>{sayRunCount(here)}</span>
        {canTake && made.length > 0 ? (
          <Button
            size="small"
            disabledFocusable={isBusy}
            onClick={() => void actions.takeOver(made.map(({ run }) => keyOf(run)))}
          >
            Take over all of this room
          </Button>
        ) : null}
      </div>
      {!canTake && made.length > 0 ? <p className={shared.quiet}>{TYPE_IT_THERE}</p> : null}
      <Lines runs={here} shop={found.shop} marks={marks} canTake={canTake && !isBusy} />
      <OtherRooms found={found} room={room} />
    </Section>
  );
}

function OtherRooms({
  found,
  room,
}: {
  readonly found: JobFound;
  readonly room: string;
}): ReactNode {
  const here = new Set(runsIn(found.runs, room));
  const others = found.runs.filter((one) => !here.has(one));
  if (others.length === 0) return null;
  return (
    <Disclosure summary={`Runs of the other rooms (${others.length})`}>
      <Lines runs={others} shop={found.shop} withRoom />
    </Disclosure>
  );
}

function Lines(props: {
  readonly runs: readonly ListedRun[];
  readonly shop: Shop;
  readonly marks?: ReadonlyMap<string, readonly string[]>;
  readonly canTake?: boolean;
  readonly withRoom?: boolean;
}): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const { runs, shop, marks, canTake = false, withRoom = false } = props;
  const more = runs.length - MOST_LISTED;
  return (
    <>
      <ul className={shared.plainList}>
        {runs.slice(0, MOST_LISTED).map((listed, index) => {
          const { run, from } = listed;
          const up = from.made === undefined ? [] : (marks?.get(placeKey(from.made)) ?? []);
          return (
            <li key={index} className={styles.run}>
              <div>
                <div className={styles.name}>
                  <span className={shared.strong}>
                    {[...(withRoom ? [run.room] : []), sayName(listed), run.profile].join(', ')}
                  </span>
                  <span className={styles.length}>
                    {`${run.quantity === 1 ? '' : `${run.quantity} × `}${sayRunLength(run, shop)}`}
                  </span>
                </div>
                <div className={shared.quiet}>{sayDetails(listed, shop, up)}</div>
              </div>
              {canTake && isMade(listed) ? <TakeOver listed={listed} /> : null}
            </li>
          );
        })}
      </ul>
      {more > 0 ? (
        <p className={shared.quiet}>{`And ${more} more: coveledger runs lists all.`}</p>
      ) : null}
    </>
  );
}

function sayDetails(listed: ListedRun, shop: Shop, up: readonly string[]): string {
  const { left, right } = listed.run;
  const ends = [left, right].map((end) => sayRunEnd(end, shop.decimalSign));
  const parts = sayParts(listed, shop);
  return [
    `left ${ends[0]}, right ${ends[1]}`,
    ...(parts === '' ? [] : [`openings leave ${parts}`]),
    ...(up.length === 0 ? [] : [`on the plan ${up.join(', ')}`]),
    sayFrom(listed),
  ].join('; ');
}

/** A made one is called by its wall. */
function sayName({ run, from }: ListedRun): string {
  return from.made === undefined ? run.run : `Wall ${run.run}`;
}

function TakeOver({ listed }: { readonly listed: ListedRun }): ReactNode {
  const { actions } = usePane();
  const { run } = listed;
  return (
    <Button
      size="small"
      aria-label={`Take over ${run.profile} on wall ${run.run}`}
      onClick={() => void actions.takeOver([keyOf(run)])}
    >
      Take over
    </Button>
  );
}
