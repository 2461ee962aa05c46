import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import { inInches } from "./in-inches.ts";
import { progression } from "./progression.ts";
import type { SetRequest } from "./set-request.ts";

/** Tip trim of each club in inches: by the shop's schedule, 0 without one; a club's own goes first. */
export function setTipTrims({ clubs, tipTrims }: SetRequest): Outcome<number[]> {
  const labels = clubs.map((club) => club.club);
  const scheduled = tipTrims
    ? progression(labels, tipTrims.reference ?? labels[0] ?? "", tipTrims.tip, tipTrims.step ?? 0)
    : labels.map(() => 0);
  if (isProblem(scheduled)) return scheduled;
  const trims = clubs.map((club, index) => club.tipTrim ?? scheduled[index]!);
  const wrong = trims.findIndex((trim) => !(trim >= 0));
  if (wrong < 0) return trims;
  return invalid(
    `The tip trim of club ${labels[wrong]} comes to ${inInches(trims[wrong]!)}; the schedule should give 0 in or more.`,
  );
}
