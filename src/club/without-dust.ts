/**
 * A sum or difference of decimal figures without what binary fractions leave behind the ninth decimal: 108.4 less 108.1
 * is 0.30000000000001137, which would fail a test for three tenths. No scale or rule at the bench shows so fine.
 *
 * @example withoutDust(108.4 - 108.1) // 0.3
 */
export function withoutDust(figure: number): number {
  return Math.round(figure * 1e9) / 1e9;
}
