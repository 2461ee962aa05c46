import { expect, test } from "vitest";
import { airOfDensity } from "../../../src/flight/air/air.ts";
import { strikeAdjustedCarry, usualSmash } from "../../../src/flight/uses/strike-adjusted-carry.ts";
import { figure } from "../expect-figure.ts";

const SEA = airOfDensity(1.225);
const IRON = { speed: 52, launch: 17, spin: 6600 };
const shot = (clubSpeed: number, speed: number) => ({ strike: { ...IRON, speed }, clubSpeed });

test("the usual smash is the middle one in whatever order the shots were hit", () => {
  // 1.4, 1.3 and 1.36 by hand: the middle is 1.36.
  expect(figure(usualSmash([shot(40, 56), shot(40, 52), shot(40, 54.4)]))).toBeCloseTo(1.36, 12);
});

test("shots without club speed or ball speed say nothing of the usual smash", () => {
  const sound = [shot(40, 52), shot(40, 54.4), shot(40, 56)];
  const lacking = [shot(0, 52), shot(Number.NaN, 52), shot(40, Number.NaN), shot(40, 0), shot(-40, 52)];
  expect(figure(usualSmash([...lacking, ...sound]))).toBeCloseTo(1.36, 12);
  expect(usualSmash([...lacking, ...sound.slice(1)])).toMatchObject({ kind: "unavailable" });
});

test("an adjusted carry names the speed or smash factor that no swing has", () => {
  expect(strikeAdjustedCarry(shot(2, 52), 1.4, SEA)).toMatchObject({
    message: "club speed should be 5 to 80 m/s, not 2",
  });
  expect(strikeAdjustedCarry(shot(40, 52), 1.7, SEA)).toMatchObject({
    message: "smash factor should be 0.5 to 1.6, not 1.7",
  });
});
