import { inInches } from "./in-inches.ts";
import type { ShaftTrims } from "./raw-shaft.ts";
import type { ResolvedTrims } from "./resolve-trims.ts";

/** A sentence for each trim that passes what is entered as the maker's limit, and for a trimmed taper tip. */
export function trimWarnings(trims: ShaftTrims, cut: ResolvedTrims): string[] {
  const { limits = {}, tipKind = "parallel" } = trims;
  const warnings: string[] = [];
  if (tipKind === "taper" && cut.tip > 0) {
    warnings.push(
      `A taper tip fits its hosel as it comes; ${inInches(cut.tip)} off it needs the maker's word.`,
    );
  }
  const { tip = Infinity, butt = Infinity, cutLength = 0 } = limits;
  if (cut.tip > tip) {
    warnings.push(`Tip trim ${inInches(cut.tip)} passes the maker's limit of ${inInches(tip)}.`);
  }
  if (cut.butt > butt) {
    warnings.push(`Butt trim ${inInches(cut.butt)} passes the maker's limit of ${inInches(butt)}.`);
  }
  if (cut.cutLength < cutLength) {
    warnings.push(
      `Cut length ${inInches(cut.cutLength)} is under the maker's least of ${inInches(cutLength)}.`,
    );
  }
  return warnings;
}
