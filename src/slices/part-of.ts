/** The same work, its shares told as part of a longer one that goes from 0 to 1. */
export function* partOf<Found>(
  work: Generator<number, Found>,
  from: number,
  to: number,
): Generator<number, Found> {
  for (;;) {
    const turn = work.next();
    if (turn.done) return turn.value;
    yield from + turn.value * (to - from);
  }
}
