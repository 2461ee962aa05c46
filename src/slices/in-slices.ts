/** Milliseconds of work after which the page gets its turn: two drawings of a screen. */
const HOLD = 30;

/**
 * Does work that yields how far it is, on a page that must stay alive: after some milliseconds the last step is told and
 * the page gets its turn. Answers null once it was stopped.
 */
export async function inSlices<Step, Found>(
  work: Generator<Step, Found>,
  told: (step: Step) => void = () => {},
  stop?: AbortSignal,
): Promise<Found | null> {
  for (;;) {
    if (stop?.aborted) return null;
    const began = performance.now();
    let turn = work.next();
    while (!turn.done && performance.now() - began < HOLD) turn = work.next();
    if (turn.done) return turn.value;
    told(turn.value);
    await new Promise((resume) => setTimeout(resume));
  }
}
