import { describe, expect, test } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import { mapTrackingSheet } from "../../../src/ledger/map-tracking-sheet.ts";
import { LEDGER, SHOTS } from "../../../src/ledger/schema.ts";
import { shotRows } from "../../../src/ledger/shot-rows.ts";
import { rowsOf } from "../../../src/ledger/table-rows.ts";
import { isProblem, type Outcome } from "../../../src/outcome/problem.ts";
import { forgetPlayer, keepRows, ledgerOf, SCHEMA_KEY } from "../../../src/pane/ledger-keeping.ts";
import { area, SheetDraft } from "../../../src/sheets/sheet-draft.ts";
import { answer, asHeld, demoSession, laterSession, rowsOfSession } from "../../ledger/demo-rows.ts";
import { FIRST_FORM } from "../../ledger/first-form.ts";
import { officeHost } from "../../office-host/office-host.ts";
import type { Fault, Service } from "../../office-host/service.ts";
import { newService } from "../../office-host/service.ts";

const first = { rows: rowsOfSession(demoSession()), shots: shotRows(demoSession()) };
const second = {
  rows: rowsOfSession(laterSession({ player: "Tess Marlow", builds: [] })),
  shots: shotRows(laterSession()),
};
const edited = rowsOfSession(demoSession({ player: "Rowan Tilsley", place: "bay 1" }));

/** Everything the service keeps, less the counter that hands out identifiers. */
const state = ({ workbook }: Service) => ({ ...structuredClone(workbook), last: 0 });

/** A workbook that keeps one session, and someone's own column and note beside the table. */
async function started(): Promise<Service> {
  const host = officeHost();
  answer(await keepRows(excelHost(), first.rows, first.shots));
  return host;
}

/** A workbook that keeps two sessions. */
async function both(): Promise<Service> {
  const host = await started();
  answer(await keepRows(excelHost(), second.rows, second.shots));
  return host;
}

/** A workbook whose ledger lost its only session, so that its tables have a blank row. */
async function emptied(): Promise<Service> {
  const host = await started();
  answer(await forgetPlayer(excelHost(), first.rows[0]!.player as string));
  return host;
}

/** A workbook with a ledger of the first form, and a column of the shop's own in it. */
async function older(): Promise<Service> {
  const host = officeHost();
  const draft = new SheetDraft("Ledger");
  const cells = [FIRST_FORM.headings, ...FIRST_FORM.rows];
  draft.put(0, 0, cells);
  draft.table({ name: "Ledger", area: area(0, 0, cells.length, cells[0]!.length) });
  answer(await excelHost().write({ sheets: [draft.plan()], names: [], active: "Ledger" }));
  return host;
}

const tracked = answer(
  mapTrackingSheet(
    "Date,Player,Club,Build,Carry (yd)\n2026-03-14,Ann,7 iron,85 g,150\n2026-03-14,Ann,7 iron,95 g,148",
  ),
).rows;

const tableRows = async (schema: typeof LEDGER) =>
  rowsOf(answer(await excelHost().tableCells(schema.table))!, schema);

