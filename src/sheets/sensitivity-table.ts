import type { SetPlanClub } from "../club/plan-set.ts";
import { type Sensitivity, sensitivities } from "../club/sensitivities.ts";
import type { SetRequest } from "../club/set-request.ts";
import { isProblem } from "../outcome/problem.ts";
import type { BenchJob } from "./bench-job.ts";
import { benchWords } from "./bench-words.ts";
import { area, type SheetDraft } from "./sheet-draft.ts";

/** Columns that the words of a change take; rule of thumb, model and inertia follow. */
const NAME = 3;

/** Points that the rule of thumb gives for the change. Common practice, no source. */
const RULE_OF_THUMB: Readonly<Record<Sensitivity["part"], number>> = {
  length: 3,
  head: 1,
  grip: -1,
  shaft: 1,
};

/** Rules of thumb beside what the model says of the set's reference club. Answers the next free row. */
export function putSensitivities(draft: SheetDraft, job: BenchJob, row: number, column: number): number {
  const club = referenceClub(job.request, job.plan.clubs);
  const found = sensitivities(club.parts);
  const words = benchWords(job);
  if (isProblem(found)) return row;
  draft.putAcross(row, column, NAME, `What moves swingweight on club ${club.club}`, "headingLeft");
  draft.put(row, column + NAME, [["Rule of thumb", "Model, points", "Model, kg cm2"]], "headingCentre");
  found.forEach(({ part, change, unit, points, inertia }, index) => {
    const at = row + 1 + index;
    draft.putAcross(at, column, NAME, words(`${change} ${unit} more ${part}`), "label");
    draft.put(at, column + NAME, [[RULE_OF_THUMB[part], points, inertia]], "figure");
  });
  draft.format(area(row + 1, column + NAME, found.length), "+0;-0;0");
  draft.format(area(row + 1, column + NAME + 1, found.length), "+0.00;-0.00;0.00");
  draft.format(area(row + 1, column + NAME + 2, found.length), "+0.0;-0.0;0.0");
  return row + 1 + found.length;
}

/** The club that the target steps from, or the shafts, else the middle one. */
function referenceClub({ target, shafts }: SetRequest, clubs: readonly SetPlanClub[]): SetPlanClub {
  const named = [
    "reference" in target ? target.reference : undefined,
    "reference" in shafts ? shafts.reference : undefined,
  ].flatMap((name) => (name === undefined ? [] : [name.trim().toLowerCase()]));
  const label = ({ club }: SetPlanClub) => club.trim().toLowerCase();
  const found = named.flatMap((name) => clubs.filter((club) => label(club) === name));
  return found[0] ?? clubs[Math.floor(clubs.length / 2)]!;
}
