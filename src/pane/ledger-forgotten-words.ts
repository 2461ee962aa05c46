/** What the pane says when a player has been taken out: how much went, and where their name may still stand. */
export function forgottenWords(
  player: string,
  { entries, shots }: { readonly entries: number; readonly shots: number },
): string {
  return `${entries} rows and ${shots} shots of ${player} are gone from the ledger and the archive. Their name still stands in sessions that are open here, on the Comparison, Player, Shots and Build sheets made from these, in a tracking sheet of your own that was brought in, in notes of other players' rows, and in files that were saved or exported: remove it there yourself.`;
}