describe("the ledger in the spreadsheet", { timeout: 180_000 }, () => {
  test("brings an older ledger forward in place, with the shop's own column", async () => {
    await older();
    expect(await keepRows(excelHost(), second.rows, second.shots)).toMatchObject({ added: 4 });
    const table = answer(await excelHost().tableCells("Ledger"))!;
    expect(rowsOf(table, LEDGER)[0]).toMatchObject({
      entry: "s1-1",
      chance: 0.97,
      ordered: "85 g mid",
      carryN: 6,
    });
    expect(table.rows[0]![table.headings.indexOf("Invoice")]).toBe("H-1");
    expect(table.rows).toHaveLength(7);
  });

  test("is two native tables on sheets of their own, with what was put in", async () => {
    const host = await started();
    expect(host.workbook.sheets.map(({ bag }) => bag.Name)).toEqual(["Sheet1", "Ledger", "Shot archive"]);
    expect(host.workbook.sheets.flatMap(({ tables }) => tables.map(({ bag }) => bag.Name))).toEqual([
      "Ledger",
      "ShotArchive",
    ]);
    expect(await tableRows(LEDGER)).toEqual(asHeld(first.rows));
    expect((await tableRows(SHOTS)).map((row) => ({ ...row, time: row.time ?? null }))).toEqual(first.shots);
    expect(await excelHost().recall(SCHEMA_KEY)).toBe("2");
  });

  test("takes a second session below, in few requests, and the first again not at all", async () => {
    const host = await started();
    const before = host.requests.length;
    expect(await keepRows(excelHost(), second.rows, second.shots)).toMatchObject({
      added: 4,
      shotsAdded: 24,
    });
    // Three for reading, two a table for looking at it, one for writing, one for the form, and what tidies up.
    expect(host.requests.length - before).toBeLessThanOrEqual(16);
    expect(await tableRows(LEDGER)).toEqual(asHeld([...first.rows, ...second.rows]));
    const now = state(host);
    expect(await keepRows(excelHost(), first.rows, first.shots)).toMatchObject({
      added: 0,
      already: 4,
      shotsAdded: 0,
    });
    expect(state(host)).toEqual(now);
  });

  test("reads no more of a long archive than of a short one", async () => {
    const readFor = async (archived: number) => {
      const host = await started();
      const shots = Array.from({ length: archived }, (_, i) => ({
        ...first.shots[i % 24],
        shotKey: `archived*-${i}`,
        session: "archived",
      }));
      answer(await keepRows(excelHost(), [], shots));
      const before = host.received.length;
      const kept = [
        await keepRows(excelHost(), second.rows, second.shots),
        await keepRows(excelHost(), edited, first.shots),
      ];
      const bytes = host.received.slice(before).reduce((sum, one) => sum + one, 0);
      return { kept: kept.map((one) => one && { ...one, changes: [] }), bytes };
    };
    const [short, long] = [await readFor(30), await readFor(3_000)];
    expect(long.kept).toEqual(short.kept);
    expect(short.kept).toMatchObject([
      { added: 4, shotsAdded: 24 },
      { updated: 4, shotsAdded: 0 },
    ]);
    // Places have more digits further down, and nothing else differs.
    expect(long.bytes).toBeLessThan(short.bytes + 2_000);
  });

  test("finds rows by keys that MATCH would take for others, and by more keys than it is asked for", async () => {
    await started();
    const shots = ["a*b", "aXb", "what?", "wild~", "KEY", "key"].map((shotKey) => ({
      ...first.shots[0],
      shotKey,
    }));
    const many = Array.from({ length: 250 }, (_, i) => ({ ...first.shots[0], shotKey: `many-${i}` }));
    answer(await keepRows(excelHost(), [], [...shots.slice(1, 4), shots[5]!]));
    expect(await keepRows(excelHost(), [], shots)).toMatchObject({ shotsAdded: 2 });
    expect(await keepRows(excelHost(), [], shots)).toMatchObject({ shotsAdded: 0 });
    expect(await keepRows(excelHost(), [], many)).toMatchObject({ shotsAdded: 250 });
    expect(await keepRows(excelHost(), [], [...many, ...shots])).toMatchObject({ shotsAdded: 0 });
  });

  test("puts a session right in its rows", async () => {
    await started();
    await keepRows(excelHost(), second.rows, second.shots);
    expect(await keepRows(excelHost(), edited, first.shots)).toMatchObject({ added: 0, updated: 4 });
    expect(await tableRows(LEDGER)).toEqual(asHeld([...edited, ...second.rows]));
  });

  test("takes a player out of both tables and closes the gap", async () => {
    await started();
    await keepRows(excelHost(), second.rows, second.shots);
    expect(await forgetPlayer(excelHost(), first.rows[0]!.player as string)).toEqual({
      entries: 4,
      shots: 24,
    });
    expect(await tableRows(LEDGER)).toEqual(asHeld(second.rows));
    expect((await tableRows(SHOTS)).map(({ shotKey }) => shotKey)).toEqual(
      second.shots.map(({ shotKey }) => shotKey),
    );
  });

  test("leaves no blank row behind when all rows have gone and others come", async () => {
    await started();
    await forgetPlayer(excelHost(), first.rows[0]!.player as string);
    expect(await ledgerOf(excelHost())).toEqual([]);
    expect(await keepRows(excelHost(), second.rows, second.shots)).toMatchObject({
      added: 4,
      shotsAdded: 24,
    });
    expect(await tableRows(LEDGER)).toEqual(asHeld(second.rows));
    expect((await tableRows(SHOTS)).map(({ shotKey }) => shotKey)).toEqual(
      second.shots.map(({ shotKey }) => shotKey),
    );
  });

  test("takes rows of merged builds out of a session that is kept whole", async () => {
    await started();
    const session = String(first.rows[0]!.session);
    const fewer = first.rows.slice(0, 3);
    expect(
      await keepRows(excelHost(), fewer, first.shots.slice(0, 20), { session, shots: 24 }),
    ).toMatchObject({
      removed: 1,
      shotsRemoved: 4,
    });
    expect(await tableRows(LEDGER)).toEqual(asHeld(fewer));
    expect(await tableRows(SHOTS)).toHaveLength(20);
  });

  test("does not grow over what someone wrote below it", async () => {
    const host = await started();
    const sheet = host.workbook.sheets[1]!;
    const { row, rows, column } = sheet.tables[0]!.area;
    sheet.cells.set((row + rows) * 16_384 + column + 2, { value: "our own sum" });
    const now = state(host);
    expect(await keepRows(excelHost(), second.rows, second.shots)).toMatchObject({
      message: expect.stringContaining("Something stands where the table"),
    });
    expect(state(host)).toEqual(now);
  });

  test("leaves a table of the user's alone that is called the same", async () => {
    const host = await started();
    const sheet = host.workbook.sheets[1]!;
    for (const [key, cell] of sheet.cells)
      if (cell.value === "Entry") sheet.cells.set(key, { value: "Receipt" });
    const now = state(host);
    expect(await keepRows(excelHost(), second.rows, second.shots)).toMatchObject({ kind: "invalid" });
    expect(state(host)).toEqual(now);
  });

  test.each<[string, () => Promise<Service>, () => Promise<Outcome<unknown>>]>([
    [
      "a first session is kept",
      async () => officeHost(),
      () => keepRows(excelHost(), first.rows, first.shots),
    ],
    ["a second session is kept", started, () => keepRows(excelHost(), second.rows, second.shots)],
    ["a session is put right", started, () => keepRows(excelHost(), edited, first.shots)],
    [
      "a session has lost a build and shots",
      started,
      () =>
        keepRows(excelHost(), first.rows.slice(0, 3), first.shots.slice(0, 20), {
          session: String(first.rows[0]!.session),
          shots: 24,
        }),
    ],
    ["an older ledger is brought forward", older, () => keepRows(excelHost(), second.rows, second.shots)],
    ["a player is taken out", both, () => forgetPlayer(excelHost(), first.rows[0]!.player as string)],
    ["an emptied ledger is filled", emptied, () => keepRows(excelHost(), second.rows, second.shots)],
    ["rows of a tracking sheet are kept", started, () => keepRows(excelHost(), tracked, [])],
  ])(
    "is as before, or whole, when any request fails, at its start, at its end or on the way, while %s",
    async (_, start, work) => {
      const healthy = await start();
      const from = healthy.requests.length;
      const base = structuredClone(healthy.workbook);
      answer(await work());
      const whole = contents(healthy);
      let failures = 0;
      for (const [request, { actions }] of healthy.requests.slice(from).entries()) {
        const faults: Fault["action"][] = [-1, "answer", ...spread(actions)];
        for (const action of faults) {
          const host = officeHost("1.20", newService(structuredClone(base)));
          const before = contents(host);
          host.fault = { request, action };
          const outcome = await work();
          if (isProblem(outcome)) failures++;
          expect(contents(host), `request ${request}, action ${action}`).toEqual(
            isProblem(outcome) ? before : whole,
          );
        }
      }
      expect(failures).toBeGreaterThan(10);
    },
  );

  test("says so in a spreadsheet that is too old to resize tables", async () => {
    const { workbook } = await started();
    officeHost("1.12", newService(workbook));
    expect(await keepRows(excelHost(), second.rows, second.shots)).toMatchObject({
      message: expect.stringContaining("ExcelApi 1.13"),
    });
  });
});

/** What people see of a workbook: sheets, their cells, their tables. */
function contents({ workbook }: Service) {
  return workbook.sheets.map(({ bag, cells, tables }) => ({
    name: bag.Name,
    cells: new Map(
      [...cells].flatMap(([at, { value, formula }]) => (value === "" ? [] : [[at, formula ?? value]])),
    ),
    tables: tables.map((table) => [table.bag.Name, table.area]),
  }));
}

/**
 * Every action where they are few, else some forty of them, the first and last ones in. All of them take minutes and are
 * tried with `EVERY_ACTION=yes`.
 */
function spread(actions: number): number[] {
  const step = process.env.EVERY_ACTION === "yes" ? 1 : Math.max(1, Math.floor(actions / 40));
  const all = Array.from({ length: actions }, (_, i) => i);
  return all.filter((i) => i < 6 || i >= actions - 6 || i % step === 0);
}
