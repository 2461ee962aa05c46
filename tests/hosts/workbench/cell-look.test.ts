import { describe, expect, it } from "vitest";
import { gridLook, houseLook } from "../../../src/hosts/workbench/cell-look.ts";
import type { StyleName } from "../../../src/sheets/plan.ts";
import { STYLES } from "../../../src/sheets/styles.ts";

describe("a look in the grid", () => {
  it.each(Object.keys(STYLES) as StyleName[])("of the house is known again: %s", (name) => {
    expect(houseLook(gridLook(STYLES[name], "0.0"))).toBe(name);
  });

  it("that a user has changed a little is the nearest of the house", () => {
    const underlined = { ...gridLook(STYLES.title), ul: { s: 1 } };
    expect(houseLook(underlined)).toBe("title");
    expect(houseLook({ ...gridLook(STYLES.title), fs: 20 })).toBe("title");
  });

  it("of a cell that has only a number format is none", () => {
    expect(houseLook({ n: { pattern: "0.0" } })).toBeUndefined();
    expect(houseLook(null)).toBeUndefined();
  });
});
