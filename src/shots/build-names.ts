/**
 * Gives every spelling of a build the first one met: names that differ only in case and spaces are one build. A
 * name is never changed but for the spaces round it.
 */
export class BuildNames {
  readonly #bySpelling = new Map<string, string>();
  readonly #byKey = new Map<string, string>();

  /** The first spelling of this build. */
  name(spelling: string): string {
    let name = this.#bySpelling.get(spelling);
    if (name === undefined) {
      const key = spelling.replace(/\s+/g, " ").trim().toLowerCase();
      name = this.#byKey.get(key);
      if (name === undefined) {
        name = spelling.trim();
        this.#byKey.set(key, name);
      }
      this.#bySpelling.set(spelling, name);
    }
    return name;
  }

  /** Every build met so far, in the order of meeting. */
  all(): Iterable<string> {
    return this.#byKey.values();
  }
}
