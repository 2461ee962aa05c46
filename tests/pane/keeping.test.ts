import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isProblem, unavailable } from "../../src/outcome/problem.ts";
import { demoDraft } from "../../src/pane/demo-draft.ts";
import { type Draft, type Kept, nothingKept } from "../../src/pane/draft.ts";
import { keepAll, parseKept, recallKept, setAside } from "../../src/pane/keeping.ts";
import { answer } from "../club/answer.ts";
import { memoryHost } from "./memory-host.ts";

const kept: Kept = {
  version: 1,
  units: "metric",
  open: "2",
  drafts: [
    ...nothingKept().drafts,
    { ...demoDraft("2"), ticks: { 18: false }, corrections: { 3: { key: null } } },
  ],
};

describe("keeping sessions with the workbook", () => {
  test("recalls what was kept", async () => {
    const host = memoryHost();
    expect(await recallKept(host)).toBeNull();
    await keepAll(host, kept);
    expect(await recallKept(host)).toEqual(kept);
  });

  test("answers a problem for anything that is no kept sessions, and never throws", () => {
    for (const text of ["", "{", "null", "[]", '{"version":1,"drafts":[]}', '{"version":1,"drafts":[{}]}'])
      expect(parseKept(text)).toMatchObject({ message: expect.stringContaining("damaged") });
    fc.assert(fc.property(fc.json(), (text) => isProblem(parseKept(text))));
  });

  test("tells sessions of a later version and a host that fails from a workbook with nothing in it", async () => {
    const host = memoryHost();
    host.texts.set("bench-sessions", '{"version":2,"drafts":[{"id":"1","text":"Carry\\n150"}]}');
    expect(await recallKept(host)).toMatchObject({ message: expect.stringContaining("later version") });
    const failing = { ...host, recall: async () => unavailable("The spreadsheet is busy.") };
    expect(await recallKept(failing)).toMatchObject({
      kind: "unavailable",
      message: expect.stringContaining("The spreadsheet is busy."),
    });
    const throwing = { ...host, recall: () => Promise.reject(new Error("gone")) };
    expect(await recallKept(throwing)).toMatchObject({ message: expect.stringContaining("gone") });
  });

  test("puts aside what cannot be read, where it stays with the workbook", async () => {
    const host = memoryHost();
    host.texts.set("bench-sessions", "not ours");
    expect(await setAside(host)).toBe(true);
    expect(await recallKept(host)).toBeNull();
    expect([...host.texts.values()]).toEqual(["not ours"]);
  });

  test("carries single sessions that cannot be read along, through keeping and back", async () => {
    const host = memoryHost();
    const strange = { id: 7, words: "of another program" };
    const text = JSON.stringify({
      version: 1,
      open: "4",
      drafts: [strange, { id: "4", text: "Carry\n150" }],
    });
    const found = answer(parseKept(text));
    expect(found.drafts.map(({ id }) => id)).toEqual(["4"]);
    await keepAll(host, { ...found, units: "metric" });
    const [held] = [...host.texts.values()];
    expect(JSON.parse(held!).drafts).toContainEqual(strange);
    expect(await recallKept(host)).toEqual({ ...found, units: "metric" });
  });

  test("keeps the air and the wish to compute, and knows neither of an older session", async () => {
    const host = memoryHost();
    const [first, second] = kept.drafts as [Draft, Draft];
    const facts = { ...second.facts, air: { temperature: 25 }, fill: true };
    await keepAll(host, { ...kept, drafts: [first, { ...second, facts }] });
    expect(answer(await recallKept(host))!.drafts[1]!.facts).toEqual(facts);
    const older = answer(
      parseKept(JSON.stringify({ version: 1, drafts: [{ id: "1", text: "", facts: {} }] })),
    );
    expect(older.drafts[0]!.facts).toMatchObject({ air: {}, fill: false });
  });

  test("keeps what the ledger knows a session by, and drops what is no such thing", () => {
    const drafts = kept.drafts.map((draft) => ({
      ...draft,
      ledger: { session: "abc", shots: 24, ordered: "A" },
    }));
    expect(parseKept(JSON.stringify({ ...kept, drafts }))).toEqual({ ...kept, drafts });
    const odd = kept.drafts.map((draft) => ({ ...draft, ledger: { session: 3 } }));
    expect(parseKept(JSON.stringify({ ...kept, drafts: odd }))).toEqual(kept);
  });

  test("keeps the sessions that can be understood and opens one of them", () => {
    const text = JSON.stringify({ version: 1, open: "7", drafts: [3, { id: "4", text: "Carry\n150" }] });
    expect(parseKept(text)).toMatchObject({
      open: "4",
      units: "us",
      drafts: [{ id: "4", text: "Carry\n150" }],
    });
  });
});
