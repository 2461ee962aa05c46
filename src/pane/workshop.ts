/** The parts that are opened on purpose, before the first ball and after the choice; fetched when they are. */

export { BenchView } from "./bench-view.tsx";
export { PlanView } from "./plan-view.tsx";
