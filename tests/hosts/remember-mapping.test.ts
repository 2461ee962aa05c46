import { describe, expect, test } from "vitest";
import { excelHost } from "../../src/hosts/excel/excel-host.ts";
import { recallMapping, rememberMapping } from "../../src/hosts/remember-mapping.ts";
import { isProblem, unavailable } from "../../src/outcome/problem.ts";
import { headerSignature } from "../../src/shots/header-signature.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { officeHost } from "../office-host/office-host.ts";
import { memoryHost } from "../pane/memory-host.ts";

const mapping = { columns: { 1: "build", 2: "carry" }, units: { 2: "m" } } as const;

describe("the mapping of a shop's own columns", () => {
  test("is put right once and read so from then on, kept in the workbook's settings", async () => {
    officeHost();
    const first = "Schaft\tWeite\nleicht\t140\nschwer\t142";
    expect(isProblem(readShots(first))).toBe(true);
    expect(await rememberMapping(excelHost(), headerSignature(first), mapping)).toBe(true);
    const later = "schaft\tweite\nleicht\t139\nschwer\t145\nschwer\t144";
    const recalled = await recallMapping(excelHost(), headerSignature(later));
    expect(recalled).toEqual(mapping);
    const table = readShots(later, recalled!);
    if (isProblem(table)) throw new Error(table.message);
    expect(table.size).toBe(3);
    expect(new Set(table.build)).toEqual(new Set(["leicht", "schwer"]));
    // 139 m are 152.0 yd: an international yard is 0.9144 m exactly.
    expect(table.values.get("carry")![0]).toBeCloseTo(139 / 0.9144, 9);
  });

  test("is another's for other headings, and is forgotten when it is empty", async () => {
    const host = memoryHost();
    await rememberMapping(host, "a|b", mapping);
    await rememberMapping(host, "c|d", { columns: { 1: null } });
    expect(await recallMapping(host, "a|b")).toEqual(mapping);
    expect(await recallMapping(host, "c|d")).toEqual({ columns: { 1: null }, units: {} });
    await rememberMapping(host, "a|b", {});
    expect(await recallMapping(host, "a|b")).toBeNull();
    expect(await recallMapping(host, "c|d")).not.toBeNull();
  });

  test("is not remembered for a table without headings", async () => {
    const host = memoryHost();
    expect(await rememberMapping(host, "", mapping)).toBe(true);
    expect(host.texts.size).toBe(0);
    expect(await recallMapping(host, "")).toBeNull();
  });

  test("of the oldest of many tables goes", async () => {
    const host = memoryHost();
    for (let table = 0; table < 41; table++) await rememberMapping(host, `table ${table}`, mapping);
    expect(await recallMapping(host, "table 0")).toBeNull();
    expect(await recallMapping(host, "table 1")).toEqual(mapping);
    expect(await recallMapping(host, "table 40")).toEqual(mapping);
  });

  test.each([
    "no json",
    "[]",
    '{"version":2,"mappings":[["a|b",{"columns":{"1":"carry"}}]]}',
    '{"version":1,"mappings":[["a|b"],7,null]}',
  ])("that someone else wrote as %j is none", async (text) => {
    const host = memoryHost();
    host.texts.set("bench-mappings", text);
    expect(await recallMapping(host, "a|b")).toBeNull();
  });

  test("keeps only what has the shape of a mapping", async () => {
    const host = memoryHost();
    const sly = { columns: { 1: "carry", x: "spin", 2: 7 }, units: { 1: "m", 2: {} } };
    host.texts.set("bench-mappings", JSON.stringify({ version: 1, mappings: [["a|b", sly]] }));
    expect(await recallMapping(host, "a|b")).toEqual({ columns: { 1: "carry" }, units: { 1: "m" } });
  });

  test("that the workbook refuses to keep is a problem", async () => {
    const host = { ...memoryHost(), keep: async () => ({ kind: "unavailable", message: "full" }) as const };
    expect(await rememberMapping(host, "a|b", mapping)).toEqual({ kind: "unavailable", message: "full" });
  });

  test("is not written over those that cannot be fetched at the moment", async () => {
    const host = memoryHost();
    await rememberMapping(host, "a|b", mapping);
    const busy = { ...host, recall: async () => unavailable("busy") };
    expect(await recallMapping(busy, "a|b")).toBeNull();
    expect(await rememberMapping(busy, "c|d", mapping)).toEqual(unavailable("busy"));
    expect(await recallMapping(host, "a|b")).toEqual(mapping);
  });
});
