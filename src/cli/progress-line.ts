/** One line at a terminal that is written over and over, and wiped away at the end. */
import { sayMoney } from '../core/units/say-money.ts';
import { overwriteLine, wipeLine, type Terminal } from './terminal.ts';

export interface ProgressLine {
  readonly show: (progress: {
    readonly phase: string;
    readonly costCents: number;
    readonly boundCents: number;
  }) => void;
  /** Which profile is next, of how many. */
  readonly name: (done: number, of: number, profile: string) => void;
  /** Wipes it away; nothing is written after. */
  readonly end: () => void;
}

/** No faster than anybody reads. */
const WRITE_EVERY_MS = 100;
const USUAL_COLUMNS = 80;

/**
 * Writes nothing where `terminal` is absent or none.
 *
 * @param say money in words
 */
export function progressLine(
  terminal: Terminal | undefined,
  now: () => number = () => performance.now(),
  say: (cents: number) => string = (cents) => sayMoney(cents),
): ProgressLine {
  let isOpen = terminal?.isTTY === true;
  let written: number | undefined;
  let where = '';
  return {
    show: ({ phase, costCents, boundCents }) => {
      const at = now();
      if (
        terminal === undefined ||
        !isOpen ||
        (written !== undefined && at - written < WRITE_EVERY_MS)
      )
        return;
      written = at;
      const text = `${where}${phase}: ${say(costCents)} so far, ${say(boundCents)} at least`;
      // A terminal that doesn't know its width says 0.
      const { columns = 0 } = terminal;
      const room = (columns > 0 ? columns : USUAL_COLUMNS) - 1;
      overwriteLine(terminal, text, room);
    },
    name: (done, of, profile) => {
      where = profile === '' ? '' : `${profile} (${Math.min(done + 1, of)} of ${of}), `;
    },
    end: () => {
      if (isOpen && terminal !== undefined && written !== undefined) wipeLine(terminal);
      isOpen = false;
    },
  };
}
