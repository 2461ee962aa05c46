import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import { shotsNeeded } from "../stats/index.ts";

/** The order in which to hit the builds, so that warming up and tiring favour none. */
export interface TestPlan {
  /** Names of the builds, one a shot, in rounds in which each build comes once. */
  readonly rounds: readonly (readonly string[])[];
  readonly words: string;
}

/**
 * A balanced order: the rows of a Williams square (Williams 1949, Australian Journal of Scientific Research A 2,
 * 149-168), in which every build comes equally often at each place of a round and after each other build. An odd
 * number of builds needs the square and its mirror. Rounds beyond the square begin it again.
 */
export function testPlan(builds: readonly string[], shotsEach: number): Outcome<TestPlan> {
  if (builds.length < 2) return invalid("A test plan needs at least two builds.");
  if (!(Number.isInteger(shotsEach) && shotsEach > 0)) {
    return invalid(`shotsEach is ${shotsEach}; it should be a whole number of shots, 1 or more.`);
  }
  const square = williamsSquare(builds.length);
  const rounds = Array.from({ length: shotsEach }, (_, r) =>
    square[r % square.length]!.map((b) => builds[b]!),
  );
  const words = `${shotsEach} rounds, each build once a round: ${shotsEach * builds.length} balls. Change the build after every ball; after a poor strike hit again and untick the poor one rather than leave it out.`;
  return { rounds, words };
}

/** Rows of places: 0, 1, k - 1, 2, k - 2 and so on, each row one up from the row before; with mirrors when k is odd. */
export function williamsSquare(k: number): number[][] {
  const first = Array.from({ length: k }, (_, i) => (i % 2 === 1 ? (i + 1) / 2 : (k - i / 2) % k));
  const rows = Array.from({ length: k }, (_, r) => first.map((place) => (place + r) % k));
  return k % 2 === 0 ? rows : [...rows, ...rows.map((row) => [...row].reverse())];
}

/** Shots a build for a difference in carry that matters, yards, when single shots spread by `sd`. */
export function shotsForDifference(sd: number, difference: number): Outcome<number> {
  const shots = shotsNeeded(sd, difference);
  return isProblem(shots) ? shots : Math.max(3, shots);
}
