import type { FunctionSpec } from "./define-function.ts";
import { NAMESPACE } from "./namespace.ts";

/** How a function is written: `=CLUB.SWINGWEIGHT(weight, balance, [fulcrum])`. */
export function callPattern(
  id: string,
  names: readonly { readonly name: string; readonly optional?: boolean }[],
): string {
  const written = names.map(({ name, optional }) => (optional ? `[${name}]` : name));
  return `=${NAMESPACE}.${id}(${written.join(", ")})`;
}

/**
 * The worked example as a formula that can be pasted into a cell; ranges as array constants, columns parted by
 * commas and rows by semicolons.
 *
 * @example exampleFormula(CUTWEIGHT) // "=CLUB.CUTWEIGHT(120, 41, 37)"
 */
export function exampleFormula({ id, example }: FunctionSpec): string {
  return `=${NAMESPACE}.${id}(${example.call.map(argumentText).join(", ")})`;
}

function argumentText(given: unknown): string {
  if (!Array.isArray(given)) return cellText(given);
  const rows = given.map((row: unknown) => (Array.isArray(row) ? row : [row]).map(cellText).join(","));
  return `{${rows.join(";")}}`;
}

function cellText(cell: unknown): string {
  if (cell === null || cell === undefined) return "";
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return typeof cell === "number" ? String(cell) : `"${String(cell).replaceAll('"', '""')}"`;
}
