import { invalid, type Outcome } from "../outcome/problem.ts";
import { type Row, textIn } from "./cell.ts";
import { playerKey } from "./player-key.ts";

/** What people wrote freely may name the player, so it does not travel with codes. */
const FREE_WORDS = ["title", "note", "place"];

/** Names are few and easily tried, so all depends on the secret. */
const SHORTEST = 8;

/**
 * Ledger rows with codes for names: the same player has the same code throughout, and in every export made with the
 * same secret. Codes are the first 64 bits of HMAC-SHA-256 (RFC 2104) of the name; without the secret nobody can tell
 * whose they are, even who has a list of names. Titles, notes and places are left out, and so is what was ordered
 * where it has the player's name in it.
 */
export async function codedRows(rows: readonly Row[], secret: string): Promise<Outcome<Row[]>> {
  if (secret.length < SHORTEST) {
    return invalid(
      `The secret has ${secret.length} letters; ${SHORTEST} or more would do, so that nobody guesses it.`,
    );
  }
  const keys = new Set(rows.map((row) => playerKey(textIn(row, "player"))));
  keys.delete("");
  const codes = new Map<string, string>();
  for (const key of keys) codes.set(key, `P-${(await hmacSha256(secret, key)).slice(0, 16)}`);
  return rows.map((row) => {
    const key = playerKey(textIn(row, "player"));
    const hidden = Object.fromEntries(FREE_WORDS.filter((one) => one in row).map((one) => [one, null]));
    const named =
      key !== "" &&
      key.split(" ").some((word) => word.length > 2 && textIn(row, "ordered").toLowerCase().includes(word));
    return { ...row, ...hidden, ...(named ? { ordered: "ordered" } : {}), player: codes.get(key) ?? null };
  });
}

/** HMAC-SHA-256 of a text under a secret, as hexadecimal digits. */
export async function hmacSha256(secret: string, text: string): Promise<string> {
  const encode = (words: string) => new TextEncoder().encode(words);
  const algorithm = { name: "HMAC", hash: "SHA-256" };
  const key = await crypto.subtle.importKey("raw", encode(secret), algorithm, false, ["sign"]);
  const signed = new Uint8Array(await crypto.subtle.sign("HMAC", key, encode(text)));
  return [...signed].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
