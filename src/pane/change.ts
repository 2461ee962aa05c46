import type { UnitSet } from "../shots/unit-set.ts";
import type { BenchChoice, BuildDetails, Correction, Draft, Facts, InLedger, PlanChoice } from "./draft.ts";

/** What a person can do to a session. Each is reversible but what was kept in the ledger. */
export type Change =
  /**
   * With `ticks` the text comes from a table that is followed, and these are the ticks of its lines. `typed`: letter by
   * letter into the box, so that one step back takes all of it. `date`: the day of a session that begins with it.
   */
  | {
      readonly does: "text";
      readonly text: string;
      readonly ticks?: Draft["ticks"];
      readonly typed?: boolean;
      readonly date?: string;
    }
  | { readonly does: "add"; readonly text: string }
  | { readonly does: "correct"; readonly column: number; readonly correction: Correction }
  /** What is known of tables with these headings from earlier: part of bringing the table, no step of its own. */
  | { readonly does: "recalled"; readonly corrections: Draft["corrections"] }
  | { readonly does: "facts"; readonly facts: Partial<Facts> }
  | { readonly does: "build"; readonly name: string; readonly details: BuildDetails }
  | { readonly does: "bench"; readonly bench: Partial<BenchChoice>; readonly typed?: boolean }
  | { readonly does: "plan"; readonly plan: Partial<PlanChoice>; readonly typed?: boolean }
  | { readonly does: "tick"; readonly rows: readonly number[]; readonly keep: boolean }
  /** The session of this id and text stands in the ledger now. No undo takes it out of there. */
  | {
      readonly does: "inLedger";
      readonly id: string;
      readonly text: string;
      readonly ledger: InLedger;
    }
  | { readonly does: "units"; readonly units: UnitSet }
  | { readonly does: "replace"; readonly draft: Omit<Draft, "id"> }
  | { readonly does: "new"; readonly draft: Draft }
  | { readonly does: "open"; readonly id: string }
  | { readonly does: "forget"; readonly id: string };
