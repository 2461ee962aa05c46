import { expect, test } from "vitest";
import { usualWindows } from "../../src/fitting/target-windows.ts";
import { withOwnWindows } from "../../src/pane/with-own-windows.ts";

const usual = usualWindows("mid iron", 80);

test("a window that was typed over takes the place of the usual one, the others stay", () => {
  const own = withOwnWindows(usual, { spin: { from: 6000, to: 7000 } });
  expect(own).toEqual({ ...usual, spin: { from: 6000, to: 7000, margin: usual.spin!.margin } });
});

test("without windows of one's own the usual ones are the very same", () => {
  expect(withOwnWindows(usual, {})).toBe(usual);
});

test("a window for a figure that has none is left out", () => {
  expect(withOwnWindows(usual, { carry: { from: 1, to: 2 } })).toBe(usual);
});
