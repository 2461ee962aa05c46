import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { createContext, runInContext } from "node:vm";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { FUNCTIONS } from "../../src/functions/catalogue.ts";
import { argumentsOf } from "../../src/functions/define-function.ts";
import { NAMESPACE } from "../../src/functions/namespace.ts";
import { buildInto } from "../build/build-into.ts";

const TOP = fileURLToPath(new URL("../..", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "functions-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

type Associated = (...cells: unknown[]) => unknown;
interface Metadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly helpUrl?: string;
  readonly parameters: readonly {
    name: string;
    description?: string;
    optional?: boolean;
    dimensionality?: string;
  }[];
}

let associated: Map<string, Associated>;
let metadata: readonly Metadata[];

beforeAll(async () => {
  await buildInto(folder);
  associated = new Map();
  const associate = (id: string, answer: Associated) => void associated.set(id, answer);
  // A context with the language itself and this one object: no window, no timers, no console, no Error of the platform.
  const bare = createContext({ CustomFunctions: { associate } });
  runInContext(readFileSync(join(folder, "functions.js"), "utf8"), bare);
  metadata = JSON.parse(readFileSync(join(folder, "functions.json"), "utf8")).functions;
}, 120_000);

/** The spreadsheet hands over every argument as rows of cells. */
const asRows = (argument: unknown) =>
  Array.isArray(argument) || argument === null ? argument : [[argument]];

/** A figure of an example is shown to the digits of its source. */
function shownAs(found: unknown, shown: unknown): unknown {
  if (typeof found !== "number" || typeof shown !== "number") return found;
  return Number(found.toFixed((String(shown).split(".")[1] ?? "").length));
}

describe("the script of the functions, built and loaded where there is nothing but CustomFunctions.associate", () => {
  it("ties every function of the catalogue to its name, and nothing else", () => {
    expect([...associated.keys()].sort()).toEqual(FUNCTIONS.map(({ id }) => id).sort());
  });

  it.each(FUNCTIONS.map(({ id }) => id))("answers the worked example of %s", (id) => {
    const { example } = FUNCTIONS.find((one) => one.id === id)!;
    const wanted = Array.isArray(example.answer) ? example.answer : [[example.answer]];
    // What comes from another context is made anew here, so that it can be compared.
    const found = JSON.parse(JSON.stringify(associated.get(id)!(...example.call.map(asRows))));
    const shown = found.map((row: unknown[], r: number) =>
      row.map((cell, c) => shownAs(cell, wanted[r]?.[c])),
    );
    expect(shown).toEqual(wanted);
  });

  it("throws an error with the sentence where an argument is wrong", () => {
    expect(() => associated.get("SWINGWEIGHT")!([["heavy"]], [[29.1]])).toThrow(
      /^weight is "heavy"; it should be/,
    );
  });
});

describe("functions.json", () => {
  it("names what the catalogue names, one entry a function", () => {
    expect(metadata.map(({ id }) => id).sort()).toEqual(FUNCTIONS.map(({ id }) => id).sort());
    for (const { id, name } of metadata) expect(name).toBe(id);
  });

  it.each(FUNCTIONS.map(({ id }) => id))(
    "says of %s what it does, where help is and what each argument is",
    (id) => {
      const entry = metadata.find((one) => one.id === id)!;
      const spec = FUNCTIONS.find((one) => one.id === id)!;
      expect(entry.description).toMatch(/^\S.{20,}\.$/s);
      expect(entry.helpUrl).toBe(`https://localhost:3000/functions.html#${id}`);
      expect(entry.parameters.map(({ name }) => name)).toEqual(argumentsOf(spec).map(({ name }) => name));
      argumentsOf(spec).forEach(({ otherwise }, i) => {
        const { description, optional, dimensionality } = entry.parameters[i]!;
        expect(description).toMatch(/^\S.{10,}/);
        expect(optional ?? false).toBe(otherwise !== undefined);
        expect(dimensionality).toBe("matrix");
      });
    },
  );

  it.each(FUNCTIONS.map(({ id }) => id))("says of %s which arguments take a 0 for a blank", (id) => {
    const { parameters } = metadata.find((one) => one.id === id)!;
    const spec = FUNCTIONS.find((one) => one.id === id)!;
    argumentsOf(spec).forEach(({ zeroIsBlank }, i) => {
      if (zeroIsBlank) expect(parameters[i]!.description).toMatch(/\b(?:a|and|or) 0\b/i);
    });
  });

  it("stands under the namespace that the manifest and the page give", () => {
    const manifest = readFileSync(join(TOP, "manifest.xml"), "utf8");
    expect(NAMESPACE).toBe("CLUB");
    expect(manifest).toContain(`<bt:String id="Functions.Namespace" DefaultValue="${NAMESPACE}"/>`);
  });
});
