/** `shafts; 105; 3; 7i`: the raw weight, grams more a club shorter, from which club. A list of weights has no step. */
const LINE = /^(shafts;[ \t]*[\d.,]+)(?:;[ \t]*([-+\d.,]*))?[ \t]*(;.*)?$/im;

/** By how many grams a club the shafts of a set file step; null where it does not say so in the usual form. */
export function shaftStepOf(text: string): number | null {
  const found = LINE.exec(text);
  const step = Number((found?.[2] ?? "").replace(",", "."));
  return found && Number.isFinite(step) ? step : null;
}

/** The same set file with shafts that step by so many grams a club; unchanged where it has no such line. */
export function withShaftStep(text: string, step: number, decimalMark: string): string {
  return text.replace(LINE, (_, weight: string, __, from = "") => {
    return `${weight}; ${String(step).replace(".", decimalMark)}${from}`;
  });
}
