import type { Written } from "../hosts/host.ts";

/** What a write that succeeded came to: "Added Comparison, Player and Shots." */
export function writtenWords({ sheets, notes }: Written): string {
  return [`Added ${new Intl.ListFormat("en-GB").format(sheets)}.`, ...notes].join(" ");
}
