import type { UnitSet } from "../shots/unit-set.ts";
import type { BuildDetails, Correction, Draft, Facts } from "./draft.ts";

/** What a person can do to a session. Each is reversible. */
export type Change =
  | { readonly does: "text"; readonly text: string }
  | { readonly does: "add"; readonly text: string }
  | { readonly does: "correct"; readonly column: number; readonly correction: Correction }
  | { readonly does: "facts"; readonly facts: Partial<Facts> }
  | { readonly does: "build"; readonly name: string; readonly details: BuildDetails }
  | { readonly does: "tick"; readonly rows: readonly number[]; readonly keep: boolean }
  | { readonly does: "units"; readonly units: UnitSet }
  | { readonly does: "replace"; readonly draft: Omit<Draft, "id"> }
  | { readonly does: "new"; readonly draft: Draft }
  | { readonly does: "open"; readonly id: string }
  | { readonly does: "forget"; readonly id: string };
