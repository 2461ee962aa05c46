/** What work in slices comes to, done in one go. */
export function atOnce<Found>(work: Generator<unknown, Found>): Found {
  let turn = work.next();
  while (!turn.done) turn = work.next();
  return turn.value;
}
