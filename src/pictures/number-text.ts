/**
 * A number on an axis by the simple part of a number format: `0`, `0.0`, `#,##0`, `0%`. Other formats, and General,
 * give at most four digits after the point.
 */
export function numberText(value: number, format: string): string {
  const found = /^(#,##)?0(?:\.(0+))?(%)?$/.exec(format);
  const [, grouped, decimals = "", percent] = found ?? [];
  return new Intl.NumberFormat("en", {
    useGrouping: grouped !== undefined,
    style: percent ? "percent" : "decimal",
    minimumFractionDigits: decimals.length,
    maximumFractionDigits: found ? decimals.length : 4,
  }).format(value);
}
