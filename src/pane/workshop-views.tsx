import type { ComponentProps } from "preact";
import { fetchWorkshop } from "./fetch-parts.ts";
import { useFetched } from "./use-fetched.ts";

type Workshop = Awaited<ReturnType<typeof fetchWorkshop>>;

/** The plan of a test, as soon as it has been fetched. */
export function FetchedPlan(props: ComponentProps<Workshop["PlanView"]>) {
  const workshop = useFetched(fetchWorkshop);
  return workshop ? <workshop.PlanView {...props} /> : <p class="quiet">Fetching what plans a test…</p>;
}

/** The bench, as soon as it has been fetched. */
export function FetchedBench(props: ComponentProps<Workshop["BenchView"]>) {
  const workshop = useFetched(fetchWorkshop);
  return workshop ? <workshop.BenchView {...props} /> : <p class="quiet">Working out the set…</p>;
}
