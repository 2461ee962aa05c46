import { plainKey } from "./plain-key.ts";

/**
 * Which of these builds a few words name: the one of that name; else the only one whose name begins with the words; else
 * the only one whose name stands in them. Case, accents and blanks do not matter. Null where they name none, or several.
 *
 * @example namedBuild("Red", ["blue soft", "red firm"]) // "red firm"
 */
export function namedBuild(words: string, builds: readonly string[]): string | null {
  const said = plainKey(words);
  if (said === "") return null;
  const different = new Map(builds.map((build) => [plainKey(build), build] as const).reverse());
  different.delete("");
  const exact = different.get(said);
  if (exact !== undefined) return exact;
  const keys = [...different.keys()];
  const begun = keys.filter((key) => key.startsWith(said));
  const within = begun.length > 0 ? begun : keys.filter((key) => ` ${said} `.includes(` ${key} `));
  return within.length === 1 ? different.get(within[0]!)! : null;
}
