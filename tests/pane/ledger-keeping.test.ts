import { describe, expect, test } from "vitest";
import { DEMO_TEXT } from "../../src/fitting/demo.ts";
import type { Row } from "../../src/ledger/cell.ts";
import { keepWords } from "../../src/ledger/keep-plan.ts";
import { LEDGER, SHOTS } from "../../src/ledger/schema.ts";
import { rowsOf } from "../../src/ledger/table-rows.ts";
import { forgetPlayer, keepRows, keepSession, ledgerOf } from "../../src/pane/ledger-keeping.ts";
import { changedTable } from "../../src/sheets/table-change.ts";
import { answer, demoSession, laterSession } from "../ledger/demo-rows.ts";
import { memoryHost } from "./memory-host.ts";

type Memory = ReturnType<typeof memoryHost>;

const rowsIn = ({ held }: Memory, schema = LEDGER): Row[] => rowsOf(held.get(schema.table)!, schema);

/** Types something into a cell of the ledger, as people do. */
function type({ held }: Memory, row: number, heading: string, cell: string): void {
  const table = held.get("Ledger")!;
  const cells = table.headings.map((one) => (one === heading ? cell : undefined));
  const expected = { headings: table.headings, rows: table.rows.length };
  held.set(
    "Ledger",
    changedTable(table, {
      table: "Ledger",
      expected,
      rename: [],
      columns: [],
      update: [{ row, cells }],
      remove: [],
      append: [],
    }),
  );
}

/** The demo's shots and three more of its first build, as after "More shots". */
const LINES = DEMO_TEXT.trimEnd().split("\n");
const MORE = [...LINES, ...LINES.slice(-3)].join("\n");

describe("keeping a session again", () => {
  test("leaves what was ordered and noted, by button or by hand, and puts everything else right", async () => {
    const host = memoryHost();
    const [first, second] = demoSession().builds.map(({ name }) => name) as [string, string];
    answer(await keepSession(host, demoSession(), { ordered: { [first]: first } }));
    type(host, 1, "Ordered", "a set of two");
    type(host, 2, "Note", "left the grip at home");
    expect(await keepSession(host, demoSession())).toMatchObject({ already: 4, updated: 0 });
    answer(await keepSession(host, demoSession({ place: "bay 7" })));
    expect(rowsIn(host).map(({ ordered, note, place }) => [ordered, note, place])).toEqual([
      [first, null, "bay 7"],
      ["a set of two", null, "bay 7"],
      [null, "left the grip at home", "bay 7"],
      [null, null, "bay 7"],
    ]);
    answer(await keepSession(host, demoSession(), { ordered: { [first]: null, [second]: second } }));
    expect(rowsIn(host).map(({ ordered }) => ordered)).toEqual([null, second, null, null]);
  });

  test("after more shots is the same session: rows put right, only the new shots added", async () => {
    const host = memoryHost();
    const before = answer(await keepSession(host, demoSession()));
    const again = answer(await keepSession(host, demoSession({}, MORE), {}, { ...before, shots: 24 }));
    expect(again).toMatchObject({ session: before.session, added: 0, shotsAdded: 3, shotsRemoved: 0 });
    expect(new Set(rowsIn(host).map(({ session }) => session))).toEqual(new Set([before.session]));
    expect(rowsIn(host)).toHaveLength(4);
    expect(rowsIn(host, SHOTS)).toHaveLength(27);
    expect(new Set(rowsIn(host, SHOTS).map(({ shotKey }) => shotKey)).size).toBe(27);
    expect(rowsIn(host).reduce((sum, { shots }) => sum + Number(shots), 0)).toBe(27);
  });

  test("after shots came in between puts the archive's figures right", async () => {
    const host = memoryHost();
    const before = answer(await keepSession(host, demoSession()));
    const text = [LINES[0], LINES.at(-1), ...LINES.slice(1)].join("\n");
    const session = demoSession({}, text);
    answer(await keepSession(host, session, {}, { ...before, shots: 24 }));
    const carries = rowsIn(host, SHOTS).map(({ carry }) => carry);
    expect(carries).toEqual([...session.table.values.get("carry")!]);
  });

  test("with builds merged and shots taken away leaves no row behind that it no longer has", async () => {
    const host = memoryHost();
    const others = answer(await keepSession(host, laterSession({ player: "Tess Marlow" })));
    const before = answer(await keepSession(host, demoSession()));
    const [first, second] = demoSession().builds.map(({ name }) => name) as [string, string];
    const merged = demoSession(
      {},
      DEMO_TEXT.replaceAll(second, first).trimEnd().split("\n").slice(0, -2).join("\n"),
    );
    const plan = answer(await keepSession(host, merged, {}, { ...before, shots: 24 }));
    expect(plan).toMatchObject({ removed: 1, shotsRemoved: 2 });
    expect(keepWords(plan)).toContain("1 build and 2 shots that it no longer has taken out");
    const own = rowsIn(host).filter(({ session }) => session === before.session);
    expect(own.map(({ build }) => build)).toEqual(merged.builds.map(({ name }) => name));
    expect(rowsIn(host).filter(({ session }) => session === others.session)).toHaveLength(4);
    expect(rowsIn(host, SHOTS)).toHaveLength(merged.table.size + 24);
  });

  test("with builds merged or renamed keeps what was typed beside each build", async () => {
    const host = memoryHost();
    const before = answer(await keepSession(host, demoSession()));
    const [first, second, third, fourth] = demoSession().builds.map(({ name }) => name) as [
      string,
      string,
      string,
      string,
    ];
    for (const [row, name] of [first, second, third, fourth].entries()) type(host, row, "Note", `on ${name}`);
    const keep = async (text: string) => {
      answer(await keepSession(host, demoSession({}, text), {}, { ...before, shots: 24 }));
      return rowsIn(host).map(({ build, note }) => [build, note]);
    };
    const renamed = DEMO_TEXT.replaceAll(third, "renamed");
    expect(await keep(renamed)).toEqual([
      [first, `on ${first}`],
      [second, `on ${second}`],
      ["renamed", `on ${third}`],
      [fourth, `on ${fourth}`],
    ]);
    const merged = renamed.replaceAll(second, first);
    const three = [
      [first, `on ${first}`],
      ["renamed", `on ${third}`],
      [fourth, `on ${fourth}`],
    ];
    expect(await keep(merged)).toEqual(three);
    const fifth = LINES.at(-1)!.replace(/^.*?(?=\t|,|;)/, "a fifth one");
    expect(await keep(`${merged.trimEnd()}\n${fifth}`)).toEqual([...three, ["a fifth one", null]]);
    expect(new Set(rowsIn(host).map(({ entry }) => entry)).size).toBe(4);
  });

  test("takes no archived shot away that was not archived from here", async () => {
    const host = memoryHost();
    const before = answer(await keepSession(host, demoSession()));
    answer(await keepSession(host, demoSession({}, MORE), {}, { ...before, shots: 24 }));
    answer(await keepSession(host, demoSession()));
    expect(rowsIn(host, SHOTS)).toHaveLength(27);
  });
});

