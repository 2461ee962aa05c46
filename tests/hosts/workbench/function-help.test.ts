import { describe, expect, it } from "vitest";
import type { CatalogueEntry } from "../../../src/functions/catalogue.ts";
import { functionHelp } from "../../../src/hosts/workbench/function-help.ts";

const entry: CatalogueEntry = { id: "SWINGWEIGHT", run: () => "D0.0", least: 2, most: 3 };

describe("help in the list of functions", () => {
  it("shows the first line of the description, and which arguments may be left out", () => {
    const [help] = functionHelp(
      [entry],
      [
        {
          id: "SWINGWEIGHT",
          description: "Swingweight of a club.\nMore on it.",
          parameters: [
            { name: "weight", description: "Grams." },
            { name: "fulcrum", optional: true },
          ],
        },
      ],
    );
    expect(help).toMatchObject({
      functionName: "CLUB.SWINGWEIGHT",
      abstract: "Swingweight of a club.",
      functionParameter: [
        { name: "weight", detail: "Grams.", require: 1 },
        { name: "fulcrum", require: 0 },
      ],
    });
  });

  it("is the bare name where nothing is known of a function", () => {
    expect(functionHelp([entry], [])).toMatchObject([
      { functionName: "CLUB.SWINGWEIGHT", description: "", functionParameter: [] },
    ]);
  });
});
