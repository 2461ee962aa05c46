import { type Outcome, unavailable } from "../outcome/problem.ts";

/** The figure, or a problem where arguments at the edge of what a computer can count ran over. */
export function finite(figure: number): Outcome<number> {
  return Number.isFinite(figure)
    ? figure
    : unavailable("The arguments are too great, or too near to nothing, to compute with.");
}
