/**
 * Places that formulas point to before they are known: whoever drafts a cell places its name, and a
 * formula asks for it when the sheets are finished. A name that nobody placed is a bug, never a 0.
 *
 * `Places` says what stands under each name: a cell or a range as a formula writes it, or a row's
 * number. A name may hold one place, or one for each thing that it is `of` (a profile, a stick).
 */
export class Anchors<Places extends object> {
  readonly #whose: string;
  readonly #places = new Map<keyof Places, Map<unknown, unknown>>();

  /** @param whose Where the names hold: "Production", say. */
  constructor(whose: string) {
    this.#whose = whose;
  }

  /** @throws RangeError where the name has a place already. */
  place<Name extends keyof Places>(name: Name, at: Places[Name], of?: unknown): void {
    const named = this.#places.get(name) ?? new Map<unknown, unknown>();
    if (named.has(of)) throw new RangeError(`${this.#say(name)} has two places.`);
    this.#places.set(name, named.set(of, at));
  }

  /** @throws RangeError where nothing was placed under the name. */
  at<Name extends keyof Places>(name: Name, of?: unknown): Places[Name] {
    const named = this.#places.get(name);
    if (named?.has(of) !== true) throw new RangeError(`${this.#say(name)} has no place.`);
    return named.get(of) as Places[Name];
  }

  #say(name: keyof Places): string {
    return `“${String(name)}” of ${this.#whose}`;
  }
}
