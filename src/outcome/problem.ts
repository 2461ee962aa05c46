/**
 * What a pure function answers when it cannot give a figure. Nothing in this project throws for bad input and
 * nothing answers NaN: the caller gets a `Problem` and hands its sentence on, to a cell, the pane or the terminal.
 *
 * - `invalid`: an argument is not what it should be. A spreadsheet shows #VALUE! and the sentence.
 * - `unavailable`: the arguments are fine but too few, or there is no answer. A spreadsheet shows #N/A.
 */
export interface Problem {
  readonly kind: "invalid" | "unavailable";
  readonly message: string;
}

/** A figure, or the reason why there is none. */
export type Outcome<T> = T | Problem;

/** An argument is not what it should be. The sentence names it, says what was found and what would do. */
export function invalid(message: string): Problem {
  return { kind: "invalid", message };
}

/** There is no answer, though nothing asked was wrong; mostly too few shots. */
export function unavailable(message: string): Problem {
  return { kind: "unavailable", message };
}

/** Tells a problem from an answer. */
export function isProblem(outcome: unknown): outcome is Problem {
  return (
    typeof outcome === "object" &&
    outcome !== null &&
    "message" in outcome &&
    "kind" in outcome &&
    (outcome.kind === "invalid" || outcome.kind === "unavailable")
  );
}
