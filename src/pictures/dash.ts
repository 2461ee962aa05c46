const DASHES: readonly string[] = ["none", "7 3", "2 3", "9 3 2 3", "5 2 1 2", "1 4"];

/** How the line of the build at this place is broken, so that lines are told apart by more than colour. */
export function dash(place: number): string {
  return DASHES[place % DASHES.length]!;
}
