import type { StickSupply } from './problem/problem.ts';
import type { Block } from './quick/cut-list.ts';

/** A stick or strip with what is cut from it, before sticks are numbered. */
export interface WholeStick {
  readonly profile: string;
  readonly supply: StickSupply;
  /** The place among the supply's rips that its board is ripped by; 0 where there are none. */
  readonly rip: number;
  readonly blocks: readonly Block[];
}

export function weightOf({ blocks }: Pick<WholeStick, 'blocks'>): number {
  return blocks.reduce((sum, { weight }) => sum + weight, 0);
}
