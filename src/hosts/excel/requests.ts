/** Counts what has been asked of Excel and sends it before it grows too large for one request. */

/** A request holds 5 MB at most: room is left for what Excel's library adds. */
const MOST_BYTES = 3_000_000;
/** What a property or a call takes about, names and all. */
const CALL_BYTES = 250;
/** A character takes three bytes at most in UTF-8 (one beyond the first plane counts as two). */
const BYTES_PER_CHARACTER = 3;

export class Requests {
  readonly #context: Excel.RequestContext;
  readonly #sent: () => void;
  #bytes = 0;

  /** `sent` is called after each request. */
  constructor(context: Excel.RequestContext, sent: () => void) {
    this.#context = context;
    this.#sent = sent;
  }

  /** Makes room for what is asked next. */
  async need(calls: number, characters = 0): Promise<void> {
    const bytes = calls * CALL_BYTES + characters * BYTES_PER_CHARACTER;
    if (this.#bytes > 0 && this.#bytes + bytes > MOST_BYTES) await this.send();
    this.#bytes += bytes;
  }

  async send(): Promise<void> {
    await this.#context.sync();
    this.#bytes = 0;
    this.#sent();
  }
}
