const MISSING = new Set(
  [
    "",
    "-",
    "--",
    "---",
    "–",
    "—",
    "−",
    "n/a",
    "na",
    "n.a.",
    "n.a",
    "#n/a",
    "#nv",
    "#n/d",
    "nan",
    "null",
    "none",
  ].concat(["nil", "k.a.", "k. a.", "s/d", "n/d", ".", "?", "--.-", "-.-", "…", "..."]),
);

/**
 * Whether a cell only says that there is no figure: blank, a dash of any kind, `n/a` and its like
 * (common practice, no source).
 */
export function isMissing(cell: string): boolean {
  return cell.length < 7 && MISSING.has(cell.trim().toLowerCase());
}
