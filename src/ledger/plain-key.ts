/**
 * What words are compared by where case, accents and the number of blanks do not matter.
 *
 * @example plainKey("  José  RAMÍREZ") // "jose ramirez"
 */
export function plainKey(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase().trim().replace(/\s+/g, " ");
}
