/** The parts that ask about shots once there are some; fetched while the pane waits for them. */

export { BuildsForm } from "./builds-form.tsx";
export { CheckReading } from "./check-reading.tsx";
export { JudgeShots } from "./judge-shots.tsx";
export { ProblemList } from "./problem-list.tsx";
export { SessionFacts } from "./session-facts.tsx";
export { WindowsForm } from "./windows-form.tsx";
