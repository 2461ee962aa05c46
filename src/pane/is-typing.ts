/** Whether a box changed by a letter typed or taken out, and not by a paste, a drop or a script: these are steps. */
export function isTyping(event: InputEvent): boolean {
  return /^(insert(Text|LineBreak|CompositionText)|deleteContent|deleteWord)/.test(event.inputType ?? "");
}
