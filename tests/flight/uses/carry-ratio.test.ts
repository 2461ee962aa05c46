import { expect, test } from "vitest";
import { airOfDensity } from "../../../src/flight/air/air.ts";
import { carryRatio } from "../../../src/flight/uses/carry-ratio.ts";
import { figure } from "../expect-figure.ts";

const EMPTY = { density: 0, viscosity: 1.8e-5 };
const SEA = airOfDensity(1.225);
const IRON = { speed: 52, launch: 17, spin: 6600 };

test("without air carries go as the squares of the speeds", () => {
  const faster = { ...IRON, speed: 57.2 };
  // Source: range = v^2 sin(2 launch) / g.
  expect(figure(carryRatio({ strike: faster, air: EMPTY }, { strike: IRON, air: EMPTY }))).toBeCloseTo(
    1.21,
    9,
  );
});

test("a ratio says which of the two strikes cannot be flown", () => {
  const sound = { strike: IRON, air: SEA };
  const wrong = { strike: { ...IRON, spin: -5 }, air: SEA };
  const message = "spin should be 0 to 20000 rpm, not -5";
  expect(carryRatio(sound, wrong)).toMatchObject({ message });
  expect(carryRatio(wrong, sound)).toMatchObject({ message });
});

test("a strike that carries next to nothing is no measure for another", () => {
  const topped = { strike: { ...IRON, launch: -5 }, air: SEA };
  expect(carryRatio({ strike: IRON, air: SEA }, topped)).toMatchObject({ kind: "unavailable" });
  expect(figure(carryRatio(topped, { strike: IRON, air: SEA }))).toBeCloseTo(0, 9);
});
