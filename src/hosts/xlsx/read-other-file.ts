/** A file that the job is compared with: a client's copy, or a workbook that carries a plan. */
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import { own } from '../../core/faults/argument.ts';
import type { CopyFile } from '../../sheets/client/copy-sheet.ts';
import { keptInputOf, type KeptInput } from './kept-input.ts';
import { partsOf } from './open-workbook.ts';
import { copyInFile } from './read-copy-file.ts';

export type OtherFile =
  | { readonly kind: 'copy'; readonly copy: CopyFile }
  | { readonly kind: 'plan'; readonly kept: KeptInput };

/** Faults: those of partsOf; compare.no-plan where it is neither. */
export async function readOtherFile(bytes: Uint8Array, name: string): Promise<Outcome<OtherFile>> {
  const parts = partsOf(bytes, name);
  if (!parts.ok) return parts;
  const kept = await keptInputOf(bytes, name);
  if (kept !== undefined) return ok({ kind: 'plan', kept });
  const copy = await copyInFile(bytes, name);
  if (copy !== undefined) return ok({ kind: 'copy', copy });
  return failed(fault('compare.no-plan', own(name), null));
}
