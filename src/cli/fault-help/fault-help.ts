/** Help on every fault and caution, by its code. A code without help doesn't compile. */
import type { FaultCode } from '../../core/faults/fault.ts';
import { findNearNames } from '../../core/words/near-words.ts';
import { COVE_HELP } from './cove-help.ts';
import { CUT_LIST_HELP } from './cut-list-help.ts';
import { CUT_HELP } from './cut-help.ts';
import type { FaultHelp } from './example.ts';
import { FILE_HELP } from './file-help.ts';
import { JOB_HELP } from './job-help.ts';
import { MATCH_HELP } from './match-help.ts';
import { OPENING_HELP } from './opening-help.ts';
import { PROGRAM_HELP } from './program-help.ts';
import { ROOM_HELP } from './room-help.ts';
import { STOCK_HELP } from './stock-help.ts';
import { TABLE_HELP } from './table-help.ts';
import { TEXT_HELP } from './text-help.ts';
import { WORK_HELP } from './work-help.ts';

export const FAULT_HELP: Readonly<Record<FaultCode, FaultHelp>> = {
  ...TEXT_HELP,
  ...TABLE_HELP,
  ...JOB_HELP,
  ...STOCK_HELP,
  ...OPENING_HELP,
  ...ROOM_HELP,
  ...COVE_HELP,
  ...MATCH_HELP,
  ...WORK_HELP,
  ...CUT_HELP,
  ...CUT_LIST_HELP,
  ...FILE_HELP,
  ...PROGRAM_HELP,
};

export const FAULT_CODES = Object.keys(FAULT_HELP) as readonly FaultCode[];

export function isFaultCode(text: string): text is FaultCode {
  return Object.hasOwn(FAULT_HELP, text);
}

/** Codes that a word may be meant for: a slip of one, or those that hold it. */
export function codesNear(text: string): readonly string[] {
  return findNearNames(text, FAULT_CODES);
}
