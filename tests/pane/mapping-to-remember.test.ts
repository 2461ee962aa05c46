import { describe, expect, test } from "vitest";
import { mappingToRemember } from "../../src/pane/mapping-to-remember.ts";

const bare = { id: "1", signature: "far", corrections: {} };
const put = { ...bare, corrections: { 2: { key: "carry", unit: "m" } } } as const;

describe("what is remembered of a table's columns", () => {
  test("is what was put right", () => {
    expect(mappingToRemember(bare, put)).toEqual({ columns: { 2: "carry" }, units: { 2: "m" } });
  });

  test("is nothing, and what was known goes, once a correction was undone", () => {
    expect(mappingToRemember(put, bare)).toEqual({ columns: {}, units: {} });
  });

  test("stays where another session, another table or no table at all is on the desk", () => {
    expect(mappingToRemember(null, bare)).toBeNull();
    expect(mappingToRemember(put, { ...bare, id: "2" })).toBeNull();
    expect(mappingToRemember(put, { ...bare, signature: "other" })).toBeNull();
    expect(mappingToRemember(put, { ...bare, signature: "" })).toBeNull();
  });
});
