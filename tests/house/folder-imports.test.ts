import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { circleAmong, folderImports } from "./folder-imports.ts";

describe("folders of src", () => {
  it("import each other in one direction, without a circle", () => {
    expect(circleAmong(folderImports())).toBeNull();
  });

  it("would show a circle if there were one", () => {
    const circle = new Map([
      ["a", new Map([["b", "x.ts"]])],
      ["b", new Map([["c", "y.ts"]])],
      ["c", new Map([["a", "z.ts"]])],
    ]);
    expect(circleAmong(circle)).toEqual(["a", "b", "c", "a"]);
  });

  it("each stand in the table of DEVELOPERS.md", () => {
    const text = readFileSync(new URL("../../DEVELOPERS.md", import.meta.url), "utf8");
    for (const folder of folderImports().keys()) {
      const [first] = folder.split("/");
      expect(text, folder).toContain(`\`src/${first}\``);
    }
  });

  it("keep what must be bare bare: outcome imports nothing, club and units only outcome", () => {
    const imports = folderImports();
    expect([...(imports.get("outcome")?.keys() ?? [])]).toEqual([]);
    expect([...imports.get("club")!.keys()]).toEqual(["outcome"]);
    expect([...imports.get("units")!.keys()]).toEqual(["outcome"]);
    expect([...imports.get("sheets")!.keys()].filter((to) => /hosts|pane|functions/.test(to))).toEqual([]);
    for (const [from, to] of imports) {
      if (from !== "hosts/workbench") expect([...to.keys()], from).not.toContain("functions");
    }
  });
});
