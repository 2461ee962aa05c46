import { describe, expect, it } from "vitest";
import { isMissing } from "../../src/shots/missing.ts";

describe("isMissing(cell)", () => {
  it("takes blanks, dashes and n/a for no figure", () => {
    for (const cell of ["", " ", "-", "--", "—", "−", "n/a", "N/A", "NA", "null", "None", "#N/A", "NaN"]) {
      expect(isMissing(cell)).toBe(true);
    }
  });

  it("takes nothing else for it", () => {
    for (const cell of ["0", "-1", "none at all", "x", "left", "#VALUE!"])
      expect(isMissing(cell)).toBe(false);
  });
});
