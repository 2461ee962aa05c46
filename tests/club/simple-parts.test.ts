import { expect, test } from "vitest";
import { simpleParts } from "../../src/club/simple-parts.ts";

const club = [37, 270, 110, 18.5, 50, 3, 4] as const;
const names = ["length", "head", "shaft", "shaftBalance", "grip", "tip", "butt"];

test("the parts have the figures they were given", () => {
  expect(simpleParts(...club)).toMatchObject({
    length: 37,
    head: { weight: 270 },
    shaft: { weight: 110, length: 37, balance: 18.5 },
    grip: { weight: 50 },
    tipWeight: { weight: 3 },
    buttWeight: { weight: 4 },
  });
});

test.each(names)("a %s below nought is refused by name", (name) => {
  const wrong = club.map((figure, i) => (names[i] === name ? -1 : figure)) as unknown as typeof club;
  expect(simpleParts(...wrong)).toMatchObject({
    kind: "invalid",
    message: expect.stringMatching(new RegExp(`^${name} is -1`)),
  });
});

test("a club needs length, a shaft and a balance point, and may do without head, grip and added weight", () => {
  const without = (name: string) =>
    simpleParts(...(club.map((figure, i) => (names[i] === name ? 0 : figure)) as unknown as typeof club));
  for (const name of ["length", "shaft", "shaftBalance"]) {
    expect(without(name)).toMatchObject({
      message: expect.stringMatching(new RegExp(`^${name} is 0.*more than`)),
    });
  }
  for (const name of ["head", "grip", "tip", "butt"]) expect(without(name)).not.toHaveProperty("kind");
});

// The usual grip is 27 cm long: 10.63 in.
test("a club is longer than its grip, and balances above its end", () => {
  expect(simpleParts(10.5, 270, 110, 5, 50)).toMatchObject({ message: expect.stringContaining("10.63") });
  expect(simpleParts(37, 270, 110, 37, 50)).toMatchObject({
    message: expect.stringContaining("less than the length"),
  });
});
