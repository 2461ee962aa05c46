import { plainKey } from "./plain-key.ts";

/** Names that count as one player's: case, accents and blanks do not matter, and "Tilsley, Rowan" is "Rowan Tilsley". */
export function playerKey(name: string): string {
  const [last, first, ...more] = name.split(",");
  return plainKey(first !== undefined && more.length === 0 ? `${first} ${last}` : name);
}
