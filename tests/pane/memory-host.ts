import type { Host } from "../../src/hosts/host.ts";
import type { WorkbookPlan } from "../../src/sheets/plan.ts";

/** A host with nothing behind it but memory, for tests of the pane. */
export function memoryHost(): Host & {
  readonly written: WorkbookPlan[];
  readonly texts: Map<string, string>;
} {
  const texts = new Map<string, string>();
  const written: WorkbookPlan[] = [];
  return {
    name: "this test",
    texts,
    written,
    taken: async () => ({
      sheets: written.flatMap(({ sheets }) => sheets.map(({ name }) => name)),
      names: [],
    }),
    write: async (plan) => {
      written.push(plan);
      return { sheets: plan.sheets.filter(({ hidden }) => !hidden).map(({ name }) => name), notes: [] };
    },
    selection: async () => "Build\tCarry\nA\t150\nB\t160",
    tables: async () => ["Fittings"],
    tableText: async (name) => `Build\tCarry\n${name ?? "Sheet"}\t150\nB\t160`,
    recall: async (key) => texts.get(key) ?? null,
    keep: async (key, text) => {
      if (text === null) texts.delete(key);
      else texts.set(key, text);
      return true;
    },
  };
}
