import { beforeEach, describe, expect, test, vi } from "vitest";
import { DEMO_TEXT } from "../../src/fitting/demo.ts";
import { rememberMapping } from "../../src/hosts/remember-mapping.ts";
import { nothingKept, openDraft } from "../../src/pane/draft.ts";
import { keepAll, recallKept } from "../../src/pane/keeping.ts";
import { paneCommands } from "../../src/pane/pane-commands.ts";
import { withCells } from "../../src/pane/with-cells.ts";
import { headerSignature } from "../../src/shots/header-signature.ts";
import { answer } from "../club/answer.ts";
import { memoryHost } from "./memory-host.ts";

let memory: ReturnType<typeof memoryHost>;
let said: string[];
let reopened: number;
let selected: string;

beforeEach(() => {
  memory = memoryHost();
  said = [];
  reopened = 0;
  selected = DEMO_TEXT;
});

const commands = () =>
  paneCommands({
    host: { ...memory, selection: async () => selected },
    say: (sentence) => said.push(sentence),
    reopen: () => reopened++,
    settled: async () => {},
  });

const writtenNames = () => memory.written.map(({ sheets }) => sheets.map(({ name }) => name));

describe("comparing the selection", { timeout: 60_000 }, () => {
  test("makes it a session of the pane and writes its sheets", async () => {
    await commands().compareSelection();
    expect(writtenNames()[0]).toContain("Comparison");
    expect(openDraft(answer(await recallKept(memory))!).text).toBe(DEMO_TEXT);
    expect(reopened).toBe(1);
    expect(said.at(-1)).toMatch(/^Added Comparison/);
  });

  test("sends a table that is too long for it to the pane, and changes nothing", async () => {
    selected = `Build\tCarry\n${"A\t150\n".repeat(100_000)}`;
    await commands().compareSelection();
    expect(said.at(-1)).toMatch(/^This is a long table: open the pane/);
    expect(writtenNames()).toEqual([]);
    expect(await recallKept(memory)).toBe(null);
  });

  test("leaves what is on the desk and opens a session of its own", async () => {
    const kept = nothingKept("2026-05-14");
    await keepAll(memory, { ...kept, drafts: [{ ...kept.drafts[0]!, text: "Build\tCarry\nmine\t150" }] });
    await commands().compareSelection();
    const after = answer(await recallKept(memory))!;
    expect(after.drafts.map(({ text }) => text)).toEqual(["Build\tCarry\nmine\t150", DEMO_TEXT]);
    expect(openDraft(after).text).toBe(DEMO_TEXT);
  });

  test("leaves sessions that it cannot read as they are, and says so", async () => {
    memory.texts.set("bench-sessions", '{"version":2,"drafts":[]}');
    await commands().compareSelection();
    expect(said.at(-1)).toMatch(/cannot be read/);
    expect(memory.texts.get("bench-sessions")).toBe('{"version":2,"drafts":[]}');
    expect(memory.written).toEqual([]);
  });

  test("reads a shop's own headings as they were once explained", async () => {
    selected = "Schaft\tWeite\nleicht\t140\nleicht\t143\nschwer\t151\nschwer\t152";
    await commands().compareSelection();
    // Not understood yet: it stands in the pane, where the columns can be explained, and nothing is written.
    expect(said.at(-1)).toMatch(/headings/);
    expect(memory.written).toEqual([]);
    expect(openDraft(answer(await recallKept(memory))!).text).toBe(selected);
    await rememberMapping(memory, headerSignature(selected), { columns: { 1: "build", 2: "carry" } });
    selected = `${selected}\nschwer\t149`;
    await commands().compareSelection();
    expect(said.at(-1)).toMatch(/^Added Comparison/);
  });

  test("computes what the table lacks where its session asks for it, and says so on the sheet", async () => {
    selected = DEMO_TEXT.replace("\t161.6\t", "\t\t");
    const kept = nothingKept("2026-05-14");
    const [draft] = kept.drafts;
    const asked = { ...draft!, text: selected, facts: { ...draft!.facts, fill: true } };
    await keepAll(memory, { ...kept, drafts: [asked] });
    await commands().compareSelection();
    expect(JSON.stringify(memory.written[0])).toContain("Carry of 1 of 24 shots is computed");
    await keepAll(memory, { ...kept, drafts: [{ ...asked, facts: draft!.facts }] });
    await commands().compareSelection();
    expect(JSON.stringify(memory.written[1])).not.toContain("of 24 shots is computed");
  });
});

describe("filling a bench sheet", { timeout: 60_000 }, () => {
  test("says for which build it is and why", async () => {
    await commands().compareSelection();
    await commands().fillBenchSheet();
    expect(writtenNames()[1]).toEqual(["Build"]);
    expect(said.at(-1)).toMatch(/^Added Build\. It is for ".+", the (best build|build most likely best)/);
  });

  test("without shots says what to do and writes nothing", async () => {
    await commands().fillBenchSheet();
    expect(said.at(-1)).toMatch(/^There are no shots yet/);
    expect(memory.written).toEqual([]);
  });
});

describe("a button that is at work", { timeout: 60_000 }, () => {
  test("says how far the sheets are, and does nothing a second time while it writes", async () => {
    let finish = () => {};
    const waiting = new Promise<void>((resolve) => {
      finish = resolve;
    });
    const { write } = memory;
    memory.write = async (plan, run) => {
      for (const share of [0.1, 0.3, 0.35, 0.6, 1]) run?.progress?.(share);
      await waiting;
      return write(plan, run);
    };
    const { compareSelection, fillBenchSheet } = commands();
    const first = compareSelection();
    await vi.waitFor(() => expect(said.at(-1)).toMatch(/50 %$/));
    expect(said.filter((sentence) => / %$/.test(sentence))).toEqual([
      "Writing the sheets… 25 %",
      "Writing the sheets… 50 %",
    ]);
    await fillBenchSheet();
    expect(said.at(-1)).toBe("Still at work on what was asked before.");
    finish();
    await first;
    expect(writtenNames()).toHaveLength(1);
    expect(said.at(-1)).toMatch(/^Added Comparison/);
  });
});

describe("cells brought into what is kept", () => {
  test("go back to the session that has these very ones", () => {
    const first = withCells(nothingKept(), "a", "2026-05-14");
    const second = withCells(first, "b", "2026-05-14");
    expect(second.drafts).toHaveLength(2);
    const back = withCells(second, "a", "2026-05-14");
    expect(back.open).toBe(first.open);
    expect(back.drafts).toBe(second.drafts);
  });
});
