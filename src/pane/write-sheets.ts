import type { Host, Run, Written } from "../hosts/host.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import type { Taken } from "../sheets/free-names.ts";
import type { WorkbookPlan } from "../sheets/plan.ts";

/** Writes the sheets that a plan says, under names that are free in the workbook. */
export async function writeSheets(
  host: Host,
  planFor: (taken: Taken) => Outcome<WorkbookPlan>,
  run: Run = {},
): Promise<Outcome<Written>> {
  const taken = await host.taken();
  if (isProblem(taken)) return taken;
  const plan = planFor(taken);
  return isProblem(plan) ? plan : host.write(plan, run);
}
