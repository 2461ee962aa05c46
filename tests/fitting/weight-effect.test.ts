import { describe, expect, it } from "vitest";
import { specFromName } from "../../src/fitting/build-spec.ts";
import { weightEffect, weightEffects } from "../../src/fitting/weight-effect.ts";
import { weightWords } from "../../src/fitting/weight-words.ts";
import { sessionOfShots } from "./session-of-shots.ts";

describe("weightEffect(values, weights)", () => {
  it("is ten times the slope of a straight line, by hand", () => {
    // Three points by hand: x 90, 100, 110; y 160, 158, 153: slope -0.35, so -3.5 for each 10 g.
    expect(weightEffect([160, 158, 153], [90, 100, 110])).toMatchObject({
      per10g: expect.closeTo(-3.5, 10),
      n: 3,
    });
  });

  it("says when all shafts weigh the same", () => {
    expect(weightEffect([1, 2, 3], [100, 100, 100])).toMatchObject({ kind: "unavailable" });
  });

  it("says that two shots are too few, in words of the bay", () => {
    expect(weightEffect([160, 158], [90, 100])).toMatchObject({
      kind: "unavailable",
      message: "It takes at least three shots of known shaft weight to see what weight does; there are 2.",
    });
  });

  it("leaves shots without a figure or a weight out", () => {
    const nan = Number.NaN;
    expect(weightEffect([160, nan, 158, 153, 99], [90, 95, 100, 110, nan])).toMatchObject({ n: 3 });
  });
});

describe("weightEffects(session)", () => {
  const session = sessionOfShots({
    "90 g low": [160, 161, 162],
    "100 g mid": [158, 157, 159],
    "110 g": [153, 154, 155],
  });
  it("reads weights from the builds' names and finds an effect for each metric", () => {
    const [carry] = weightEffects(session);
    expect(carry).toMatchObject({ metric: "carry", per10g: expect.closeTo(-3.5, 10) });
  });
  it("is told with the warning that weight is never alone", () => {
    expect(weightWords(session)[0]).toMatch(/10 g more went with .* carry .*profile, length and flex/);
  });
});

describe("weightWords(session)", () => {
  it("says nothing of three shots, one with each build, however well they lie on a line", () => {
    const thin = sessionOfShots({ "90 g": [160], "100 g": [158.1], "110 g": [156] });
    expect(weightEffects(thin)[0]!.p).toBeLessThan(0.05);
    expect(weightWords(thin)).toEqual([]);
  });

  it("takes all figures together, so that one of many that leans by chance is not told", () => {
    // Carry leans with the weight at alone at a p between 0.025 and 0.05; offline does not.
    const leaning = sessionOfShots({
      "90 g": [150, 154, 152, 158].map((carry, i) => [carry, [2, -3, 4, -2][i]!] as const),
      "100 g": [157, 161, 157, 161].map((carry, i) => [carry, [-1, 3, -4, 2][i]!] as const),
    });
    const carry = weightEffects(leaning).find(({ metric }) => metric === "carry")!;
    expect(carry.p).toBeLessThan(0.05);
    expect(carry.p).toBeGreaterThan(0.025);
    expect(weightWords(leaning)[0]).toMatch(/^What weight did: nothing that these shots can show/);
  });
});

describe("specFromName(name)", () => {
  it.each([
    ["105 g mid-launch", { weight: 105, profile: "mid" }],
    ["97.5g high", { weight: 97.5, profile: "high" }],
    ["97,5 grams", { weight: 97.5 }],
    ["Stock", {}],
    ["5 g tip weight", {}],
    ["3000 g", {}],
  ])("of %j", (name, spec) => expect(specFromName(name)).toEqual({ name, ...spec }));
});
