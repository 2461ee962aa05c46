/** More letters at once are no typing but a paste, a drop or a script, whatever the browser calls them. */
const MOST_TYPED = 30;

/**
 * Whether a box changed by letters typed or taken out: these go together as one step back. A text that was put in or
 * cleared as a whole is a step of its own.
 *
 * @param before what the box held
 */
export function isTyping(event: InputEvent, before: string): boolean {
  if (!/^(insert(Text|LineBreak|CompositionText)|deleteContent|deleteWord)/.test(event.inputType ?? "")) {
    return false;
  }
  return changedLetters(before, (event.target as HTMLTextAreaElement).value) <= MOST_TYPED;
}

/** How long the part is in which two texts differ, the longer of the two. */
function changedLetters(before: string, after: string): number {
  const shorter = Math.min(before.length, after.length);
  let start = 0;
  while (start < shorter && before[start] === after[start]) start += 1;
  let end = 0;
  while (end < shorter - start && before.at(-1 - end) === after.at(-1 - end)) end += 1;
  return Math.max(before.length, after.length) - start - end;
}
