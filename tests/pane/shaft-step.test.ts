import { describe, expect, it } from "vitest";
import { readSetFile } from "../../src/club/read-set.ts";
import { shaftStepOf, withShaftStep } from "../../src/pane/shaft-step.ts";
import { answer } from "../club/answer.ts";

const set = (shafts: string) => `target; swingweight; D2\n${shafts}\ngrip; 50\nclub; length\n6; 37.5\n7; 37`;

describe("the step of a set file's shaft weights", () => {
  it.each([
    ["shafts; 105; 3; 7", 3],
    ["Shafts;105;-2,5", -2.5],
    ["shafts; 105", 0],
    ["shafts; 105; ; 7", 0],
    ["shafts; list; 105; 108", null],
    ["shafts; heavy; 3", null],
    ["shafts; 105; 1.2.3", null],
    ["# shafts; 105; 3", null],
  ])("of %j is %j", (shafts, step) => {
    expect(shaftStepOf(set(shafts))).toBe(step);
  });

  it.each(["shafts; 105; 3; 7", "shafts; 105", "shafts; 105; ; 7"])(
    "of %j can be changed, and is read so",
    (shafts) => {
      for (const mark of [".", ","]) {
        const changed = withShaftStep(set(shafts), 2.5, mark);
        expect(shaftStepOf(changed)).toBe(2.5);
        const { shafts: read } = answer(readSetFile(changed));
        expect(read).toMatchObject({ kind: "steps", weight: 105, step: 2.5 });
        expect((read as { reference?: string }).reference).toBe(shafts.includes("7") ? "7" : undefined);
      }
    },
  );

  it("changes nothing where weights are listed", () => {
    expect(withShaftStep(set("shafts; list; 105; 108"), 3, ".")).toBe(set("shafts; list; 105; 108"));
  });
});
