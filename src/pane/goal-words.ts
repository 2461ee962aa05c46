import type { Goal } from "../fitting/session.ts";

/** What a fitting wants most, as a fitter would say it. */
export const GOAL_WORDS: Readonly<Record<Goal, string>> = {
  overall: "All of it together",
  carry: "The longest carry",
  tight: "The tightest group",
  window: "A flight inside the target window",
};
