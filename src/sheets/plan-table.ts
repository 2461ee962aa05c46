import type { BenchJob } from "./bench-job.ts";
import { type BuildLayout, LABELS } from "./build-layout.ts";
import { area, type SheetDraft } from "./sheet-draft.ts";

/** What to cut, weigh and bend: a row a club. */
export function putPlan(draft: SheetDraft, job: BenchJob, layout: BuildLayout): void {
  const { plan: row, planClubs: first, planColumns: columns } = layout;
  const { clubs } = job.plan;
  draft.put(row, LABELS, [["Cut and build", ...columns.map(({ heading }) => heading)]], "headingCentre");
  draft.height(row, 60);
  draft.put(
    first,
    LABELS,
    clubs.map(({ club }) => [club]),
    "label",
  );
  const cells = clubs.map((club, index) => columns.map(({ of }) => of(club, index, job) ?? null));
  draft.put(first, 1, cells, "figure");
  columns.forEach(({ format }, index) => {
    draft.format(area(first, 1 + index, clubs.length), format);
  });
}
