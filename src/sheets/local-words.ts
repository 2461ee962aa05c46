/**
 * A sentence with its figures as they are written at this place: decimal points between digits become the place's
 * mark. Names of builds stay as they are, for a shaft may well be called "6.0", and so does what stands in quotation
 * marks, which a person typed.
 */
export function localWords(sentence: string, names: readonly string[], decimalMark: string): string {
  if (decimalMark === ".") return sentence;
  const known = [...names]
    .filter((name) => name !== "")
    .sort((a, b) => b.length - a.length)
    .map((name) => name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
  // Splitting by a group puts names and quotations at every second place.
  return sentence
    .split(new RegExp(`(${[...known, '"[^"]*"'].join("|")})`))
    .map((part, i) => (i % 2 === 1 ? part : part.replace(/(\d)\.(?=\d)/g, `$1${decimalMark}`)))
    .join("");
}
