import { describe, expect, test } from "vitest";
import { compareBuilds } from "../../src/fitting/compare-builds.ts";
import { filledSession } from "../../src/fitting/filled-session.ts";
import { isProblem } from "../../src/outcome/problem.ts";
import { applyChange } from "../../src/pane/apply-change.ts";
import { demoDraft } from "../../src/pane/demo-draft.ts";
import { type Derived, derive } from "../../src/pane/derive.ts";
import { type Draft, emptyDraft, openDraft } from "../../src/pane/draft.ts";

function derived(draft: Draft): Derived {
  const found = derive(draft, "us");
  if (found === null || isProblem(found)) throw new Error(found?.message ?? "nothing");
  return found;
}

// Three shots a build: mean and spread of 150, 152, 154 are 152 and 2 by hand.
const text = ["Build\tCarry (yd)\tRoll out", "A\t150\t1", "A\t152\t2", "A\t154\t3", "B\t160\t4"].join("\n");
const draft: Draft = { ...emptyDraft("1"), text };
const carryOf = (found: Derived, place: number) =>
  compareBuilds(found.session).builds[place]!.metrics.get("carry");

describe("what follows from a draft", () => {
  test("is nothing while there is no text, and a problem when the text is no table", () => {
    expect(derive(emptyDraft("1"), "us")).toBeNull();
    expect(isProblem(derive({ ...draft, text: "hello" }, "us"))).toBe(true);
  });

  test("is the comparison of the shots that are ticked", () => {
    expect(carryOf(derived(draft), 0)).toMatchObject({ n: 3, mean: 152, sd: 2 });
    expect(carryOf(derived({ ...draft, ticks: { 4: false } }), 0)).toMatchObject({ n: 2, mean: 151 });
  });

  test("calls builds what the fitter calls them, keeps the baseline and what the old name told", () => {
    const told: Draft = {
      ...draft,
      text: text.replaceAll("\nB", "\n95 g high-launch"),
      facts: { ...draft.facts, baseline: "95 g high-launch" },
      builds: { "95 g high-launch": { name: "Blue" } },
    };
    const { session } = derived(told);
    expect(session.builds.map(({ name }) => name)).toEqual(["A", "Blue"]);
    expect(session.baseline).toBe("Blue");
    expect(session.builds[1]).toMatchObject({ weight: 95 });
  });

  test("does not know again from a name what was taken out by hand, also after keeping", () => {
    const named = { ...draft, text: text.replaceAll("\nB", "\n95 g high-launch") };
    const change = { does: "build", name: "95 g high-launch", details: { weight: null } } as const;
    const after = applyChange({ version: 1, units: "us", open: "1", drafts: [named] }, change);
    const again = JSON.parse(JSON.stringify(openDraft(after))) as Draft;
    expect(derived(named).session.builds[1]).toMatchObject({ weight: 95 });
    expect(derived(again).session.builds[1]!.weight).toBeUndefined();
    expect(derived(again).session.builds[1]).toMatchObject({ profile: "high" });
  });

  test("counts two builds of one name as one", () => {
    const { session } = derived({ ...draft, builds: { B: { name: "A" } } });
    expect(session.builds.map(({ name }) => name)).toEqual(["A"]);
    expect(carryOf(derived({ ...draft, builds: { B: { name: "A" } } }), 0)!.n).toBe(4);
  });

  test("follows a corrected column and a corrected unit", () => {
    // A yard is 0.9144 m (international yard and pound agreement, 1959).
    const metres = derived({ ...draft, corrections: { 2: { unit: "m" } } });
    expect(carryOf(metres, 0)!.mean).toBeCloseTo(152 / 0.9144, 10);
    const swapped = derived({ ...draft, corrections: { 2: { key: null }, 3: { key: "carry", unit: "yd" } } });
    expect(carryOf(swapped, 0)!.mean).toBe(2);
  });

  test("answers the same objects when nothing that they depend on has changed", () => {
    const first = derived(draft);
    const again = derived({ ...draft, ticks: draft.ticks });
    expect(again.table).toBe(first.table);
    expect(again.session).toBe(first.session);
    expect(again.far).toBe(first.far);
  });

  test("has the air that was told, and none where nothing was", () => {
    const air = { temperature: 25, altitude: 1600 };
    expect(derived({ ...draft, facts: { ...draft.facts, air } }).session.air).toEqual(air);
    expect(derived(draft).session).not.toHaveProperty("air");
  });

  test("computes what the table lacks only where that was asked for, and marks it", () => {
    const demo = demoDraft("1");
    const gapped = { ...demo, text: demo.text.replace("\t161.6\t", "\t\t") };
    const asked = { ...gapped, facts: { ...gapped.facts, fill: true } };
    const carryOfFirst = (of: Draft) => {
      const found = derive(of, "us", filledSession) as Derived;
      return { carry: found.session.table.values.get("carry")![0]!, marked: found.session.computed };
    };
    expect(carryOfFirst(gapped)).toEqual({ carry: Number.NaN, marked: undefined });
    const { carry, marked } = carryOfFirst(asked);
    // The shot carried 161.6 yd in the demo's own table.
    expect(Math.abs(carry - 161.6)).toBeLessThan(4);
    expect(marked).toEqual(new Map([["carry", new Set([0])]]));
    expect((derive(asked, "us", filledSession) as Derived).session).toBe(
      (derive(asked, "us", filledSession) as Derived).session,
    );
  });

  test("marks far shots whether or not they are ticked", () => {
    const demo = demoDraft("1");
    const far = derived(demo).far.map(({ row }) => row);
    expect(far).toContain(18);
    expect(derived({ ...demo, ticks: { 18: false } }).far.map(({ row }) => row)).toEqual(far);
  });
});
