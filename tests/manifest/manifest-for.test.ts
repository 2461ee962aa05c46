import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { manifestFor, withIcons } from "../../src/hosts/excel/manifest-for.ts";
import { isProblem } from "../../src/outcome/problem.ts";
import { manifestFaults } from "./manifest-faults.ts";

const manifest = readFileSync(new URL("../../manifest.xml", import.meta.url), "utf8");

describe("manifestFor", () => {
  test.each(["https://clubs.example", "https://clubs.example/fitting/", "https://10.0.0.7:8443"])(
    "serves everything from %s and nothing from elsewhere",
    (address) => {
      const own = manifestFor(address, manifest);
      if (isProblem(own)) throw new Error(own.message);
      expect(manifestFaults(own, address.replace(/\/$/, ""))).toEqual([]);
      expect(own).not.toContain("localhost");
    },
  );

  test.each(["light", "dark"] as const)("can name the %s icons, all of which are drawn", (set) => {
    const own = withIcons(manifest, set);
    expect(manifestFaults(own, "https://localhost:3000")).toEqual([]);
    expect(own.match(new RegExp(`-${set}\\.png`, "g"))).toHaveLength(own.match(/\.png/g)!.length);
  });

  test.each([
    "http://clubs.example",
    "clubs.example",
    "https://clubs.example/?a=1",
    "https://",
    'https://a"b.example',
    "",
  ])("refuses the address %j", (address) => {
    expect(manifestFor(address, manifest)).toMatchObject({ kind: "invalid" });
  });

  test("says when there was nothing to replace", () => {
    expect(manifestFor("https://clubs.example", "<OfficeApp/>")).toEqual({
      kind: "invalid",
      message: "The manifest does not name https://localhost:3000, so nothing was replaced.",
    });
  });
});
