/** The rooms of Walls as they are typed: one of them drawn with its trim, what may be wrong in it marked; its runs. */
import { Select } from '@fluentui/react-components';
import { useId, useMemo, useState, type ReactNode } from 'react';
import { drawRoom } from '../../drawings/room.ts';
import type { Shop } from '../../planning/shop.ts';
import type { RoomLook } from '../../planning/rooms/look-at-rooms.ts';
import { fitRoom, type FittedTrim, type RoomFittings } from '../../planning/rooms/room-fittings.ts';
import { runsInPlan } from '../../sheets/rooms/room-plan.ts';
import { HOW_TO_READ, sayTrim } from '../../sheets/rooms/rooms-words.ts';
import { Disclosure } from '../style/disclosure.tsx';
import { DrawingFigure } from '../style/drawing-figure.tsx';
import { Section } from '../style/section.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';
import { chosenRoom, NOT_DRAWN, optionOf } from './chosen-room.ts';
import type { JobFound } from './job-found.ts';
import { RunsList } from './runs-list.tsx';

export function RoomView({ found }: { readonly found: JobFound }): ReactNode {
  const { state } = usePane();
  const room = chosenRoom(found.rooms, state.room);
  if (room === undefined) return null;
  return <Room found={found} room={room} />;
}

function Room({ found, room }: { readonly found: JobFound; readonly room: RoomLook }): ReactNode {
  const { asRead, runs, rooms } = found;
  const { name } = room;
  const fittings = useMemo(() => fitRoom(asRead, name), [asRead, name]);
  return (
    <>
      <Section title="Room">
        <Choice rooms={rooms} name={name} />
        <Plan key={name} room={room} fittings={fittings} shop={found.shop} />
      </Section>
      {runs.length === 0 ? null : <RunsList found={found} room={name} fittings={fittings} />}
    </>
  );
}

function Choice(props: { readonly rooms: readonly RoomLook[]; readonly name: string }): ReactNode {
  const shared = useSharedStyles();
  const { send } = usePane();
  const id = useId();
  return (
    <div className={shared.field}>
      <label htmlFor={id}>Room that is drawn</label>
      <Select
        id={id}
        className={shared.select}
        value={props.name}
        onChange={(_, { value }) => send({ type: 'room chosen', name: value })}
      >
        {props.rooms.map((room) => (
          <option key={room.name} value={room.name}>
            {optionOf(room)}
          </option>
        ))}
      </Select>
    </div>
  );
}

function Plan(props: {
  readonly room: RoomLook;
  readonly fittings: RoomFittings | undefined;
  readonly shop: Shop;
}): ReactNode {
  const shared = useSharedStyles();
  const { fittings, shop } = props;
  const [chosen, choose] = useState<number | undefined>();
  const { drawn } = props.room;
  if (drawn === undefined) return <p className={shared.text}>{NOT_DRAWN}</p>;
  const { unit, decimalSign } = shop;
  const trims = fittings?.trims ?? [];
  // Somebody may have taken its row out.
  const only = trims[chosen ?? -1] === undefined ? undefined : chosen;
  const runs = fittings === undefined ? [] : runsInPlan(fittings, only);
  return (
    <>
      {trims.length < 2 ? null : (
        <TrimChoice trims={trims} chosen={only} choose={choose} shop={shop} />
      )}
      <DrawingFigure
        name="The room"
        draw={(width) => drawRoom({ ...drawn, runs, unit, decimalSign, width })}
      />
      {trims.length === 0 ? null : (
        <>
          <ul className={shared.plainList}>
            {trims.map((trim, at) => (
              <li key={at} className={shared.quiet}>
                {sayTrim(trim, at, shop)}
              </li>
            ))}
          </ul>
          <Disclosure summary="How to read the plan">
            <p className={shared.text}>{HOW_TO_READ}</p>
          </Disclosure>
        </>
      )}
    </>
  );
}

/** In a narrow pane not all of a room's trim has room to be marked. */
function TrimChoice(props: {
  readonly trims: readonly FittedTrim[];
  readonly chosen: number | undefined;
  readonly choose: (trim: number | undefined) => void;
  readonly shop: Shop;
}): ReactNode {
  const shared = useSharedStyles();
  const id = useId();
  const { trims, chosen, choose, shop } = props;
  return (
    <div className={shared.field}>
      <label htmlFor={id}>Trim that is drawn</label>
      <Select
        id={id}
        className={shared.select}
        value={chosen === undefined ? '' : String(chosen)}
        onChange={(_, { value }) => choose(value === '' ? undefined : Number(value))}
      >
        <option value="">All</option>
        {trims.map((trim, at) => (
          <option key={at} value={at}>
            {sayTrim(trim, at, shop)}
          </option>
        ))}
      </Select>
    </div>
  );
}
