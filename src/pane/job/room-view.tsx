/** The rooms of Walls as they are typed: one of them drawn, with what may be wrong in it marked. */
import { Select } from '@fluentui/react-components';
import { useId, type ReactNode } from 'react';
import { drawRoom } from '../../drawings/room.ts';
import type { Shop } from '../../planning/shop.ts';
import type { RoomLook } from '../../planning/rooms/look-at-rooms.ts';
import { DrawingFigure } from '../style/drawing-figure.tsx';
import { Section } from '../style/section.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { usePane } from '../use-pane.ts';
import { chosenRoom, NOT_DRAWN, optionOf } from './chosen-room.ts';
import type { JobFound } from './job-found.ts';

export function RoomView({ found }: { readonly found: JobFound }): ReactNode {
  const { state } = usePane();
  const room = chosenRoom(found.rooms, state.room);
  if (room === undefined) return null;
  return (
    <Section title="Room">
      <Choice rooms={found.rooms} name={room.name} />
      <Plan room={room} shop={found.shop} />
    </Section>
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

function Plan({ room, shop }: { readonly room: RoomLook; readonly shop: Shop }): ReactNode {
  const shared = useSharedStyles();
  const { drawn } = room;
  if (drawn === undefined) return <p className={shared.text}>{NOT_DRAWN}</p>;
  const { unit, decimalSign } = shop;
  return (
    <DrawingFigure
      name="The room"
      draw={(width) => drawRoom({ ...drawn, unit, decimalSign, width })}
    />
  );
}
