import { invalid, type Outcome } from "../outcome/problem.ts";
import { type Cell, type Row, textIn } from "./cell.ts";
import { plainKey } from "./plain-key.ts";
import { playerKey } from "./player-key.ts";
import { LEDGER } from "./schema.ts";

/** What people wrote freely may name the player, so it does not travel with codes. */
const FREE_WORDS = ["title", "note", "place"];

/** Texts that are no free words: names that are coded in any case, and words that the ledger itself chooses. */
const OWN_WORDS = ["player", "session", "entry", "hand", "kind", "goal"];

/** Names are few and easily tried, so all depends on the secret. */
const SHORTEST = 8;

/**
 * Ledger rows with codes for names: the same player has the same code throughout, and in every export made with the
 * same secret, and so have sessions and rows, whose own names are made from player and day or from the shots. Codes are
 * the first 64 bits of HMAC-SHA-256 (RFC 2104); without the secret nobody can tell whose they are, even who has a list
 * of names, of days and of clubs.
 *
 * Titles, notes and places are left out. Any other text in which a part of any player's name stands is left out too,
 * whatever its case and accents; a build so called ("José's gamer") gets a code, the same one in Ordered. What no rule
 * can find stays: a nickname, a name that no row has under Player; and who knows on which day somebody was fitted, or
 * how far they hit it, may still recognise them by that.
 */
export async function codedRows(rows: readonly Row[], secret: string): Promise<Outcome<Row[]>> {
  if (secret.length < SHORTEST) {
    return invalid(
      `The secret has ${secret.length} letters; ${SHORTEST} or more would do, so that nobody guesses it.`,
    );
  }
  const sign = await signer(secret);
  const known = new Map<string, string>();
  const code = async (letter: string, name: string) => {
    const told = `${letter} ${name}`;
    const made = known.get(told) ?? `${letter}-${(await sign(told)).slice(0, 16)}`;
    known.set(told, made);
    return made;
  };
  const names = nameFinder(rows.map((row) => textIn(row, "player")));
  const texts = LEDGER.columns.flatMap(({ key, type }) =>
    type === "text" && !OWN_WORDS.includes(key) ? [key] : [],
  );
  const coded: Row[] = [];
  for (const row of rows) {
    const now: Record<string, Cell> = { ...row };
    for (const key of texts) {
      const said = textIn(row, key);
      if (said === "") continue;
      if (FREE_WORDS.includes(key)) now[key] = null;
      else if (names(said))
        now[key] = key === "build" || key === "ordered" ? await code("B", plainKey(said)) : null;
    }
    for (const [key, letter] of [
      ["session", "S"],
      ["entry", "E"],
    ] as const)
      if (textIn(row, key) !== "") now[key] = await code(letter, textIn(row, key));
    const player = playerKey(textIn(row, "player"));
    coded.push({ ...now, player: player === "" ? null : await code("P", player) });
  }
  return coded;
}

/**
 * Tells whether a part of any of these names stands in a text. Parts of four letters and more are found inside words as
 * well, shorter ones only as words of their own or with an s: "Ann" is in "Ann's" and "Anns", not in "scanned".
 */
function nameFinder(names: readonly string[]): (text: string) => boolean {
  const parts = new Set(names.flatMap((name) => plainKey(name).split(/[^\p{L}\p{N}]+/u)));
  parts.delete("");
  const long = [...parts].filter((part) => part.length > 3);
  const known = new Map<string, boolean>();
  const look = (text: string) => {
    const plain = plainKey(text);
    const words = plain.split(/[^\p{L}\p{N}]+/u);
    return (
      long.some((part) => plain.includes(part)) ||
      words.some((word) => parts.has(word) || parts.has(word.replace(/s$/, "")))
    );
  };
  return (text) => {
    const found = known.get(text) ?? look(text);
    known.set(text, found);
    return found;
  };
}

/** HMAC-SHA-256 of a text under a secret, as hexadecimal digits. */
export async function hmacSha256(secret: string, text: string): Promise<string> {
  return (await signer(secret))(text);
}

async function signer(secret: string): Promise<(text: string) => Promise<string>> {
  const encode = (words: string) => new TextEncoder().encode(words);
  const algorithm = { name: "HMAC", hash: "SHA-256" };
  const key = await crypto.subtle.importKey("raw", encode(secret), algorithm, false, ["sign"]);
  return async (text) => {
    const signed = new Uint8Array(await crypto.subtle.sign("HMAC", key, encode(text)));
    return [...signed].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  };
}
