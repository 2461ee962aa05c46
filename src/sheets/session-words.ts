import type { Session } from "../fitting/session.ts";
import { localWords } from "./local-words.ts";

/** Sentences about a session as its place writes figures; names of its builds and its player stay as they are. */
export function sessionWords({
  builds,
  player,
  decimalMark = ".",
}: Pick<Session, "builds" | "player" | "decimalMark">): (sentence: string) => string {
  const names = [player, ...builds.map(({ name }) => name)];
  return (sentence) => localWords(sentence, names, decimalMark);
}
