import type { BenchJob } from "./bench-job.ts";
import { benchLengths } from "./bench-lengths.ts";
import { type BuildLayout, LABELS } from "./build-layout.ts";
import { figuresOf, tolerancesOf } from "./checked-figures.ts";
import { area, type SheetDraft } from "./sheet-draft.ts";

/** The strip of tolerances at the top: one cell to type in over each figure of the check. */
export function putTolerances(draft: SheetDraft, job: BenchJob, layout: BuildLayout): void {
  const { tolerances: row } = layout;
  const inInches = tolerancesOf(job.request);
  const allowed = { ...inInches, length: benchLengths(job.units ?? "us").shown(inInches.length) };
  draft.put(row, LABELS, [["Tolerance"]], "label");
  for (const { key, label, unit } of figuresOf(job)) {
    const column = layout.columnOf(key);
    draft.putAcross(row, column, 2, `${label} ±`, "figure");
    draft.put(row, column + 2, [[allowed[key]]], "input", "General");
    draft.put(row, column + 3, [[unit]], "label");
    draft.validate({
      area: area(row, column + 2),
      kind: "number",
      least: 0,
      most: 1000,
      message: `How far off its target ${label.toLowerCase()} may be: 0 or more.`,
    });
  }
}
