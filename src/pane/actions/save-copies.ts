/** Saves files of what was planned: the client's copy, a page for the saw, drawings and lists for other programs. */
import type { Writer } from '../planner.ts';
import type { PlanResult } from '../state/pane-state.ts';
import { isOccupied } from '../state/is-occupied.ts';
import { openHostOf } from '../state/open-host.ts';
import { load, type ActionTools } from './action-tools.ts';
import { yieldToBrowser } from '../../hosts/yield-to-browser.ts';
import { checkJob } from './check-job.ts';

export interface CopyActions {
  /** Nothing is saved of a plan that is wrong, or of inputs that have changed: the Plan tab says so. */
  readonly saveClient: () => Promise<void>;
  readonly saveExports: () => Promise<void>;
  readonly saveShopView: () => Promise<void>;
  /** The same, over the page. */
  readonly showShopView: () => Promise<void>;
}

interface Copy {
  readonly doing: string;
  /** The file's name, of the workbook's without its ending. */
  readonly nameOf: (workbook: string) => string;
  readonly make: (writer: Writer, result: PlanResult) => Promise<Uint8Array>;
  readonly said: (name: string) => string;
  /** Where it isn't saved as a file. */
  readonly show?: (bytes: Uint8Array) => void;
}

export function copyActions(tools: ActionTools): CopyActions {
  const { store, writer, run, services } = tools;

  const CLIENT: Copy = {
    doing: 'Making the client’s copy',
    nameOf: (workbook) => (workbook === '' ? 'client.xlsx' : `${workbook}-client.xlsx`),
    make: (loaded, result) => services.makeFile(loaded.describeClientCopy(result.plan, result)),
    said: (name) =>
      `The client’s copy is saved as ${name}, with no figure of the shop’s own. It bears the day of the plan: type another over it where it goes out later.`,
  };
  const EXPORTS: Copy = {
    doing: 'Making drawings and lists',
    nameOf: (workbook) => (workbook === '' ? 'trim-files.zip' : `${workbook}-files.zip`),
    make: (loaded, result) => services.makeZip(loaded.exportPlan(result.plan, result)),
    said: (name) => `Drawings (SVG), outlines (DXF) and lists (CSV) are saved in ${name}.`,
  };
  const SHOP_VIEW: Copy = {
    doing: 'Making the page for the saw',
    nameOf: (workbook) => (workbook === '' ? 'at-the-saw.html' : `${workbook}-at-the-saw.html`),
    make: (loaded, result) =>
      Promise.resolve(new TextEncoder().encode(loaded.writeShopView(result.plan, result))),
    said: (name) =>
      `${name} is saved: open it in the browser of the phone or tablet at the saw. It needs no network, and its ticks stay on that device.`,
  };

  const SHOWN_VIEW: Copy = {
    ...SHOP_VIEW,
    show: (bytes) => services.showSawView?.(new TextDecoder().decode(bytes)),
  };

  async function save({ nameOf, make, said, show }: Copy): Promise<void> {
    const { result } = store.get().planning;
    if (openHostOf(store.get()) === undefined || result === undefined || result.wrong.length > 0) {
      return;
    }
    const found = await checkJob(tools);
    if (found?.fingerprint !== result.fingerprint) return;
    const loaded = await writer();
    if (loaded === undefined) return;
    // A large plan takes a while to be laid out: the screen is drawn before.
    await yieldToBrowser();
    const name = nameOf(found.survey.name.replace(/\.(?:xls[xmb]?|csv|ods)$/iu, ''));
    const bytes = await load(store, 'writer', () => make(loaded, result));
    if (bytes === undefined) return;
    if (show !== undefined) {
      show(bytes);
      return;
    }
    services.saveFile(name, bytes);
    store.send({ type: 'done', notice: said(name) });
  }

  const saveCopy = (copy: Copy) => (): Promise<void> =>
    run(async () => {
      if (isOccupied(store.get()) || store.get().busy !== undefined) return;
      store.send({ type: 'busy', with: copy.doing });
      await save(copy);
      store.send({ type: 'busy', with: undefined });
    });

  return {
    saveClient: saveCopy(CLIENT),
    saveExports: saveCopy(EXPORTS),
    saveShopView: saveCopy(SHOP_VIEW),
    showShopView: saveCopy(SHOWN_VIEW),
  };
}
