import { describe, expect, it } from "vitest";
import { planSet } from "../../src/club/plan-set.ts";
import { setRequestFor } from "../../src/fitting/set-request.ts";
import { answer, refusal } from "../club/answer.ts";

const BUILD = { name: "105 g mid-launch", weight: 105 };

// What a usual set is, is common practice without a source; these hold what the doc comments promise.
describe("the usual set from a chosen build", () => {
  it("is 5-iron to wedge with the build's shaft weight in every club, built to D2", () => {
    const plan = answer(planSet(answer(setRequestFor(BUILD))));
    expect(plan.clubs.map(({ club }) => club)).toEqual(["5i", "6i", "7i", "8i", "9i", "PW"]);
    expect(plan.clubs.map(({ shaftWeight }) => shaftWeight)).toEqual([105, 105, 105, 105, 105, 105]);
    expect(plan.clubs.map(({ built }) => built.swingweight)).toEqual(Array(6).fill("D2.0"));
    expect(plan.warnings).toEqual([]);
  });

  it("takes the tested club's length and loft from the build and moves the others along", () => {
    const { clubs } = answer(setRequestFor({ ...BUILD, length: 37.25, loft: 30 }));
    expect(clubs.map(({ length }) => length)).toEqual([38.25, 37.75, 37.25, 36.75, 36.25, 35.75]);
    expect(clubs.map(({ loft }) => loft)).toEqual([22, 26, 30, 34, 38, 42]);
  });

  it.each([
    ["8 iron", "8i"],
    ["Fitting with a 6-iron", "6i"],
    ["PW", "PW"],
    ["9i", "9i"],
    ["2 iron", "7i"],
  ])("takes %s for the tested %s", (said, tested) => {
    expect(answer(setRequestFor(BUILD, { said })).shafts).toMatchObject({ reference: tested });
  });

  it("steps the shafts from the tested club", () => {
    const request = answer(setRequestFor(BUILD, { shaftStep: 3, kind: "short iron" }));
    const plan = answer(planSet(request));
    expect(plan.clubs.map(({ shaftWeight }) => shaftWeight)).toEqual([93, 96, 99, 102, 105, 108]);
  });

  it("takes the swingweight that is entered before the build's own", () => {
    const own = { ...BUILD, swingweight: "C9" };
    expect(answer(setRequestFor(own)).target).toEqual({ kind: "swingweight", code: "C9" });
    const entered = answer(setRequestFor(own, { swingweight: "D4" }));
    expect(entered.target).toEqual({ kind: "swingweight", code: "D4" });
  });

  it.each([
    ["driver", "Driver"],
    ["fairway", "3W"],
    ["hybrid", "4H"],
    ["wedge", "SW"],
  ] as const)("is one club for a tested %s", (kind, club) => {
    expect(
      answer(setRequestFor({ name: "65 g", weight: 65 }, { kind })).clubs.map((one) => one.club),
    ).toEqual([club]);
  });

  it("says that a build without a shaft weight needs one", () => {
    expect(refusal(setRequestFor({ name: "blue one" }))).toBe(
      'Build "blue one" has no shaft weight; enter it in grams, put it in the name as "95 g", or bring a set file that gives the shafts.',
    );
  });
});
