import { describe, expect, test } from "vitest";
import { type Desk, type DeskAction, reduceDesk } from "../../src/pane/desk.ts";
import { emptyDraft, nothingKept, openDraft } from "../../src/pane/draft.ts";

const start: Desk = { kept: nothingKept("2026-01-02"), past: [] };
const deskAfter = (...actions: DeskAction[]) => actions.reduce(reduceDesk, start);
const text = (lines: string): DeskAction => ({ does: "text", text: lines });

describe("the desk", () => {
  test("keeps pasted text word for word", () => {
    const pasted = "Build\tCarry\r\n=A\t150,5 \n";
    expect(openDraft(deskAfter(text(pasted)).kept).text).toBe(pasted);
  });

  test("appends more shots on a line of their own", () => {
    const desk = deskAfter(text("Carry\n150"), { does: "add", text: "151" }, { does: "add", text: "152\n" });
    expect(openDraft(desk.kept).text).toBe("Carry\n150\n151\n152\n");
  });

  test("keeps the tick of a shot whose line is still the same, and drops that of a line that changed", () => {
    const ticked: DeskAction = { does: "tick", rows: [2, 3], keep: false };
    const desk = deskAfter(text("Carry\n150\n151"), ticked, text("Carry\n150\n999"));
    expect(openDraft(desk.kept).ticks).toEqual({ 2: false });
  });

  test("drops corrections of columns when the headings change", () => {
    const correct: DeskAction = { does: "correct", column: 1, correction: { key: "total" } };
    const before = deskAfter(text("Far\n150"), correct);
    expect(openDraft(reduceDesk(before, text("Far\n150\n151")).kept).corrections).toEqual({
      1: { key: "total" },
    });
    expect(openDraft(reduceDesk(before, text("Wide\n150")).kept).corrections).toEqual({});
  });

  test("undoes whole tables one by one", () => {
    const desk = deskAfter(text("Carry\n150"), text("Carry\n160"));
    expect(openDraft(reduceDesk(desk, { does: "undo" }).kept).text).toBe("Carry\n150");
  });

  test("undoes letters typed into one box as one, and those typed after a step back apart from it", () => {
    const typed = (lines: string): DeskAction => ({ does: "text", text: lines, typed: true });
    const desk = deskAfter(text("Carry"), typed("Carry\n1"), typed("Carry\n15"));
    expect(openDraft(reduceDesk(desk, { does: "undo" }).kept).text).toBe("Carry");
    const further = [
      { does: "facts", facts: { player: "Ro" } },
      { does: "undo" },
      typed("Carry\n150"),
      { does: "undo" },
    ] as DeskAction[];
    expect(openDraft(further.reduce(reduceDesk, desk).kept).text).toBe("Carry\n15");
    const plan = (builds: string): DeskAction => ({ does: "plan", plan: { builds }, typed: true });
    expect(deskAfter(plan("A"), plan("AB")).past).toHaveLength(1);
  });

  test("undoes each of two windows and each of two readings of the air by itself", () => {
    const windows = { launch: { from: 14, to: 18 } };
    const desk = deskAfter(
      { does: "facts", facts: { windows } },
      { does: "facts", facts: { windows: { ...windows, spin: { from: 5000, to: 7000 } } } },
      { does: "facts", facts: { air: { temperature: 20 } } },
      { does: "facts", facts: { air: { temperature: 20, humidity: 40 } } },
    );
    const back = reduceDesk(desk, { does: "undo" });
    expect(openDraft(back.kept).facts.air).toEqual({ temperature: 20 });
    const further = [1, 2].reduce((state) => reduceDesk(state, { does: "undo" }), back);
    expect(openDraft(further.kept).facts.windows).toEqual(windows);
  });

  test("takes what is known of a table as part of bringing it", () => {
    const desk = deskAfter(text("Far\n150"), { does: "recalled", corrections: { 1: { key: "carry" } } });
    expect(openDraft(desk.kept).corrections).toEqual({ 1: { key: "carry" } });
    expect(reduceDesk(desk, { does: "undo" }).kept).toBe(start.kept);
  });

  test("undoes each change, back to the beginning and no further", () => {
    const desk = deskAfter(
      text("Carry\n150"),
      { does: "facts", facts: { player: "Ro" } },
      { does: "facts", facts: { place: "Bay 2" } },
      { does: "units", units: "metric" },
    );
    expect(desk.past).toHaveLength(4);
    const steps = [1, 2, 3, 4, 5].map((n) =>
      Array(n)
        .fill({ does: "undo" } as const)
        .reduce(reduceDesk, desk),
    );
    expect(
      steps.map(({ kept }) => [kept.units, openDraft(kept).facts.place, openDraft(kept).facts.player]),
    ).toEqual([
      ["us", "Bay 2", "Ro"],
      ["us", "", "Ro"],
      ["us", "", ""],
      ["us", "", ""],
      ["us", "", ""],
    ]);
    expect(steps[4]!.kept).toEqual(start.kept);
  });

  test("keeps the chosen build on the bench under its new name, with the set file that is its own", () => {
    const rename = (name: string): DeskAction => ({ does: "build", name: "A", details: { name } });
    const desk = deskAfter(
      text("Build\tCarry\nA\t150\nB\t160"),
      { does: "bench", bench: { chosen: "A", set: "grip; 50" } },
      rename("Blue"),
      rename("Green"),
    );
    expect(openDraft(desk.kept).bench).toEqual({ chosen: "Green", set: "grip; 50" });
    const other = reduceDesk(desk, { does: "build", name: "B", details: { name: "Red" } });
    expect(openDraft(other.kept).bench.chosen).toBe("Green");
  });

  test("undoes rows that came in from a followed table one by one, not all of them at once", () => {
    const came = (lines: string): DeskAction => ({ does: "text", text: lines, ticks: {} });
    const desk = deskAfter(text("Carry\n150"), came("Carry\n150\n151"), came("Carry\n150\n151\n152"));
    expect(openDraft(reduceDesk(desk, { does: "undo" }).kept).text).toBe("Carry\n150\n151");
  });

  test("starts over within the same session, and undo brings everything back", () => {
    const before = deskAfter(text("Carry\n150"), { does: "facts", facts: { player: "Ro" } });
    const { id: _, ...empty } = emptyDraft("");
    const over = reduceDesk(before, { does: "replace", draft: empty });
    expect(openDraft(over.kept)).toEqual(emptyDraft("1"));
    expect(reduceDesk(over, { does: "undo" }).kept).toBe(before.kept);
  });

  test("holds several sessions, and removing the last one leaves an empty one", () => {
    const two = deskAfter(text("Carry\n150"), { does: "new", draft: emptyDraft("2") });
    expect(two.kept.open).toBe("2");
    const first = reduceDesk(two, { does: "open", id: "1" });
    expect(openDraft(first.kept).text).toBe("Carry\n150");
    const one = reduceDesk(first, { does: "forget", id: "1" });
    expect(one.kept.drafts.map(({ id }) => id)).toEqual(["2"]);
    expect(one.kept.open).toBe("2");
    expect(reduceDesk(one, { does: "forget", id: "2" }).kept.drafts).toEqual([emptyDraft("2")]);
  });

  test("takes no step back for a change that changes nothing", () => {
    const desk = deskAfter(text("Carry\n150"));
    for (const idle of [
      text("Carry\n150"),
      { does: "add", text: " \n" },
      { does: "open", id: "9" },
    ] as DeskAction[])
      expect(reduceDesk(desk, idle)).toBe(desk);
  });

  test("remembers what the ledger knows a session by, through more shots and through undo", () => {
    const ledger = { session: "abc", shots: 2, ordered: "" };
    const kept = (lines: string): DeskAction => ({ does: "inLedger", id: "1", text: lines, ledger });
    const first = "Carry\n150\n151";
    const desk = deskAfter(text(first), { does: "facts", facts: { player: "Ro" } }, kept(first));
    const more = reduceDesk(desk, { does: "add", text: "152" });
    expect(openDraft(more.kept).ledger).toEqual(ledger);
    expect(openDraft(reduceDesk(more, text(`${first}\n152\n153`)).kept).ledger).toEqual(ledger);
    const back = reduceDesk(reduceDesk(more, { does: "undo" }), { does: "undo" });
    expect(openDraft(back.kept)).toMatchObject({ ledger, facts: { player: "" } });
  });

  test("forgets it when other shots are pasted over them, so that they do not overwrite the first", () => {
    const ledger = { session: "abc", shots: 2, ordered: "" };
    const desk = deskAfter(text("Carry\n150\n151"), {
      does: "inLedger",
      id: "1",
      text: "Carry\n150\n151",
      ledger,
    });
    const other = reduceDesk(desk, text("Carry\n160\n161"));
    expect(openDraft(other.kept)).not.toHaveProperty("ledger");
    const late = reduceDesk(other, { does: "inLedger", id: "1", text: "Carry\n150\n151", ledger });
    expect(openDraft(late.kept)).not.toHaveProperty("ledger");
  });
});
