import { describe, expect, it } from "vitest";
import { BuildNames } from "../../src/shots/build-names.ts";

describe("BuildNames", () => {
  it("answers the first spelling for names that differ in case and spaces", () => {
    const names = new BuildNames();
    expect(["95 g  Mid ", "95 G MID", "95 g mid", "95g mid"].map((name) => names.name(name))).toEqual([
      "95 g  Mid",
      "95 g  Mid",
      "95 g  Mid",
      "95g mid",
    ]);
  });

  it("leaves text that looks like a formula, or like a word every object has, as it is", () => {
    const names = new BuildNames();
    for (const name of ["=1+1", "@x", "-2+3", "__proto__", "constructor"])
      expect(names.name(name)).toBe(name);
  });
});
