import type { Host } from "../../src/hosts/host.ts";
import { invalid } from "../../src/outcome/problem.ts";
import type { WorkbookPlan } from "../../src/sheets/plan.ts";
import { changedTable, isAsExpected, type TableCells } from "../../src/sheets/table-change.ts";
import { tablesOfPlan } from "../tables-of-plan.ts";

/** A host with nothing behind it but memory, for tests of the pane. */
export function memoryHost(): Host & {
  readonly written: WorkbookPlan[];
  readonly texts: Map<string, string>;
  readonly held: Map<string, TableCells>;
} {
  const held = new Map<string, TableCells>();
  const texts = new Map<string, string>();
  const written: WorkbookPlan[] = [];
  return {
    name: "this test",
    texts,
    written,
    held,
    taken: async () => ({
      sheets: written.flatMap(({ sheets }) => sheets.map(({ name }) => name)),
      names: [],
    }),
    write: async (plan) => {
      written.push(plan);
      for (const [name, cells] of tablesOfPlan(plan)) held.set(name, cells);
      return { sheets: plan.sheets.filter(({ hidden }) => !hidden).map(({ name }) => name), notes: [] };
    },
    selection: async () => "Build\tCarry\nA\t150\nB\t160",
    tables: async () => ["Fittings"],
    tableText: async (name) => `Build\tCarry\n${name ?? "Sheet"}\t150\nB\t160`,
    tableCells: async (name, _, sought) => {
      const table = held.get(name);
      if (!table || !sought) return table ?? null;
      const by = table.headings.indexOf(sought.heading);
      const left = new Set(sought.texts);
      return { ...table, rows: table.rows.map((row) => (left.delete(String(row[by])) ? row : [])) };
    },
    async changeTables(changes, create) {
      for (const change of changes) {
        const table = held.get(change.table);
        if (!table || !isAsExpected(change, table.headings, table.rows.length)) return invalid("changed");
      }
      for (const change of changes) held.set(change.table, changedTable(held.get(change.table)!, change));
      return create ? this.write(create) : { sheets: [], notes: [] };
    },
    recall: async (key) => texts.get(key) ?? null,
    keep: async (key, text) => {
      if (text === null) texts.delete(key);
      else texts.set(key, text);
      return true;
    },
  };
}
