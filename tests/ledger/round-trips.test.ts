import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DuckDBInstance } from "@duckdb/node-api";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Cell, Row } from "../../src/ledger/cell.ts";
import { ledgerParquet, readLedgerParquet } from "../../src/ledger/ledger-parquet.ts";
import { ledgerText, readLedgerText } from "../../src/ledger/ledger-text.ts";
import { type ColumnType, LEDGER, SHOTS } from "../../src/ledger/schema.ts";
import { QUICK } from "../quick.ts";
import { answer, asHeld, demoRows, demoShots, laterSession, rowsOfSession } from "./demo-rows.ts";

/** Rows as awkward as the schema allows. */
const CELLS: Readonly<Record<ColumnType, fc.Arbitrary<Cell>>> = {
  text: fc.oneof(
    fc
      .string({ minLength: 1, unit: "grapheme" })
      .filter((text) => text === text.trim() && !text.includes("\r")),
    fc.constantFrom("007", "=1+1", "TRUE", 'a "b", c', "two\nlines", "1e5", "Weiß; Özil", "'x"),
  ),
  number: fc
    .double({ noNaN: true, noDefaultInfinity: true })
    .map((value) => (Object.is(value, -0) ? 0 : value)),
  whole: fc.integer({ min: 0, max: 2 ** 31 - 1 }),
  day: fc
    .date({ min: new Date("1950-01-01"), max: new Date("2100-01-01"), noInvalidDate: true })
    .map((day) => day.toISOString().slice(0, 10)),
  truth: fc.boolean(),
};
const row = (columns: typeof LEDGER.columns): fc.Arbitrary<Row> =>
  fc.record(Object.fromEntries(columns.map(({ key, type }) => [key, fc.option(CELLS[type], { nil: null })])));
const ledgerRow = row(LEDGER.columns).map((one) => ({ ...one, entry: one.entry ?? "e", schema: 2 }));

describe("a ledger that travels", () => {
  test("as delimited text comes back cell for cell", () => {
    fc.assert(
      fc.property(fc.array(ledgerRow, { minLength: 1, maxLength: 6 }), (rows) => {
        expect(readLedgerText(ledgerText(rows))).toEqual(rows);
      }),
      { numRuns: 40 },
    );
    expect(readLedgerText(ledgerText(demoRows()))).toEqual(asHeld(demoRows()));
  });

  test("as Parquet comes back bit for bit", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(ledgerRow, { minLength: 1, maxLength: 6 }), async (rows) => {
        expect(await readLedgerParquet(answer(await ledgerParquet(rows)))).toEqual(rows);
      }),
      { numRuns: 40 },
    );
  });

  test.skipIf(QUICK)(
    "as Parquet comes back bit for bit with 200,000 shots",
    async () => {
      const model = demoShots();
      const shots = Array.from({ length: 200_000 }, (_, i) => ({
        ...Object.fromEntries(SHOTS.columns.map(({ key }) => [key, null])),
        ...model[i % 24],
        shotKey: `s-${i}`,
        carry: 150 + Math.sin(i) * 20,
      }));
      const bytes = answer(await ledgerParquet(shots, SHOTS));
      const back = answer(await readLedgerParquet(bytes, SHOTS));
      expect(back).toHaveLength(shots.length);
      expect(
        back.every((one, i) =>
          SHOTS.columns.every(({ key }) => Object.is(one[key], shots[i]![key as "carry"] ?? null)),
        ),
      ).toBe(true);
    },
    60_000,
  );

  test("as Parquet is read by a query engine as what it is: days, figures, truths and texts", async () => {
    const folder = mkdtempSync(join(tmpdir(), "ledger-"));
    try {
      const file = join(folder, "ledger.parquet");
      writeFileSync(file, answer(await ledgerParquet(demoRows())));
      const connection = await (await DuckDBInstance.create(":memory:")).connect();
      const query = `select "date"::varchar as day, build, carryMean, chosen, kept from '${file}' where carryMean > 0 order by entry`;
      const found = (await connection.runAndReadAll(query)).getRowObjectsJS();
      expect(found).toEqual(
        demoRows().map(({ date, build, carryMean, chosen, kept }) => ({
          day: date,
          build,
          carryMean,
          chosen,
          kept,
        })),
      );
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  test("answers the query that README.md shows, over the files of two shops", async () => {
    const query = /```sql\n([\s\S]+?)```/.exec(readFileSync("README.md", "utf8"))![1]!;
    const folder = mkdtempSync(join(tmpdir(), "shops-"));
    try {
      for (const [shop, rows] of [demoRows(), rowsOfSession(laterSession())].entries())
        writeFileSync(join(folder, `shop-${shop}.parquet`), answer(await ledgerParquet(rows)));
      const connection = await (await DuckDBInstance.create(":memory:")).connect();
      const found = (await connection.runAndReadAll(query.replace("shops/", `${folder}/`))).getRowObjectsJS();
      // The second shop's carries are those of the first and a yard.
      expect(found).toEqual(
        demoRows()
          .map(({ build, carryMean, chosen }) => ({
            build,
            sessions: 2n,
            wins: chosen ? 2n : 0n,
            carry: expect.closeTo(Number(carryMean) + 0.5, 9),
          }))
          .sort((a, b) => (String(a.build) < String(b.build) ? -1 : 1)),
      );
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  test("in a form that is newer than this version is refused, not read in part", async () => {
    const bytes = answer(await ledgerParquet(demoRows()));
    // The file keeps its form as a text of one digit between "form" and the next field.
    const text = Buffer.from(bytes).toString("latin1");
    const at = text.lastIndexOf("form") + "form".length;
    const digit = at + text.slice(at).indexOf("2");
    const newer = new Uint8Array(Buffer.from(`${text.slice(0, digit)}9${text.slice(digit + 1)}`, "latin1"));
    expect(await readLedgerParquet(newer)).toMatchObject({ message: expect.stringContaining("form 9") });
    expect(await readLedgerParquet(bytes)).toHaveLength(4);
  });

  test("in a form of its own is refused, and so is a figure where a text belongs", async () => {
    expect(readLedgerText("a,b\n1,2")).toMatchObject({ kind: "invalid" });
    expect(await readLedgerParquet(new Uint8Array([1, 2, 3]))).toMatchObject({ kind: "invalid" });
    expect(await ledgerParquet([{ entry: "e", carryMean: "far" }])).toMatchObject({
      message: expect.stringContaining('"far" under Carry (yd)'),
    });
  });
});
