/** The program behind a context: its workbook, what it knows, and when it fails. */
import type { ClassMembers, Env } from './members.ts';

export interface Handler {
  /** What it listens to: onChanged, onCalculated, onSelectionChanged. */
  readonly event: string;
  readonly call: (event: { worksheetId: string; address: string }) => Promise<unknown>;
}

/** What a context needs of the program around it. */
export interface Program extends Env {
  readonly classes: Readonly<Record<string, ClassMembers>>;
  readonly minor: number;
  readonly handlers: Set<Handler>;
  /** Called as a request begins; says after how many operations it fails, if it does. */
  readonly beginRequest: (
    delayForCellEdit: boolean,
    operations: number,
  ) => Promise<number | undefined>;
  readonly endRequest: () => void;
}
