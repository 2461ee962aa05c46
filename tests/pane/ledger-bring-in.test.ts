import { describe, expect, test } from "vitest";
import type { Host } from "../../src/hosts/host.ts";
import { ledgerText } from "../../src/ledger/ledger-text.ts";
import { LEDGER } from "../../src/ledger/schema.ts";
import { rowsOf } from "../../src/ledger/table-rows.ts";
import { bringInSelected, bringInText } from "../../src/pane/ledger-bring-in.ts";
import { keepRows } from "../../src/pane/ledger-keeping.ts";
import { answer, asHeld, demoRows } from "../ledger/demo-rows.ts";
import { memoryHost } from "./memory-host.ts";

const SHEET =
  "Date\tPlayer\tBuild\tCarry\n03/04/2026\tTess Marlow\t85 g\t150\n05/06/2026\tTess Marlow\t95 g\t151";

/** A host whose selection is this, once: whoever clicks elsewhere has moved on. */
function selecting(text: string): Host & { readonly asked: () => number } {
  let asked = 0;
  return { ...memoryHost(), selection: async () => (asked++ === 0 ? text : "moved\ton"), asked: () => asked };
}

describe("bringing in a sheet that is selected", () => {
  test("reads it once: what is said of it afterwards holds for the same text", async () => {
    const host = selecting(SHEET);
    const brought = answer(await bringInSelected(host));
    expect(brought.mapped.questions).toHaveLength(1);
    const told = answer(
      bringInText(brought.text, { ...brought.options, days: "day first", source: "Bay 2" }),
    );
    expect(told.mapped.rows.map(({ date, source }) => [date, source])).toEqual([
      ["2026-04-03", "brought in: Bay 2"],
      ["2026-06-05", "brought in: Bay 2"],
    ]);
    expect(host.asked()).toBe(1);
  });

  test("changes nothing in it, and nothing at all before it is kept", async () => {
    const host = memoryHost();
    answer(await bringInSelected({ ...host, selection: async () => SHEET }));
    expect(host.written).toEqual([]);
    expect(host.held.size).toBe(0);
    expect(host.texts.size).toBe(0);
  });
});

describe("bringing in a ledger that was exported", () => {
  test("keeps each row once, with every figure, and names the columns that stay behind", async () => {
    const host = memoryHost();
    const [headings, ...lines] = ledgerText(demoRows()).trimEnd().split("\n");
    const text = [`${headings},Invoice`, ...lines.map((line, i) => `${line},H-${i}`)].join("\n");
    const { mapped } = answer(bringInText(text));
    expect(mapped.left).toEqual([expect.objectContaining({ line: 0, cell: "Invoice" })]);
    expect(await keepRows(host, mapped.rows, [])).toMatchObject({ added: 4 });
    expect(await keepRows(host, mapped.rows, [])).toMatchObject({ added: 0, updated: 0, already: 4 });
    expect(rowsOf(host.held.get("Ledger")!, LEDGER)).toEqual(asHeld(demoRows()));
  });

  test("takes nothing away from rows that stand here already", async () => {
    const host = memoryHost();
    answer(
      await keepRows(
        host,
        demoRows().map((row) => ({ ...row, note: "ours" })),
        [],
      ),
    );
    const { mapped } = answer(bringInText(ledgerText(demoRows())));
    expect(await keepRows(host, mapped.rows, [])).toMatchObject({ added: 0, updated: 0 });
  });

  test("is told from a sheet whose lines are counted under Entry", () => {
    const { mapped } = answer(bringInText("Entry,Player,Shaft,Carry (yd)\n1,Ann,85 g,150\n2,Ann,95 g,151"));
    expect(mapped.rows).toHaveLength(2);
    expect(mapped.rows[0]).toMatchObject({ player: "Ann", carryMean: 150, note: "Entry: 1" });
  });
});
