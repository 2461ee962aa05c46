import { expect, it } from "vitest";
import { decide } from "../../src/fitting/decide.ts";
import { whatNext } from "../../src/fitting/what-next.ts";
import { sessionOfShots } from "./session-of-shots.ts";

const next = (builds: Parameters<typeof sessionOfShots>[0]) => {
  const session = { ...sessionOfShots(builds), goal: "carry" as const };
  return whatNext(session, decide(session));
};

it("one build alone asks for a second", () => {
  expect(next({ A: [150, 152] })).toMatchObject({
    build: null,
    why: "Hit a second build next, as often as A.",
  });
});

it("each build is hit three times before averages count", () => {
  expect(next({ A: [150, 152, 151], B: [151, 150] }).why).toMatch(/^Hit B next: each build needs 3 shots/);
});

it("what another shot would say is no order to hit one, for the verdict may say that no more would tell", () => {
  const { build, why } = next({ A: [150, 154, 152, 149], B: [151, 149, 153, 152] });
  expect(why).toBe(`Should you hit another, hit it with ${build}: that says most about which build is best.`);
});

it("a clear choice ends the test", () => {
  const { build, why } = next({ A: [150, 151, 152, 150, 151], B: [170, 171, 172, 170, 171] });
  expect(build).toBeNull();
  expect(why).toMatch(/stop here/);
});
