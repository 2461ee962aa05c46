import type { SetRequest } from "../../src/club/set-request.ts";
import type { Session } from "../../src/fitting/session.ts";
import { type BenchJob, benchJob } from "../../src/sheets/bench-job.ts";
import { buildLayout } from "../../src/sheets/build-layout.ts";
import { SheetDraft } from "../../src/sheets/sheet-draft.ts";
import { answer } from "../club/answer.ts";
import { smallSession } from "./small-session.ts";

/** Two invented irons, without anything that a set file need not say. */
export const TWO_IRONS = `target; swingweight; D2
shafts; 105
grip; 50
club; length; loft; lie
7; 37; 33; 62
8; 36.5; 37; 62.5
`;

/** The bench's job for a set file, for build A of the small session. `facts`: units, decimal mark and so on. */
export function smallJob(setText = TWO_IRONS, facts: Partial<Session> = {}): BenchJob {
  return answer(benchJob({ ...smallSession(), ...facts }, "A", setText));
}

/** A job with its sheet to draw on: tolerances in row 0, plan below row 2, check below row 6, what to do below row 11. */
export function smallBench(job: BenchJob = smallJob()) {
  return { job, draft: new SheetDraft("Build"), layout: buildLayout(job, 0) };
}

/** The job with one thing of its first club's request otherwise. */
export function withFirst(job: BenchJob, change: Partial<SetRequest["clubs"][number]>): BenchJob {
  const clubs = job.request.clubs.map((club, i) => (i === 0 ? { ...club, ...change } : club));
  return { ...job, request: { ...job.request, clubs } };
}

/** The job with a club that no model can say anything of. */
export function beyondModel(job: BenchJob): BenchJob {
  const clubs = job.plan.clubs.map((club) => ({ ...club, parts: { ...club.parts, length: Number.NaN } }));
  return { ...job, plan: { ...job.plan, clubs } };
}
