import { expect, test } from "vitest";
import { demoDraft } from "../../src/pane/demo-draft.ts";
import { type DeskAction, reduceDesk } from "../../src/pane/desk.ts";
import { type Draft, emptyDraft, type Kept, openDraft } from "../../src/pane/draft.ts";
import { parseKept } from "../../src/pane/keeping.ts";
import { withoutDemo } from "../../src/pane/without-demo.ts";
import { answer } from "../club/answer.ts";

const OTHER = "Build\tCarry\nA\t150\nB\t160";
const DAY = "2026-01-02";

const demo = demoDraft("1");
const [headings = "", ...shots] = demo.text.split("\n");
const kept: Kept = { version: 1, units: "us", open: "1", drafts: [demo] };
const bring = (text: string): DeskAction => ({ does: "text", text, date: DAY });
const deskAfter = (...actions: DeskAction[]) => actions.reduce(reduceDesk, { kept, past: [] });
const draftAfter = (...actions: DeskAction[]) => openDraft(deskAfter(...actions).kept);

test("nothing of the demo stays beside a table that is pasted over it", () => {
  expect(draftAfter(bring(OTHER))).toEqual({ ...emptyDraft("1", DAY), text: OTHER });
});

test("the demo's facts go with its shots, where the box is emptied before another table is pasted", () => {
  expect(draftAfter(bring(""))).toEqual(emptyDraft("1", DAY));
  expect(draftAfter(bring(""), bring(OTHER)).facts.player).toBe("");
});

test("one step back brings the demo back as it was, with what was typed into it", () => {
  const typed: DeskAction = { does: "build", name: "95 g high-launch", details: { length: 37 } };
  const before = deskAfter(typed);
  const after = reduceDesk(before, bring(OTHER));
  expect(openDraft(after.kept).builds).toEqual({});
  expect(reduceDesk(after, { does: "undo" }).kept).toBe(before.kept);
});

test("the demo stays the demo while half of its shots are there, whatever comes to them", () => {
  const half = [headings, ...shots.slice(0, 12)].join("\n");
  expect(draftAfter(bring(half)).facts).toEqual(demo.facts);
  expect(draftAfter({ does: "add", text: shots[0]! }).facts).toEqual(demo.facts);
  const fewer = [headings, ...shots.slice(0, 11)].join("\n");
  expect(draftAfter(bring(half), bring(fewer)).facts.player).toBe("");
});

test("facts that were typed over the demo's stay, and those that speak of its clubs go", () => {
  const facts: Partial<Draft["facts"]> = {
    player: "Ro",
    place: "",
    leftHanded: true,
    air: { temperature: 20 },
    baseline: "95 g high-launch",
  };
  const bench = { chosen: "95 g high-launch", set: "grip; 50" };
  const after = draftAfter({ does: "facts", facts }, { does: "bench", bench }, bring(OTHER));
  expect(after.facts).toEqual({ ...emptyDraft("1", DAY).facts, ...facts, baseline: "" });
  expect(after.bench).toEqual(emptyDraft("1").bench);
});

test("a demo that was kept and opened again is known as the demo", () => {
  const again = answer(parseKept(JSON.stringify(kept)));
  const after = reduceDesk({ kept: again, past: [] }, bring(OTHER));
  expect(openDraft(after.kept).facts).toEqual(emptyDraft("1", DAY).facts);
});

test("a session that never held the demo keeps its facts under another table", () => {
  const own: Draft = { ...emptyDraft("1"), text: OTHER, facts: { ...demo.facts } };
  expect(withoutDemo(own, DAY)).toBe(own);
});