describe("a ledger whose rows have all gone", () => {
  /** As a spreadsheet leaves it: a table keeps one row, a blank one. */
  async function emptied(): Promise<Memory> {
    const host = memoryHost();
    answer(await keepSession(host, demoSession()));
    answer(await forgetPlayer(host, demoSession().player));
    for (const [name, { headings }] of host.held)
      host.held.set(name, { headings, rows: [headings.map(() => null)] });
    return host;
  }

  test("is empty, whatever row the table keeps", async () => {
    expect(await ledgerOf(await emptied())).toEqual([]);
  });

  test("takes the next session into that row and below it", async () => {
    const host = await emptied();
    expect(await keepSession(host, demoSession())).toMatchObject({ added: 4, shotsAdded: 24, updated: 0 });
    expect(rowsIn(host)).toHaveLength(4);
    expect(rowsIn(host, SHOTS)).toHaveLength(24);
    expect(rowsIn(host).every(({ schema, entry }) => schema === 2 && entry !== null)).toBe(true);
  });

  test("is not read whole each time a session is kept afterwards", async () => {
    const host = await emptied();
    answer(await keepSession(host, demoSession()));
    const asked: unknown[] = [];
    const watched = {
      ...host,
      tableCells: (...words: Parameters<typeof host.tableCells>) => {
        asked.push(words.slice(1));
        return host.tableCells(...words);
      },
    };
    answer(await keepSession(watched, laterSession()));
    expect(asked.every((words) => (words as unknown[]).length > 0)).toBe(true);
  });
});

test("a first session that cannot be kept is answered as a problem and not remembered", async () => {
  const host = memoryHost();
  host.held.set("Ledger", { headings: ["Receipt"], rows: [["1"]] });
  expect(await keepSession(host, demoSession())).toMatchObject({ kind: "invalid" });
  expect(await keepRows(host, [], [])).toMatchObject({ kind: "invalid" });
});
