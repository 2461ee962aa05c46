import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { demoDraft } from "../../src/pane/demo-draft.ts";
import { type Draft, type Kept, nothingKept } from "../../src/pane/draft.ts";
import { keepAll, parseKept, recallKept } from "../../src/pane/keeping.ts";
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

  test("answers null for anything that is no kept sessions, and never throws", () => {
    for (const text of ["", "{", "null", "[]", '{"version":2,"drafts":[]}', '{"version":1,"drafts":[{}]}'])
      expect(parseKept(text)).toBeNull();
    fc.assert(fc.property(fc.json(), (text) => parseKept(text) === null));
  });

  test("keeps the air and the wish to compute, and knows neither of an older session", async () => {
    const host = memoryHost();
    const [first, second] = kept.drafts as [Draft, Draft];
    const facts = { ...second.facts, air: { temperature: 25 }, fill: true };
    await keepAll(host, { ...kept, drafts: [first, { ...second, facts }] });
    expect((await recallKept(host))!.drafts[1]!.facts).toEqual(facts);
    const older = parseKept(JSON.stringify({ version: 1, drafts: [{ id: "1", text: "", facts: {} }] }));
    expect(older!.drafts[0]!.facts).toMatchObject({ air: {}, fill: false });
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
