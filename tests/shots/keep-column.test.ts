import { describe, expect, it } from "vitest";
import { readKeepColumn } from "../../src/shots/keep-column.ts";

describe("readKeepColumn(cells)", () => {
  it("keeps a shot without an answer where the column says yes and no", () => {
    expect(readKeepColumn(["yes", "No", "", "TRUE", "0"]).keep).toEqual([true, false, true, true, false]);
  });

  it("leaves out a shot without a tick where others carry one", () => {
    expect(readKeepColumn(["x", "", "✓", " "]).keep).toEqual([true, false, true, false]);
  });

  it("keeps a shot whose answer is unclear, and tells which", () => {
    expect(readKeepColumn(["maybe", "no"])).toEqual({ keep: [true, false], unclear: [0] });
  });
});
