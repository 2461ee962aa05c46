import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { wilson } from "../stats/wilson.ts";
import { buildKey, type LedgerSession, TOO_CLOSE } from "./sessions-of.ts";

/** How often a verdict of "clear" was found again when the player came back. */
export interface VerdictsHeld {
  /** Clear verdicts of which the build was hit again beside another one. */
  readonly lookedAt: number;
  readonly held: number;
  /** 95 % limits of the share that held, Wilson. */
  readonly low: number;
  readonly high: number;
  /** Clear verdicts that nobody could look at again. */
  readonly unseen: number;
}

/**
 * Follows each clear verdict to the player's next session with the same kind of club in which the winner was hit again
 * beside another build and a build was chosen: it held if that was the winner again. `sessions` the earliest first.
 */
export function verdictsHeld(sessions: readonly LedgerSession[]): Outcome<VerdictsHeld> {
  const later = new Map<string, LedgerSession[]>();
  let [lookedAt, held, unseen] = [0, 0, 0];
  for (const session of [...sessions].reverse()) {
    if (session.player === "" || session.date === "") continue;
    const key = `${session.player}|${session.kind}`;
    const after = later.get(key) ?? [];
    if (session.verdict === "clear" && session.chosen !== "") {
      const again = after.find(
        ({ rows, chosen, verdict, date }) =>
          date > session.date &&
          chosen !== "" &&
          verdict !== TOO_CLOSE &&
          rows.length > 1 &&
          rows.some((row) => buildKey(row) === session.chosen),
      );
      if (!again) unseen++;
      else {
        lookedAt++;
        if (again.chosen === session.chosen) held++;
      }
    }
    later.set(key, [session, ...after]);
  }
  if (lookedAt === 0)
    return unavailable("No player came back to hit the winner of a clear verdict against another build.");
  const limits = wilson(held, lookedAt);
  return isProblem(limits) ? limits : { lookedAt, held, unseen, low: limits.low, high: limits.high };
}
