import type { SetClub } from "../club/set-request.ts";
import type { ClubKind } from "./club-kind.ts";

const club = (name: string, length: number, loft: number, lie: number): SetClub => ({
  club: name,
  length,
  loft,
  lie,
});

/** Irons half an inch, four degrees of loft and half a degree of lie apart. Common practice, no source. */
const IRONS: readonly SetClub[] = [
  club("5i", 38, 26, 61),
  club("6i", 37.5, 30, 61.5),
  club("7i", 37, 34, 62),
  club("8i", 36.5, 38, 62.5),
  club("9i", 36, 42, 63),
  club("PW", 35.5, 46, 63.5),
];

/** One usual club of each of the other kinds. Common practice, no source. */
const SINGLE: Readonly<Partial<Record<ClubKind, SetClub>>> = {
  driver: club("Driver", 45, 10.5, 58),
  fairway: club("3W", 43, 15, 57),
  hybrid: club("4H", 40, 22, 59.5),
  wedge: club("SW", 35, 56, 64),
};

/** The clubs that a set is started from, and the one among them that was hit in the bay. */
export interface StandardClubs {
  readonly clubs: readonly SetClub[];
  readonly tested: string;
}

/**
 * What a shop would build from a test of this kind of club: irons 5 to PW, or the one club that was tested. `said`:
 * words that may name the very iron, as in "8 iron" or "PW".
 */
export function standardClubs(kind: ClubKind, said = ""): StandardClubs {
  const single = SINGLE[kind];
  if (single) return { clubs: [single], tested: single.club };
  return { clubs: IRONS, tested: ironIn(said) ?? USUAL_IRON[kind] ?? "7i" };
}

/** The iron of a kind where nothing names it. */
const USUAL_IRON: Readonly<Partial<Record<ClubKind, string>>> = { "long iron": "5i", "short iron": "9i" };

/** The label of the iron that words name, where it is one of ours. */
function ironIn(said: string): string | undefined {
  if (/\bpw\b|pitching/i.test(said)) return "PW";
  const number = /\b([5-9])[\s-]*i(?:ron)?\b/i.exec(said)?.[1];
  return number === undefined ? undefined : `${number}i`;
}
