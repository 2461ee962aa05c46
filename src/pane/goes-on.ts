/**
 * Whether a text goes on with the session of another one: half of the other's lines of shots stand in it still. Where
 * they do not, other shots were pasted over them, which are another session in the ledger.
 *
 * @example goesOn("Carry\n150\n151", "Carry\n150\n151\n152") // true
 */
export function goesOn(before: string, after: string): boolean {
  if (before === after) return before !== "";
  const lines = before
    .split(/\r?\n/)
    .slice(1)
    .filter((line) => line.trim() !== "");
  const there = new Set(after.split(/\r?\n/));
  return lines.length > 0 && 2 * lines.filter((line) => there.has(line)).length >= lines.length;
}
