import { expect, test } from "vitest";
import { outline } from "../../src/pictures/outline.ts";

test("an outline keeps the ellipse's equation, turned from the target line to the right", () => {
  const ellipse = { centreX: 160, centreY: 3, longHalf: 10, shortHalf: 4, angle: 30, area: 40 * Math.PI };
  const points = outline(ellipse);
  const turn = Math.PI / 6;
  for (const { carry, offline } of points) {
    const [dx, dy] = [carry - 160, offline - 3];
    const along = dx * Math.cos(turn) + dy * Math.sin(turn);
    const across = -dx * Math.sin(turn) + dy * Math.cos(turn);
    // The equation of an ellipse in its own axes: (u / a)^2 + (v / b)^2 = 1.
    expect((along / 10) ** 2 + (across / 4) ** 2).toBeCloseTo(1, 12);
  }
  // Its long end lies ahead and to the right.
  expect(points[0]).toEqual({ carry: 160 + 10 * Math.cos(turn), offline: 3 + 10 * Math.sin(turn) });
});
