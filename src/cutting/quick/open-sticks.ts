/** The sticks that have been begun, asked for one that still has room. */
export interface OpenSticks {
  /** Begins a stick with so much room; sticks are numbered from 0 in the order they are begun. */
  open(room: number): void;
  /** Takes `weight` off the room of a stick that has it and gives its number, or -1. */
  take(weight: number): number;
}

/** Offers the stick that was begun first: a tournament tree holds the most room of each half. */
export function firstFit(mostSticks: number): OpenSticks {
  let leaves = 1;
  while (leaves < mostSticks) leaves *= 2;
  const room = new Float64Array(2 * leaves).fill(-1);
  let begun = 0;
  const set = (stick: number, value: number): void => {
    let node = leaves + stick;
    room[node] = value;
    for (node >>= 1; node >= 1; node >>= 1) {
      room[node] = Math.max(room[2 * node] ?? -1, room[2 * node + 1] ?? -1);
    }
  };
  return {
    open: (value) => {
      set(begun, value);
      begun += 1;
    },
    take: (weight) => {
      if ((room[1] ?? -1) < weight) return -1;
      let node = 1;
      while (node < leaves) node = (room[2 * node] ?? -1) >= weight ? 2 * node : 2 * node + 1;
      set(node - leaves, (room[node] ?? 0) - weight);
      return node - leaves;
    },
  };
}

/** Offers the stick with the least room that does; of equal ones the one that came to it last. */
export function bestFit(): OpenSticks {
  // Many sticks share a room, so the ordered list holds each room once.
  const rooms: number[] = [];
  const sticksByRoom = new Map<number, number[]>();
  let begun = 0;
  const add = (stick: number, value: number): void => {
    const sticks = sticksByRoom.get(value);
    if (sticks !== undefined) {
      sticks.push(stick);
      return;
    }
    sticksByRoom.set(value, [stick]);
    rooms.splice(firstAtLeast(rooms, value), 0, value);
  };
  return {
    open: (value) => {
      add(begun, value);
      begun += 1;
    },
    take: (weight) => {
      const at = firstAtLeast(rooms, weight);
      const value = rooms[at];
      const sticks = value === undefined ? undefined : sticksByRoom.get(value);
      const stick = sticks?.pop();
      if (value === undefined || sticks === undefined || stick === undefined) return -1;
      if (sticks.length === 0) {
        sticksByRoom.delete(value);
        rooms.splice(at, 1);
      }
      add(stick, value - weight);
      return stick;
    },
  };
}

function firstAtLeast(ascending: readonly number[], value: number): number {
  let low = 0;
  let high = ascending.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ascending[middle] ?? 0) < value) low = middle + 1;
    else high = middle;
  }
  return low;
}
